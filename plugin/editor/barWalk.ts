/** Walks one measure of the host's score, and asks of each note what is wanted of it, once. */
import { isOurMark } from '../../core/index.ts';
import { fingeringOf } from './fingeringsInScore.ts';
import { handSignsIn } from './handSigns.ts';
import type {
  HostChord,
  HostElement,
  HostInterval,
  HostList,
  HostMeasure,
  HostNote,
  HostPart,
  HostRoot,
  HostSegment,
  HostText,
} from './hostApi.ts';
import { sortedNotes } from './hostChord.ts';
import { VOICES } from './place.ts';
import { colourOf, plainText } from './plainValues.ts';
import {
  type BarWalk,
  BLACK,
  isSameInterval,
  type ScoreChord,
  type ScoreNote,
  type ScoreRest,
  type ScoreText,
} from './scoreBar.ts';

/** What a walk is for: to be kept as plain data, or to change the score at once. */
export type Purpose = 'keep' | 'change';

/**
 * Walks one measure, once for all of these parts. Our own marks are nothing to keep.
 * @returns part by part
 */
export function walkBars(
  root: HostRoot,
  measure: HostMeasure,
  measureIndex: number,
  parts: readonly HostPart[],
  purpose: Purpose,
): readonly BarWalk[] {
  const kinds = kindsOf(root);
  const walkers = parts.map((part) => new BarWalker(root, kinds, measureIndex, part, purpose));
  for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
    const { tick } = segment;
    takeAnnotations(segment, tick, walkers);
    if (kinds.chordRest !== undefined && segment.segmentType !== kinds.chordRest) continue;
    // Reading it makes an object, and most tracks are empty: once for all of them.
    const { elementAt } = segment;
    const at = (track: number) => elementAt.call(segment, track);
    for (const walker of walkers) walker.takeSegment(at, tick);
  }
  return walkers.map((walker) => walker.bar());
}

/** The host's names for what a walk looks for. Version 3 looks each up at every use, for longer than a note takes to read. */
interface Kinds {
  readonly chord: unknown;
  readonly rest: unknown;
  readonly tempo: unknown;
  readonly instrumentChange: unknown;
  readonly chordRest: unknown;
}

function kindsOf(root: HostRoot): Kinds {
  const { CHORD, REST, TEMPO_TEXT, INSTRUMENT_CHANGE } = root.Element;
  return {
    chord: CHORD,
    rest: REST,
    tempo: TEMPO_TEXT,
    instrumentChange: INSTRUMENT_CHANGE,
    chordRest: chordRestOf(root),
  };
}

/** The type of segments that hold chords and rests; `undefined` in versions that were not tried, where all are looked into. */
function chordRestOf({ mscoreVersion, Segment }: HostRoot): unknown {
  return mscoreVersion < 30300 || mscoreVersion >= 40600 ? Segment?.ChordRest : undefined;
}

/** The texts of one measure of one part, to be kept. */
export function textsIn(
  root: HostRoot,
  measure: HostMeasure,
  measureIndex: number,
  part: HostPart,
): readonly ScoreText[] {
  const walker = new BarWalker(root, kindsOf(root), measureIndex, part, 'keep');
  for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
    takeAnnotations(segment, segment.tick, [walker]);
  return walker.bar().texts;
}

function takeAnnotations({ annotations }: HostSegment, tick: number, walkers: readonly BarWalker[]): void {
  for (let i = 0; i < annotations.length; i++) {
    const annotation = annotations[i]!;
    for (const walker of walkers) walker.takeAnnotation(annotation, tick);
  }
}

/** One part in one measure. Every call of the host makes an object, which takes it some microseconds: nothing is asked that need not be. */
class BarWalker {
  private readonly root: HostRoot;
  private readonly kinds: Kinds;
  private readonly measureIndex: number;
  private readonly part: HostPart;
  private readonly isKept: boolean;
  private readonly voices: ScoreChord[][] = [];
  private readonly rests: ScoreRest[] = [];
  private readonly texts: ScoreText[] = [];
  /** Staff by staff; a measure has one for each, unless its player changes instruments. */
  private intervals: HostInterval[] = [];

  constructor(root: HostRoot, kinds: Kinds, measureIndex: number, part: HostPart, purpose: Purpose) {
    this.root = root;
    this.kinds = kinds;
    this.measureIndex = measureIndex;
    this.part = part;
    this.isKept = purpose === 'keep';
  }

  bar(): BarWalk {
    const chords: ScoreChord[] = [];
    for (const voice of this.voices) if (voice) chords.push(...voice);
    return { chords, rests: this.rests, texts: this.texts };
  }

  takeSegment(at: (track: number) => HostElement | null, tick: number): void {
    const { kinds, measureIndex, part, rests } = this;
    for (let track = part.startTrack; track < part.endTrack; track++) {
      const element = at(track);
      if (!element) continue;
      const { type } = element;
      if (type === kinds.chord) this.takeChord(element as HostChord, tick, track);
      else if (type === kinds.rest) rests.push({ measureIndex, tick, track });
    }
  }

