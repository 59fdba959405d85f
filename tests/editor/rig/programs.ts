/** Programs that tests need and a machine may lack. */
import { spawnSync } from 'node:child_process';

/** Finds a program on the path. */
export function programNamed(...names: string[]): string | null {
  for (const name of names) {
    const found = spawnSync('which', [name], { encoding: 'utf8' });
    if (found.status === 0) return found.stdout.trim();
  }
  return null;
}

/** Says loudly that tests are left out, and why. */
export function skipLoudly(what: string, how: string): void {
  console.warn(`\n  SKIPPED: ${what}. To run them: ${how}\n`);
}
