/** What `--complete` adds to a part, in the form MusicXML has for it: a real sign, a word of its own. */
import { type Mark, type Repair, withRepairs } from '../../../core/index.ts';
import type { Completion } from '../write/writeMarks.ts';

/** Marks and completions for one part, as the writer of files takes them; ⊕, which hosts lose as a sign, goes into the mark's text. */
export function completedMarks(
  marks: readonly Mark[],
  completions: readonly Repair[],
): { readonly marks: readonly Mark[]; readonly completions: readonly Completion[] } {
  const inFile: Completion[] = [];
  const asText: Repair[] = [];
  for (const completion of completions) {
    const step = completion.steps[0]!;
    const { noteIndex } = step;
    if (step.change === 'word') inFile.push({ kind: 'word', noteIndex, text: step.text });
    else if (step.change === 'sign' && step.sign === 'stopped')
      inFile.push({ kind: 'stopped-sign', noteIndex });
    else asText.push(completion);
  }
  return { marks: asText.length > 0 ? withRepairs(marks, asText) : marks, completions: inFile };
}
