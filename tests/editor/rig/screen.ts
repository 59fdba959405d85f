/** A virtual screen of its own for an editor in a window. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Picture } from './pictures.ts';

/** In pixels of the screen. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Screen {
  readonly process: ChildProcess;
  /** Its name for programs that draw on it, e.g. `:1`. */
  readonly display: string;
  /** What it shows now, or what a part of it shows. */
  picture(part?: Place): Picture;
}

/**
 * Starts a virtual screen on a display that nobody has yet.
 *
 * @param folder where the screen keeps what it shows: to read it there costs next to nothing
 * @throws Error when it does not start
 */
export async function startScreen(folder: string): Promise<Screen> {
  const screen = spawn(
    'Xvfb',
    ['-displayfd', '3', '-screen', '0', '1400x900x24', '-nolisten', 'tcp', '-noreset', '-fbdir', folder],
    {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    },
  );
  const number = await new Promise<string>((resolve, reject) => {
    screen.stdio[3]!.once('data', (chunk) => resolve(String(chunk).trim()));
    screen.once('exit', () => reject(new Error('Xvfb did not start')));
  });
  return {
    process: screen,
    display: `:${number}`,
    picture: (part) => pictureIn(readFileSync(join(folder, 'Xvfb_screen0')), part),
  };
}

/** Numbers in the head of an X window dump (XWDFile.h, version 7), each of 32 bits, by their places. */
const HEAD = { size: 0, width: 4, height: 5, bitsPerPixel: 11, bytesPerLine: 12, colours: 19 } as const;
/** The head is followed by a table of colours, which a screen of 24 bits does not use. */
const BYTES_PER_COLOUR = 12;

/** @throws Error when a pixel is not four bytes, lowest first, as this rig's screens have them */
function pictureIn(dump: Buffer, part?: Place): Picture {
  const head = (name: keyof typeof HEAD) => dump.readUInt32BE(4 * HEAD[name]);
  if (head('bitsPerPixel') !== 32) throw new Error(`a pixel has ${head('bitsPerPixel')} bits`);
  const { x, y, width, height } = part ?? { x: 0, y: 0, width: head('width'), height: head('height') };
  const start = head('size') + BYTES_PER_COLOUR * head('colours');
  const pixels = new Uint32Array(width * height);
  for (let row = 0; row < height; row++) {
    const line = start + (y + row) * head('bytesPerLine') + 4 * x;
    for (let column = 0; column < width; column++)
      pixels[row * width + column] = dump.readUInt32LE(line + 4 * column) & 0xffffff;
  }
  return { width, height, pixels };
}

/** Ends a program at once, and waits until it has gone. */
export async function endProcess(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  await new Promise<void>((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGKILL');
  });
}
