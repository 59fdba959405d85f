/** The size the user gave the panel's window, kept from one time to the next. */
import { keepBeside, readBeside } from './besidePlugin.ts';
import type { Host } from './hostApi.ts';

/** In pixels as the editor counts them, before any scaling of the screen. */
export interface WindowSize {
  readonly width: number;
  readonly height: number;
}

const FILE = 'bellhand-window.json';

/** Smaller is no window to work in, larger is no screen. */
const LEAST = { width: 240, height: 240 };
const MOST = { width: 4000, height: 4000 };

/** The size kept, or `null` where there is none that makes sense. */
export function keptWindowSize(host: Host): WindowSize | null {
  let kept: Partial<WindowSize> | null;
  try {
    kept = JSON.parse(readBeside(host, FILE)) as Partial<WindowSize> | null;
  } catch {
    return null;
  }
  const { width, height } = kept ?? {};
  return isBetween(width, LEAST.width, MOST.width) && isBetween(height, LEAST.height, MOST.height)
    ? { width, height }
    : null;
}

/** Keeps a size for the next time. */
export function keepWindowSize(host: Host, { width, height }: WindowSize): void {
  keepBeside(host, FILE, JSON.stringify({ width: Math.round(width), height: Math.round(height) }));
}

function isBetween(value: number | undefined, least: number, most: number): value is number {
  return typeof value === 'number' && value >= least && value <= most;
}
