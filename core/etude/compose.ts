/** Composes études. */
import { type Pitch, pitchCents, printPitch, spellCents, type Transposition } from '../pitch.ts';
import type { Settings } from '../settings.ts';
import { composeBend } from './bend.ts';
import { composeChange } from './change.ts';
import {
  type EtudeKind,
  type EtudeNote,
  type EtudeRequest,
  type EtudeResult,
  FASTEST_TEMPO,
  type Level,
  LONGEST_BARS,
  PHRASE_BARS,
  SHORTEST_BARS,
  SLOWEST_TEMPO,
} from './etude.ts';
import { planPhrases } from './harmony.ts';
import { type Degree, printKey, scaleBetween } from './key.ts';
import { composeMatch } from './match.ts';
import { type Bend, bendsBetween, naturalHornNotes, naturalHornSign, stoppableNotes } from './palette.ts';
import { composePhrase } from './phrase.ts';
import { HIGHEST_SEED, seededRandom } from './random.ts';
import { composeScale } from './scale.ts';
import type { Draft, Workshop } from './workshop.ts';

/** A kind of étude: its name, what it trains and how it goes. */
export interface KindOfEtude {
  readonly kind: EtudeKind;
  readonly title: string;
  /** One line that says what it trains. */
  readonly trains: string;
  /** Beats a minute where none is asked for. */
  readonly tempo: number;
  compose(workshop: Workshop): Draft;
}

/** Every kind, in the order in which a pupil meets them. */
export const ETUDE_KINDS: readonly KindOfEtude[] = [
  {
    kind: 'match',
    title: 'The Same Note Twice',
    trains: 'Play each note open, then find the same pitch and the same strength with the hand closed.',
    tempo: 66,
    compose: composeMatch,
  },
  {
    kind: 'bend',
    title: 'Leaning on the Door',
    trains: 'Keep valves and lip still: the closing hand lets the tone sink, the opening hand lets it rise.',
    tempo: 60,
    compose: composeBend,
  },
  {
    kind: 'scale',
    title: 'Stairs in the Dark',
    trains: 'Scales and broken chords with the hand closed: know the fingerings, centre every note.',
    tempo: 72,
    compose: composeScale,
  },
  {
    kind: 'phrase',
    title: 'Over the Valley',
    trains: 'Answer every phrase with the hand closed, softer, but with the same shape and the same pitch.',
    tempo: 76,
    compose: composePhrase,
  },
  {
    kind: 'change',
    title: 'Swinging Gate',
    trains:
      'Close and open in ever shorter notes: the hand moves with the beat and the pitch stays where it is.',
    tempo: 60,
    compose: composeChange,
  },
];

/** @source commonPractice */
const ADVICE = 'Rest as long as you have played. Stop when the lip tires or the hand hurts.';

/** Fewer bends than this are no étude. */
const FEWEST_BENDS = 3;

/**
 * Composes an étude.
 * @returns the étude, or why this horn or range has none
 * @throws {RangeError} when length, tempo, seed, level or range lie outside what their fields allow
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
      trains: kind.trains,
      advice: ADVICE,
      seed,
      key,
      meter,
      tempo,
      transposition,
      bars: withoutRepeats(bars),
    },
  };
}

/** How a part for this horn is written: in F, or in the key of a natural horn's crook, whose 4th harmonic is written C4. */
export function transpositionOf({ horn }: Settings): Transposition {
  const crook = horn.sides[0]!;
  const chromatic = horn.natural ? Math.round((crook.fundamentalCents + 2400 - 6000) / 100) : -7;
  return { chromatic, diatonic: Math.round((chromatic * 7) / 12), octaveChange: 0 };
}

