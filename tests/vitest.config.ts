import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    // Ends what hangs. A busy machine takes its time, and that is no fault.
    testTimeout: 120_000,
    // Most files wait for editors and browsers, so two at once pay even on two cores.
    maxWorkers: 2,
    globalSetup: ['tests/batch/buildFirst.ts'],
    reporters: ['default', './tests/closing-line.ts'],
  },
});
