/** The horn notes that the user has selected: what may be asked about, and what the panel's signs are for. */
import type { Pitch, Transposition } from '../../core/index.ts';
import { hornParts } from './hornParts.ts';
import {
  type Host,
  type HostChord,
  type HostNote,
  type HostPart,
  type HostScore,
  type HostSegment,
  listOf,
} from './hostApi.ts';
import { notesOf } from './hostChord.ts';
import type { NoteAddress } from './noteAddress.ts';
import { tickOf } from './place.ts';
import { notatedPitch, statedTransposition, transpositionOf } from './spelling.ts';

/** A note as somebody may ask about it. */
export interface AskedNote {
  readonly written: Pitch;
  readonly transposition: Transposition | null;
}

/** The note of a horn part that is selected, the first of several; `null` when there is none. */
export function askedNote(host: Host, score: HostScore): AskedNote | null {
  const first = firstNote(host, score);
  const part = first && hornPartOf(score, first.track);
  if (!first || !part) return null;
  const name = part.partName || part.longName;
  const stated = statedAt(host, first);
  return {
    written: notatedPitch(first, name, stated),
    transposition: stated ?? transpositionOf(first, name),
  };
}

/** Asked at every look: a selection of a whole score is not copied for it. */
function firstNote({ root }: Host, { selection }: HostScore): HostNote | null {
  const elements = selection?.elements;
  const count = Math.min(MOST_LOOKED_AT, elements ? elements.length : 0);
  for (let i = 0; i < count; i++)
    if (elements![i]!.type === root.Element.NOTE) return elements![i] as HostNote;
  return null;
}

/** A stem, signs and a text may be listed before the first note of a selection. */
const MOST_LOOKED_AT = 20;

function statedAt({ root }: Host, note: HostNote): Transposition | null {
  const { staff } = note;
  if (!staff || !root.fractionFromTicks) return null;
  return statedTransposition(staff.transpose(root.fractionFromTicks(Math.max(0, tickOf(note)))));
}

/** Where the selected notes of horn parts stand, in the order in which the host lists them. */
export function selectedHornNotes(host: Host, score: HostScore): readonly NoteAddress[] {
  const { NOTE } = host.root.Element;
  const found: NoteAddress[] = [];
  for (const element of listOf(score.selection?.elements)) {
    if (element.type !== NOTE || !hornPartOf(score, element.track)) continue;
    const address = addressOfSelected(host, element as HostNote);
    if (address) found.push(address);
  }
  return found;
}

/** By its pitch and its being selected, since the host never hands out the same object twice. */
function addressOfSelected({ root }: Host, note: HostNote): NoteAddress | null {
  const chord = note.parent as HostChord;
  const tick = tickOf(note);
  if (tick < 0) return null;
  const rank = notesOf(root, chord).findIndex((one) => one.selected && one.pitch === note.pitch);
  const isGrace = typeof (chord.parent as Partial<HostSegment>).tick !== 'number';
  const graces = isGrace ? listOf((chord.parent as HostChord).graceNotes) : [];
  const graceIndex = graces.findIndex(({ notes }) =>
    listOf(notes).some((one) => one.selected && one.pitch === note.pitch),
  );
  if (rank < 0 || (isGrace && graceIndex < 0)) return null;
  return { tick, track: note.track, graceIndex: isGrace ? graceIndex : null, rank };
}

function hornPartOf(score: HostScore, track: number): HostPart | undefined {
  return hornParts(score).filter(({ startTrack, endTrack }) => track >= startTrack && track < endTrack)[0];
}

/** Where the selection starts, in ticks; `null` when nothing is selected that stands anywhere. */
export function selectionTick(score: HostScore): number | null {
  const tick = tickOf(score.selection?.elements[0]);
  return tick < 0 ? null : tick;
}
