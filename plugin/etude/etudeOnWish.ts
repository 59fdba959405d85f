/** Études and lessons from plain values, as a panel gathers them: one call, one score text. Runs in the editor's script engine. */
import {
  composeEtude,
  composeLesson,
  ENGLISH_READER,
  type EtudeKind,
  type EtudeResult,
  etudeSheet,
  type LessonResult,
  type Level,
  parseKey,
  parsePitch,
  type Reader,
  type Settings,
} from '../../core/index.ts';
import { sheetText } from './sheetText.ts';
import { treeText } from './treeText.ts';

/** What a panel asks for. */
export interface EtudeWish {
  /** A lesson takes its own bars and tempo. */
  readonly kind: EtudeKind | 'lesson';
  /** `C`, `Bb`, `F# minor`, … */
  readonly key: string;
  readonly level: Level;
  /** A multiple of four. */
  readonly bars: number;
  /** Beats a minute, or null for the kind's own. */
  readonly tempo: number | null;
  /** Note names such as `C4`, or null for what suits level and horn. */
  readonly low: string | null;
  readonly high: string | null;
  readonly seed: number;
}

/** The score, or one sentence that says why there is none. */
export type WishedEtude =
  | { readonly ok: true; readonly title: string; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/** The score text of an étude with its fingerings. Never throws for a value a user may type. @param reader in whose language the page is written; English by default */
export function etudeOnWish(wish: EtudeWish, player: Settings, reader: Reader = ENGLISH_READER): WishedEtude {
  try {
    const { level, seed, bars, tempo } = wish;
    const key = parseKey(wish.key);
    const low = wish.low === null ? null : parsePitch(wish.low);
    const high = wish.high === null ? null : parsePitch(wish.high);
    const made =
      wish.kind === 'lesson'
        ? composeLesson({ level, key, low, high, seed, player, reader })
        : onItsPage(
            composeEtude({ kind: wish.kind, key, level, bars, tempo, low, high, seed, player, reader }),
            reader,
          );
    if (!made.ok) return made;
    const { sheet } = made;
    return { ok: true, title: sheet.title, text: sheetText(sheet, player, 'marked', treeText) };
  } catch (fault) {
    if (fault instanceof RangeError) return { ok: false, reason: fault.message };
    throw fault;
  }
}

function onItsPage(made: EtudeResult, reader: Reader): LessonResult {
  return made.ok ? { ok: true, sheet: etudeSheet(made.etude, reader) } : made;
}
