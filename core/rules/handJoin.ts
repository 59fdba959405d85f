/**
 * Glissandos, slides and bends across a change of the hand, and where the hand can really take them. Shared by the
 * rules about such joins: `closes-upward`, `opens-downward`, `no-common-tube`.
 */

import { type HandWay, handWay, movesHand } from '../part/handMotion.ts';
import { closedness } from '../part/handStates.ts';
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { nameNear } from '../stopping/names.ts';
import { ECHO_DROP_CENTS, stop } from '../stopping/stopping.ts';
import type { RuleContext } from './rule.ts';

/** Two notes that the hand is asked to join. */
export interface HandJoin {
  readonly from: ExaminedNote;
  readonly to: ExaminedNote;
  /** From open towards stopped. */
  readonly closes: boolean;
  /** From the first note to the second, in cents; above 0 when the music goes up. */
  readonly riseCents: number;
  /** The surest way in which some one tube holds both ends, or null when none does. */
  readonly way: HandWay | null;
}

/** Every glissando, slide or bend that moves the hand between notes of known pitch. */
export function handJoinsOf(context: RuleContext): readonly HandJoin[] {
  const joins = JOINS.get(context) ?? findHandJoins(context);
  JOINS.set(context, joins);
  return joins;
}

/** Three rules ask about the same joins of one examination. */
const JOINS = new WeakMap<RuleContext, readonly HandJoin[]>();

function findHandJoins({ notes }: RuleContext): readonly HandJoin[] {
  const found: HandJoin[] = [];
  for (const from of notes) {
    if (from.note.joins.length === 0) continue;
    for (const { kind, to: toIndex } of from.note.joins) {
      const to = notes[toIndex];
      if (
        !to ||
        (kind !== 'glissando' && kind !== 'bend') ||
        !movesHand(from.reading.state, to.reading.state)
      )
        continue;
      if (from.soundingCents === null || to.soundingCents === null) continue;
      found.push({
        from,
        to,
        closes: closedness(to.reading.state) > closedness(from.reading.state),
        riseCents: to.soundingCents - from.soundingCents,
        way: surestWay(from, to),
      });
    }
  }
  return found;
}

/** True when some fingering of the one note and some fingering of the other are joined by the hand alone. */
export function fitsOneTube(from: ExaminedNote, to: ExaminedNote): boolean {
  return surestWay(from, to) !== null;
}

function surestWay(from: ExaminedNote, to: ExaminedNote): HandWay | null {
  let surest: HandWay | null = null;
  for (const a of from.candidates) {
    for (const b of to.candidates) {
      if (a.verdict === 'impossible' || b.verdict === 'impossible') continue;
      const way = handWay(
        { fingering: a, state: from.reading.state },
        { fingering: b, state: to.reading.state },
      );
      if (way !== null && way !== 'may-slip') return way;
      surest = way ?? surest;
    }
  }
  return surest;
}

/** True for a join that goes up as the hand closes or down as it opens, unless the tone surely slips that way. */
export function isAgainstTheHand({ closes, riseCents, way }: HandJoin): boolean {
  return (closes ? riseCents > 0 : riseCents < 0) && way !== 'bends' && way !== 'slips';
}

/** A join that may slip against the hand is a risk; one that no tube holds cannot be played. */
export function severityOf({ way }: HandJoin): 'impossible' | 'risky' {
  return way === null ? 'impossible' : 'risky';
}

/** A note that the hand reaches, and on which fingering. */
export interface Reach {
  readonly written: Pitch;
  readonly fingering: Fingering;
}

/** Where the hand takes the open note if it closes as the other note asks; the player's first choices first. */
export function closesTo(open: ExaminedNote, closed: ExaminedNote): readonly Reach[] {
  return reaches(open, (fingering) => {
    const { tube, harmonic } = fingering;
    if (!tube.side.stoppable || harmonic < 2) return null;
    if (closed.reading.state === 'echo') return fingering.naturalCents - ECHO_DROP_CENTS;
    const { stoppedCents, dropCents, limit } = stop(tube, harmonic, open.player.handOffsetCents);
    return limit === 'below-the-hand' || limit === 'nothing-changes' || dropCents === 0 ? null : stoppedCents;
  });
}

/** Where the closed note goes if the hand opens; the player's first choices first. */
export function opensTo(closed: ExaminedNote): readonly Reach[] {
  return reaches(closed, (fingering) => (fingering.dropCents > 0 ? fingering.naturalCents : null));
}

/** The reached note that lies nearest to a wanted one, or null when none is reached. */
export function nearestReach(reached: readonly Reach[], wanted: Pitch): Reach | null {
  let nearest: Reach | null = null;
  for (const reach of reached) if (!nearest || gap(reach, wanted) < gap(nearest, wanted)) nearest = reach;
  return nearest;
}

/** More than this many ways help nobody. */
const MOST_REACHES = 3;

/** Names what fingerings of a note lead to, leaving out what lies too far between two notes to be called either. */
function reaches(from: ExaminedNote, leadsTo: (fingering: Fingering) => number | null): readonly Reach[] {
  const found: Reach[] = [];
  const writtenCents = pitchCents(from.note.written);
  for (const fingering of from.candidates) {
    if (fingering.verdict === 'impossible') continue;
    const cents = leadsTo(fingering);
    if (cents === null) continue;
    const asWritten = writtenCents + cents - from.soundingCents!;
    const written = nameNear(from.note.written, asWritten);
    if (Math.abs(pitchCents(written) - asWritten) > from.player.toleranceCents) continue;
    if (found.some((known) => pitchCents(known.written) === pitchCents(written))) continue;
    found.push({ written, fingering });
  }
  return found.slice(0, MOST_REACHES);
}

function gap({ written }: Reach, wanted: Pitch): number {
  return Math.abs(pitchCents(written) - pitchCents(wanted));
}
