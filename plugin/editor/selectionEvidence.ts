/** What a selection of a whole part lists: signs, slurs and glissandi. Reading it needs the user's selection, and gives it back. */
import type { HandSign } from '../../core/index.ts';
import { signOf } from './handSigns.ts';
import {
  type Host,
  type HostArticulation,
  type HostChord,
  type HostElement,
  type HostList,
  type HostNote,
  type HostPart,
  type HostRoot,
  type HostScore,
  type HostSegment,
  type HostSpanner,
  isAtLeast,
  listOf,
} from './hostApi.ts';
import { notesOf } from './hostChord.ts';
import { NO_EVIDENCE, type OctaveLine, type PartEvidence, type Slur } from './partEvidence.ts';
import { NoteSet, type Place, PlaceMap } from './placeMap.ts';

/** Selects a whole part, reads what the selection lists, and puts the user's selection back. */
export function evidenceOf(host: Host, score: HostScore, part: HostPart): PartEvidence {
  const { selection } = score;
  if (!selection?.selectRange || !score.lastSegment) return NO_EVIDENCE;
  const putSelectionBack = rememberSelection(score);
  const putInputBack = rememberInput(host, score);
  try {
    // The list follows a selection only when a step of the history ends; an empty step leaves no trace there.
    score.startCmd();
    selection.selectRange(0, score.lastSegment.tick + 1, part.startTrack / 4, part.endTrack / 4);
    score.endCmd();
    const { elements } = selection;
    return sortedEvidence(host.root, isAtLeast(host, 4, 6) ? linesOf(host.root, elements) : listOf(elements));
  } finally {
    putSelectionBack();
    putInputBack();
  }
}

/**
 * The lines among the elements of a selection: they are listed after everything that stands in a voice. From 4.6 on nothing
 * else is wanted of the list, which takes as long to go through as the part is long.
 */
function linesOf({ Element }: HostRoot, elements: HostList<HostElement>): HostElement[] {
  const { NOTE, REST, STEM } = Element;
  const lines: HostElement[] = [];
  for (let i = elements.length - 1; i >= 0; i--) {
    const element = elements[i]!;
    const { type } = element;
    if (type === NOTE || type === REST || type === STEM) break;
    lines.push(element);
  }
  return lines.reverse();
}

/** What these elements of a selection tell, as far as each of them tells it alone. */
export function sortedEvidence(root: HostRoot, elements: readonly HostElement[]): PartEvidence {
  const { ARTICULATION, SLUR, SLUR_SEGMENT, GLISSANDO, GLISSANDO_SEGMENT, OTTAVA, OTTAVA_SEGMENT, NOTE } =
    root.Element;
  const octaveLines: OctaveLine[] = [];
  const signs = new PlaceMap<HandSign>();
  const glissandi = new NoteSet();
  const slurs: Slur[] = [];
  for (const element of elements) {
    switch (element.type) {
      case ARTICULATION: {
        const sign = signOf(root, element as HostArticulation);
        if (sign) signs.set(placeOf(element), sign);
        break;
      }
      case SLUR:
      case SLUR_SEGMENT: {
        const slur = spannerOf(element);
        const fromTick = slur.spannerTick.ticks;
        const toTick = fromTick + slur.spannerTicks.ticks;
        slurs.push({
          fromTick,
          fromTrack: slur.track,
          fromGrace: null,
          toTick,
          toTrack: slur.spannerTrack2,
          toGrace: null,
        });
        break;
      }
      case OTTAVA:
      case OTTAVA_SEGMENT: {
        const line = spannerOf(element);
        const fromTick = line.spannerTick.ticks;
        const octaves = OCTAVES[line.ottavaType ?? 0] ?? 0;
        octaveLines.push({
          fromTick,
          toTick: fromTick + line.spannerTicks.ticks,
          track: line.track,
          octaves,
        });
        break;
      }
      case GLISSANDO:
      case GLISSANDO_SEGMENT: {
        const start = spannerOf(element).parent;
        if (start && start.type === NOTE) glissandi.add(placeOf(start), rankOf(root, start as HostNote));
      }
    }
  }
  return { ...NO_EVIDENCE, signs, glissandi, slurs, octaveLines };
}

/** What octave lines add, in the order of the host's own numbers. */
const OCTAVES: readonly number[] = [1, -1, 2, -2, 3, -3];

/** How a note that a glissando leaves is known again, whatever else its chord holds. */
export function glissandoKey(note: HostElement & { readonly pitch: number }): string {
  return `${tickOf(note)}/${note.track}/${note.pitch}`;
}

/** The place of the chord that something belongs to. */
export function placeOf(element: HostElement): Place {
  return { tick: tickOf(element), track: element.track, graceIndex: null };
}

function rankOf(root: HostRoot, note: HostNote): number {
  return notesOf(root, note.parent as HostChord).findIndex(({ pitch }) => pitch === note.pitch);
}

/** Segments of a line carry the line from 4.6. */
export function spannerOf(element: HostElement): HostSpanner {
  const listed = element as HostSpanner;
  return listed.spanner ?? listed;
}

/** A sign sits in a chord, a chord in a segment, and the segment has the tick. */
export function tickOf(element: HostElement): number {
  let holder: HostElement | null = element.parent;
  while (holder && typeof (holder as HostSegment).tick !== 'number') holder = holder.parent;
  return holder ? (holder as HostSegment).tick : -1;
}

function rememberSelection(score: HostScore): () => void {
  const selection = score.selection!;
  if (selection.isRange && selection.startSegment) {
    const from = selection.startSegment.tick;
    const to = selection.endSegment ? selection.endSegment.tick : score.lastSegment!.tick + 1;
    const { startStaff = 0, endStaff = 1 } = selection;
    return () => inStep(score, () => selection.selectRange!(from, to, startStaff, endStaff));
  }
  const elements = listOf(selection.elements);
  return () =>
    inStep(score, () => {
      selection.clear?.();
      elements.forEach((element, i) => {
        selection.select?.(element, i > 0);
      });
    });
}

/** Selecting a note makes it the place where the user's next note goes: that place is after it, or wherever it was. */
function rememberInput({ root }: Host, score: HostScore): () => void {
  const cursor = score.newCursor();
  const mode = root.Cursor?.INPUT_STATE_SYNC_WITH_SCORE;
  if (mode === undefined) return () => {};
  cursor.inputStateMode = mode;
  if (!cursor.segment) return () => {};
  const { tick, track } = cursor;
  return () => {
    cursor.track = track;
    cursor.rewindToTick?.(tick);
  };
}

function inStep(score: HostScore, work: () => void): void {
  score.startCmd();
  work();
  score.endCmd();
}
