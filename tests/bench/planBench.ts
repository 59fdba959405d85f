/**
 * Planning and checking whole parts. The part is quick and restless on purpose: sixteenths that turn from open to stopped
 * and back every half bar, glissandos, words and repeated figures, so that nothing is spared.
 */

import type { Passage, PassageNote, PassageWord } from '../../core/part/passage.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { HORN_IN_F, parsePitch } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';
import type { BenchRow } from './benchRow.ts';
import { quickestMilliseconds } from './timing.ts';

const SIZES = [1_000, 10_000, 100_000] as const;
const LEAST_NOTES_PER_SECOND = 200_000;
/**
 * What ten times the notes may cost beyond ten times the time, against a job that is linear beyond doubt and feels the
 * same memory: a copy of the part through JSON.
 */
const MOST_GROWTH = 1.5;
const ROUNDS = 7;

export function planBench(): BenchRow[] {
  const rows: BenchRow[] = [];
  const ratios: number[] = [];
  // Warm up: the first runs compile the code and work out the few pairs of notes there are.
  for (let i = 0; i < 5; i++) examine(restlessPart(10_000), DEFAULT_SETTINGS);
  for (const size of SIZES) {
    const part = restlessPart(size);
    const [planned, copied] = quickestMilliseconds(
      [() => examine(part, DEFAULT_SETTINGS), () => JSON.parse(JSON.stringify(part))],
      ROUNDS,
    ) as [number, number];
    const rate = (1000 * size) / planned;
    ratios.push(planned / copied);
    rows.push({
      name: `plan and check ${size.toLocaleString('en')} notes`,
      value: rate,
      unit: 'notes/s',
      baseline: 'a copy of the part through JSON',
      ratio: planned / copied,
      limit: `at least ${LEAST_NOTES_PER_SECOND.toLocaleString('en')}`,
      ok: rate >= LEAST_NOTES_PER_SECOND,
    });
  }
  const growth = ratios[2]! / ratios[1]!;
  rows.push({
    name: 'planning, 10,000 to 100,000 notes',
    value: growth,
    unit: 'times',
    baseline: 'the growth of that copy',
    ratio: growth,
    limit: `ratio at most ${MOST_GROWTH}`,
    ok: growth <= MOST_GROWTH,
  });
  return rows;
}

const SCALE = [
  'C4',
  'E4',
  'D4',
  'G4',
  'F4',
  'A4',
  'Ab4',
  'C5',
  'B4',
  'Db5',
  'Eb5',
  'D5',
  'F#4',
  'Bb4',
  'E5',
  'C#4',
];

/** Sixteenths at ♩ = 100, drawn from a scale by a small generator with a fixed seed. */
function restlessPart(size: number): Passage {
  let seed = 20_260;
  const random = (below: number): number => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return Math.floor((seed / 2_147_483_648) * below);
  };
  const pitches = SCALE.map((name) => parsePitch(name));
  const notes: PassageNote[] = [];
  const words: PassageWord[] = [];
  for (let index = 0; index < size; index++) {
    const onsetQuarters = index / 4;
    const measureIndex = Math.floor(index / 16);
    const measure = String(measureIndex + 1);
    const beat = (onsetQuarters % 4) + 1;
    const text = index % 256 === 64 ? 'gestopft' : index % 256 === 128 ? 'offen' : null;
    if (text) words.push({ text, measureIndex, measure, beat, onsetQuarters, staff: 1, voice: null });
    const isOstinato = index % 128 < 32;
    notes.push({
      index,
      measureIndex,
      measure,
      beat,
      onsetQuarters,
      durationQuarters: 0.25,
      grace: false,
      staff: 1,
      voice: '1',
      chordRank: 0,
      chordHead: index,
      written: pitches[isOstinato ? (index % 4) * 3 : random(pitches.length)]!,
      transposition: HORN_IN_F,
      clef: 'treble',
      sign: index % 16 < 8 ? null : 'stopped',
      joins: index + 1 < size && random(20) === 0 ? [{ kind: 'glissando', to: index + 1 }] : [],
      fingering: null,
      userColour: false,
    });
  }
  return {
    name: 'Horn in F',
    notes,
    words,
    tempos: [{ onsetQuarters: 0, quartersPerMinute: 100 }],
    rests: [],
  };
}
