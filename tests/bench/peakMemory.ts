/** Annotates the part named; prints the process's peak memory before and after, in MB. */
import { readFileSync } from 'node:fs';
import { annotate } from './annotateBench.ts';

const before = peakMegabytes();
annotate(readFileSync(process.argv[2]!));
console.log(`${before} ${peakMegabytes()}`);

function peakMegabytes(): number {
  return Math.round(process.resourceUsage().maxRSS / 1024);
}
