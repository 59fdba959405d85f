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
  'pages/phone',
  'editor/rounds',
  'musicxml/lossless',
  'pages/widths',
  'pages/print',
  'editor/atHome',
  'batch/streams',
  'musicxml/schema',
  'core/etudeSeedsValves',
  'editor/agreement',
  'musicxml/scoreFile',
].map((name) => `tests/${name}.test.ts`);

/** Files that mostly wait for an editor, and leave the cores to the others beside them. */
const WAITING = 2;

/**
 * Starts the longest test files first, so that none of them runs on alone at the end. Those that share what they import
 * come one after another, since a process is kept for the next of them alone; two that have a process of their own, and
 * mostly wait, run beside them, the rest of those after them.
 */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { root } = this.ctx.config;
    for (const name of LONGEST)
      if (!existsSync(join(root, name)))
        console.warn(`tests/longestFirst.ts names ${name}, which is not there`);
    const rank = ({ moduleId }: TestSpecification) => {
      const place = LONGEST.findIndex((name) => moduleId === join(root, name));
      return place >= 0 ? place : LONGEST.length;
    };
    const sorted = (await super.sort(files)).sort((one, other) => rank(one) - rank(other));
    const alone = sorted.filter(({ project }) => project.config.isolate);
    const together = sorted.filter(({ project }) => !project.config.isolate);
    return [...alone.slice(0, WAITING), ...together, ...alone.slice(WAITING)];
  }
}
