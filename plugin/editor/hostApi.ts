/**
 * The editor's plugin interface, as far as it is used here. Members marked `?` exist in some versions only; the comment
 * says since when. The editor hands out a new wrapper for each access, so elements are never compared with `===`.
 */

/** Ticks to a quarter note, in every version. */
export const TICKS_PER_QUARTER = 480;

export interface HostFraction {
  readonly numerator: number;
  readonly denominator: number;
  readonly ticks: number;
}

/** Lists of the host: they have a length and an index, and none of an array's methods. */
export interface HostList<T> {
  readonly length: number;
  readonly [index: number]: T;
}

export interface HostElement {
  readonly type: number;
  readonly track: number;
  readonly parent: HostElement | null;
  readonly selected: boolean;
  /** False for what is hidden: nobody reads it from the page. */
  readonly visible: boolean;
  /** Of the size of grace notes and cues. */
  readonly small?: boolean;
  /** A colour of the script engine; compare with `sameColour`. */
  color: unknown;
  /** From 3.5. */
  is?(other: HostElement): boolean;
}

export interface HostText extends HostElement {
  text: string;
  fontSize: number;
  fontStyle: number;
  placement: number;
  /** In staff spaces, from the note and, downward, from the edge of the staff that the text stands at. In version 3 what is set is added. */
  offsetX: number;
  offsetY: number;
  /** Both, in an object and a measure of the editor's. */
  offset?: unknown;
  clone(): HostText;
  /** Of a tempo: quarters a second. */
  readonly tempo?: number;
}

/** In semitones and staff steps. */
export interface HostInterval {
  readonly chromatic: number;
  readonly diatonic: number;
}

export interface HostStaff {
  /** From written to sounding pitch. */
  transpose(at: HostFraction): HostInterval;
}

export interface HostNote extends HostElement {
  /** Sounding, whatever the Concert Pitch switch shows; under an octave line as printed, without the line's octaves. */
  pitch: number;
  /** Spelling of the sounding pitch on the line of fifths, F at 13. */
  tpc1: number;
  /** Spelling of the written pitch. */
  tpc2: number;
  /** Spelling as shown: tpc1 with Concert Pitch on, tpc2 without. */
  readonly tpc: number;
  /** Place on the staff in steps, 0 on the top line, counted downward. */
  readonly line: number;
  /** False for a note that playback leaves out. */
  readonly play?: boolean;
  /** What hangs on it: fingerings, symbols. */
  readonly elements?: HostList<HostText>;
  /** From 3.3, as far as it is used here. */
  add?(element: HostElement): void;
  readonly accidental: HostElement | null;
  readonly dots: HostList<HostElement>;
  /** From 3.3. */
  readonly tieForward?: HostElement | null;
  readonly tieBack?: HostElement | null;
  /** From 4.6, as far as it is used here. */
  readonly staff?: HostStaff;
  /** From 4.6: glissandi and bends that start here. */
  readonly spannerForward?: HostList<HostElement>;
}

export interface HostChord extends HostElement {
  readonly notes: HostList<HostNote>;
  /** The length as notated. Rests have it too. */
  readonly duration: HostFraction;
  readonly graceNotes: HostList<HostChord>;
  readonly noteType: number;
  /** Null for a note without; from 3.3. */
  readonly stem?: HostElement | null;
  readonly hook?: HostElement | null;
  /** From 4.6. */
  readonly articulations?: HostList<HostArticulation>;
  add(element: HostElement): void;
}

export interface HostArticulation extends HostElement {
  symbol: unknown;
  /** Where it stands; what is set before it is added is lost. */
  articulationAnchor?: number;
}

export interface HostSpanner extends HostElement {
  readonly spannerTick: HostFraction;
  readonly spannerTicks: HostFraction;
  readonly spannerTrack2: number;
  /** Of an octave line: its place among 8va, 8vb, 15ma, 15mb, 22ma, 22mb. */
  readonly ottavaType?: number;
  /** From 4.6, where a list holds segments of spanners. */
  readonly spanner?: HostSpanner;
}

export interface HostSegment extends HostElement {
  readonly tick: number;
  readonly annotations: HostList<HostElement>;
  /** Compare with `HostRoot.Segment`. */
  readonly segmentType?: unknown;
  readonly nextInMeasure: HostSegment | null;
  elementAt(track: number): HostElement | null;
}

