/** What the user chose in the panel, kept with the score and as the user's default. */
import {
  DEFAULT_SETTINGS,
  HORNS,
  NOTE_NAMINGS,
  type NoteNaming,
  type Settings,
  SHOW_USUAL,
  type Show,
} from '../../core/index.ts';
import { keepBeside, readBeside } from './besidePlugin.ts';
import type { Host, HostScore } from './hostApi.ts';

/** The panel's controls. Horns by their id. */
export interface Choice {
  readonly horn: string;
  /** How notes are named; null for what is usual in the editor's language. */
  readonly noteNaming: NoteNaming | null;
  /** In cents, 0–100. */
  readonly tolerance: number;
  /** In cents, −60 to 60. */
  readonly handOffset: number;
  readonly show: Show;
  /** Makes bars of a part wider where their marks have no room side by side. */
  readonly widerBars: boolean;
}

/** The printed things that are on or off. */
export type Switches = Omit<Show, 'repeat' | 'quick'>;

export const DEFAULT_CHOICE: Choice = {
  horn: DEFAULT_SETTINGS.horn.id,
  noteNaming: null,
  tolerance: DEFAULT_SETTINGS.toleranceCents,
  handOffset: DEFAULT_SETTINGS.handOffsetCents,
  show: SHOW_USUAL,
  widerBars: true,
};

export const TOLERANCE_RANGE = { from: 0, to: 100 } as const;
export const HAND_OFFSET_RANGE = { from: -60, to: 60 } as const;

/** The name under which a score carries our choice among its properties. */
const TAG = 'bellhand';
/** Beside the plugin. */
const DEFAULT_FILE = 'bellhand-choice.json';

/** The choice kept with the score, else the user's own default, else ours. */
export function chosenFor(host: Host, score: HostScore | null): Choice {
  const kept = score ? score.metaTag(TAG) : '';
  return parsed(kept) ?? parsed(readBeside(host, DEFAULT_FILE)) ?? DEFAULT_CHOICE;
}

/** Keeps the choice with the score. The host saves it with the next save; undo does not know of it. */
export function keepWithScore(score: HostScore, choice: Choice): void {
  const text = JSON.stringify(choice);
  if (score.metaTag(TAG) !== text) score.setMetaTag(TAG, text);
}

/** Keeps the choice for scores that carry none. */
export function keepAsDefault(host: Host, choice: Choice): void {
  keepBeside(host, DEFAULT_FILE, JSON.stringify(choice));
}

/** The settings the core works with. */
export function settingsOf(choice: Choice): Settings {
  return {
    ...DEFAULT_SETTINGS,
    horn: HORNS.find(({ id }) => id === choice.horn) ?? DEFAULT_SETTINGS.horn,
    toleranceCents: choice.tolerance,
    handOffsetCents: choice.handOffset,
  };
}

/** Reads what an earlier version, or a curious user, left; what makes no sense falls back to the default. */
function parsed(text: string): Choice | null {
  let kept: { [field: string]: unknown };
  try {
    kept = JSON.parse(text) as { [field: string]: unknown };
  } catch {
    return null;
  }
  if (typeof kept !== 'object' || kept === null) return null;
  const show = (typeof kept.show === 'object' && kept.show !== null ? kept.show : {}) as {
    [field: string]: unknown;
  };
  const shown = (field: keyof Switches): boolean => {
    const value = show[field];
    return typeof value === 'boolean' ? value : SHOW_USUAL[field];
  };
  return {
    horn: HORNS.some(({ id }) => id === kept.horn) ? (kept.horn as string) : DEFAULT_CHOICE.horn,
    noteNaming: NOTE_NAMINGS.find((naming) => naming === kept.noteNaming) ?? null,
    tolerance: within(kept.tolerance, TOLERANCE_RANGE, DEFAULT_CHOICE.tolerance),
    handOffset: within(kept.handOffset, HAND_OFFSET_RANGE, DEFAULT_CHOICE.handOffset),
    show: {
      fingered: shown('fingered'),
      valves: shown('valves'),
      natural: shown('natural'),
      verdict: shown('verdict'),
      colour: shown('colour'),
      repeat: show.repeat === 'all' ? 'all' : SHOW_USUAL.repeat,
      quick: show.quick === 'full' ? 'full' : SHOW_USUAL.quick,
    },
    widerBars: kept.widerBars !== false,
  };
}

function within(value: unknown, { from, to }: { from: number; to: number }, otherwise: number): number {
  return typeof value === 'number' && value >= from && value <= to ? value : otherwise;
}
