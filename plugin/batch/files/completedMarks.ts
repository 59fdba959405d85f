/** What annotate adds to a part besides fingerings, in the form MusicXML has for it: a real sign, a word of its own. */
import { type Completion, type Mark, withCompletions } from '../../../core/index.ts';
import type { Addition } from '../../musicxml/index.ts';

/** Marks and additions for one part; ⊕, which hosts lose as a sign, goes into the mark's text. */
export function completedMarks(
  marks: readonly Mark[],
  completions: readonly Completion[],
): { readonly marks: readonly Mark[]; readonly additions: readonly Addition[] } {
  const additions: Addition[] = [];
  const asText: Completion[] = [];
  for (const completion of completions) {
    const { noteIndex, kind, text } = completion;
    if (kind === 'word') additions.push({ kind: 'word', noteIndex, text });
    else if (text === '+') additions.push({ kind: 'stopped-sign', noteIndex });
    else asText.push(completion);
  }
  return { marks: asText.length > 0 ? withCompletions(marks, asText) : marks, additions };
}
