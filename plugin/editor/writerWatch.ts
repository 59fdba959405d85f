/** Follows the writer by the selection, which costs next to nothing: whether keys come in, where they went, what may be done meanwhile. */
import { type Doing, WRITING_MS } from './evidenceSource.ts';
import type { HostElement, HostScore } from './hostApi.ts';
import { tickOf } from './place.ts';

/** Two moves of the selection within this time, in milliseconds, are no longer a look round but writing. */
const TYPED_MS = 650;

export class WriterWatch {
  private selection: string | null = null;
  private hasMoved = false;
  private movedBeforeAt = 0;
  private movedAt = 0;
  private changedAt = 0;
  private places: number[] = [];

  /** Looks where the selection is. @returns true while the writer types: then that is all a look may cost */
  follow({ selection }: HostScore): boolean {
    const now = Date.now();
    const elements = selection?.elements;
    const count = elements ? elements.length : 0;
    const first = count > 0 ? placeOf(elements![0]!) : null;
    const last = count > 1 ? placeOf(elements![count - 1]!) : first;
    const text = first ? JSON.stringify([count, first, last]) : '';
    this.hasMoved = text !== this.selection;
    if (this.hasMoved) {
      // What is selected when the panel opens was not moved.
      if (this.selection !== null) {
        this.movedBeforeAt = this.movedAt;
        this.movedAt = now;
      }
      this.selection = text;
      if (first) this.places.push(first.tick);
    }
    return this.movedAt - this.movedBeforeAt < TYPED_MS && now - this.movedAt < WRITING_MS;
  }

  /** Notes were seen to change. */
  noteChange(now: number): void {
    this.changedAt = now;
  }

  /** Where the selection began since this was last asked, in ticks; −1 for something without a place. */
  takePlaces(): readonly number[] {
    const { places } = this;
    this.places = [];
    return places;
  }

  /** What the panel itself has changed or selected is nobody's writing. */
  forget(): void {
    this.selection = null;
    this.movedAt = 0;
    this.movedBeforeAt = 0;
    this.changedAt = 0;
  }

  get isWriting(): boolean {
    return Date.now() - this.lastSign < WRITING_MS;
  }

  /** What the writer does, as far as the last look tells. */
  doing(isWaitedFor: boolean): Doing {
    const now = Date.now();
    const stillFor = now - this.lastSign;
    const isWriting = stillFor < WRITING_MS;
    const isAsked = isWaitedFor && !isWriting;
    return {
      now,
      stillFor,
      isWriting,
      isStill: isAsked || !this.hasMoved,
      mayBeDragging: !isAsked && this.changedAt >= this.movedAt && this.changedAt > 0,
      isAsked,
    };
  }

  private get lastSign(): number {
    return Math.max(this.movedAt, this.changedAt);
  }
}

function placeOf(element: HostElement): { type: number; track: number; tick: number } {
  return { type: element.type, track: element.track, tick: tickOf(element) };
}
