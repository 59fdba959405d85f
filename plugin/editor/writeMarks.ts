/** Writes marks into the score and takes them off again, as planned. */

import { escapedText, isLowerVoice } from '../../core/index.ts';
import { EditorFault } from './editorFault.ts';
import {
  type Host,
  type HostChord,
  type HostCursor,
  type HostElement,
  type HostNote,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';
import { BLACK, notesAt, plainText } from './ownMarks.ts';
import { cursorOn, moveTo, voiceOf } from './place.ts';
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
  const pen = new MarkPen(host, step);
  byTrack.forEach((track, number) => {
    const cursor = cursorOn(score, number);
    for (const plan of track) {
      moveTo(cursor, plan.place.tick);
      if (!cursor.segment || cursor.tick !== plan.place.tick)
        throw new EditorFault(({ placeNotFound }) => placeNotFound);
      carryOutPlace(host, pen, cursor, plan, step);
    }
  });
}

function carryOutPlace(
  host: Host,
  pen: MarkPen,
  cursor: HostCursor,
  { place, texts, colours }: PlannedPlace,
  step: UndoStep,
): void {
  const { marks } = place;
  texts.forEach((text, i) => {
    const kept = marks[i];
    if (kept) pen.rewrite(kept.element, text, place.track);
    else pen.write(cursor, text, place.track);
  });
  for (const { element } of marks.slice(texts.length)) remove(host, element, step);
  const notes = notesAt(place);
  colours.forEach((colour, i) => {
    if (colour !== null) paint(host, notes[i]!.note, colour, step);
  });
}

/**
 * Writes texts that look as marks look, in the score and in the part scores that the host keeps in step with it. The
 * only place that makes elements, and `add` the only way to one: from 4.0 on the host frees an element that was made and
 * never added a second time, and dies of it.
 */
class MarkPen {
  private readonly host: Host;
  private readonly step: UndoStep;
  /** A mark in the score. */
  private pattern: HostText | null = null;

  constructor(host: Host, step: UndoStep) {
    this.host = host;
    this.step = step;
  }

  write(cursor: HostCursor, text: string, track: number): void {
    this.pattern = this.pattern ? this.add(cursor, text, this.pattern) : this.addFirst(cursor, text);
    this.style(this.pattern, track);
  }

  /** A mark that came in with a file has the size and place of any other text. */
  rewrite(element: HostText, text: string, track: number): void {
    if (plainText(element.text) !== text) element.text = escapedText(text);
    this.step.changes += 1;
    this.style(element, track);
  }

  private style(element: HostText, track: number): void {
    const { ABOVE, BELOW } = this.host.root.Placement;
    const placement = (isLowerVoice(voiceOf(track)) ? BELOW : ABOVE) as number;
    if (element.fontSize !== MARK_SIZE) element.fontSize = MARK_SIZE;
    if (element.fontStyle !== UPRIGHT) element.fontStyle = UPRIGHT;
    if (element.placement !== placement) element.placement = placement;
  }

  /**
   * A size set on a text in the score does not reach its copies in part scores, and one set before it is added is lost.
   * A clone of a text that had its size in the score keeps it, and so do the copies of the clone.
   */
  private addFirst(cursor: HostCursor, text: string): HostText {
    const unlike = this.add(cursor, text, null);
    if (typeof unlike.clone !== 'function') return unlike;
    this.style(unlike, 0);
    const first = this.add(cursor, text, unlike);
    remove(this.host, unlike, this.step);
    return first;
  }

  /** Makes a text, like another one or plain, and adds it: nothing in between can fail. */
  private add(cursor: HostCursor, text: string, like: HostText | null): HostText {
    const { root } = this.host;
    const element = like?.clone ? like.clone() : root.newElement(root.Element.STAFF_TEXT);
    element.text = escapedText(text);
    cursor.add(element);
    this.step.changes += 1;
    return element;
  }
}

function remove({ root }: Host, element: HostText, step: UndoStep): void {
  if (typeof root.removeElement === 'function') root.removeElement(element);
  // An empty text prints and exports nothing.
  else element.text = '';
  step.changes += 1;
}

/** Colours a note with its accidental and dots, or takes our colour off again. */
function paint({ engine }: Host, note: HostNote, colour: string, step: UndoStep): void {
  // What the host hands out is no value: it changes with the note.
  const before = String(note.color);
  const paintPart = (part: HostElement, wanted: string) => {
    if (engine.colorEqual(part.color, wanted)) return;
    part.color = wanted;
    step.changes += 1;
  };
  for (const part of ([] as HostElement[]).concat(note.accidental ?? [], listOf(note.dots))) {
    // An accidental or dot that was given a colour of its own keeps it.
    if (engine.colorEqual(part.color, BLACK) || engine.colorEqual(part.color, before))
      paintPart(part, colour);
  }
  // Version 4 gives the colour of a note that comes in with a file to its stem, which is none of ours.
  const { stem, hook } = note.parent as HostChord;
  for (const part of [stem, hook]) if (part && engine.colorEqual(part.color, before)) paintPart(part, BLACK);
  paintPart(note, colour);
}
