/** The notes an étude may use: those that this player, on this horn, plays without doubt. */

import { openPitchCents, type Tube, tubesOf } from '../horn/horn.ts';
import type { HandSign } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import {
  type Pitch,
  pitchCents,
  soundingCents,
  spellCents,
  type Transposition,
  transpositionCents,
} from '../pitch/pitch.ts';
import { examine } from '../rules/examine.ts';
import { fingerings, type HandState, type Verdict } from '../stopping/fingering.ts';
import { playerAt, unmarkedHandState } from '../stopping/naturalHorn.ts';
import { stop } from '../stopping/stopping.ts';
import { bar, type EtudeNote, FOUR_FOUR, note } from './bar.ts';
import { etudePassage } from './etudePassage.ts';
import { type Degree, type Key, spellInKey } from './key.ts';
import type { Bend, Tone } from './tone.ts';

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

/**
 * The tones of a scale for a player, lowest first.
 * @param allowsRisky true to have those, too, that may fail
 */
export function tonesOf(
  scale: readonly Degree[],
  player: Settings,
  transposition: Transposition,
  allowsRisky: boolean,
): readonly Tone[] {
  const tones: Tone[] = [];
  for (const { written, degree } of scale) {
    const hand = player.horn.natural ? naturalHornSign(written, player, transposition) : 'stopped';
    const verdict = verdictFor(written, hand, player, transposition);
    const isOpenable = player.horn.natural || verdictFor(written, 'open', player, transposition) === 'sure';
    if (verdict === 'impossible' || !isOpenable || (verdict === 'risky' && !allowsRisky)) continue;
    tones.push({ written, degree, open: written, openDegree: degree, hand, isRisky: verdict === 'risky' });
  }
  if (!player.horn.natural) return tones;
  const open = tones.filter(({ hand, isRisky }) => hand === 'open' && !isRisky);
  return tones.map((tone) => {
    const beside = nearest(tone, open);
    return { ...tone, open: beside.written, openDegree: beside.degree };
  });
}

/** The open note nearest to a tone, the higher of two: from there the hand leads down. */
function nearest(tone: Tone, open: readonly Tone[]): Tone {
  let best = open[0] ?? tone;
  for (const each of open)
    if (gap(each.written, tone.written) <= gap(best.written, tone.written)) best = each;
  return best;
}

function gap(a: Pitch, b: Pitch): number {
  return Math.abs(pitchCents(a) - pitchCents(b));
}

/** The sign at a note of a natural horn. */
export function naturalHornSign(written: Pitch, player: Settings, transposition: Transposition): HandSign {
  const state = unmarkedHandState(soundingCents(written, transposition), player);
  return state === 'stopped' || state === 'half-stopped' ? state : 'open';
}

/** Bends are practised on the usual valves, up to 13: five semitones. From memory: 123 is too far out to be trusted. */
const WIDEST_VALVES = 5;

/** Every bend between two written notes of a range that this player does without doubt, the smallest first. */
export function bendsBetween(
  low: Pitch,
  high: Pitch,
  key: Key,
  player: Settings,
  transposition: Transposition,
): readonly Bend[] {
  const all = BENDS.get(player) ?? allBends(player, transposition);
  BENDS.set(player, all);
  const spelled = SPELLED.get(all) ?? new WeakMap<Key, readonly Bend[]>();
  SPELLED.set(all, spelled);
  const inKey = spelled.get(key) ?? all.map((bend) => spelledIn(key, bend));
  spelled.set(key, inKey);
  return inKey.filter(
    ({ open, stopped }) => pitchCents(open) <= pitchCents(high) && pitchCents(stopped) >= pitchCents(low),
  );
}

/** What a player can bend does not change, and asking is dear; nor does how it is spelled in a key. */
const BENDS = new WeakMap<Settings, readonly Bend[]>();
const SPELLED = new WeakMap<readonly Bend[], WeakMap<Key, readonly Bend[]>>();

function spelledIn(key: Key, bend: Bend): Bend {
  return {
    ...bend,
    open: spellInKey(key, pitchCents(bend.open)),
    stopped: spellInKey(key, pitchCents(bend.stopped)),
  };
}

function allBends(player: Settings, transposition: Transposition): readonly Bend[] {
  const crooked = playerAt(player, transposition);
  const bends: Bend[] = [];
  const seen = new Set<string>();
  const toWritten = transpositionCents(transposition);
  for (const side of crooked.horn.sides) {
    if (!side.stoppable || side.stoppingValveCents > 0) continue;
    for (const tube of tubesOf(side)) {
      if (tube.combination.rarer || tube.combination.semitones > WIDEST_VALVES) continue;
      for (let harmonic = 3; harmonic <= 12; harmonic++) {
        const isUsual = side.stoppedHarmonics.length === 0 || side.stoppedHarmonics.indexOf(harmonic) >= 0;
        const closed = stop(tube, harmonic, player.handOffsetCents);
        if (!isUsual || closed.limit) continue;
        const open = spellCents(openPitchCents(tube, harmonic) - toWritten, 'flat');
        const stopped = spellCents(closed.stoppedCents - toWritten, 'flat');
        const name = `${pitchCents(open)} ${pitchCents(stopped)}`;
        if (seen.has(name) || pitchCents(stopped) >= pitchCents(open)) continue;
        const { valves, semitones } = tube.combination;
        const bend: Bend = {
          open,
          stopped,
          hand: player.horn.natural ? naturalHornSign(stopped, player, transposition) : 'stopped',
          harmonic,
          side: side.name,
          valves,
          semitones,
          dropCents: closed.dropCents,
        };
        if (!isSureBend(bend, tube, player, transposition)) continue;
        seen.add(name);
        bends.push(bend);
      }
    }
  }
  return bends.sort((a, b) => a.dropCents - b.dropCents || a.semitones - b.semitones);
}

/** Asks the examination itself, so that an étude and a check can never disagree: sure, and on this very tube. */
function isSureBend(
  { open, stopped, harmonic }: Bend,
  tube: Tube,
  player: Settings,
  transposition: Transposition,
): boolean {
  const notesOfBend: EtudeNote[] = [
    { ...note(open, 2, 'open'), sign: 'open', slides: true },
    { ...note(stopped, 2, 'stopped'), sign: 'stopped', slides: true },
    { ...note(open, 2, 'open'), sign: 'open' },
  ];
  const { notes, findings } = examine(etudePassage([bar(FOUR_FOUR, notesOfBend)], transposition, 60), player);
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
