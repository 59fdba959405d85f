/** Builds the command line and the core once before any test runs, so that tests run what users run. */
import { buildCommandLine } from '../../build/bundle.ts';
import { buildCore, buildCoreTypes } from '../../build/coreModule.ts';

export default async function setup(): Promise<void> {
  await Promise.all([buildCommandLine(), buildCore(), buildCoreTypes()]);
}
