/** The fingerings printed in an étude: those of every stopped note in full, and the valves of the open ones. */
import type { Mark } from '../marks/annotation.ts';
import { marksFor } from '../marks/marks.ts';
import type { Examination } from '../rules/examine.ts';

/**
 * The marks of an étude, in the order of its notes. Within a bar a note that comes back the same way is not marked
 * again, so that quick changes stay legible.
 */
export function etudeMarks(examination: Examination): readonly Mark[] {
  const marks = new Map(marksFor(examination).map((mark) => [mark.noteIndex, mark]));
  const shown = new Set<string>();
  const kept: Mark[] = [];
  for (const { note, reading, fingering } of examination.notes) {
    const mark = marks.get(note.index) ?? openMark(note.index, fingering?.printed);
    if (!mark) continue;
    const key = `${note.measureIndex} ${note.written.step}${note.written.alter}${note.written.octave} ${reading.state} ${mark.lines.join(' ')}`;
    if (!shown.has(key)) kept.push(mark);
    shown.add(key);
  }
  return kept;
}

/** A natural horn has no valves to print. */
function openMark(noteIndex: number, valves: string | undefined): Mark | null {
  return valves === undefined || valves === '' ? null : { noteIndex, lines: [valves], valves, colour: null };
}
