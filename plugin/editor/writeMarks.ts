/** Writes marks into the score and takes them off again, as planned. */
import {
  type Host,
  type HostCursor,
  type HostElement,
  type HostNote,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';
import { isBelow } from './markLayout.ts';
import { BLACK, escapedText, notesAt, plainText } from './ownMarks.ts';
import type { PlannedPlace } from './planMarks.ts';
import type { UndoStep } from './undoStep.ts';

/** Points; small enough to stand between the notes of a busy bar. */
const MARK_SIZE = 8;
const UPRIGHT = 0;

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
    if (kept) rewrite(host, kept.element, text, place.track, step);
    else write(host, cursor, text, place.track, step);
  });
  for (const { element } of marks.slice(texts.length)) remove(host, element, step);
  const notes = notesAt(place);
  colours.forEach((colour, i) => {
    if (colour !== null) paint(host, notes[i]!.note, colour, step);
  });
}

function write(host: Host, cursor: HostCursor, text: string, track: number, step: UndoStep): void {
  const element = host.root.newElement(host.root.Element.STAFF_TEXT);
  element.text = escapedText(text);
  step.changes += 1;
  cursor.add(element);
  style(host, element, track);
}

function rewrite(host: Host, element: HostText, text: string, track: number, step: UndoStep): void {
  step.changes += 1;
  if (plainText(element.text) !== text) element.text = escapedText(text);
  style(host, element, track);
}

/** A mark that came in with a file has the size of any other text. */
function style({ root }: Host, element: HostText, track: number): void {
  const placement = (isBelow(track) ? root.Placement.BELOW : root.Placement.ABOVE) as number;
  if (element.fontSize !== MARK_SIZE) element.fontSize = MARK_SIZE;
  if (element.fontStyle !== UPRIGHT) element.fontStyle = UPRIGHT;
  if (element.placement !== placement) element.placement = placement;
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
