/** Reading the horn parts of the score that is open: one way in, whatever the host's version offers. */
import { hornParts } from './hornParts.ts';
import { type Host, type HostScore, isAtLeast } from './hostApi.ts';
import { BarReader, evidenceIn, partText, writtenScore } from './ownFormat.ts';
import { passageFromScore } from './passageFromScore.ts';
import type { ReadPart } from './readPart.ts';
import { walkPart } from './scoreWalk.ts';
import { evidenceOf } from './selectionEvidence.ts';

/**
 * The horn parts of a score; empty when there is none. Changes nothing that undo would know of; a selection that had to
 * be used is put back. Not to be called inside a step of the undo history.
 */
export function readPassages(host: Host, score: HostScore): readonly ReadPart[] {
  const parts = hornParts(score);
  const written = parts.length > 0 && isReadAsText(host) ? writtenScore(host, score) : null;
  const bars = new BarReader();
  return parts.map((part) => {
    const walk = walkPart(host.root, score, part);
    const evidence =
      written === null ? evidenceOf(host, score, part) : evidenceIn(partText(written, part), walk, bars);
    return passageFromScore(host, walk, evidence);
  });
}

/** Before 3.5 only the score as the host writes it tells of signs and lines; after that a selection lists them. */
export function isReadAsText(host: Host): boolean {
  return !isAtLeast(host, 3, 5);
}
