/**
 * Fingerings that the part itself prints over its notes, as players pencil them: `13`, `T12`, `B 2`. They are the
 * player's own choice, and whatever is planned is planned around them. @source commonPractice
 */
import type { Horn } from '../horn/horn.ts';
import { keyNamed } from '../part/crookNames.ts';
import type { Passage } from '../part/passage.ts';
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { fingeredPitch } from '../stopping/names.ts';
import type { ExaminedNote, OwnFingering } from './examinedNote.ts';

/** As much of a note as reading one takes. */
type Note = Pick<ExaminedNote, 'note' | 'namedFrom' | 'player' | 'candidates' | 'soundingCents'>;

/** A note's name and a space, or none; the letter of a side, or none; then the valves with whatever stands between them. */
const FINGERING = /^(?:([^\s\d]+) +)?([^\s\d]*)(\d(?:[ +,./-]*\d)*|)$/;

/** What a text says of valves. */
interface Valves {
  /** The note's name before them, or nothing. */
  readonly name: string;
  /** The letter of a side, or nothing. */
  readonly prefix: string;
  /** In order: `12`. */
  readonly valves: string;
}

/** Reads a text as a fingering of a horn; `null` for what is none of its valves. */
function readValves(text: string, { sides, natural }: Horn): Valves | null {
  const [, before = '', letter = '', printed = ''] = FINGERING.exec(text.trim()) ?? [];
  const isName = keyNamed(before) !== null;
  const prefix = isName ? letter : before + letter;
  if (natural || prefix + printed === '') return null;
  const digits = printed === '' ? ['0'] : printed.match(/\d/g)!;
  digits.sort();
  const valves = digits.join('');
  const isThere = sides.some(
    ({ valvePrefix, valves: all }) =>
      (prefix === '' || valvePrefix === prefix) && all.some((one) => one.valves === valves),
  );
  return isThere ? { name: isName ? before : '', prefix, valves } : null;
}

/**
 * The first of a note's fingerings on these valves. Without the letter of a side the plain side is meant where it gives
 * the note, and else any: many players leave the thumb to be understood.
 */
function fingeringOn({ prefix, valves }: Valves, { candidates }: Note): Fingering | null {
  const on = candidates.filter(({ tube }) => tube.combination.valves === valves);
  return (
    on.filter(({ tube }) => tube.side.valvePrefix === prefix)[0] ?? (prefix === '' ? (on[0] ?? null) : null)
  );
}

/** What is printed at the note itself; `null` where it prints nothing or no fingering of this horn. */
export function fingeringAt(examined: Note): OwnFingering | null {
  const text = examined.note.fingering;
  if (text === null || examined.soundingCents === null) return null;
  const valves = readValves(text, examined.player.horn);
  return valves && { text, isWord: false, fingering: fingeringOn(valves, examined) };
}

/**
 * What words over the staff say of fingerings, by the note they stand at. A number alone says nothing: it may count
 * players or bars. With the letter of a side (`T12`) it does, and with the name of the note that is fingered (`B 2`),
 * where both give the one note that stands there; `a 2` is for two players.
 */
export function fingeringsInWords(
  { words }: Passage,
  notes: readonly Note[],
): ReadonlyMap<number, OwnFingering> {
  const found = new Map<number, OwnFingering>();
  for (const word of words) {
    if (!/\d$/.test(word.text) || /^[aà] ?2$/i.test(word.text) || !FINGERING.test(word.text)) continue;
    const here = notes.filter(
      ({ note, soundingCents }) =>
        soundingCents !== null &&
        !note.grace &&
        note.staff === word.staff &&
        (word.voice === null || word.voice === note.voice) &&
        Math.abs(note.onsetQuarters - word.onsetQuarters) < SAME_ONSET,
    );
    const read = here.map((examined) => ({ examined, own: inWord(word.text, examined, here.length === 1) }));
    const [only, another] = read.filter(({ own }) => own);
    if (only && !another && !found.has(only.examined.note.index))
      found.set(only.examined.note.index, only.own!);
  }
  return found;
}

/** Room for the rounding of tuplets, in quarters. */
export const SAME_ONSET = 1e-6;

function inWord(text: string, examined: Note, isAlone: boolean): OwnFingering | null {
  const valves = readValves(text, examined.player.horn);
  if (!valves || (valves.name === '' && valves.prefix === '')) return null;
  const fingering = fingeringOn(valves, examined);
  if (valves.name === '') return isAlone || fingering ? { text, isWord: true, fingering } : null;
  return fingering && isNamed(valves.name, fingering, examined) ? { text, isWord: true, fingering } : null;
}

/** True where a name is the fingered note's, in letters or syllables; a German `B` is a B♭. */
function isNamed(name: string, fingering: Fingering, { note, namedFrom }: Note): boolean {
  const classes = [note.written, namedFrom].map((from) => pitchClass(fingeredPitch(from, fingering)));
  const keys = [keyNamed(name), name === 'B' ? B_NATURAL : null];
  return keys.some((key) => key !== null && classes.indexOf(pitchClass({ ...key, octave: 4 })) >= 0);
}

const B_NATURAL = { step: 'B', alter: 0 } as const;

function pitchClass(pitch: Pitch): number {
  return (((pitchCents(pitch) / 100) % 12) + 12) % 12;
}

/** The fingerings that a note may be played on: every one, or the part's own alone. */
export function playedOn({ own, candidates }: ExaminedNote): readonly Fingering[] {
  const only = own?.fingering;
  if (!only) return candidates;
  const known = ALONE.get(only) ?? [only];
  ALONE.set(only, known);
  return known;
}

/** The same list for the same fingering: plans know notes by their lists. */
const ALONE = new WeakMap<Fingering, readonly Fingering[]>();
