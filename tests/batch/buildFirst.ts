/** Builds everything that is shipped once before any test runs, so that tests run what users run. */
import { buildCommandLine, buildPlugin } from '../../build/bundle.ts';
import { buildCore, buildCoreTypes } from '../../build/coreModule.ts';

export default async function setup(): Promise<void> {
  await Promise.all([buildPlugin(), buildCommandLine(), buildCoreTypes().then(() => buildCore())]);
}
