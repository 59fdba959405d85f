/** The fingerings printed in an étude: those of every stopped note in full, and the valves of the open ones. */
import type { Mark } from '../marks/annotation.ts';
import { marksFor, SHOW_ALL, type Show } from '../marks/marks.ts';
import type { Examination } from '../rules/examine.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';

/** Notes quicker than this are read at a glance, in quarters; and in runs with the hand closed those quicker than that. */
const QUICK_QUARTERS = { single: 0.45, inRuns: 0.95 } as const;

/**
 * The marks of an étude, in the order of its notes. Within a bar a sure note that comes back the same way is not marked
 * again; notes quicker than eighths, and eighths that follow each other with the hand closed, have their valves alone, as
 * the eye has time and the line room for no more. What is risky is said
 * every time a tone begins, and what is tied has its mark once. A natural horn has no valves to print: a mark says how far the hand closes, where it closes further or less
 * than at the note before.
 * @param reader in whose language notes are named; English by default
 */
export function etudeMarks(examination: Examination, reader: Reader = ENGLISH_READER): readonly Mark[] {
  const byNote = (show: Show) =>
    new Map(marksFor(examination, show, reader).map((mark) => [mark.noteIndex, mark]));
  const full = byNote(SHOW_ALL);
  const valves = byNote({ ...SHOW_ALL, natural: false, fingered: false });
  const quick = quickNotes(examination);
  const tied = tiedNotes(examination);
  const shown = new Set<string>();
  const kept: Mark[] = [];
  let hand = '';
  for (const { note, reading, fingering, verdict, player } of examination.notes) {
    const isSameHand = player.horn.natural && hand === `${reading.state} ${fingering?.band}`;
    hand = `${reading.state} ${fingering?.band}`;
    const marks = quick.has(note.index) && !player.horn.natural ? valves : full;
    const mark = marks.get(note.index) ?? openMark(note.index, fingering?.printed);
    if (!mark || tied.has(note.index)) continue;
    const key = `${note.measureIndex} ${note.written.step}${note.written.alter}${note.written.octave} ${reading.state} ${mark.lines.join(' ')}`;
    const isSaid = player.horn.natural ? isSameHand && !note.sign : shown.has(key);
    if (!isSaid || verdict !== 'sure') kept.push(mark);
    shown.add(key);
  }
  return kept;
}

/** The notes that have their valves alone, by index. */
function quickNotes({ notes }: Examination): ReadonlySet<number> {
  const isInRun = (i: number) => {
    const each = notes[i];
    return each && each.note.durationQuarters < QUICK_QUARTERS.inRuns && each.reading.state !== 'open';
  };
  const quick = notes.filter(
    ({ note }, i) =>
      note.durationQuarters < QUICK_QUARTERS.single || (isInRun(i) && (isInRun(i - 1) || isInRun(i + 1))),
  );
  return new Set(quick.map(({ note }) => note.index));
}

/** The notes that are held on from the one before, by index: a tone is marked where it begins. */
function tiedNotes({ passage }: Examination): ReadonlySet<number> {
  const tied = new Set<number>();
  for (const { joins } of passage.notes) for (const { kind, to } of joins) if (kind === 'tie') tied.add(to);
  return tied;
}

function openMark(noteIndex: number, valves: string | undefined): Mark | null {
  return valves === undefined || valves === '' ? null : { noteIndex, lines: [valves], valves, colour: null };
}
