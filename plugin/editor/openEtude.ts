/** Composes an étude or a lesson for the horn that is chosen and opens it as a score of its own. */

import {
  capital,
  ETUDE_KIND_NAMES,
  keyInModeText,
  kindWords,
  type Level,
  LONGEST_BARS,
  PHRASE_BARS,
  panelWords,
  parseKey,
  parsePitch,
  pitchCents,
  type Reader,
  type Settings,
  SHORTEST_BARS,
} from '../../core/index.ts';
import { plainPath } from './besidePlugin.ts';
import { composerBeside } from './composer.ts';
import { type Host, type HostFile, isAtLeast } from './hostApi.ts';
import type { EtudeFormView } from './panelView.ts';

/** What the panel's controls say. */
export interface EtudeForm {
  /** Places in ETUDE_KIND_NAMES, after which comes the lesson, and in ETUDE_KEYS, from 0. */
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

/** What the panel's form offers: kinds, after them the lesson; written keys; lengths. */
export function etudeFormView(reader: Reader): EtudeFormView {
  return {
    etudeKinds: ETUDE_KIND_NAMES.map((kind) => capital(kindWords(kind, reader).name)).concat(
      panelWords(reader).labels.etudeLesson,
    ),
    etudeKeys: ETUDE_KEYS.map((key) => keyInModeText(parseKey(key), reader)),
    etudeBars: { from: SHORTEST_BARS, to: LONGEST_BARS, step: PHRASE_BARS },
  };
}

/** A new étude each time; its seed stands in its text. */
const NEW_SEEDS = 10_000;

/** What became of a wish for an étude. */
export interface EtudeOutcome {
  /** One sentence for the user: the title, or why there is no étude. */
  readonly sentence: string;
  /** Where the étude lies when it is for the user to open; null when it is open, or there is none. */
  readonly path: string | null;
}

/** Composes; opens the score where the host lets a plugin do that, else says where it lies. */
export function openEtude(host: Host, form: EtudeForm, player: Settings, reader: Reader): EtudeOutcome {
  const words = panelWords(reader);
  const range = form.range.trim();
  const ends = endsOf(range);
  if (range !== '' && !ends) return { sentence: words.etudeRange(range), path: null };
  const etude = composerBeside(host).etudeOnWish(
    {
      kind: ETUDE_KIND_NAMES[form.kindIndex] ?? 'lesson',
      key: ETUDE_KEYS[form.keyIndex]!,
      level: form.level as Level,
      bars: form.bars,
      tempo: form.tempo > 0 ? form.tempo : null,
      low: ends ? ends.low : null,
      high: ends ? ends.high : null,
      seed: Math.floor(Math.random() * NEW_SEEDS),
    },
    player,
    reader,
  );
  if (!etude.ok) return { sentence: words.failed(etude.reason), path: null };
  return isAtLeast(host, 4, 0)
    ? leave(host, etude.title, etude.text, reader)
    : open(host, etude.title, etude.text, reader);
}

/** The ends of a range as a user writes it; null for what is none. */
function endsOf(range: string): { readonly low: string; readonly high: string } | null {
  const match = /^(\S+?)\s*[-–]\s*(\S+)$/.exec(range);
  if (!match) return null;
  const [, low, high] = match as unknown as [string, string, string];
  try {
    return pitchCents(parsePitch(low)) < pitchCents(parsePitch(high)) ? { low, high } : null;
  } catch {
    return null;
  }
}

/** Version 3 reads the file, names the score after it, and needs it no more once it is read. */
function open({ file, root }: Host, title: string, text: string, reader: Reader): EtudeOutcome {
  const words = panelWords(reader);
  const path = freePath(file, file.tempPath(), title);
  file.source = path;
  const isOpen = file.write(text) && Boolean(root.readScore(path));
  file.source = path;
  file.remove();
  return { sentence: isOpen ? words.etudeOpened(title) : words.etudeNotWritten(title), path: null };
}

/** Version 4 opens nothing for a plugin: the étude is put among the user's scores. */
function leave({ file, engine }: Host, title: string, text: string, reader: Reader): EtudeOutcome {
  const words = panelWords(reader);
  for (const folder of [plainPath(engine.resolvedUrl('../../Scores')), file.tempPath()]) {
    file.source = folder;
    if (!file.exists()) continue;
    const path = freePath(file, folder, title);
    file.source = path;
    if (file.write(text)) return { sentence: words.etudeWritten(title, path), path };
  }
  return { sentence: words.etudeNotWritten(title), path: null };
}

/** A path after the title that no file has yet. */
function freePath(file: HostFile, folder: string, title: string): string {
  const name = title
    .replace(/[^ \w\u00c0-\u024f-]+/g, ' ')
    .replace(/ +/g, ' ')
    .trim();
  for (let count = 1; ; count++) {
    const path = `${folder}/${name}${count > 1 ? ` ${count}` : ''}.musicxml`;
    file.source = path;
    if (!file.exists()) return path;
  }
}

/** Asks the desktop to open a file; what it opens it with, or whether at all, nobody tells. */
export function askDesktop({ engine }: Host, path: string): void {
  engine.openUrlExternally(`file://${path.charAt(0) === '/' ? '' : '/'}${encodeURI(path)}`);
}
