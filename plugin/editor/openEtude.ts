/** Composes an étude for the horn that is chosen and opens it as a score of its own. */

import {
  ETUDE_KINDS,
  type Level,
  LONGEST_BARS,
  PHRASE_BARS,
  type Settings,
  SHORTEST_BARS,
} from '../../core/index.ts';
import { etudeOnWish } from '../etude/etudeOnWish.ts';
import { type Host, isAtLeast } from './hostApi.ts';
import { filled, type Words } from './languages.ts';

/** What the panel's controls say. */
export interface EtudeForm {
  /** Places in ETUDE_KINDS and ETUDE_KEYS, from 0. */
  readonly kindIndex: number;
  readonly keyIndex: number;
  readonly level: number;
  readonly bars: number;
  /** Beats a minute; 0 for what suits the kind. */
  readonly tempo: number;
  /** The lowest and highest written note as in `C4-G5`; empty for what suits the level. */
  readonly range: string;
}

/** The written keys that are offered, in the order of the list. */
export const ETUDE_KEYS = [
  'C',
  'G',
  'D',
  'A',
  'F',
  'Bb',
  'Eb',
  'Ab',
  'Am',
  'Em',
  'Bm',
  'Dm',
  'Gm',
  'Cm',
] as const;

/** The lengths that are offered, in bars. */
export const ETUDE_BARS = { from: SHORTEST_BARS, to: LONGEST_BARS, step: PHRASE_BARS } as const;

/** A new étude each time; its seed stands in its text. */
const NEW_SEEDS = 10_000;

/** Composes and opens. @returns one sentence for the user: the title, or why there is no étude */
export function openEtude(host: Host, form: EtudeForm, player: Settings, words: Words): string {
  const range = form.range.trim();
  const ends = /^(\S+?)\s*[-–]\s*(\S+)$/.exec(range);
  if (range !== '' && !ends) return filled(words.etudeRange, { range });
  const etude = etudeOnWish(
    {
      kind: ETUDE_KINDS[form.kindIndex]!.kind,
      key: ETUDE_KEYS[form.keyIndex]!,
      level: form.level as Level,
      bars: form.bars,
      tempo: form.tempo > 0 ? form.tempo : null,
      low: ends ? ends[1]! : null,
      high: ends ? ends[2]! : null,
      seed: Math.floor(Math.random() * NEW_SEEDS),
    },
    player,
  );
  if (!etude.ok) return filled(words.failed, { reason: etude.reason });
  const path = `${host.file.tempPath()}/bellhand-etude-${Date.now()}.musicxml`;
  host.file.source = path;
  if (!host.file.write(etude.text) || !open(host, path)) return filled(words.etudeNotOpened, { path });
  return filled(words.etudeOpened, { title: etude.title });
}

/** Version 3 reads a file itself; version 4 leaves it to the desktop, which hands it to the editor. */
function open(host: Host, path: string): boolean {
  if (!isAtLeast(host, 4, 0)) return Boolean(host.root.readScore(path));
  return host.engine.openUrlExternally(`file://${path.charAt(0) === '/' ? '' : '/'}${encodeURI(path)}`);
}
