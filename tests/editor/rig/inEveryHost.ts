/** Tests that are written once and run in every version of the editor. */
import { describe } from 'vitest';
import { HOSTS, type Host } from './host.ts';

/** Declares tests for every version; they are skipped where it is not installed. */
export function inEveryHost(title: string, tests: (host: Host) => void): void {
  for (const host of HOSTS)
    describe.skipIf(!host.isInstalled)(`${title}, ${host.version}`, () => tests(host));
}
