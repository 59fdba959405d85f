/** Repairs in words. */
import { SIGN_TEXTS } from '../data/signs.ts';
import type { Repair, RepairStep } from '../repairs/repair.ts';
import type { RepairWords } from './areas/repairs.ts';
import { valvesText } from './fingerings.ts';
import type { Reader } from './language.ts';
import { noteName } from './noteNames.ts';

/** What is said before and after a repair. */
export function repairWords({ words }: Reader): RepairWords {
  return words.repairs;
}

/**
 * A repair in a few words, as a button carries them.
 * @example
 * const steps = [{ change: 'note', noteIndex: 0, written: parsePitch('G4') }];
 * repairText({ kind: 'other-start', steps }, ENGLISH_READER) // => 'Start from G4'
 */
export function repairText({ kind, steps }: Repair, reader: Reader): string {
  const { labels } = reader.words.repairs;
  const notes = new Set(steps.map(({ noteIndex }) => noteIndex));
  return labels[kind](whatOf(steps[0]!, reader), notes.size);
}

function whatOf(step: RepairStep, reader: Reader): string {
  switch (step.change) {
    case 'note':
      return noteName(step.written, reader);
    case 'sign':
      return step.sign ? SIGN_TEXTS[step.sign] : '';
    case 'fingering':
      return step.fingering ? valvesText(step.fingering, reader) : '';
    case 'word':
      return reader.words.repairs.quoted(step.text);
    case 'join':
      return '';
  }
}

export type { RepairWords } from './areas/repairs.ts';
