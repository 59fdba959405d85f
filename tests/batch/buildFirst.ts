/** Builds everything that is shipped once before any test runs, unless it is built already: tests run what users run. */
import { buildEverything } from '../../build/bundle.ts';
import { isUpToDate } from '../../build/upToDate.ts';

export default async function setup(): Promise<void> {
  if (!(await isUpToDate())) await buildEverything();
}
