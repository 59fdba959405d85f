/** Where what is known of signs and lines comes from, while the panel is open. */
import type { BarWatch } from './barWatch.ts';
import type { HostScore } from './hostApi.ts';
import type { PartEvidence } from './partEvidence.ts';

/** What the writer does, as far as it shows. Times in milliseconds. */
export interface Doing {
  readonly now: number;
  /** Since the last move of the selection or change of a note. */
  readonly stillFor: number;
  /** True while keys come in: the editor's time is the writer's. */
  readonly isWriting: boolean;
  /** True when nothing has moved or changed since the look before. */
  readonly isStill: boolean;
  /** True where notes changed after the selection last moved: a note may be in the writer's hand. */
  readonly mayBeDragging: boolean;
  /** True when the user waits for the list and does nothing else. */
  readonly isAsked: boolean;
}

/** One slice of its work at a time. */
export interface EvidenceSource {
  /** True while something that is due was not read. */
  readonly isDue: boolean;
  /** True where reading goes on as soon as nothing is selected. */
  readonly awaitsLettingGo: boolean;
  /** True where every edit shows by itself. */
  readonly seesEveryEdit: boolean;
  /** By part, in the order of the watch. */
  evidenceOf(index: number): PartEvidence;
  /** Everything is due. @param isChanged true where the panel has just changed it, and waits for nothing to see what came of it */
  readAgain(isChanged: boolean): void;
  /** @returns the part of which something new is known, or `null` */
  step(score: HostScore, watch: BarWatch, doing: Doing): number | null;
}

/** How long after the last move or change the next key may still be on its way, in milliseconds. */
export const WRITING_MS = 600;
/** How long after the last move or change somebody still counts as working. */
export const AT_WORK_MS = 8000;
