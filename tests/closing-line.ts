import type { Reporter, TestModule } from 'vitest/node';

/** Prints, last of all, one plain line `N passed, N failed` (and `, N skipped` where any were). */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const counts = { passed: 0, failed: errors.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      // A file that could not even be loaded has no tests, so it counts as one failure.
      if (module.errors().length > 0) counts.failed += 1;
      for (const test of module.children.allTests()) counts[test.result().state] += 1;
    }
    const skipped = counts.skipped + counts.pending;
    process.on('exit', () => {
      console.log(
        `${counts.passed} passed, ${counts.failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`,
      );
    });
  }
}
