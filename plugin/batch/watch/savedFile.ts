/** Follows one file through whatever an editor does to save it: half-written saves, renames, deletion and return. */
import { type FSWatcher, statSync, watch } from 'node:fs';
import { basename, dirname } from 'node:path';

/** Saves come in bursts of events; this long after the last one the file is looked at. */
const SETTLE_MS = 120;
/** Some disks send no events at all, so the file is looked at this often besides. */
const LOOK_MS = 1000;
/** A file that is away for less than this is only being replaced. */
const AWAY_MS = 700;

export interface SavedFileEvents {
  /** The file is there and differs from when it was last looked at. */
  saved(): void;
  /** The file has been away for a while. */
  gone(): void;
}

/** Watches a file until it is closed. */
export class SavedFile {
  private readonly path: string;
  private readonly events: SavedFileEvents;
  private readonly clock: NodeJS.Timeout;
  private watcher: FSWatcher | null = null;
  private settling: NodeJS.Timeout | null = null;
  private seen: string | null;
  private awaySince: number | null = null;
  private isTold = false;

  constructor(path: string, events: SavedFileEvents) {
    this.path = path;
    this.events = events;
    this.seen = fingerprint(path);
    this.listen();
    this.clock = setInterval(() => this.look(), LOOK_MS);
  }

  /** Looks at the file again soon, though nobody saved it: what was read may have been half of it. */
  lookAgain(): void {
    this.seen = '';
    this.settle();
  }

  close(): void {
    clearInterval(this.clock);
    if (this.settling) clearTimeout(this.settling);
    this.watcher?.close();
  }

  /** Listens to the folder: a file that is replaced by another takes its own listener with it. */
  private listen(): void {
    try {
      this.watcher = watch(dirname(this.path), (_, name) => {
        if (name === null || name === basename(this.path)) this.settle();
      });
      // The folder may be removed or the system run out of listeners; the clock goes on looking.
      this.watcher.on('error', () => this.stopListening());
    } catch {
      this.stopListening();
    }
  }

  private stopListening(): void {
    this.watcher?.close();
    this.watcher = null;
  }

  private settle(): void {
    if (this.settling) clearTimeout(this.settling);
    this.settling = setTimeout(() => {
      this.settling = null;
      this.look();
    }, SETTLE_MS);
  }

  private look(): void {
    if (this.settling) return;
    const now = fingerprint(this.path);
    if (now === null) {
      this.awaySince ??= Date.now();
      if (!this.isTold && Date.now() - this.awaySince >= AWAY_MS) {
        this.isTold = true;
        this.events.gone();
      } else if (!this.isTold) this.settle();
      return;
    }
    if (!this.watcher) this.listen();
    const isBack = this.isTold;
    this.awaySince = null;
    this.isTold = false;
    if (now === this.seen && !isBack) return;
    this.seen = now;
    this.events.saved();
  }
}

/** What tells one state of a file from another, or null when it is not there. */
function fingerprint(path: string): string | null {
  try {
    const { ino, size, mtimeMs } = statSync(path);
    return `${ino} ${size} ${mtimeMs}`;
  } catch {
    return null;
  }
}
