/** Tests that are written once and run in every version of the editor. */
import { describe } from 'vitest';
import { HOSTS, type Host } from './host.ts';
import { CAN_SHOW_WINDOWS } from './window.ts';

/** Each of them waits for what all of them ask for. */
const TIMEOUT_MS = 600_000;

/**
 * Declares tests for every version, without a screen; they are skipped where it is not installed. They all run at the same
 * time, so that what they ask of the editor is done in few sittings.
 */
export function inEveryHost(title: string, tests: (host: Host) => void): void {
  for (const host of HOSTS)
    describe.skipIf(!host.isInstalled)(
      `${title}, ${host.version}`,
      { concurrent: true, timeout: TIMEOUT_MS },
      () => tests(host),
    );
}

/** Declares tests in a window of every version, one after the other. */
export function inEveryWindow(title: string, tests: (host: Host) => void): void {
  for (const host of HOSTS)
    describe.skipIf(!host.isInstalled || !CAN_SHOW_WINDOWS)(`${title}, ${host.version}`, () => tests(host));
}
