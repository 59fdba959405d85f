/** What annotate adds to a part besides fingerings, in the form MusicXML has for it: a real sign, a word of its own. */
import { type Completion, type Mark, withCompletions } from '../../../core/index.ts';
import type { Addition } from '../../musicxml/index.ts';
import { amount } from '../print/counts.ts';

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

/** `added 3 signs and 1 word`. */
export function completionText(completions: readonly Completion[]): string {
  const signs = completions.filter(({ kind }) => kind === 'sign').length;
  const words = completions.length - signs;
  if (completions.length === 0) return 'no sign or word was missing';
  const added = [signs > 0 ? amount(signs, 'sign') : '', words > 0 ? amount(words, 'word') : ''];
  return `added ${added.filter((text) => text !== '').join(' and ')}`;
}
