/** Composes études. */
import { checkInteger, checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { checkSettings } from '../part/settings.ts';
import { type Pitch, pitchCents, printPitch } from '../pitch/pitch.ts';
import {
  type EtudeRequest,
  type EtudeResult,
  FASTEST_TEMPO,
  LEVELS,
  LONGEST_BARS,
  PHRASE_BARS,
  SHORTEST_BARS,
  SLOWEST_TEMPO,
} from './etude.ts';
import { finished } from './finish.ts';
import { planPhrases } from './harmony.ts';
import { type Degree, printKey, scaleBetween } from './key.ts';
import { ETUDE_KINDS } from './kinds.ts';
import { type Bend, bendsBetween, naturalHornNotes, naturalHornSign, stoppableNotes } from './palette.ts';
import { HIGHEST_SEED, seededRandom } from './random.ts';
import { rangeOf } from './range.ts';
import { transpositionOf } from './transposition.ts';

/** @source commonPractice */
const ADVICE = 'Rest as long as you have played. Stop when the lip tires or the hand hurts.';

/** Fewer bends than this are no étude. */
const FEWEST_BENDS = 3;

/**
 * Composes an étude.
 * @returns the étude, or why this horn or range has none
 * @throws {TypeError} or {RangeError} when kind, key, length, tempo, seed, level, range or player are not what they may be
 */
export function composeEtude(request: EtudeRequest): EtudeResult {
  checkRequest(request);
  const { key, level, player, seed } = request;
  const kind = ETUDE_KINDS.filter((each) => each.kind === request.kind)[0]!;
  const transposition = transpositionOf(player);
  const { low, high } = rangeOf(request, transposition);
  const needsBends = request.kind === 'bend';
  const isNatural = player.horn.natural;
  const notesOf = isNatural ? naturalHornNotes : stoppableNotes;
  const notes = notesOf(scaleBetween(key, low, high), player, transposition);
  const bends = needsBends ? bendsBetween(low, high, key, player, transposition) : [];
  const lacking = whatLacks(request, notes, bends, low, high);
  if (lacking) return { ok: false, reason: lacking };

  const random = seededRandom(seed);
  // The first draws of neighbouring seeds lie close together.
  random();
  const tempo = request.tempo ?? kind.tempo;
  const phrases = planPhrases(random, request.bars / PHRASE_BARS);
  const { meter, bars } = kind.compose({
    random,
    key,
    level,
    tempo,
    notes,
    hand: (written) => (isNatural ? naturalHornSign(written, player, transposition) : 'stopped'),
    hasOpenModel: !isNatural,
    bends,
    phrases,
  });
  return {
    ok: true,
    etude: {
      kind: request.kind,
      title: kind.title,
      subtitle: `${capital(player.horn.label)}, ${printKey(key)}, level ${level}, seed ${seed}`,
      trains: (isNatural && kind.trainsOnNaturalHorn) || kind.trains,
      advice: ADVICE,
      seed,
      key,
      meter,
      tempo,
      transposition,
      bars: finished(bars, 60 / (tempo * meter.beatQuarters)),
    },
  };
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

const FEWEST_SCALE_NOTES = 3;

function whatLacks(
  { kind, player }: EtudeRequest,
  notes: readonly Degree[],
  bends: readonly Bend[],
  low: Pitch,
  high: Pitch,
): string | null {
  if (player.horn.natural && kind !== 'bend' && kind !== 'scale')
    return 'a natural horn has no second fingering for the same note: choose the kind bend or scale';
  const found = kind === 'bend' ? bends.length : notes.length;
  const needed = kind === 'bend' ? FEWEST_BENDS : FEWEST_SCALE_NOTES;
  if (found >= needed) return null;
  const what =
    kind === 'bend'
      ? 'tones the hand can take down and let up again'
      : 'notes of the key that can be stopped';
  return `from ${printPitch(low)} to ${printPitch(high)} a ${player.horn.label} has ${found === 0 ? 'no' : `only ${found}`} ${what}: choose a wider range, another key, kind or horn`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
