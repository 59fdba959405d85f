/** Composes études. */
import { checkInteger, checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { checkSettings } from '../part/settings.ts';
import { pitchCents, printPitch } from '../pitch/pitch.ts';
import { type Examination, examine } from '../rules/examine.ts';
import { obstacleText } from '../words/etudes.ts';
import { ENGLISH_READER } from '../words/language.ts';
import { type Meter, printMeter } from './bar.ts';
import { difficultyOf } from './difficulty.ts';
import {
  type Etude,
  type EtudeRequest,
  type EtudeResult,
  FASTEST_TEMPO,
  LONGEST_BARS,
  PHRASE_BARS,
  SHORTEST_BARS,
  SLOWEST_TEMPO,
} from './etude.ts';
import { etudePassage } from './etudePassage.ts';
import { finished } from './finish.ts';
import { asIn } from './key.ts';
import type { KindOfEtude } from './kinds/kind.ts';
import { ETUDE_KINDS } from './kinds.ts';
import { type Case, LAWS } from './laws.ts';
import { LEVELS, type LevelPlan } from './levels.ts';
import { materialsFor } from './materials.ts';
import { tonesOf } from './palette.ts';
import { drawFrom, HIGHEST_SEED, pick } from './random.ts';
import { tempoIn, tempoWords } from './tempo.ts';
import { isGapped } from './tone.ts';

/** What is unplayable counts more than all that is wrong, and that more than what is dull. */
const WEIGHTS = { unplayable: 100, wrong: 10, dull: 1, forgiven: 0.1 } as const;
/** So often is an étude begun anew when it breaks a law. */
const ATTEMPTS = 40;
/** So often where nothing but what such a horn is forgiven is wrong. */
const SCANT_ATTEMPTS = 8;
/** In the first of them, levels that allow risky notes use some. */
const DARING_ATTEMPTS = 6;

/**
 * Composes an étude.
 * @returns the étude, or why this horn or range has none
 * @throws {TypeError} or {RangeError} when kind, key, length, tempo, seed, level, range or player are not what they may be
 */
export function composeEtude(request: EtudeRequest): EtudeResult {
  checkObject(
    'request',
    request,
    'what is asked for: { kind, key, level, bars, tempo, low, high, seed, player }',
  );
  checkRequest(request);
  const { key, level, player, seed, bars: length, reader = ENGLISH_READER } = request;
  const kind: KindOfEtude = ETUDE_KINDS.filter((each) => each.kind === request.kind)[0]!;
  const gathered = materialsFor(kind, request);
  if (!gathered.ok) return { ok: false, reason: obstacleText(gathered.obstacle, reader) };
  const { plan, transposition, handSeconds, isAsked, sure, bends, found, daring } = gathered.materials;
  const meters = metersFor(kind, plan, request);

  const wanders = plan.isMixed && !player.horn.natural && !isGapped(sure);
  const isFew = found < MANY[kind.needs];
  const isScant = isGapped(sure);
  let best: { readonly it: Case; readonly faults: number; readonly tempo: number } | null = null;
  const isGood = (faults: number, attempt: number) =>
    faults === 0 || (attempt >= SCANT_ATTEMPTS && faults < WEIGHTS.dull);
  for (let attempt = 0; attempt < ATTEMPTS && !(best && isGood(best.faults, attempt)); attempt++) {
    const random = drawFrom(seed + 7919 * attempt);
    const meter = pick(random, meters);
    const tempo = request.tempo ?? tempoIn(kind, level, meter);
    const isDaring = plan.riskyShare > 0 && attempt < (isFew ? 1 : DARING_ATTEMPTS);
    const tones = isDaring ? daring() : sure;
    const made = kind.compose({
      random,
      key,
      level,
      plan,
      tempo,
      meter,
      length,
      tones,
      bends,
      isNatural: player.horn.natural,
      wanders,
      handSeconds,
      toneIn: (tone, other) => {
        const written = asIn(other, tone.written);
        if (pitchCents(written) === pitchCents(tone.written)) return tone;
        const [moved] = tonesOf([{ written, degree: tone.degree }], player, transposition, false);
        return moved ?? tone;
      },
    });
    const quarterSeconds = 60 / (tempo * made[0]!.meter.beatQuarters);
    const bars = finished(made, quarterSeconds);
    let examination: Examination | null = null;
    const it: Case = {
      kind,
      key,
      level,
      plan,
      bars,
      quarterSeconds,
      handSeconds,
      bends,
      isScant,
      isNatural: player.horn.natural,
      isDaring: isAsked,
      // Asked for by the last laws alone: what the others have turned away is not examined.
      get examination() {
        if (!examination) examination = examine(etudePassage(bars, transposition, tempo), player);
        return examination;
      },
    };
    const faults = faultsOf(it, best ? best.faults : Number.POSITIVE_INFINITY);
    if (!best || faults < best.faults) best = { it, faults, tempo };
  }
  const { tempo } = best!;
  const { bars, examination } = best!.it;
  const isRisky = examination.notes.map(({ verdict }) => verdict !== 'sure');
  const etude: Etude = {
    kind: request.kind,
    level,
    key,
    seed,
    tempo,
    tempoWords: tempoWords(tempo, kind.character),
    transposition,
    player,
    bars,
    difficulty: difficultyOf(bars, key, tempo, isRisky),
  };
  return { ok: true, etude };
}

/** How much a case breaks; no more than `most` is counted. */
function faultsOf(it: Case, most: number): number {
  let faults = 0;
  for (const law of LAWS) {
    if (!law.keeps(it)) faults += WEIGHTS[it.isScant && law.forgivesScant ? 'forgiven' : law.fault];
    if (faults >= most) return faults;
  }
  return faults;
}

/** A horn with fewer than these in the range has to leap between them, and to say them again. */
const MANY = { notes: 7, bends: 6 } as const;

/** The meters to draw from: the one asked for, or all in which the kind may go at its level. */
function metersFor(kind: KindOfEtude, plan: LevelPlan, { level, meter }: EtudeRequest): readonly Meter[] {
  const meters = kind.meters?.[level] ?? plan.meters;
  if (!meter) return meters;
  const found = meters.filter((each) => each.beats === meter.beats && each.beatType === meter.beatType);
  if (found.length === 0)
    throw new RangeError(
      `"meter" must be ${meters.map(printMeter).join(', ')} at this level, got ${printMeter(meter)}`,
    );
  return found;
}

function checkRequest({ kind, key, bars, tempo, seed, level, low, high, player }: EtudeRequest): void {
  checkOneOf(
    'kind',
    kind,
    ETUDE_KINDS.map((each) => each.kind),
  );
  checkObject('key', key, 'a key, as parseKey reads it');
  checkSettings(player);
  if (!(bars >= SHORTEST_BARS && bars <= LONGEST_BARS) || bars % PHRASE_BARS !== 0)
    throw new RangeError(
      `"bars" must be a multiple of ${PHRASE_BARS} from ${SHORTEST_BARS} to ${LONGEST_BARS}, got ${bars}`,
    );
  if (tempo !== null) checkNumber('tempo', tempo, SLOWEST_TEMPO, FASTEST_TEMPO);
  checkInteger('seed', seed, 0, HIGHEST_SEED);
  checkOneOf('level', level, LEVELS);
  if (low && high && pitchCents(low) >= pitchCents(high))
    throw new RangeError(
      `the lowest note (${printPitch(low)}) must lie below the highest (${printPitch(high)})`,
    );
}
