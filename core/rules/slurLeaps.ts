/**
 * Finds slurs and ties across a change of the hand that must jump, because no one tube holds both notes.
 * Why: while the hand moves the tone bends, and a change of valves on top of it breaks the line; what is meant to be
 * joined is heard as a leap. @source commonPractice
 */
import { movesHand } from '../handMotion.ts';
import type { Line } from '../lines.ts';
import type { PassageNote } from '../passage.ts';
import { printPitch } from '../pitch.ts';
import { fitsOneTube } from './handJoin.ts';
import type { Finding, Rule, RuleContext } from './rule.ts';

export const slurLeaps: Rule = {
  id: 'slur-leaps',
  check(context) {
    return ([] as Finding[]).concat(...context.lines.map((line) => leapsIn(line, context)));
  },
};

function leapsIn(line: Line, { notes }: RuleContext): Finding[] {
  const found: Finding[] = [];
  let slurredTo = -1;
  for (let at = 0; at + 1 < line.length; at++) {
    const from = notes[line[at]!]!;
    const to = notes[line[at + 1]!]!;
    slurredTo = Math.max(slurredTo, lastSlurred(from.note), lastSlurred(notes[from.note.chordHead]!.note));
    if (slurredTo < to.note.index || !movesHand(from.reading.state, to.reading.state)) continue;
    if (from.candidates.length === 0 || to.candidates.length === 0) continue;
    if (hasHandLine(from.note, to.note.index) || fitsOneTube(from, to)) continue;
    const start = printPitch(from.note.written);
    const end = printPitch(to.note.written);
    found.push({
      id: slurLeaps.id,
      severity: 'risky',
      noteIndex: to.note.index,
      brief: 'slur breaks',
      message: `${start} and ${end} are slurred across a change of the hand, and no one fingering holds both: the tone jumps.`,
      remedy: 'Tongue the second note, break the slur there, or keep both notes on one side of the change.',
    });
  }
  return found;
}

/** The last note that a slur or tie from here reaches; −1 without one. */
function lastSlurred({ joins }: PassageNote): number {
  let last = -1;
  for (const { kind, to } of joins) if (kind === 'slur' || kind === 'tie') last = Math.max(last, to);
  return last;
}

/** A glissando or bend under the slur has rules of its own. */
function hasHandLine({ joins }: PassageNote, toIndex: number): boolean {
  return joins.some(({ kind, to }) => to === toIndex && (kind === 'glissando' || kind === 'bend'));
}