/** Leaves out what the page says already: a dynamic that still holds, the open sign of a hand that is open. */
function withoutRepeats(bars: Draft['bars']): Draft['bars'] {
  let dynamic: EtudeNote['dynamic'] = null;
  let isOpen = false;
  return bars.map((bar) =>
    bar.map((each) => {
      if (!each.written) return each;
      const sign = each.sign === 'open' && isOpen ? null : each.sign;
      const printed = each.dynamic === dynamic ? null : each.dynamic;
      isOpen = each.sign !== 'stopped';
      dynamic = each.dynamic ?? dynamic;
      return { ...each, sign, dynamic: printed };
    }),
  );
}

function checkRequest({ bars, tempo, seed, level, low, high }: EtudeRequest): void {
  if (!(bars >= SHORTEST_BARS && bars <= LONGEST_BARS) || bars % PHRASE_BARS !== 0)
    throw new RangeError(
      `"bars" must be a multiple of ${PHRASE_BARS} from ${SHORTEST_BARS} to ${LONGEST_BARS}, got ${bars}`,
    );
  if (tempo !== null && !(tempo >= SLOWEST_TEMPO && tempo <= FASTEST_TEMPO))
    throw new RangeError(`"tempo" must be ${SLOWEST_TEMPO}–${FASTEST_TEMPO} beats a minute, got ${tempo}`);
  if (!(seed >= 0 && seed <= HIGHEST_SEED) || seed % 1 !== 0)
    throw new RangeError(`"seed" must be an integer from 0 to ${HIGHEST_SEED}, got ${seed}`);
  if (level !== 1 && level !== 2 && level !== 3)
    throw new RangeError(`"level" must be 1, 2 or 3, got ${level}`);
  if (low && high && pitchCents(low) >= pitchCents(high))
    throw new RangeError(
      `the lowest note (${printPitch(low)}) must lie below the highest (${printPitch(high)})`,
    );
}

/** How far the usual range reaches below and above the tonic, in semitones, by level. From memory: inside the comfortable middle at first. */
const REACH: { readonly [level in Level]: readonly [below: number, above: number] } = {
  1: [1, 9],
  2: [3, 12],
  3: [5, 14],
};
/** The tonic of the usual range lies from written C4 to B4, and low tonics reach higher. */
const LOWEST_TONIC_CENTS = 6000;
/** Written G3 and A5: below, few notes can be stopped at all; above, closing hardly changes anything. */
const LOWEST_CENTS = 5500;
const HIGHEST_CENTS = 8100;

function rangeOf(request: EtudeRequest, transposition: Transposition): { low: Pitch; high: Pitch } {
  const { key, level, player } = request;
  const tonic = LOWEST_TONIC_CENTS + ((((pitchCents(key.tonic) - LOWEST_TONIC_CENTS) % 1200) + 1200) % 1200);
  // A tonic in the upper half is approached from the fifth below.
  const shift = tonic - LOWEST_TONIC_CENTS > 500 ? -500 : 0;
  let low = Math.max(LOWEST_CENTS, tonic + shift - 100 * REACH[level][0]);
  let high = Math.min(HIGHEST_CENTS, tonic + shift + 100 * REACH[level][1] + (level === 1 ? 300 : 0));
  // A horn that stops few notes surely needs the range where they lie.
  for (let wider = 0; wider < 6 && tooFew(low, high); wider++) {
    low = Math.max(LOWEST_CENTS, low - 200);
    high = Math.min(HIGHEST_CENTS, high + 300);
  }
  return {
    low: request.low ?? spellCents(low, 'flat'),
    high: request.high ?? spellCents(high, 'flat'),
  };

  function tooFew(from: number, to: number): boolean {
    if (request.low || request.high) return false;
    const [bottom, top] = [spellCents(from, 'flat'), spellCents(to, 'flat')];
    return request.kind === 'bend'
      ? bendsBetween(bottom, top, key, player, transposition).length < FEWEST_BENDS + 2
      : (player.horn.natural ? naturalHornNotes : stoppableNotes)(
          scaleBetween(key, bottom, top),
          player,
          transposition,
        ).length < 6;
  }
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
