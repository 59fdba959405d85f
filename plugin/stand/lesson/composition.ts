/** What is composed on the lesson's sheet: a page of exercises or one étude. */
import { computed } from '@preact/signals';
import {
  composeEtude,
  composeLesson,
  ETUDE_KINDS,
  type EtudeKind,
  etudeSheet,
  FASTEST_TEMPO,
  type Key,
  LEVELS,
  type Level,
  nameNear,
  type Pitch,
  parseKey,
  parsePitch,
  pitchCents,
  type Sheet,
  SLOWEST_TEMPO,
} from '../../../core/index.ts';
import { type Copy, sheetText } from '../../etude/sheetText.ts';
import { treeText } from '../../etude/treeText.ts';
import { sealText } from '../../musicxml/bytes/seal.ts';
import { reader, settings, words } from '../choices.ts';
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
/** Bars of an étude. */
const BARS = 32;

const LOWEST = pitchCents(parsePitch('F2'));
const HIGHEST = pitchCents(parsePitch('C6'));
/** The written notes between which a range may lie, in cents. */
export const RANGE_NOTES: readonly number[] = Array.from(
  { length: (HIGHEST - LOWEST) / 100 + 1 },
  (_, i) => LOWEST + 100 * i,
);

export const kind = remembered<EtudeKind | 'lesson'>(
  'kind',
  'lesson',
  (value) => value === 'lesson' || ETUDE_KINDS.some((each) => each.kind === value),
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
export function drawSeed(): void {
  seed.value = Math.floor(Math.random() * NEW_SEEDS);
}

type Composed =
  | { readonly ok: true; readonly sheet: Sheet }
  | { readonly ok: false; readonly reason: string };

export const composed = computed<Composed>(() => {
  if (low.value !== null && high.value !== null && low.value >= high.value)
    return { ok: false, reason: words.value.lowerFirst };
  const wish = {
    low: pitchAt(low.value),
    high: pitchAt(high.value),
    seed: seed.value,
    player: settings.value,
    reader: reader.value,
  };
  const key: Key | null = keyName.value === '' ? null : parseKey(keyName.value);
  if (kind.value === 'lesson') return composeLesson({ ...wish, level: level.value, key });
  const made = composeEtude({
    ...wish,
    level: level.value,
    kind: kind.value,
    key: key ?? parseKey('C'),
    bars: BARS,
    tempo: tempo.value,
  });
  return made.ok ? { ok: true, sheet: etudeSheet(made.etude, reader.value) } : made;
});

export const text = computed(() =>
  composed.value.ok ? sheetText(composed.value.sheet, settings.value, copy.value, treeText) : '',
);

/** The sheet to take home, as the command line writes it. */
export function taken(): { readonly name: string; readonly bytes: Uint8Array } {
  const ending = copy.value === 'plain' ? '-plain' : '';
  const start = kind.value === 'lesson' ? `lesson-${level.value}` : `etude-${kind.value}`;
  return { name: `${start}-${seed.value}${ending}.musicxml`, bytes: sealText('etude', text.value) };
}

function pitchAt(cents: number | null): Pitch | null {
  return cents === null ? null : nameNear(parsePitch('C4'), cents);
}
