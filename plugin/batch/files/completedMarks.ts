/** What annotate adds to a part besides fingerings, in the form MusicXML has for it: a real sign, a word of its own. */
import { type Mark, type Repair, withRepairs } from '../../../core/index.ts';
import type { Addition } from '../../musicxml/index.ts';

/** Marks and additions for one part; ⊕, which hosts lose as a sign, goes into the mark's text. */
export function completedMarks(
  marks: readonly Mark[],
  completions: readonly Repair[],
): { readonly marks: readonly Mark[]; readonly additions: readonly Addition[] } {
  const additions: Addition[] = [];
  const asText: Repair[] = [];
  for (const completion of completions) {
    const step = completion.steps[0]!;
    const { noteIndex } = step;
    if (step.change === 'word') additions.push({ kind: 'word', noteIndex, text: step.text });
    else if (step.change === 'sign' && step.sign === 'stopped')
      additions.push({ kind: 'stopped-sign', noteIndex });
    else asText.push(completion);
  }
  return { marks: asText.length > 0 ? withRepairs(marks, asText) : marks, additions };
}
