/** Short parts for tests; the text is that of `passageOf`, with `_` for a space in words. */

import type { Passage } from '../../core/part/passage.ts';
import { passageOf } from '../../core/part/passageOf.ts';

export function part(text: string): Passage {
  return passageOf(text.replace(/"[^"]*"/g, (word) => word.replace(/_/g, ' ')));
}
