import { defineConfig } from 'vitest/config';
import LongestFirst from './longestFirst.ts';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    // Ends what hangs. A busy machine takes its time, and that is no fault.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Some files mostly wait for editors, so three at once keep two cores at work.
    maxWorkers: 3,
    // What is built runs as it is.
    server: { deps: { external: [/\/dist\/bellhand/] } },
    // Tests that wait for one sitting of an editor all wait at the same time.
    maxConcurrency: 100,
    sequence: { sequencer: LongestFirst },
    globalSetup: ['tests/batch/buildFirst.ts'],
    reporters: ['default', './tests/closing-line.ts'],
  },
});
