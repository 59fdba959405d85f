import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The test files that take longest, longest first. */
const LONGEST = [
  'editor/inTheMiddle',
  'editor/window',
  'pages/stand',
  'pages/report',
  'pages/chart',
  'editor/engines',
  'pages/slides',
  'editor/rounds',
  'musicxml/lossless',
  'pages/widths',
  'pages/print',
  'editor/atHome',
  'etude/command',
  'batch/streams',
  'musicxml/schema',
  'core/etudeSeedsValves',
  'editor/agreement',
  'musicxml/scoreFile',
].map((name) => `tests/${name}.test.ts`);

/**
 * Starts the longest test files first, so that none of them runs on alone at the end; the others as ever, those that share
 * what they import one after another, since a process is kept for the next of them alone.
 */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { root } = this.ctx.config;
    for (const name of LONGEST)
      if (!existsSync(join(root, name)))
        console.warn(`tests/longestFirst.ts names ${name}, which is not there`);
    const rank = ({ moduleId, project }: TestSpecification) => {
      const place = LONGEST.findIndex((name) => moduleId === join(root, name));
      if (place >= 0) return place;
      return project.config.isolate ? LONGEST.length : LONGEST.length + 1;
    };
    return (await super.sort(files)).sort((one, other) => rank(one) - rank(other));
  }
}
