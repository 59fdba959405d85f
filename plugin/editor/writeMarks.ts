/** Puts marks over notes and takes them off again, touching nothing that is not ours. */
import { type Mark, markText } from '../../core/annotation.ts';
import type { Host, HostCursor, HostElement, HostNote, HostScore, HostText } from './hostApi.ts';
import { listOf } from './hostApi.ts';
import {
  BLACK,
  claimedNotes,
  escapedText,
  type MarkedPlace,
  markedPlaces,
  notesAt,
  plainText,
  type RankedNote,
} from './ownMarks.ts';
import type { ReadPart } from './readPassages.ts';
import type { PartWalk } from './scoreWalk.ts';
import type { UndoStep } from './undoStep.ts';

/** Points; small enough to stand between the notes of a busy bar. */
const MARK_SIZE = 8;
const UPRIGHT = 0;

/** What one place of the score is to look like. */
export interface PlannedPlace {
  readonly place: MarkedPlace;
  /** Texts as they go into the score, from the top note's down. */
  readonly texts: readonly string[];
  /** The colour of each note of `notesAt(place)`; `null` leaves the user's colour, BLACK takes ours off. */
  readonly colours: readonly (string | null)[];
}

/** Where a note may be marked: places that are not in scope keep what they have. */
export type Scope = (note: HostNote) => boolean;

/** What has to change for these marks, and only these, to stand over the notes in scope. Empty when all is as it should be. */
export function planMarks(
  host: Host,
  part: ReadPart,
  marks: readonly Mark[],
  scope: Scope,
): readonly PlannedPlace[] {
  const wanted = new Map<HostNote, Mark>();
  for (const mark of marks) wanted.set(part.places[mark.noteIndex]!.note, mark);
  return planned(host, part.walk, scope, (note) => wanted.get(note) ?? null);
}

/** What has to change for no mark of ours to stand over the notes in scope. */
export function planClearing(host: Host, walk: PartWalk, scope: Scope): readonly PlannedPlace[] {
  return planned(host, walk, scope, () => null);
}

function planned(
  host: Host,
  walk: PartWalk,
  scope: Scope,
  wanted: (note: HostNote) => Mark | null,
): readonly PlannedPlace[] {
  const plans: PlannedPlace[] = [];
  for (const place of markedPlaces(walk)) {
    const notes = notesAt(place);
    if (!notes.some(({ note }) => scope(note))) continue;
    const marks = notes.map(({ note }) => wanted(note));
    if (place.marks.length === 0 && marks.every((mark) => mark === null)) continue;
    const claimed = claimedNotes(host, place);
    const texts: string[] = [];
    const colours = marks.map((mark, i) => {
      const colour = mark?.colour ?? null;
      if (mark) texts.push(markText(mark.lines, colour === null ? null : notes[i]!.rank));
      return colour ?? (claimed[i] ? BLACK : null);
    });
    const plan = { place, texts, colours };
    if (!isDone(host, plan, notes)) plans.push(plan);
  }
  return plans;
}

function isDone(
  { engine }: Host,
  { place, texts, colours }: PlannedPlace,
  notes: readonly RankedNote[],
): boolean {
  return (
    place.marks.length === texts.length &&
    place.marks.every(({ element }, i) => plainText(element.text) === texts[i]) &&
    colours.every((colour, i) => colour === null || engine.colorEqual(notes[i]!.note.color, colour))
  );
}

/** Carries plans out. To be called inside a step of the undo history. */
export function carryOut(host: Host, score: HostScore, plans: readonly PlannedPlace[], step: UndoStep): void {
  const byTrack = new Map<number, PlannedPlace[]>();
  for (const plan of plans) {
    const track = byTrack.get(plan.place.track);
    if (track) track.push(plan);
    else byTrack.set(plan.place.track, [plan]);
  }
  byTrack.forEach((track, number) => {
    const cursor = score.newCursor();
    cursor.track = number;
    cursor.rewind(0);
    for (const plan of track) {
      while (cursor.segment && cursor.tick < plan.place.tick) cursor.next();
      if (!cursor.segment || cursor.tick !== plan.place.tick)
        throw new Error(`tick ${plan.place.tick} was not found`);
      carryOutPlace(host, cursor, plan, step);
    }
  });
}

function carryOutPlace(
  host: Host,
  cursor: HostCursor,
  { place, texts, colours }: PlannedPlace,
  step: UndoStep,
): void {
  const { marks } = place;
  texts.forEach((text, i) => {
    const kept = marks[i];
    if (kept) rewrite(host, kept.element, text, step);
    else write(host, cursor, text, step);
  });
  for (const { element } of marks.slice(texts.length)) remove(host, element, step);
  const notes = notesAt(place);
  colours.forEach((colour, i) => {
    if (colour !== null) paint(host, notes[i]!.note, colour, step);
  });
}

function write(host: Host, cursor: HostCursor, text: string, step: UndoStep): void {
  const element = host.root.newElement(host.root.Element.STAFF_TEXT);
  element.text = escapedText(text);
  step.changes += 1;
  cursor.add(element);
  style(host, element);
}

function rewrite(host: Host, element: HostText, text: string, step: UndoStep): void {
  step.changes += 1;
  if (plainText(element.text) !== text) element.text = escapedText(text);
  style(host, element);
}

/** A mark that came in with a file has the size of any other text. */
function style({ root }: Host, element: HostText): void {
  if (element.fontSize !== MARK_SIZE) element.fontSize = MARK_SIZE;
  if (element.fontStyle !== UPRIGHT) element.fontStyle = UPRIGHT;
  if (element.placement !== root.Placement.ABOVE) element.placement = root.Placement.ABOVE as number;
}

function remove({ root }: Host, element: HostText, step: UndoStep): void {
  step.changes += 1;
  if (typeof root.removeElement === 'function') root.removeElement(element);
  // An empty text prints and exports nothing.
  else element.text = '';
}

function paint({ engine }: Host, note: HostNote, colour: string, step: UndoStep): void {
  const parts: HostElement[] = [note as HostElement].concat(note.accidental ?? [], listOf(note.dots));
  const before = note.color;
  for (const part of parts) {
    // An accidental or dot that was given a colour of its own keeps it.
    if (part !== note && !engine.colorEqual(part.color, BLACK) && !engine.colorEqual(part.color, before))
      continue;
    if (engine.colorEqual(part.color, colour)) continue;
    step.changes += 1;
    part.color = colour;
  }
}
