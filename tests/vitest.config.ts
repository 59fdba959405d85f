import { defineConfig } from 'vitest/config';
import LongestFirst from './longestFirst.ts';

const ROOT = new URL('..', import.meta.url).pathname;

/** The room whose tests drive editors. The others put nothing in a module's place and leave the process as it was. */
const WITH_EDITORS = 'tests/editor/**/*.test.ts';

/** What holds for every file of tests. */
const common = {
  root: ROOT,
  // Ends what hangs. A busy machine takes its time, and that is no fault.
  testTimeout: 120_000,
  hookTimeout: 120_000,
  // What is built runs as it is.
  server: { deps: { external: [/\/dist\/bellhand/] } },
  // Tests that wait for one sitting of an editor all wait at the same time.
  maxConcurrency: 100,
};

export default defineConfig({
  test: {
    root: ROOT,
    // Some files mostly wait for editors, so four at once keep two cores at work.
    maxWorkers: 4,
    sequence: { sequencer: LongestFirst },
    globalSetup: ['tests/batch/buildFirst.ts'],
    reporters: ['default', './tests/closing-line.ts'],
    projects: [
      { test: { ...common, name: 'alone', include: [WITH_EDITORS] } },
      // These share what they import: to read it in took many of them longer than their tests.
      {
        test: {
          ...common,
          name: 'together',
          include: ['tests/**/*.test.ts'],
          exclude: [WITH_EDITORS],
          isolate: false,
          // Whatever makes pages has its music engraved by this one.
          alias: [{ find: /^\.\/engrave\.ts$/, replacement: `${ROOT}tests/pages/engravedOnce.ts` }],
        },
      },
    ],
  },
});
