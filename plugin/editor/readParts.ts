/** Reading the horn parts of the score that is open: one way in, whatever the host's version offers. */
import { hornParts } from './hornParts.ts';
import { type Host, type HostPart, type HostScore, isAtLeast } from './hostApi.ts';
import { evidenceIn } from './ownFormat.ts';
import type { PartEvidence } from './partEvidence.ts';
import { type PartWalk, walkParts } from './scoreWalk.ts';
import { evidenceOfAll, hasNoSelection, isBestListed } from './selectedScore.ts';
import { evidenceOf } from './selectionEvidence.ts';
import { BarReader } from './writtenBars.ts';
import { WrittenScore } from './writtenScore.ts';

/** A horn part as far as the host tells of it. */
export interface PartReading {
  readonly walk: PartWalk;
  readonly evidence: PartEvidence;
}

/** What a reader may leave out, or take over from one before. */
export interface ReadOptions {
  /** Leaves parts out. */
  readonly isWanted?: (part: HostPart) => boolean;
  /** What is known of a part without writing the score; `null` for nothing. */
  readonly known?: (part: HostPart) => PartEvidence | null;
}

/**
 * The horn parts of a score; empty when there is none. Changes nothing that undo would know of; a selection that had to
 * be used is put back. Not to be called inside a step of the undo history.
 */
export function readParts(host: Host, score: HostScore, options: ReadOptions = {}): readonly PartReading[] {
  const { isWanted = () => true, known = () => null } = options;
  const parts = hornParts(score).filter(isWanted);
  const walks = walkParts(host.root, score, parts);
  const evidence = isReadAsText(host)
    ? evidenceAsText(host, score, walks, known)
    : parts.map((part) => evidenceOf(host, score, part));
  return walks.map((walk, index) => ({ walk, evidence: evidence[index]! }));
}

/** Only parts of which too little is known are written. */
function evidenceAsText(
  host: Host,
  score: HostScore,
  walks: readonly PartWalk[],
  known: (part: HostPart) => PartEvidence | null,
): readonly PartEvidence[] {
  const all = hasNoSelection(score) && isBestListed(score, walks) ? evidenceOfAll(host, score, walks) : null;
  if (all) return all;
  const bars = new BarReader();
  const written = new WrittenScore(host, score);
  return walks.map((walk) => known(walk.part) ?? evidenceIn(written.textOf(walk.part), walk, bars));
}

/** Before 3.5 only the score as the host writes it tells all of signs and lines; after that a selection lists them. */
export function isReadAsText(host: Host): boolean {
  return !isAtLeast(host, 3, 5);
}
