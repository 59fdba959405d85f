/** Runs the main job on the bundled part as a user would: a table of what was found, then the marked score file. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const COMMAND = fileURLToPath(new URL('../dist/bellhand.js', import.meta.url));
const PART = fileURLToPath(new URL('../plugin/batch/demo/low-water.musicxml', import.meta.url));
const MARKED = fileURLToPath(new URL('../demo-low-water.musicxml', import.meta.url));

/** The part holds one passage that no hand can play, so checking it ends with 1. */
const FOUND_IMPOSSIBLE = 1;

// Whoever reads only the beginning (`npm run demo | head`) has seen enough.
process.stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') process.exit(0);
  fail(message);
});

if (!existsSync(COMMAND)) fail('the command line is not built: run npm run build');
run(['check', PART], FOUND_IMPOSSIBLE);
run(['annotate', PART, '-o', MARKED], 0);
console.log(`
The marked part is ${relative(process.cwd(), MARKED)}: open it in a notation program.
The fingered note with its valves stands over every stopped note, over it the natural pitch in round brackets;
blue notes and ≈ are risky, orange notes and × cannot be played. Any other part: node dist/bellhand.js annotate FILE`);

function run(args: readonly string[], expected: number): void {
  const shown = args.map((arg) => (arg.includes('/') ? relative(process.cwd(), arg) : arg));
  console.log(`\n$ bellhand ${shown.join(' ')}\n`);
  const { status } = spawnSync(process.execPath, [COMMAND, ...shown], { stdio: 'inherit' });
  if (status !== expected) fail(`this ended with ${status}, not with ${expected}`);
}

function fail(reason: string): never {
  console.error(`demo: ${reason}`);
  process.exit(1);
}
