/** The fingerings printed in an étude: those of every stopped note in full, and the valves of the open ones. */
import type { Mark } from '../marks/annotation.ts';
import { marksFor, SHOW_ALL, type Show } from '../marks/marks.ts';
import type { Examination } from '../rules/examine.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';

/** Notes quicker than this are read at a glance, in quarters. */
const QUICK_QUARTERS = 0.45;

/**
 * The marks of an étude, in the order of its notes. Within a bar a sure note that comes back the same way is not marked
 * again; notes quicker than eighths have their valves alone, as the eye has time for no more. What is risky is said
 * every time. A natural horn has no valves to print: a mark says how far the hand closes, where it closes further or less
 * than at the note before.
 * @param reader in whose language notes are named; English by default
 */
export function etudeMarks(examination: Examination, reader: Reader = ENGLISH_READER): readonly Mark[] {
  const byNote = (show: Show) =>
    new Map(marksFor(examination, show, reader).map((mark) => [mark.noteIndex, mark]));
  const full = byNote(SHOW_ALL);
  const valves = byNote({ ...SHOW_ALL, natural: false, fingered: false });
  const shown = new Set<string>();
  const kept: Mark[] = [];
  let hand = '';
  for (const { note, reading, fingering, verdict, player } of examination.notes) {
    const isSameHand = player.horn.natural && hand === `${reading.state} ${fingering?.band}`;
    hand = `${reading.state} ${fingering?.band}`;
    const marks = note.durationQuarters < QUICK_QUARTERS && !player.horn.natural ? valves : full;
    const mark = marks.get(note.index) ?? openMark(note.index, fingering?.printed);
    if (!mark) continue;
    const key = `${note.measureIndex} ${note.written.step}${note.written.alter}${note.written.octave} ${reading.state} ${mark.lines.join(' ')}`;
    const isSaid = player.horn.natural ? isSameHand && !note.sign : shown.has(key);
    if (!isSaid || verdict !== 'sure') kept.push(mark);
    shown.add(key);
  }
  return kept;
}

function openMark(noteIndex: number, valves: string | undefined): Mark | null {
  return valves === undefined || valves === '' ? null : { noteIndex, lines: [valves], valves, colour: null };
}
