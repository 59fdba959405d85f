/** What has to change in the score for our marks, and nothing else, to stand as they should. */
import {
  EMPTY_LINE,
  heightIn,
  isLowerVoice,
  linesBelow,
  linesIn,
  type Mark,
  type MarkSetting,
  markText,
  UNSET,
} from '../../core/index.ts';
import type { BarRooms } from './barRooms.ts';
import { AS_THEY_ARE, barsToSet, widthsFor, widthsToGive } from './barWidths.ts';
import { type Host, isAtLeast } from './hostApi.ts';
import { MarkRoom } from './markRoom.ts';
import { hangs, isUnplaced, offsetsFor, rowsFor } from './markRows.ts';
import { stepsFor } from './markSteps.ts';
import { claimedNotes, type MarkedPlace, markedPlaces, notesAt, type RankedNote } from './ownMarks.ts';
import { voiceOf } from './place.ts';
import type { PlannedPart, PlannedPlace, PlannedText } from './plannedPlace.ts';
import type { ReadPart } from './readPart.ts';
import { BLACK, type ScoreChord, type ScoreNote } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** Where a note may be marked: places that are not in scope keep what they have. */
export type Scope = (note: ScoreNote) => boolean;

/** The marks of a part. @param narrowBars measure indices of those that have no room for whole ones */
export type MarksOf = (narrowBars: readonly number[]) => readonly Mark[];

/**
 * What has to change for these marks, and only these, to stand over the notes in scope.
 * @param mayWiden bars whose marks have no room side by side; where not, they say less
 * @param rooms of the score, kept from part to part
 * @returns empty when all is as it should be
 */
export function planMarks(
  host: Host,
  part: ReadPart,
  marksOf: MarksOf,
  scope: Scope,
  mayWiden: boolean,
  rooms: BarRooms,
): PlannedPart {
  const whole = marksOf([]);
  const narrowBars = mayWiden ? [] : new MarkRoom(host, rooms, part, whole).narrowBars;
  const marks = narrowBars.length > 0 ? marksOf(narrowBars) : whole;
  const wanted = new WeakMap<ScoreNote, Mark>();
  for (const mark of marks) wanted.set(part.chordNotes[mark.noteIndex]!.note, mark);
  const printed = marks.filter(({ lines }) => lines.length > 0);
  const rowOf = rowsFor(
    host,
    part.walk,
    printed.map(({ noteIndex }) => part.chordNotes[noteIndex]!.chord),
  );
  const places = markedPlaces(part.walk, ({ notes }) => notes.some((note) => wanted.has(note)));
  const room = new MarkRoom(host, rooms, part, printed);
  const widthOf = widthsToGive(part.walk, places, mayWiden ? widthsFor(host, room) : AS_THEY_ARE);
  return planned(host, part.walk, places, scope, {
    mark: (note) => wanted.get(note) ?? null,
    steps: stepsFor(room, widthOf),
    setting: ({ track, chords }) => ({ row: rowOf(track), widens: widthOf(chords[0]!.measureIndex) }),
  });
}

/** What has to change for no mark of ours to stand over the notes in scope. */
export function planClearing(host: Host, walk: PartWalk, scope: Scope): PlannedPart {
  return planned(host, walk, markedPlaces(walk), scope, {
    mark: () => null,
    steps: () => false,
    setting: () => UNSET,
  });
}

interface Wanted {
  readonly mark: (note: ScoreNote) => Mark | null;
  /** True for a chord whose only mark stands on the next row. */
  readonly steps: (chord: ScoreChord) => boolean;
  readonly setting: (place: MarkedPlace) => MarkSetting;
}

function planned(
  host: Host,
  walk: PartWalk,
  places: readonly MarkedPlace[],
  scope: Scope,
  wanted: Wanted,
): PlannedPart {
  const plans: PlannedPlace[] = [];
  const known = new Map<string, PlannedText>();
  for (const place of places) {
    const notes = notesAt(place);
    if (!notes.some(({ note }) => scope(note))) continue;
    const marks = notes.map(({ note }) => wanted.mark(note));
    const claimed = claimedNotes(host, place);
    const written: Written[] = [];
    const isBelow = isLowerVoice(voiceOf(place.track));
    const setting = wanted.setting(place);
    const isOne = marks.filter((mark) => mark && mark.lines.length > 0).length === 1;
    const linesOf = ({ lines }: Mark, chord: ScoreChord) => {
      const all = isOne && wanted.steps(chord) ? lines.concat(EMPTY_LINE) : lines;
      return isBelow ? linesBelow(all) : all;
    };
    const colours = marks.map((mark, i) => {
      const colour = mark?.colour ?? null;
      const { rank, chord } = notes[i]!;
      const text = mark && markText(linesOf(mark, chord), colour === null ? null : rank, setting);
      // The host stacks away from the staff: above it, what is written first comes to stand lowest.
      if (text && isBelow) written.push({ text, chord });
      else if (text) written.unshift({ text, chord });
      return colour ?? (claimed[i] ? BLACK : null);
    });
    const hung = isBelow ? keptOff(host, written) : written;
    const plan = { place, texts: placed(place, hung, known), colours };
    if (!isDone(host, plan, notes)) plans.push(plan);
  }
  return { places: plans, bars: plans.length > 0 ? barsToSet(walk, places, plans) : [] };
}

/** The text of a mark, and the chord that it belongs to. */
interface Written {
  readonly text: string;
  readonly chord: ScoreChord;
}

/**
 * Texts as they go into the score.
 * @param known those that stood alone at their chord: a part has many marks, and few different ones
 */
function placed(
  place: MarkedPlace,
  texts: readonly Written[],
  known: Map<string, PlannedText>,
): readonly PlannedText[] {
  const isAlone = texts.length === 1 && place.chords.length === 1;
  const key = isAlone ? `${isLowerVoice(voiceOf(place.track))} ${texts[0]!.text}` : '';
  const same = known.get(key);
  if (same) return [same];
  const offsets = offsetsFor(place, texts);
  const all = texts.map(({ text }, i) => ({
    text,
    isBelow: hangs(text, place.track),
    offset: offsets[i]!,
  }));
  if (isAlone) known.set(key, all[0]!);
  return all;
}

/** Version 3 sets what comes next close to a mark that hangs below a staff: there an empty line keeps it off, one more where it begins with one. */
function keptOff(host: Host, written: readonly Written[]): readonly Written[] {
  const last = written[written.length - 1];
  if (isAtLeast(host, 4, 0) || !last || linesIn(last.text).length === 0) return written;
  const empty = `\n${EMPTY_LINE}`.repeat(1 + heightIn(last.text) - linesIn(last.text).length);
  return written.slice(0, -1).concat({ ...last, text: last.text + empty });
}

function isDone(host: Host, { place, texts, colours }: PlannedPlace, notes: readonly RankedNote[]): boolean {
  const { engine } = host;
  return (
    inAnyOrder(place.marks.map(({ text }) => text)) === inAnyOrder(texts.map(({ text }) => text)) &&
    !place.marks.some(({ element }) => isUnplaced(host, element!)) &&
    colours.every((colour, i) => colour === null || engine.colorEqual(notes[i]!.note.colour, colour))
  );
}

/** A file lists the marks of a chord in another order than the editor stacks them. */
function inAnyOrder(texts: readonly string[]): string {
  return JSON.stringify(texts.slice().sort());
}
