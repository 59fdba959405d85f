/** The real editors that tests run in. Tests are written once and run in each of them. */
import { HOST_3 } from './host3.ts';
import { HOST_4 } from './host4.ts';
import { skipLoudly } from './programs.ts';
import type { HostRun, Step } from './steps.ts';
import type { WindowOptions } from './window.ts';

/** A real editor, driven without a screen in a fresh profile: steps in, what they returned out. */
export interface Host {
  readonly version: string;
  readonly major: 3 | 4;
  readonly isInstalled: boolean;
  /** What to do for it to be there. */
  readonly install: string;
  /**
   * Opens a score in the editor and takes the steps one after the other. Runs that are asked for at the same time are
   * done in one sitting, score after score: tests that stand side by side start the editor once.
   * @param input a path, or the text of a MusicXML score
   * @param milliseconds how long all of it may take
   * @throws when a step fails or the editor does not end well
   */
  run(input: string, steps: readonly Step[], milliseconds?: number): Promise<HostRun>;
  /** Takes the same steps again and again in one sitting, each time on what the last of them saved the time before. */
  rounds(input: string, steps: readonly Step[], count: number): Promise<readonly HostRun[]>;
  /** The score with Concert Pitch on. @returns the path of its file, in the editor's own format */
  inConcertPitch(input: string): Promise<string>;
  /** Writes a score as a picture of its first page, whole or trimmed to what is printed. @returns the picture's path */
  pictureOf(score: string, resolution?: number, isTrimmed?: boolean): Promise<string>;
  /** The first page of a score as the text of an SVG drawing, in which each shape says what it is of. */
  drawingOf(score: string): Promise<string>;
  /** A fresh home for a window, with the plugin switched on and its entries on the shortcuts of `window.ts`. */
  prepareWindow(options: WindowOptions): Promise<WindowStage>;
}

export interface WindowStage {
  readonly folder: string;
  readonly env: NodeJS.ProcessEnv;
  /** The program and its arguments, to which the score's path is added. */
  readonly program: readonly string[];
  /** What the main window's title holds, for the path of its score. */
  title(score: string): string;
}

/** Every version that is tested in. */
export const HOSTS: readonly Host[] = [HOST_3, HOST_4];

for (const { version, isInstalled, install } of HOSTS) {
  if (!isInstalled) skipLoudly(`tests in the real editor ${version}, which is not installed`, install);
}
