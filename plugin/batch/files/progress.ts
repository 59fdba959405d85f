import type { CommandLineWords } from '../../../core/index.ts';
import { drawOnError, isErrorWatched } from '../output/streams.ts';

/** A line on standard error that says how far a run is; silent where nobody watches, as in a log. */
export class Progress {
  private readonly total: number;
  private readonly isWatched = isErrorWatched();
  private isShown = false;

  private readonly words: CommandLineWords;

  constructor(total: number, words: CommandLineWords) {
    this.total = total;
    this.words = words;
  }

  show(done: number): void {
    if (!this.isWatched || this.total < 2 || done === this.total) return;
    drawOnError(`\r${this.words.told.progress(done, this.total)}`);
    this.isShown = true;
  }

  /** Makes room for other lines. */
  hide(): void {
    if (!this.isShown) return;
    drawOnError('\r\u001b[K');
    this.isShown = false;
  }
}
