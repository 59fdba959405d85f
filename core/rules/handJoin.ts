/**
 * Glissandos, slides and bends across a change of the hand, and where the hand can really take them. Shared by the
 * rules about such joins: `closes-upward`, `opens-downward`, `no-common-tube`.
 */

import { type HandWay, handWay, movesHand } from '../part/handMotion.ts';
import { closedness } from '../part/handStates.ts';
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import { playedOn } from '../plan/ownFingerings.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { nameNear } from '../stopping/names.ts';
import { ECHO_DROP_CENTS, stop } from '../stopping/stopping.ts';
import type { FoundBy, Rule, RuleContext, Severity } from './rule.ts';

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
function handJoinsOf(context: RuleContext): readonly HandJoin[] {
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
  for (const a of playedOn(from)) {
    for (const b of playedOn(to)) {
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

/** A note that the hand reaches, and on which fingering. */
export interface Reach {
  readonly written: Pitch;
  readonly fingering: Fingering;
}

/** What the hand does between two notes instead of joining them. */
export interface JoinEnds {
  readonly from: Pitch;
  readonly to: Pitch;
  /** Where the hand takes the first note, the player's first choices first; empty when nowhere that has a name. */
  readonly reached: readonly Reach[];
  /** First notes from which the hand does reach the second, open when it closes and closed when it opens; may be empty. */
  readonly starts: readonly Reach[];
}

/** The notes of a join, with where the hand would take the first and whence it would reach the second. */
export function endsOf({ from, to, closes }: HandJoin): JoinEnds {
  return {
    from: from.note.written,
    to: to.note.written,
    reached: closes ? closesTo(from, to) : opensTo(from),
    starts: closes ? opensTo(to) : closesTo(to, from),
  };
}

/** Two notes that the music joins in the direction in which the hand does not take them. */
export interface AgainstTheHand extends JoinEnds {
  /** True when the tone may slip that way all the same, on or to the 4th harmonic. */
  readonly maySlip: boolean;
}

/**
 * What is wrong with a join that goes up as the hand closes or down as it opens; null where the tone surely slips that
 * way. With luck it slips on the 4th harmonic: a risk; where no tube holds both ends it cannot be played.
 */
export function againstTheHand(join: HandJoin): { severity: Severity; cause: AgainstTheHand } | null {
  const { closes, riseCents, way } = join;
  if (closes ? riseCents <= 0 : riseCents >= 0) return null;
  if (way === 'bends' || way === 'slips') return null;
  return {
    severity: way === null ? 'impossible' : 'risky',
    cause: { ...endsOf(join), maySlip: way === 'may-slip' },
  };
}

/** A rule that looks at one join by the hand at a time, and finds what is wrong at its second note. */
export function joinRule<Id extends string, Cause>(
  id: Id,
  look: (join: HandJoin) => { severity: Severity; cause: Cause } | null,
): Rule<Id, Cause> {
  return {
    id,
    check(context) {
      const findings: FoundBy<Id, Cause>[] = [];
      for (const join of handJoinsOf(context)) {
        const found = look(join);
        if (found)
          findings.push({ id, noteIndex: join.to.note.index, otherIndex: join.from.note.index, ...found });
      }
      return findings;
    },
  };
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
  for (const fingering of playedOn(from)) {
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
