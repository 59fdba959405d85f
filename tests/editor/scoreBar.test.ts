/** What counts as written between two looks at a bar. */
import { describe, expect, it } from 'vitest';
import {
  type BarWalk,
  isSameBar,
  isSameMeasure,
  type ScoreChord,
  type ScoreMeasure,
  type ScoreNote,
  type ScoreText,
} from '../../plugin/editor/scoreBar.ts';

const NOTE: ScoreNote = {
  pitch: 60,
  tpc: 15,
  tpc1: 14,
  tpc2: 15,
  line: 3,
  isTiedOn: false,
  isTiedBack: false,
  startsGlissando: false,
  interval: { chromatic: -7, diatonic: -4 },
  fingering: null,
  colour: '#000000',
  element: null,
};
const CHORD: ScoreChord = {
  measureIndex: 1,
  tick: 1920,
  track: 4,
  graceIndex: null,
  duration: 480,
  isSmall: false,
  sign: null,
  isSignBelow: false,
  notes: [NOTE],
  others: [],
};
const WORD: ScoreText = {
  measureIndex: 1,
  tick: 1920,
  track: 4,
  type: 42,
  text: 'gestopft',
  tempo: null,
  isOurs: false,
  element: null,
};
const MEASURE: ScoreMeasure = {
  tick: 1920,
  endTick: 3840,
  numerator: 4,
  denominator: 4,
  isIrregular: false,
  numberOffset: 0,
  element: null,
};
const BAR: BarWalk = { chords: [CHORD], rests: [{ measureIndex: 1, tick: 2400, track: 4 }], texts: [WORD] };

/** What may differ and be the same bar: the host's own objects, and what only we write. */
const NOBODYS: readonly string[] = ['element', 'colour', 'isOurs'];

/** The same with one field of another value, for each field that a user's writing can change. */
function changesOf<T extends object>(value: T): readonly (readonly [string, T])[] {
  return Object.keys(value)
    .filter((field) => !NOBODYS.includes(field))
    .map((field) => [field, { ...value, [field]: other(value[field as keyof T]) }] as const);
}

function other(value: unknown): unknown {
  if (typeof value === 'number') return value + 1;
  if (typeof value === 'boolean') return !value;
  if (Array.isArray(value)) return [...value, NOTE];
  if (value !== null && typeof value === 'object') return { ...value, chromatic: 0 };
  return value === null ? 1 : `${value}.`;
}

const withNote = (note: ScoreNote): BarWalk => ({ ...BAR, chords: [{ ...CHORD, notes: [note] }] });

describe('a bar that is looked at again', () => {
  it.each(changesOf(NOTE))('is another with a note of another %s', (_, note) => {
    expect(isSameBar(BAR, withNote(note))).toBe(false);
  });

  it.each(changesOf(CHORD))('is another with a chord of another %s', (_, chord) => {
    expect(isSameBar(BAR, { ...BAR, chords: [chord] })).toBe(false);
  });

  it.each(changesOf(WORD))('is another with a word of another %s', (_, text) => {
    expect(isSameBar(BAR, { ...BAR, texts: [text] })).toBe(false);
  });

  it.each(changesOf(BAR.rests[0]!))('is another with a rest of another %s', (_, rest) => {
    expect(isSameBar(BAR, { ...BAR, rests: [rest] })).toBe(false);
  });

  it.each(changesOf(MEASURE))('is another in a measure of another %s', (_, measure) => {
    expect(isSameMeasure(MEASURE, measure)).toBe(false);
  });

  it.each([
    ['a note fewer', { ...BAR, chords: [] }],
    ['a rest fewer', { ...BAR, rests: [] }],
    ['a word fewer', { ...BAR, texts: [] }],
  ])('is another with %s', (_, bar) => {
    expect(isSameBar(BAR, bar)).toBe(false);
    expect(isSameBar(bar, BAR)).toBe(false);
  });

  it('is the same with marks of ours and colours that were not there before', () => {
    const ours = { ...WORD, text: 'B 2', isOurs: true };
    const painted = withNote({ ...NOTE, colour: '#D55F00', interval: { chromatic: -7, diatonic: -4 } });
    expect(isSameBar(BAR, { ...painted, texts: [ours, WORD] })).toBe(true);
    expect(isSameMeasure(MEASURE, { ...MEASURE })).toBe(true);
  });
});
