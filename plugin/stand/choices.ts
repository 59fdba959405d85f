/// <reference lib="dom" />
/** What holds on every sheet of the stand: who plays, who reads, and how notes are named. */
import { computed, type Signal } from '@preact/signals';
import {
  ASSUMED_TEMPO,
  BASS_CLEFS,
  type BassClef,
  DEFAULT_SETTINGS,
  HAND_SECONDS,
  HORNS,
  type Horn,
  LANGUAGES,
  type Language,
  languageOf,
  NOTE_NAMINGS,
  type NoteNaming,
  type Reader,
  readerOf,
  type Settings,
  standWords,
} from '../../core/index.ts';
import { OWN_HORN, ownHorn } from './ownHorn.ts';
import { remembered } from './remembered.ts';

/** The language that was chosen, or nothing for the system's. */
export const chosenLanguage = remembered<Language | ''>('language', '', (value) =>
  (LANGUAGES as readonly unknown[]).includes(value),
);
export const chosenNaming = remembered<NoteNaming | ''>('naming', '', (value) =>
  (NOTE_NAMINGS as readonly unknown[]).includes(value),
);
export const hornId = remembered(
  'horn',
  DEFAULT_SETTINGS.horn.id,
  (value) => value === OWN_HORN || HORNS.some(({ id }) => id === value),
);
/** Every horn that can be chosen: the reader's own last. */
export const horns = computed<readonly Horn[]>(() => (ownHorn.value ? [...HORNS, ownHorn.value] : HORNS));

/** A number that somebody sets, and what it may be. */
export interface NumberChoice {
  readonly kept: Signal<number>;
  readonly lowest: number;
  readonly highest: number;
  readonly step: number;
}

/** A number that is kept under a name. */
export function numberChoice(
  name: string,
  usual: number,
  [lowest, highest]: readonly [number, number],
  step: number,
): NumberChoice {
  const allows = (value: unknown) => typeof value === 'number' && value >= lowest && value <= highest;
  return { kept: remembered(name, usual, allows), lowest, highest, step };
}

export const toleranceCents = numberChoice('tolerance', DEFAULT_SETTINGS.toleranceCents, [0, 100], 1);
export const handOffsetCents = numberChoice('handOffset', 0, [-100, 100], 1);
export const handSeconds = numberChoice('handTime', DEFAULT_SETTINGS.handSeconds, HAND_SECONDS, 0.05);
export const assumedTempo = numberChoice(
  'tempo',
  DEFAULT_SETTINGS.assumedQuartersPerMinute,
  ASSUMED_TEMPO,
  1,
);
export const bassClef = remembered<BassClef>('bassClef', DEFAULT_SETTINGS.bassClef, (value) =>
  (BASS_CLEFS as readonly unknown[]).includes(value),
);

const systemLanguage = navigator.languages.map(languageOf).find((language) => language !== null) ?? 'en';

/** Whoever reads the page. */
export const reader = computed<Reader>(() =>
  readerOf(chosenLanguage.value || systemLanguage, chosenNaming.value || null),
);
export const words = computed(() => standWords(reader.value));

/** Whoever plays. */
export const settings = computed<Settings>(() => ({
  ...DEFAULT_SETTINGS,
  horn: horns.value.find(({ id }) => id === hornId.value) ?? DEFAULT_SETTINGS.horn,
  toleranceCents: toleranceCents.kept.value,
  handOffsetCents: handOffsetCents.kept.value,
  handSeconds: handSeconds.kept.value,
  assumedQuartersPerMinute: assumedTempo.kept.value,
  bassClef: bassClef.value,
}));
