/** The fingerings printed in an étude: those of every stopped note in full, and the valves of the open ones. */
import type { Mark } from '../marks/annotation.ts';
import { marksFor } from '../marks/marks.ts';
import type { Examination } from '../rules/examine.ts';

/**
 * The marks of an étude, in the order of its notes. Within a bar a sure note that comes back the same way is not marked
 * again, so that quick changes stay legible; what is risky is said every time. A natural horn has no valves to print: a
 * mark says how far the hand closes, where it closes further or less than at the note before.
 */
export function etudeMarks(examination: Examination): readonly Mark[] {
  const marks = new Map(marksFor(examination).map((mark) => [mark.noteIndex, mark]));
  const shown = new Set<string>();
  const kept: Mark[] = [];
  let hand = '';
  for (const { note, reading, fingering, verdict, player } of examination.notes) {
    const isSameHand = player.horn.natural && hand === `${reading.state} ${fingering?.band}`;
    hand = `${reading.state} ${fingering?.band}`;
    const mark = marks.get(note.index) ?? openMark(note.index, fingering?.printed);
    if (!mark) continue;
    const key = `${note.measureIndex} ${note.written.step}${note.written.alter}${note.written.octave} ${reading.state} ${mark.lines.join(' ')}`;
    const isSaid = player.horn.natural ? isSameHand : shown.has(key);
    if (!isSaid || verdict !== 'sure') kept.push(mark);
    shown.add(key);
  }
  return kept;
}

function openMark(noteIndex: number, valves: string | undefined): Mark | null {
  return valves === undefined || valves === '' ? null : { noteIndex, lines: [valves], valves, colour: null };
}
