/** Annotates one part of as many notes as its argument says; prints the process's peak memory before and after, in MB. */
import { annotate, signedPart } from './annotateBench.ts';

const bytes = signedPart(Number(process.argv[2]));
const before = peakMegabytes();
annotate(bytes);
console.log(`${before} ${peakMegabytes()}`);

function peakMegabytes(): number {
  return Math.round(process.resourceUsage().maxRSS / 1024);
}
