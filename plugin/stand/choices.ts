/// <reference lib="dom" />
/** What holds on every sheet of the stand: who plays, who reads, and how notes are named. */
import { computed } from '@preact/signals';
import {
  DEFAULT_SETTINGS,
  HORNS,
  LANGUAGES,
  type Language,
  languageOf,
  NOTE_NAMINGS,
  type NoteNaming,
  type Reader,
  readerOf,
  type Settings,
} from '../../core/index.ts';
import { remembered } from './remembered.ts';
import { STAND_WORDS } from './words/languages.ts';

/** The language that was chosen, or nothing for the system's. */
export const chosenLanguage = remembered<Language | ''>('language', '', (value) =>
  (LANGUAGES as readonly unknown[]).includes(value),
);
export const chosenNaming = remembered<NoteNaming | ''>('naming', '', (value) =>
  (NOTE_NAMINGS as readonly unknown[]).includes(value),
);
export const hornId = remembered('horn', DEFAULT_SETTINGS.horn.id, (value) =>
  HORNS.some(({ id }) => id === value),
);
export const toleranceCents = remembered(
  'tolerance',
  DEFAULT_SETTINGS.toleranceCents,
  (value) => typeof value === 'number' && value >= 0 && value <= 100,
);
export const handOffsetCents = remembered(
  'handOffset',
  0,
  (value) => typeof value === 'number' && value >= -100 && value <= 100,
);

const systemLanguage = navigator.languages.map(languageOf).find((language) => language !== null) ?? 'en';

/** Whoever reads the page. */
export const reader = computed<Reader>(() =>
  readerOf(chosenLanguage.value || systemLanguage, chosenNaming.value || null),
);
export const words = computed(() => STAND_WORDS[reader.value.language]);

/** Whoever plays. */
export const settings = computed<Settings>(() => ({
  ...DEFAULT_SETTINGS,
  horn: HORNS.find(({ id }) => id === hornId.value) ?? DEFAULT_SETTINGS.horn,
  toleranceCents: toleranceCents.value,
  handOffsetCents: handOffsetCents.value,
}));
