/** From an examined passage to what is printed over its notes. */

import { PAINTED_COLOURS } from '../data/colours.ts';
import { checkObject, checkOneOf } from '../guards/allowed.ts';
import { isHandState } from '../part/handStates.ts';
import { ByLine } from '../part/lines.ts';
import type { PassageNote } from '../part/passage.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Examination } from '../rules/examine.ts';
import type { Finding } from '../rules/rules.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';
import type { Mark } from './annotation.ts';
import { formsOf, type MarkForm } from './room.ts';
import { SHOW_USUAL, type Show } from './show.ts';
import { type MarkedNote, printsOwn, Wordings } from './wordings.ts';

export * from './show.ts';

const REPEATS: readonly Show['repeat'][] = ['all', 'changes'];
const QUICKS: readonly Show['quick'][] = ['full', 'valves'];

/**
 * The marks of a passage, in the order of its notes. Open notes get one only when something is wrong with them, or where
 * a natural horn's hand opens.
 * @param reader in whose language notes and verdicts are named; English by default
 * @param narrowBars measure indices: bars too narrow for whole marks, which have the valves alone as quick ones do
 * @throws {TypeError} when there is no examination; {RangeError} when `show.repeat` or `show.quick` is neither of its values
 * @example
 * marksFor(examine(passageOf('C5+')))[0].lines // => ['(C♯)', 'B 2']
 */
export function marksFor(
  examination: Examination,
  show: Show = SHOW_USUAL,
  reader: Reader = ENGLISH_READER,
  narrowBars: readonly number[] = [],
): readonly Mark[] {
  checkObject('examination', examination, 'an examination, as examine makes one');
  checkOneOf('repeat', show.repeat, REPEATS);
  checkOneOf('quick', show.quick, QUICKS);
  const whole = new Wordings(show, reader);
  const places = placesOf(examination, show, whole);
  if (show.quick === 'full') return places.map((place) => markOf(place, place.lines, show));
  const short = { ...show, natural: false };
  const wordings: { readonly [form in MarkForm]: Wordings } = {
    whole,
    line: new Wordings(short, reader),
    valves: new Wordings({ ...short, fingered: show.fingered && !show.valves }, reader, true),
  };
  const printed = places.filter(({ lines }) => lines.length > 0).map(({ examined }) => examined.note);
  const formOf = formsOf(printed, narrowBars);
  const marks = places.map((place) => {
    const form = place.lines.length === 0 ? 'whole' : formOf(place.examined.note);
    return markOf(place, form === 'whole' ? place.lines : inForm(place, wordings[form]), show);
  });
  return marks.filter(({ lines, colour }) => lines.length > 0 || colour !== null);
}

/** A marked note with its lines; none where they are said already. */
interface Place extends MarkedNote {
  lines: readonly string[];
}

/** What stands over the notes of a line just now. */
interface Standing {
  /** What was printed last; `null` where the note before is not marked. */
  printed: readonly string[] | null;
  note: PassageNote | null;
  /** True while the hand is in the bell. */
  isClosed: boolean;
}

/** Every note that gets a mark, in order. */
function placesOf({ notes, findings }: Examination, show: Show, wordings: Wordings): readonly Place[] {
  const worst = worstFindings(findings);
  const standing = new ByLine((): Standing => ({ printed: null, note: null, isClosed: false }));
  const places: Place[] = [];
  for (const examined of notes) {
    const { note } = examined;
    const line = standing.at(note);
    const finding = worst.get(note.index);
    const isOpened = opensAgain(examined, line);
    const isMarked =
      isHandState(examined.reading.state) ||
      finding?.severity === 'impossible' ||
      isOpened ||
      // On a natural horn the open notes are what it gives, in tune or not.
      (examined.player.horn.natural && examined.verdict === 'risky');
    if (!isMarked) {
      line.printed = null;
      continue;
    }
    const place: Place = { examined, finding, isOpened, lines: NO_LINES };
    const lines = wordings.linesOf(place);
    const isSaid = line.printed !== null && isSame(line.printed, lines) && isHeld(line.note!, note, show);
    line.printed = lines;
    line.note = note;
    if (!isSaid) place.lines = lines;
    if (place.lines.length > 0 || colourOf(examined, show)) places.push(place);
  }
  return places;
}

const NO_LINES: readonly string[] = [];

function isSame(a: readonly string[], b: readonly string[]): boolean {
  return a === b || (a.length === b.length && a.every((line, i) => line === b[i]));
}

/** True where what was printed before still holds: over a tie, and within a bar unless every note is to have it. */
function isHeld(before: PassageNote, note: PassageNote, { repeat }: Show): boolean {
  if (before.joins.some(({ kind, to }) => kind === 'tie' && to === note.index)) return true;
  return repeat === 'changes' && before.measureIndex === note.measureIndex;
}

/** The lines of a mark in the form that has room, or whole where nothing else would be left of it. */
function inForm(place: Place, wordings: Wordings): readonly string[] {
  const lines = wordings.linesOf(place);
  return lines.every((line) => line === '≈') && !printsOwn(place.examined) ? place.lines : lines;
}

/** True where a natural horn's hand opens and the part does not say so: there every change of the hand is marked. */
function opensAgain({ note, reading, player }: ExaminedNote, line: Standing): boolean {
  if (!player.horn.natural) return false;
  const wasClosed = line.isClosed;
  line.isClosed = isHandState(reading.state);
  return wasClosed && reading.state === 'open' && note.sign === null;
}

function markOf({ examined }: Place, lines: readonly string[], show: Show): Mark {
  return {
    noteIndex: examined.note.index,
    lines,
    valves: printsOwn(examined) ? null : examined.fingering?.printed || null,
    colour: colourOf(examined, show),
  };
}

function colourOf({ note, verdict }: ExaminedNote, show: Show): string | null {
  return show.colour && !note.userColour ? PAINTED_COLOURS[verdict] : null;
}

const WEIGHT = { impossible: 2, risky: 1, advice: 0 } as const;

function worstFindings(findings: readonly Finding[]): Map<number, Finding> {
  const worst = new Map<number, Finding>();
  for (const finding of findings) {
    const known = worst.get(finding.noteIndex);
    if (!known || WEIGHT[finding.severity] > WEIGHT[known.severity]) worst.set(finding.noteIndex, finding);
  }
  return worst;
}
