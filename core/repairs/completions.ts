/** What an engraver left out, as repairs: the + under a word that rules, and the word that ends it. */
import { checkObject } from '../guards/allowed.ts';
import { type HandReading, isHandState } from '../part/handStates.ts';
import { linesOf } from '../part/lines.ts';
import type { HandSign, PassageNote } from '../part/passage.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import { forgottenWordsIn } from '../plan/forgottenWords.ts';
import type { Examination } from '../rules/examine.ts';
import { signed, worded } from './changes.ts';
import { cancellingWord } from './partWords.ts';
import type { Repair } from './repair.ts';

/**
 * What is missing in a part, in the order of its notes: a sign on every note (or chord) that only a word closes, and
 * a cancelling word where a word was never cancelled. Notes after such a word get no sign.
 * @returns repairs of the kinds `sign-added` and `opening-word`
 * @throws {TypeError} when there is no examination
 */
export function completionsFor(examination: Examination): readonly Repair[] {
  checkObject('examination', examination, 'an examination, as examine makes one');
  const { passage, notes } = examination;
  const found: Repair[] = [];
  const forgotten = new Set<number>();
  const cancelled = new Set<string>();
  for (const line of linesOf(passage)) {
    for (const { word, affected } of forgottenWordsIn(line, notes)) {
      const entryIndex = affected[0]!;
      const { staff, onsetQuarters } = notes[entryIndex]!.note;
      for (const index of affected) forgotten.add(index);
      // Two players under one word need it cancelled once.
      const place = `${staff} ${onsetQuarters}`;
      if (cancelled.has(place)) continue;
      cancelled.add(place);
      found.push(worded('opening-word', entryIndex, cancellingWord(passage, word.language)));
    }
  }
  const tied = new Set<number>();
  for (const { note } of notes) for (const { kind, to } of note.joins) if (kind === 'tie') tied.add(to);
  for (const { note, reading } of notes) {
    const sign = missingSign(reading);
    if (!sign || note.chordRank > 0 || tied.has(note.index) || forgotten.has(note.index)) continue;
    if (chordOf(notes, note).every((other) => missingSign(other.reading) === sign))
      found.push(signed(notes, [note.index], sign));
  }
  return found.sort((a, b) => a.steps[0]!.noteIndex - b.steps[0]!.noteIndex);
}

function missingSign({ from, state }: HandReading): HandSign | null {
  if (from !== 'word' || !isHandState(state)) return null;
  return state === 'stopped' || state === 'half-stopped' ? state : null;
}

function chordOf(notes: readonly ExaminedNote[], head: PassageNote): readonly ExaminedNote[] {
  let end = head.index + 1;
  while (end < notes.length && notes[end]!.note.chordHead === head.index) end += 1;
  return notes.slice(head.index, end);
}
