/**
 * Before 3.5: what the score's own list tells while all of it is selected for a moment, in a part of the time that the
 * editor takes to write the score. Only where nothing is selected: then letting go gives back exactly what was there.
 */
import type { Host, HostElement, HostList, HostNote, HostRoot, HostScore } from './hostApi.ts';
import type { PartEvidence } from './partEvidence.ts';
import { tickOf } from './place.ts';
import { NoteSet, PlaceMap } from './placeMap.ts';
import type { ScoreChord } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';
import { sortedEvidence } from './selectionEvidence.ts';
import { intervalShown } from './spelling.ts';
import { hasPartScore } from './writtenScore.ts';

/** Bars times staves from which writing takes a few tenths of a second, and selecting a fraction of it. */
const LARGE = 2000;

/** True where nothing is selected, so that nobody sees a difference once all was selected for a moment. */
export function hasNoSelection({ selection }: HostScore): boolean {
  return selection?.elements.length === 0;
}

/** True where the list of a whole score tells enough, and writing it takes too long. */
export function isBestListed(score: HostScore, walks: readonly PartWalk[]): boolean {
  return (
    (score.nmeasures * score.ntracks) / TRACKS_PER_STAFF >= LARGE &&
    // Part scores are written in less time still.
    !walks.every(({ part }) => hasPartScore(score, part)) &&
    // The list leaves out the signs of graces.
    walks.every(({ bars }) =>
      bars.every(({ chords }) => chords.every(({ graceIndex }) => graceIndex === null)),
    )
  );
}

/**
 * Selects everything, reads what the list tells of these parts, and lets go.
 * @returns part by part; `null` where the list may leave something out, as the editor's filter of selections does
 */
export function evidenceOfAll(
  { root }: Host,
  score: HostScore,
  walks: readonly PartWalk[],
): readonly PartEvidence[] | null {
  root.cmd('select-all');
  const elements = score.selection!.elements;
  if (elements.length === 0) return null;
  try {
    return readList(root, elements, walks);
  } finally {
    root.cmd('escape');
  }
}

function readList(
  root: HostRoot,
  elements: HostList<HostElement>,
  walks: readonly PartWalk[],
): readonly PartEvidence[] | null {
  const { NOTE, REST, STEM, BEAM, ARTICULATION, TIE, SLUR } = root.Element;
  const kinds = new Set<unknown>();
  const here: HostElement[][] = walks.map(() => []);
  // Track after track, then the lines from place to place.
  let linesAt = elements.length;
  for (; linesAt > 0; linesAt--) {
    const line = elements[linesAt - 1]!;
    const { type, track } = line;
    if (type === NOTE || type === REST) break;
    kinds.add(type);
    const part = walks.findIndex(
      ({ part: { startTrack, endTrack } }) => track >= startTrack && track < endTrack,
    );
    if (part >= 0) here[part]!.push(line);
  }
  const isWhole = walks.every((walk, part) => {
    const mine = here[part]!.reverse();
    const { startTrack, endTrack } = walk.part;
    const until = firstFrom(elements, endTrack, linesAt);
    let notes = 0;
    for (let i = firstFrom(elements, startTrack, linesAt); i < until; i++) {
      const element = elements[i]!;
      const { type } = element;
      if (type === NOTE) notes += 1;
      // Most of a list is of these kinds, which tell nothing.
      if (type === NOTE || type === REST || type === STEM || type === BEAM) continue;
      kinds.add(type);
      mine.push(element);
    }
    return notes === notesIn(walk);
  });
  if (!isWhole || !kinds.has(ARTICULATION) || !(kinds.has(SLUR) || kinds.has(TIE))) return null;
  return walks.map((walk, part) => evidenceIn(root, walk, here[part]!));
}

const TRACKS_PER_STAFF = 4;

/** The first element of a track or of one after it, among the first `end`, which are sorted by track. */
function firstFrom(elements: HostList<HostElement>, track: number, end: number): number {
  let [from, to] = [0, end];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (elements[middle]!.track < track) from = middle + 1;
    else to = middle;
  }
  return from;
}

function notesIn({ bars }: PartWalk): number {
  let count = 0;
  for (const { chords } of bars)
    for (const { notes, others } of chords) count += notes.length + others.length;
  return count;
}

function evidenceIn(root: HostRoot, walk: PartWalk, elements: readonly HostElement[]): PartEvidence {
  const { TIE, TEXTLINE } = root.Element;
  const lineWords = elements
    .filter(({ type }) => type === TEXTLINE)
    .map((line) => {
      const { track, spannerTick, beginText } = line as HostElement & TextLine;
      return { tick: spannerTick.ticks, track, text: String(beginText ?? '') };
    })
    .filter(({ text }) => text !== '');
  const tied = elements.filter(({ type }) => type === TIE).map(({ parent }) => parent as HostNote);
  return {
    ...sortedEvidence(root, elements),
    ties: tiesIn(walk, tied),
    interval: intervalShown(walk),
    lineWords,
  };
}

interface TextLine {
  readonly spannerTick: { readonly ticks: number };
  readonly beginText?: string;
}

/** A tie leads to the note of its pitch in the next chord of its voice. */
function tiesIn(walk: PartWalk, starts: readonly HostNote[]): NonNullable<PartEvidence['ties']> {
  const from = new NoteSet();
  const into = new NoteSet();
  const places = new PlaceMap<ScoreChord>();
  const next = new WeakMap<ScoreChord, ScoreChord>();
  const last = new Map<number, ScoreChord>();
  for (const { chords } of walk.bars)
    for (const chord of chords) {
      places.set(chord, chord);
      const before = last.get(chord.track);
      if (before) next.set(before, chord);
      last.set(chord.track, chord);
    }
  const add = (notes: NoteSet, chord: ScoreChord | undefined, pitch: number) => {
    if (!chord) return;
    notes.add(
      chord,
      chord.notes.findIndex((note) => note.pitch === pitch),
    );
  };
  for (const { pitch, track, parent } of starts) {
    const chord = places.get({ tick: tickOf(parent), track, graceIndex: null });
    add(from, chord, pitch);
    add(into, chord && next.get(chord), pitch);
  }
  return { from, into };
}
