/** Notices that the music was edited, without writing and without costing the writer anything. */

import { hornParts } from './hornParts.ts';
import { type Host, type HostChord, type HostScore, isAtLeast, listOf } from './hostApi.ts';
import { exported } from './readByExport.ts';

/** A score that takes longer than this to write, in milliseconds, is compared as written only when the selection moves. */
const WRITING_LIMIT_MS = 80;
/** How often the score is compared as written while somebody works on it, in milliseconds: an edit shows within a second. */
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
 * Watches the score that is open. Notes and selection are compared at every look. Before 4.0 signs, words and slurs are
 * not in the plugin interface, or not without taking the user's selection: there the score as the host writes it is
 * compared too, from time to time.
 */
export class ChangeWatch {
  private readonly host: Host;
  private readonly now: () => number;
  private look: Look = { notes: '', selection: '' };
  private written = '';
  private comparedAt = 0;
  /** How long the last two comparisons took: one slow moment of the machine does not make a score big. */
  private took: readonly [number, number] = [0, 0];
  private movedAt = 0;

  constructor(host: Host, now: () => number = Date.now) {
    this.host = host;
    this.now = now;
    this.remember();
  }

  /** True where the score can be compared as written, with every sign and word in it. */
  get seesEveryEdit(): boolean {
    return !isAtLeast(this.host, 4, 0) && !this.isBig;
  }

  /** Takes the score as it is for known. */
  remember(): void {
    const score = this.host.root.curScore;
    this.look = this.lookAtScore();
    this.movedAt = this.now();
    if (score && !isAtLeast(this.host, 4, 0)) this.compareWritten(score);
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
    return score !== null && this.isCompareDue(hasMoved) && this.compareWritten(score);
  }

  private get isBig(): boolean {
    return Math.min(...this.took) > WRITING_LIMIT_MS;
  }

  private lookAtScore(): Look {
    const score = this.host.root.curScore;
    return score ? lookAt(this.host, score) : { notes: '', selection: '' };
  }

  private isCompareDue(hasMoved: boolean): boolean {
    if (isAtLeast(this.host, 4, 0)) return false;
    if (this.isBig) return hasMoved;
    const isAtWork = this.now() - this.movedAt < AT_WORK_MS;
    return this.now() - this.comparedAt >= (isAtWork ? COMPARED_EVERY_MS : COMPARED_AT_REST_EVERY_MS);
  }

  /** @returns true when the score is not what it was */
  private compareWritten(score: HostScore): boolean {
    const start = this.now();
    const written = exported(this.host, score, 'mscx');
    this.comparedAt = this.now();
    this.took = [this.took[1], this.comparedAt - start];
    const isNew = written !== this.written;
    this.written = written;
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
          for (const { symbol } of listOf(element.articulations)) add(Number(symbol));
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
