/** Which notes an étude moves among where nobody says: what suits the key, the level and the horn. */
import { type Pitch, pitchCents, spellCents, type Transposition } from '../pitch/pitch.ts';
import type { EtudeRequest } from './etude.ts';
import { scaleBetween } from './key.ts';
import type { Level } from './level.ts';
import { bendsBetween, naturalHornNotes, stoppableNotes } from './palette.ts';
import type { KindOfEtude } from './workshop.ts';

/** How far the usual range reaches below and above the tonic, in semitones, by level. From memory: inside the comfortable middle at first. */
const REACH: { readonly [level in Level]: readonly [below: number, above: number] } = {
  1: [1, 12],
  2: [3, 12],
  3: [5, 14],
};
/** The tonic of the usual range lies from written C4 to B4, and low tonics reach higher. */
const LOWEST_TONIC_CENTS = 6000;
/** Written G3 and A5: below, few notes can be stopped at all; above, closing hardly changes anything. */
const LOWEST_CENTS = 5500;
const HIGHEST_CENTS = 8100;

/** Fewer scale notes or bends than this make the range too narrow. */
const FEWEST_NOTES = 6;
const FEWEST_BENDS = 5;

/** The lowest and highest written note of an étude. */
export function rangeOf(
  request: EtudeRequest,
  needs: KindOfEtude['needs'],
  transposition: Transposition,
): { low: Pitch; high: Pitch } {
  const [below, above] = REACH[request.level];
  const tonic =
    LOWEST_TONIC_CENTS + ((((pitchCents(request.key.tonic) - LOWEST_TONIC_CENTS) % 1200) + 1200) % 1200);
  // A tonic in the upper half is approached from the fourth below.
  const middle = tonic - LOWEST_TONIC_CENTS > 500 ? tonic - 500 : tonic;
  let low = Math.max(LOWEST_CENTS, middle - 100 * below);
  let high = Math.min(HIGHEST_CENTS, middle + 100 * above);
  if (!request.low && !request.high) {
    // A horn that stops few notes surely needs the range where they lie.
    while (
      (low > LOWEST_CENTS || high < HIGHEST_CENTS) &&
      isTooNarrow(spelled(low), spelled(high), request, needs, transposition)
    ) {
      low = Math.max(LOWEST_CENTS, low - 200);
      high = Math.min(HIGHEST_CENTS, high + 300);
    }
  }
  return { low: request.low ?? spelled(low), high: request.high ?? spelled(high) };
}

function isTooNarrow(
  low: Pitch,
  high: Pitch,
  { key, player }: EtudeRequest,
  needs: KindOfEtude['needs'],
  transposition: Transposition,
): boolean {
  if (needs === 'bends') return bendsBetween(low, high, key, player, transposition).length < FEWEST_BENDS;
  const notesOf = player.horn.natural ? naturalHornNotes : stoppableNotes;
  return notesOf(scaleBetween(key, low, high), player, transposition).length < FEWEST_NOTES;
}

function spelled(cents: number): Pitch {
  return spellCents(cents, 'flat');
}
