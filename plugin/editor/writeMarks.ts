/** Writes marks into the score and takes them off again, as planned. */

import { EditorFault } from './editorFault.ts';
import {
  type Host,
  type HostChord,
  type HostCursor,
  type HostElement,
  type HostNote,
  type HostScore,
  listOf,
} from './hostApi.ts';
import { layOutOnly } from './layoutRange.ts';
import { MarkWriter, removeText } from './markPatterns.ts';
import { isUnplaced } from './markRows.ts';
import { notesAt } from './ownMarks.ts';
import { cursorOn, moveTo } from './place.ts';
import { colourOf } from './plainValues.ts';
import type { PlannedPlace } from './plannedPlace.ts';
import { BLACK } from './scoreBar.ts';
import type { UndoStep } from './undoStep.ts';

/** Carries plans out. To be called inside a step of the undo history. */
export function carryOut(host: Host, score: HostScore, plans: readonly PlannedPlace[], step: UndoStep): void {
  const byTrack = new Map<number, PlannedPlace[]>();
  for (const plan of plans) {
    const track = byTrack.get(plan.place.track);
    if (track) track.push(plan);
    else byTrack.set(plan.place.track, [plan]);
  }
  const writer = new MarkWriter(host, step);
  byTrack.forEach((track, number) => {
    const cursor = cursorOn(score, number);
    for (const plan of track) {
      moveTo(cursor, plan.place.tick);
      if (!cursor.segment || cursor.tick !== plan.place.tick)
        throw new EditorFault(({ placeNotFound }) => placeNotFound);
      carryOutPlace(host, writer, cursor, plan, step);
    }
  });
  layOutOnly(
    host,
    score,
    plans.map(({ place }) => place),
    step,
  );
  writer.finish();
}

function carryOutPlace(
  host: Host,
  writer: MarkWriter,
  cursor: HostCursor,
  { place, texts, colours }: PlannedPlace,
  step: UndoStep,
): void {
  const wanted = texts.slice();
  for (const { text: written, element } of place.marks) {
    const kept = isUnplaced(host, element!) ? -1 : wanted.findIndex(({ text }) => text === written);
    // One that says what it is to say stays where somebody may have moved it.
    if (kept >= 0) wanted.splice(kept, 1);
    else removeText(host, element!, step);
  }
  for (const text of wanted) writer.write(cursor, text);
  const notes = notesAt(place);
  colours.forEach((colour, i) => {
    if (colour !== null) paint(host, notes[i]!.note.element!, colour, step);
  });
}

/** Colours a note with its accidental and dots, or takes our colour off again. */
function paint({ engine }: Host, note: HostNote, colour: string, step: UndoStep): void {
  const before = colourOf(note);
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