export interface HostMeasure extends HostElement {
  readonly firstSegment: HostSegment | null;
  readonly nextMeasure: HostMeasure | null;
  readonly timesigActual: HostFraction;
  readonly irregular: boolean;
  readonly noOffset: number;
  /** 1 for a bar as wide as the editor makes it. */
  userStretch?: number;
}

export interface HostPart {
  readonly startTrack: number;
  readonly endTrack: number;
  readonly instrumentId: string;
  readonly midiProgram: number;
  readonly partName: string;
  readonly longName: string;
}

export interface HostSelection {
  readonly elements: HostList<HostElement>;
  /** The rest from 3.5. */
  readonly isRange?: boolean;
  readonly startSegment?: HostSegment | null;
  readonly endSegment?: HostSegment | null;
  readonly startStaff?: number;
  readonly endStaff?: number;
  select?(element: HostElement, add?: boolean): boolean;
  selectRange?(startTick: number, endTick: number, startStaff: number, endStaff: number): boolean;
  clear?(): boolean;
}

export interface HostCursor {
  track: number;
  readonly segment: HostSegment | null;
  /** What stands there on the cursor's track. */
  readonly element: HostElement | null;
  readonly tick: number;
  rewind(to: number): void;
  next(): boolean;
  add(element: HostElement): void;
  setDuration(numerator: number, denominator: number): void;
  /** From 3.5: whether the cursor is the place of the user's note input, or one of its own. */
  inputStateMode?: unknown;
  rewindToTick?(tick: number): void;
}

export interface HostScore {
  readonly scoreName: string;
  readonly nmeasures: number;
  readonly ntracks: number;
  readonly firstMeasure: HostMeasure | null;
  readonly lastSegment: HostSegment | null;
  readonly parts: HostList<HostPart>;
  readonly selection?: HostSelection;
  /** The part scores that the user made of it. */
  readonly excerpts?: HostList<{ readonly partScore: HostScore | null }>;
  metaTag(tag: string): string;
  setMetaTag(tag: string, value: string): void;
  newCursor(): HostCursor;
  startCmd(undoName?: string): void;
  /** From 4.0 with `rollback`. */
  endCmd(rollback?: boolean): void;
}

type Enumeration = { readonly [name: string]: unknown };

/** The root item of a plugin: everything the editor offers hangs on it. */
export interface HostRoot {
  readonly curScore: HostScore | null;
  /** Every score that is open. */
  readonly scores?: HostList<HostScore>;
  readonly mscoreVersion: number;
  readonly Element: Enumeration;
  readonly Placement: Enumeration;
  /** Seen in 3.2.3 and 4.6.5. */
  readonly Segment?: Enumeration;
  /** From 3.5. */
  readonly Cursor?: Enumeration;
  readonly SymId?: Enumeration;
  readonly NoteType?: Enumeration;
  /** From 4.6. */
  fractionFromTicks?(ticks: number): HostFraction;
  newElement(type: unknown): HostText;
  removeElement?(element: HostElement): void;
  /** Writes the score to a file; a stub from 4.0. */
  writeScore(score: HostScore, path: string, extension: string): boolean;
  /** Opens a file as a score; a stub or wrong from 4.0. */
  readScore(path: string): HostScore | null;
  cmd(name: string): void;
}

/** The editor's file object. */
export interface HostFile {
  source: string;
  read(): string;
  write(text: string): boolean;
  exists(): boolean;
  remove(): boolean;
  tempPath(): string;
}

/** What the script engine itself offers. */
export interface ScriptEngine {
  colorEqual(one: unknown, other: unknown): boolean;
  locale(): { readonly name: string };
  resolvedUrl(url: string): unknown;
  /** Makes an item from QML text; what it imports lies beside `url`. */
  createQmlObject(text: string, parent: object, url: unknown): object;
  openUrlExternally(url: string): boolean;
}

/** The editor as the rest of this folder sees it. */
export interface Host {
  readonly root: HostRoot;
  readonly file: HostFile;
  readonly engine: ScriptEngine;
}

/** True for a version of at least `major.minor`. */
export function isAtLeast({ root }: Host, major: number, minor: number): boolean {
  return root.mscoreVersion >= major * 10000 + minor * 100;
}

/** Copies one of the host's lists. */
export function listOf<T>(list: HostList<T> | undefined | null): T[] {
  const items: T[] = [];
  for (let i = 0; list && i < list.length; i++) items.push(list[i]!);
  return items;
}
