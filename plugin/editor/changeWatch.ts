/** Notices that the music was edited, without writing and without costing the writer anything. */

import { hornParts } from './hornParts.ts';
import { type Host, type HostChord, type HostScore, isAtLeast } from './hostApi.ts';
import { canBorrowSelection, listedLines } from './listedLines.ts';
import { exported } from './readByExport.ts';
import { scoreDigest } from './scoreDigest.ts';

/** A score that takes longer than this to compare, in milliseconds, is compared as a whole only when the selection moves. */
const COMPARING_LIMIT_MS = 80;
/** How often the score is compared as a whole while somebody works on it, in milliseconds: an edit shows within a second. */
const COMPARED_EVERY_MS = 700;
/** How often it is compared when nobody has moved or changed anything for a while. */
const COMPARED_AT_REST_EVERY_MS = 3000;
/** How long after the last move or change somebody still counts as working. */
const AT_WORK_MS = 8000;

/** What one look sees. */
interface Look {
  /** The notes of the horn parts, with their signs where chords own them. */
  readonly notes: string;
  readonly selection: string;
}

/**
 * Watches the score that is open. Notes and selection are compared at every look; from time to time all the rest: before
 * 4.0, where signs, words and slurs are not in the plugin interface, or not without taking the user's selection, the
 * score as the host writes it; from 4.0 on what the interface shows, and once the selection has moved and rests, the
 * lines that only a selection lists.
 */
export class ChangeWatch {
  private readonly host: Host;
  private readonly now: () => number;
  private look: Look = { notes: '', selection: '' };
  private rest = '';
  private lines = '';
  private comparedAt = 0;
  /** How long the last two comparisons took: one slow moment of the machine does not make a score big. */
  private took: readonly [number, number] = [0, 0];
  private movedAt = 0;
  /** True from a move of the selection until the lines were compared. */
  private areLinesDue = false;

  constructor(host: Host, now: () => number = Date.now) {
    this.host = host;
    this.now = now;
    this.remember();
  }

  /** True where every edit shows by itself: of versions 4, where it was tried. */
  get seesEveryEdit(): boolean {
    return (!isAtLeast(this.host, 4, 0) || isAtLeast(this.host, 4, 6)) && !this.isBig;
  }

  /** Takes the score as it is for known. */
  remember(): void {
    const score = this.host.root.curScore;
    this.look = this.lookAtScore();
    this.movedAt = this.now();
    this.areLinesDue = false;
    if (!score) return;
    this.compareRest(score);
    if (this.hasLinesToList && canBorrowSelection(this.host, score))
      this.lines = listedLines(this.host, score);
  }

  /** True when something changed since the last look. */
  hasChanged(): boolean {
    const before = this.look;
    this.look = this.lookAtScore();
    const { notes, selection } = this.look;
    const hasMoved = selection !== before.selection;
    if (hasMoved || notes !== before.notes) this.movedAt = this.now();
    // While notes come in nothing more needs to be known.
    if (notes !== before.notes) return true;
    const score = this.host.root.curScore;
    if (!score) return false;
    if (this.isCompareDue(hasMoved) && this.compareRest(score)) return true;
    if (hasMoved) this.areLinesDue = this.hasLinesToList;
    else if (this.areLinesDue) return this.compareLines(score);
    return false;
  }

  private get isBig(): boolean {
    return Math.min(...this.took) > COMPARING_LIMIT_MS;
  }

  private get hasLinesToList(): boolean {
    return isAtLeast(this.host, 4, 0);
  }

  private lookAtScore(): Look {
    const score = this.host.root.curScore;
    return score ? lookAt(this.host, score) : { notes: '', selection: '' };
  }

  private isCompareDue(hasMoved: boolean): boolean {
    if (this.isBig) return hasMoved;
    const isAtWork = this.now() - this.movedAt < AT_WORK_MS;
    return this.now() - this.comparedAt >= (isAtWork ? COMPARED_EVERY_MS : COMPARED_AT_REST_EVERY_MS);
  }

  /** @returns true when the score is not what it was */
  private compareRest(score: HostScore): boolean {
    const start = this.now();
    const rest = isAtLeast(this.host, 4, 0)
      ? scoreDigest(this.host, score)
      : exported(this.host, score, 'mscx');
    this.comparedAt = this.now();
    this.took = [this.took[1], this.comparedAt - start];
    const isNew = rest !== this.rest;
    this.rest = rest;
    return isNew;
  }

  /** @returns true when a line or sign came or went; the user's selection is used for it, where it may be */
  private compareLines(score: HostScore): boolean {
    if (!canBorrowSelection(this.host, score)) return false;
    this.areLinesDue = false;
    const lines = listedLines(this.host, score);
    const isNew = lines !== this.lines;
    this.lines = lines;
    return isNew;
  }
}

function lookAt(host: Host, score: HostScore): Look {
  let sum = 0;
  let selected = 0;
  let count = 0;
  const add = (value: number) => {
    sum = (Math.imul(sum, 31) + value) | 0;
  };
  const { CHORD } = host.root.Element;
  // No cursor: before 3.5 it is the very place where the user is writing.
  const parts = hornParts(score);
  for (let measure = parts.length > 0 ? score.firstMeasure : null; measure; measure = measure.nextMeasure) {
    for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
      const { tick } = segment;
      for (const part of parts) {
        for (let track = part.startTrack; track < part.endTrack; track++) {
          const element = segment.elementAt(track) as HostChord | null;
          if (!element) continue;
          add(tick);
          if (element.type !== CHORD) continue;
          const { notes } = element;
          for (let i = 0; i < notes.length; i++) {
            const { pitch, tpc1, selected: isSelected } = notes[i]!;
            count += 1;
            add(pitch);
            add(tpc1);
            if (isSelected) selected = (Math.imul(selected, 31) + count) | 0;
          }
        }
      }
    }
  }
  const elements = score.selection?.elements;
  return {
    notes: `${score.scoreName}/${score.nmeasures}/${count}/${sum}`,
    selection: `${selected}/${elements?.length}/${elements?.[0]?.type}`,
  };
}
