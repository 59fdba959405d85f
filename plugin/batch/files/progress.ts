import { drawOnError, isErrorWatched } from '../output/streams.ts';

/** A line on standard error that says how far a run is; silent where nobody watches, as in a log. */
export class Progress {
  private readonly total: number;
  private readonly isWatched = isErrorWatched();
  private isShown = false;

  constructor(total: number) {
    this.total = total;
  }

  show(done: number): void {
    if (!this.isWatched || this.total < 2 || done === this.total) return;
    drawOnError(`\r${done} of ${this.total} files`);
    this.isShown = true;
  }

  /** Makes room for other lines. */
  hide(): void {
    if (!this.isShown) return;
    drawOnError('\r\u001b[K');
    this.isShown = false;
  }
}
