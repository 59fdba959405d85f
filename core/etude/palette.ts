/** The notes an étude may use: those that this player, on this horn, plays without doubt. */

import { openPitchCents, type Tube, tubesOf } from '../horn/horn.ts';
import type { HandSign } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import {
  type Pitch,
  pitchCents,
  soundingCents,
  type Transposition,
  transpositionCents,
} from '../pitch/pitch.ts';
import { examine } from '../rules/examine.ts';
import { fingerings, type HandState, type Verdict } from '../stopping/fingering.ts';
import { unmarkedHandState } from '../stopping/naturalHorn.ts';
import { stop } from '../stopping/stopping.ts';
import { type EtudeNote, FOUR_FOUR } from './bar.ts';
import { etudePassage } from './etudePassage.ts';
import { type Degree, type Key, spellInKey } from './key.ts';

/** How surely a written note can be played in a hand state. */
export function verdictFor(
  written: Pitch,
  state: HandState,
  player: Settings,
  transposition: Transposition,
): Verdict {
  const first = fingerings(soundingCents(written, transposition), state, player)[0];
  return first ? first.verdict : 'impossible';
}

/** Fewer notes than this make no tune, so that a horn that stops few notes surely also lends its risky ones. */
const FEWEST_NOTES = 5;

/**
 * The notes of a scale that can be stopped, and played open too: the sure ones, or those and the risky ones where
 * the sure ones are too few.
 */
export function stoppableNotes(
  scale: readonly Degree[],
  player: Settings,
  transposition: Transposition,
): readonly Degree[] {
  const openable = scale.filter(
    ({ written }) => verdictFor(written, 'open', player, transposition) !== 'impossible',
  );
  const sure = openable.filter(
    ({ written }) => verdictFor(written, 'stopped', player, transposition) === 'sure',
  );
  if (sure.length >= FEWEST_NOTES) return sure;
  return openable.filter(
    ({ written }) => verdictFor(written, 'stopped', player, transposition) !== 'impossible',
  );
}

/**
 * The notes of a scale that a natural horn plays, open or by the hand: the sure ones, or those and the risky ones where
 * the sure ones are too few.
 */
export function naturalHornNotes(
  scale: readonly Degree[],
  player: Settings,
  transposition: Transposition,
): readonly Degree[] {
  const verdictOf = ({ written }: Degree) => {
    const state = unmarkedHandState(soundingCents(written, transposition), player);
    return verdictFor(written, state, player, transposition);
  };
  const sure = scale.filter((each) => verdictOf(each) === 'sure');
  return sure.length >= FEWEST_NOTES ? sure : scale.filter((each) => verdictOf(each) !== 'impossible');
}

/** The sign at a note of a natural horn. */
export function naturalHornSign(written: Pitch, player: Settings, transposition: Transposition): HandSign {
  const state = unmarkedHandState(soundingCents(written, transposition), player);
  return state === 'stopped' || state === 'half-stopped' ? state : 'open';
}

/** A tone that the hand takes down and lets up again on one fingering. */
export interface Bend {
  readonly open: Pitch;
  readonly stopped: Pitch;
  /** The harmonic number, so that neighbours on the same harmonic can follow each other. */
  readonly harmonic: number;
}

/** Bends are practised on the usual valves, up to 23: four semitones. @source smalley (its hand positions use no others) */
const WIDEST_VALVES = 4;

/** Every bend between two written notes of a range that this player does without doubt, lowest first. */
export function bendsBetween(
  low: Pitch,
  high: Pitch,
  key: Key,
  player: Settings,
  transposition: Transposition,
): readonly Bend[] {
  const bends: Bend[] = [];
  const seen = new Set<string>();
  const toWritten = transpositionCents(transposition);
  for (const side of player.horn.sides) {
    if (!side.stoppable || side.stoppingValveCents > 0) continue;
    for (const tube of tubesOf(side)) {
      if (tube.combination.rarer || tube.combination.semitones > WIDEST_VALVES) continue;
      for (let harmonic = 3; harmonic <= 12; harmonic++) {
        const isUsual = side.stoppedHarmonics.length === 0 || side.stoppedHarmonics.indexOf(harmonic) >= 0;
        const closed = stop(tube, harmonic, player.handOffsetCents);
        if (!isUsual || closed.limit) continue;
        const open = spellInKey(key, openPitchCents(tube, harmonic) - toWritten);
        const stopped = spellInKey(key, closed.stoppedCents - toWritten);
        const isInRange = pitchCents(open) <= pitchCents(high) && pitchCents(stopped) >= pitchCents(low);
        const name = `${pitchCents(open)} ${pitchCents(stopped)}`;
        if (!isInRange || seen.has(name) || pitchCents(stopped) >= pitchCents(open)) continue;
        const bend = { open, stopped, harmonic };
        if (!isSureBend(bend, tube, player, transposition)) continue;
        seen.add(name);
        bends.push(bend);
      }
    }
  }
  return bends.sort((a, b) => pitchCents(a.open) - pitchCents(b.open) || a.harmonic - b.harmonic);
}

/** Asks the examination itself, so that an étude and a check can never disagree: sure, and on this very tube. */
function isSureBend(
  { open, stopped, harmonic }: Bend,
  tube: Tube,
  player: Settings,
  transposition: Transposition,
): boolean {
  const bare = { slur: null, breath: false, dynamic: null, quarters: 2 } as const;
  const bar: EtudeNote[] = [
    { ...bare, written: open, sign: 'open', slides: true },
    { ...bare, written: stopped, sign: 'stopped', slides: true },
    { ...bare, written: open, sign: 'open', slides: false },
  ];
  const { notes, findings } = examine(etudePassage([bar], transposition, FOUR_FOUR, 60), player);
  return (
    findings.length === 0 &&
    notes.every(
      ({ fingering, verdict }) =>
        verdict === 'sure' &&
        fingering !== null &&
        fingering.tube === tube &&
        fingering.harmonic === harmonic,
    )
  );
}
