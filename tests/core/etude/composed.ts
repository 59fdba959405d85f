/** Études for tests, composed as a request says. */
import type { Bar, EtudeNote } from '../../../core/etude/bar.ts';
import { composeEtude } from '../../../core/etude/compose.ts';
import type { Etude, EtudeRequest } from '../../../core/etude/etude.ts';
import { etudePassage } from '../../../core/etude/etudePassage.ts';
import { parseKey } from '../../../core/etude/key.ts';
import { HORNS } from '../../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../../core/part/settings.ts';
import { type Examination, examine } from '../../../core/rules/examine.ts';

/** A usual request with some changes. */
export function request(changes: Partial<EtudeRequest> = {}): EtudeRequest {
  return {
    kind: 'match',
    key: parseKey('C'),
    level: 1,
    bars: 16,
    tempo: null,
    low: null,
    high: null,
    seed: 1,
    player: DEFAULT_SETTINGS,
    ...changes,
  };
}

/** What is composed for it. */
export function compose(changes: Partial<EtudeRequest> = {}): Etude {
  const result = composeEtude(request(changes));
  if (!result.ok) throw new Error(result.reason);
  return result.etude;
}

/** The usual player on another horn. */
export function playerOf(id: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find((horn) => horn.id === id)! };
}

export const eventsOf = (bars: readonly Bar[]): EtudeNote[] => bars.flatMap(({ notes }) => notes);

export const soundingNotes = ({ bars }: Etude): EtudeNote[] =>
  eventsOf(bars).filter(({ written }) => written !== null);

export const examined = ({ bars, transposition, tempo, player }: Etude): Examination =>
  examine(etudePassage(bars, transposition, tempo), player);

export const seeds = (count: number): number[] => Array.from({ length: count }, (_, i) => i);
