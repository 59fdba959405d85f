/** Repairs in words. */
import { SIGN_TEXTS } from '../data/signs.ts';
import type { Repair, RepairStep } from '../repairs/repair.ts';
import type { RepairWords } from './areas/repairs.ts';
import { repairs as de } from './de.ts';
import { repairs as en } from './en.ts';
import { repairs as es } from './es.ts';
import { repairs as fr } from './fr.ts';
import { repairs as it } from './it.ts';
import type { Language, Reader } from './language.ts';
import { noteName } from './noteNames.ts';

const WORDS: { readonly [language in Language]: RepairWords } = { en, de, fr, it, es };

/** What is said before and after a repair. */
export function repairWords({ language }: Reader): RepairWords {
  return WORDS[language];
}

/**
 * A repair in a few words, as a button carries them.
 * @example
 * repairText({ kind: 'other-start', steps: [{ change: 'note', noteIndex: 0, written: parsePitch('G4') }] }, ENGLISH_READER)
 * // => 'Start from G4'
 */
export function repairText({ kind, steps }: Repair, reader: Reader): string {
  const { labels } = WORDS[reader.language];
  const notes = new Set(steps.map(({ noteIndex }) => noteIndex));
  return labels[kind](whatOf(steps[0]!, reader), notes.size);
}

function whatOf(step: RepairStep, reader: Reader): string {
  switch (step.change) {
    case 'note':
      return noteName(step.written, reader);
    case 'sign':
      return step.sign ? SIGN_TEXTS[step.sign] : '';
    case 'word':
      return WORDS[reader.language].quoted(step.text);
    case 'join':
      return '';
  }
}

export type { RepairWords } from './areas/repairs.ts';
