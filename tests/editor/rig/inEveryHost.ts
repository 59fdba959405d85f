/** Tests that are written once and run in every version of the editor. */
import { describe } from 'vitest';
import { HOSTS, type Host } from './host.ts';

/**
 * Declares tests for every version; they are skipped where it is not installed.
 * @param isPossible false where the machine lacks something else that they need
 */
export function inEveryHost(title: string, tests: (host: Host) => void, isPossible = true): void {
  for (const host of HOSTS)
    describe.skipIf(!host.isInstalled || !isPossible)(`${title}, ${host.version}`, () => tests(host));
}
