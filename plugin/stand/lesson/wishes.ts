/** What is asked for on the lesson's sheet, kept from one visit to the next. */
import { computed, signal } from '@preact/signals';
import {
  ETUDE_KINDS,
  type EtudeKind,
  FASTEST_TEMPO,
  LEVELS,
  type Level,
  MOST_WEEKS,
  nameNear,
  type Pitch,
  parsePitch,
  pitchCents,
  SLOWEST_TEMPO,
} from '../../../core/index.ts';
import type { Copy } from '../../etude/sheetText.ts';
import { numberChoice, settings } from '../choices.ts';
import { remembered } from '../remembered.ts';

export const KEYS = [
  'C',
  'G',
  'F',
  'D',
  'Bb',
  'A',
  'Eb',
  'E',
  'Ab',
  'Am',
  'Em',
  'Dm',
  'Bm',
  'Gm',
  'F#m',
  'Cm',
];
/** Seeds drawn for the user are short enough to be told on. */
const NEW_SEEDS = 10_000;
const LOWEST = pitchCents(parsePitch('F2'));
const HIGHEST = pitchCents(parsePitch('C6'));
/** The written notes between which a range may lie, in cents. */
export const RANGE_NOTES: readonly number[] = Array.from(
  { length: (HIGHEST - LOWEST) / 100 + 1 },
  (_, i) => LOWEST + 100 * i,
);

export const kind = remembered<EtudeKind | 'lesson' | 'course'>(
  'kind',
  'lesson',
  (value) => value === 'lesson' || value === 'course' || ETUDE_KINDS.some((each) => each.kind === value),
);
export const level = remembered<Level>('level', 1, (value) => (LEVELS as readonly unknown[]).includes(value));
export const keyName = remembered('lessonKey', '', (value) => KEYS.includes(value as string));
export const seed = remembered(
  'seed',
  Math.floor(Math.random() * NEW_SEEDS),
  (value) => Number.isInteger(value) && (value as number) >= 0,
);
export const copy = remembered<Copy>('copy', 'marked', (value) => value === 'plain' || value === 'marked');
const isEnd = (value: unknown) => value === null || RANGE_NOTES.includes(value as number);
/** The ends of the range, in cents; null for what suits. */
export const low = remembered<number | null>('low', null, isEnd);
export const high = remembered<number | null>('high', null, isEnd);
/** Of an étude, in beats a minute; null for what suits. */
export const tempo = remembered<number | null>(
  'etudeTempo',
  null,
  (value) => typeof value === 'number' && value >= SLOWEST_TEMPO && value <= FASTEST_TEMPO,
);
/** Pages of a course, and which of them is on the sheet, from 1. */
export const weeks = numberChoice('weeks', 8, [1, MOST_WEEKS], 1);
export const weekCount = computed(() => Math.round(weeks.kept.value));
export const weekShown = signal(1);
/** True once somebody looked at this sheet: nothing is composed before. */
export const isWanted = signal(false);

export function drawSeed(): void {
  seed.value = Math.floor(Math.random() * NEW_SEEDS);
}

/** Range, seed and player, as every kind of page takes them. */
export const wish = computed(() => ({
  low: pitchAt(low.value),
  high: pitchAt(high.value),
  seed: seed.value,
  player: settings.value,
}));

export const isRangeWrong = computed(
  () => low.value !== null && high.value !== null && low.value >= high.value,
);

function pitchAt(cents: number | null): Pitch | null {
  return cents === null ? null : nameNear(parsePitch('C4'), cents);
}