  takeAnnotation(annotation: HostElement, tick: number): void {
    const { tempo: tempoText, instrumentChange } = this.kinds;
    const { track, type } = annotation;
    const { startTrack, endTrack } = this.part;
    const isHere = track >= startTrack && track < endTrack;
    if (isHere && type === instrumentChange) this.intervals = [];
    // A tempo stands in the top staff and holds for all.
    if (!isHere && type !== tempoText) return;
    const { text: printed, tempo } = annotation as HostText;
    // Dynamics, diagrams and the like are annotations too, and have no text.
    if (typeof printed !== 'string') return;
    const text = plainText(printed);
    const isOurs = isOurMark(text);
    const { measureIndex, isKept } = this;
    if (isOurs && isKept) return;
    const element = isKept ? null : (annotation as HostText);
    this.texts.push({ measureIndex, tick, track, type, text, tempo: tempo ?? null, isOurs, element });
  }

  private takeChord(element: HostChord, tick: number, track: number): void {
    const index = track - this.part.startTrack;
    const voice = this.voices[index] ?? [];
    this.voices[index] = voice;
    const { graceNotes } = element;
    if (graceNotes.length === 0) {
      voice.push(this.chordOf(element, tick, track, null));
      return;
    }
    const after: ScoreChord[] = [];
    for (let graceIndex = 0; graceIndex < graceNotes.length; graceIndex++) {
      const grace = graceNotes[graceIndex]!;
      const chord = this.chordOf(grace, tick, track, graceIndex);
      if (isGraceAfter(this.root, grace)) after.unshift(chord);
      else voice.push(chord);
    }
    voice.push(this.chordOf(element, tick, track, null), ...after);
  }

  private chordOf(element: HostChord, tick: number, track: number, graceIndex: number | null): ScoreChord {
    const { root, measureIndex } = this;
    const { notes, others } = sortedNotes(root, element);
    const { articulations } = element;
    const signs = articulations ? handSignsIn(root, articulations) : null;
    return {
      measureIndex,
      tick,
      track,
      graceIndex,
      duration: element.duration.ticks,
      isSmall: element.small === true,
      sign: signs ? (signs[0]?.sign ?? null) : undefined,
      isSignBelow: signs?.some(({ isBelow }) => isBelow) ?? false,
      notes: notes.map((note) => this.noteOf(note, tick, track)),
      others: others.length === 0 ? NO_NOTES : others.map((note) => this.noteOf(note, tick, track)),
    };
  }

  private noteOf(note: HostNote, tick: number, track: number): ScoreNote {
    const { root } = this;
    const { spannerForward } = note;
    return {
      pitch: note.pitch,
      tpc: note.tpc,
      tpc1: note.tpc1,
      tpc2: note.tpc2,
      line: note.line,
      isTiedOn: Boolean(note.tieForward),
      isTiedBack: Boolean(note.tieBack),
      startsGlissando: spannerForward ? hasGlissando(root, spannerForward) : null,
      interval: this.intervalAt(note, tick, Math.floor((track - this.part.startTrack) / VOICES)),
      fingering: fingeringOf(root, note),
      colour: this.isKept ? BLACK : colourOf(note),
      element: this.isKept ? null : note,
    };
  }

  private intervalAt(note: HostNote, tick: number, staff: number): HostInterval | null {
    const known = this.intervals[staff];
    if (known) return known;
    const { fractionFromTicks } = this.root;
    if (!fractionFromTicks) return null;
    const told = note.staff?.transpose(fractionFromTicks(Math.max(0, tick)));
    if (!told) return null;
    const interval = shared(told);
    this.intervals[staff] = interval;
    return interval;
  }
}

const NO_NOTES: readonly ScoreNote[] = [];

/** Mostly the same for a whole score: kept once. */
let lastInterval: HostInterval = { chromatic: 0, diatonic: 0 };

function shared({ chromatic, diatonic }: HostInterval): HostInterval {
  const interval = { chromatic, diatonic };
  if (!isSameInterval(interval, lastInterval)) lastInterval = interval;
  return lastInterval;
}

function hasGlissando({ Element }: HostRoot, spanners: HostList<HostElement>): boolean {
  const { GLISSANDO, GLISSANDO_SEGMENT } = Element;
  for (let i = 0; i < spanners.length; i++) {
    const { type } = spanners[i]!;
    if (type === GLISSANDO || type === GLISSANDO_SEGMENT) return true;
  }
  return false;
}

/** The host's own numbers for graces after: GRACE8_AFTER, GRACE16_AFTER, GRACE32_AFTER. */
function isGraceAfter({ NoteType }: HostRoot, grace: HostElement & { readonly noteType: number }): boolean {
  if (!NoteType) return false;
  const { noteType } = grace;
  return (
    noteType === NoteType.GRACE8_AFTER ||
    noteType === NoteType.GRACE16_AFTER ||
    noteType === NoteType.GRACE32_AFTER
  );
}
