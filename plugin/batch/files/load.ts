/** How much a run may take on at once, and in which order: what the machine has against what the files need. */
import { statSync } from 'node:fs';
import { availableParallelism, freemem } from 'node:os';

/** A packed score unpacks to about this many times its size; measured on real ones: up to 24. */
const GROWTH = 20;
/** What a thread needs before it has read anything, in bytes; measured. */
const THREAD_BYTES = 80e6;
/** What a score needs for each of its bytes; measured at the peak. */
const BYTES_A_BYTE = 9;

/** A run's files as work: how many at once, and which first. */
export interface Load {
  /** Files worked on at once; 1 or more. */
  readonly jobs: number;
  /** Indexes into the files: the largest first where several are worked on, so that none is left alone at the end. */
  readonly order: readonly number[];
}

/** What the machine has to give; its own numbers by default. */
export interface Machine {
  readonly cores: number;
  readonly freeBytes: number;
}

/**
 * Plans a run.
 * @param asked the most files at once, as the user wants it
 */
export function planLoad(files: readonly string[], asked: number, machine: Machine = thisMachine()): Load {
  const sizes = files.map(unpackedSize);
  const order = sizes.map((_, i) => i);
  const largestFirst = [...order].sort((a, b) => sizes[b]! - sizes[a]!);
  const most = Math.min(asked, machine.cores, files.length);
  let jobs = 0;
  // However the files meet, no more is needed at once than by the largest together.
  for (let needed = 0; jobs < most; jobs++) {
    needed += THREAD_BYTES + BYTES_A_BYTE * sizes[largestFirst[jobs]!]!;
    if (needed > machine.freeBytes) break;
  }
  return jobs > 1 ? { jobs, order: largestFirst } : { jobs: 1, order };
}

function thisMachine(): Machine {
  // The first also knows the limits that a container sets; the first versions of Node 20 lack it.
  const freeBytes = process.availableMemory?.() ?? freemem();
  return { cores: availableParallelism(), freeBytes };
}

function unpackedSize(path: string): number {
  const size = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  return /\.mxl$/i.test(path) ? GROWTH * size : size;
}
