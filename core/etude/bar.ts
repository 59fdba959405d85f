/** Bars of an étude, and the notes in them. */
import type { HandSign } from '../part/passage.ts';
import { type Pitch, pitchCents } from '../pitch/pitch.ts';

/** How loud, from here on; `sfz` and `fp` are for one note, after which what held before holds again, or p. */
export type Dynamic = 'pp' | 'p' | 'mp' | 'mf' | 'f' | 'sfz' | 'fp';

/** A note or a rest, in order of time. */
export interface EtudeNote {
  /** The written pitch, or null for a rest. */
  readonly written: Pitch | null;
  readonly quarters: number;
  /** What the hand does; null at a rest. */
  readonly hand: HandSign | null;
  /** The sign printed at it: every change of the hand has one; a natural horn's part of the way is a mark instead. */
  readonly sign: HandSign | null;
  /** `accent` where the stopped tone is to bite, `tenuto` where it is to match. */
  readonly attack: 'accent' | 'tenuto' | null;
  /** Where a slur begins or ends here. */
  readonly slur: 'start' | 'stop' | null;
  /** True when the hand slides from this note to the next on one fingering. */
  readonly slides: boolean;
  /** True when its tone is held on into the next note, which is tied to it. */
  readonly ties: boolean;
  /** True when a breath is taken after it. */
  readonly breath: boolean;
  readonly fermata: boolean;
  /** A dynamic that begins here, or null. */
  readonly dynamic: Dynamic | null;
  /** A hairpin that begins here, or null. */
  readonly hairpin: 'crescendo' | 'diminuendo' | null;
  /** True when a hairpin ends with this note. */
  readonly hairpinEnds: boolean;
}

/** How a bar is counted. */
export interface Meter {
  /** The upper number of the time signature. */
  readonly beats: number;
  /** The lower number: 4 for quarters, 8 for eighths. */
  readonly beatType: number;
  /** Quarters in the beat that the tempo counts: 1, or 1.5 in 6/8. */
  readonly beatQuarters: number;
}

export const TWO_FOUR: Meter = { beats: 2, beatType: 4, beatQuarters: 1 };
export const THREE_FOUR: Meter = { beats: 3, beatType: 4, beatQuarters: 1 };
export const FOUR_FOUR: Meter = { beats: 4, beatType: 4, beatQuarters: 1 };
export const FIVE_FOUR: Meter = { beats: 5, beatType: 4, beatQuarters: 1 };
export const SIX_EIGHT: Meter = { beats: 6, beatType: 8, beatQuarters: 1.5 };

/** As in `3/4`. */
export function printMeter({ beats, beatType }: Meter): string {
  return `${beats}/${beatType}`;
}

/** A bar's length in quarters. */
export function quartersOf({ beats, beatType }: Meter): number {
  return (4 * beats) / beatType;
}

/** A bar. */
export interface Bar {
  readonly meter: Meter;
  readonly notes: readonly EtudeNote[];
  /** True when a phrase begins here, which then has a line of the page to itself. */
  readonly phraseStarts: boolean;
  /** True when a repeated passage begins here. */
  readonly repeatStarts: boolean;
  /** How often in all the passage that ends here is played; 0 where none ends. */
  readonly times: number;
}

/** A note with what the hand does at it. */
export function note(written: Pitch, quarters: number, hand: HandSign): EtudeNote {
  return bare(written, quarters, hand);
}

export function rest(quarters: number): EtudeNote {
  return bare(null, quarters, null);
}

/** Field by field: études are made of many notes, and copying from a pattern is slow. */
function bare(written: Pitch | null, quarters: number, hand: HandSign | null): EtudeNote {
  return {
    written,
    quarters,
    hand,
    sign: null,
    attack: null,
    slur: null,
    slides: false,
    ties: false,
    breath: false,
    fermata: false,
    dynamic: null,
    hairpin: null,
    hairpinEnds: false,
  };
}

export function bar(meter: Meter, notes: readonly EtudeNote[]): Bar {
  return { meter, notes, phraseStarts: false, repeatStarts: false, times: 0 };
}

/** The same bars as one phrase. */
export function asPhrase(bars: readonly Bar[]): readonly Bar[] {
  return bars.map((each, i) => ({ ...each, phraseStarts: i === 0 }));
}

/** The same bar with a breath after its last note. */
export function withBreath(of: Bar): Bar {
  const last = of.notes.length - 1;
  return {
    ...of,
    notes: of.notes.map((each, i) => (i === last && each.written ? { ...each, breath: true } : each)),
  };
}

/** The same bar with a dynamic at its first note. */
export function withDynamic(of: Bar, dynamic: Dynamic): Bar {
  const first = of.notes.findIndex(({ written }) => written !== null);
  return { ...of, notes: of.notes.map((each, i) => (i === first ? { ...each, dynamic } : each)) };
}

/**
 * The same bars as a passage to be repeated.
 * @param times how often it is played in all
 */
export function repeated(bars: readonly Bar[], times: number): readonly Bar[] {
  return bars.map((each, i) => ({
    ...each,
    repeatStarts: i === 0,
    times: i === bars.length - 1 ? times : 0,
  }));
}

/** A bar by all that is played in it. */
export function barAsPlayed({ notes, meter }: Bar): string {
  const texts = notes.map(
    ({ written, quarters, hand, ties }) =>
      `${written ? pitchCents(written) : '-'}/${quarters.toFixed(3)}${hand ?? ''}${ties ? '=' : ''}`,
  );
  return `${printMeter(meter)} ${texts.join(' ')}`;
}

/** How often the commonest bar comes. */
export function mostOfOneBar(bars: readonly Bar[]): number {
  const counts = new Map<string, number>();
  for (const text of bars.map(barAsPlayed)) counts.set(text, (counts.get(text) ?? 0) + 1);
  return Math.max(...counts.values());
}
