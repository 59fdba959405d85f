/** Slurs and octave lines (before 4.6 signs and glissandi too), which from 3.5 on only a selection lists. */
import type { BarWatch } from './barWatch.ts';
import { AT_WORK_MS, type Doing, type EvidenceSource } from './evidenceSource.ts';
import { type Host, type HostScore, isAtLeast, listOf } from './hostApi.ts';
import { isSameEvidence, NO_EVIDENCE, type PartEvidence } from './partEvidence.ts';
import { evidenceOf } from './selectionEvidence.ts';

/** How often the lines are listed for as long as somebody may be working: an undo need not move the selection. */
const LISTED_EVERY_MS = 1200;
/** How much longer than listing the lines of all parts the time between two listings is. */
const LEAST_RATIO = 40;

export class ListedEvidence implements EvidenceSource {
  readonly awaitsLettingGo = false;
  private readonly host: Host;
  private known: PartEvidence[] = [];
  private unread: number[] = [];
  private isAskedFor = true;
  private listedAt = 0;
  /** How long listing a part took last, in milliseconds. */
  private took = 0;

  constructor(host: Host) {
    this.host = host;
  }

  get isDue(): boolean {
    return this.isAskedFor;
  }

  get seesEveryEdit(): boolean {
    return isAtLeast(this.host, 4, 6);
  }

  evidenceOf(index: number): PartEvidence {
    return this.known[index] ?? NO_EVIDENCE;
  }

  readAgain(): void {
    this.isAskedFor = true;
    this.unread = [];
  }

  step(score: HostScore, watch: BarWatch, doing: Doing): number | null {
    if (doing.mayBeDragging || !doing.isStill || doing.isWriting) return null;
    if (!canBorrowSelection(this.host, score, doing.isAsked)) {
      // The list is made of what is known, and the lines are listed when the selection has moved on.
      this.isAskedFor = false;
      this.listedAt = 0;
      return null;
    }
    if (this.unread.length === 0) {
      if (!this.mayList(doing, watch.hornParts.length)) return null;
      this.unread = watch.hornParts.map((_, i) => i);
    }
    const index = this.unread.shift()!;
    const part = watch.hornParts[index];
    this.listedAt = doing.now;
    if (this.unread.length === 0) this.isAskedFor = false;
    if (!part) return null;
    const before = this.known[index];
    const start = Date.now();
    const evidence = evidenceOf(this.host, score, part);
    this.took = Date.now() - start;
    this.known[index] = evidence;
    return before && isSameEvidence(before, evidence) ? null : index;
  }

  /** Where they were asked for, where the selection moved since they were listed, and where it is time again. */
  private mayList({ now, stillFor }: Doing, parts: number): boolean {
    if (this.isAskedFor || this.listedAt === 0) return true;
    if (stillFor > AT_WORK_MS) return false;
    const every = Math.max(LISTED_EVERY_MS, LEAST_RATIO * this.took * parts);
    return now - stillFor > this.listedAt || now - this.listedAt >= every;
  }
}

/**
 * True while the user's selection may be taken and given back unnoticed: nothing, a stretch of the score, notes. A text
 * may be in the middle of being written, a line has handles that would be lost, a rest may be in the writer's hand.
 */
function canBorrowSelection({ root }: Host, { selection }: HostScore, isAsked: boolean): boolean {
  if (!selection || selection.isRange) return true;
  const { NOTE, REST } = root.Element;
  return listOf(selection.elements).every(({ type }) => type === NOTE || (isAsked && type === REST));
}
