/** Builds the command line once before any test runs, so that tests run what users run. */
import { buildCommandLine } from '../../build/bundle.ts';

export default async function setup(): Promise<void> {
  await buildCommandLine();
}
