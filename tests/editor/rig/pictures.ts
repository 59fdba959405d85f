/** Pictures that the editor made or that a screen shows, and how much two of them differ. */
import { execFile, execFileSync } from 'node:child_process';
import { promisify } from 'node:util';

/** Row by row from the top, a number for each pixel: `0xRRGGBB`. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint32Array;
}

/** Gives a picture a white ground, in place: the editor paints on nothing, where black on black would compare equal. */
export async function onWhite(picture: string): Promise<string> {
  await promisify(execFile)('convert', [picture, '-background', 'white', '-alpha', 'remove', picture]);
  return picture;
}

/** Writes a picture as a file of any kind that its ending names, e.g. `panel.png`. */
export function writePicture({ width, height, pixels }: Picture, path: string): void {
  const input = Buffer.alloc(3 * pixels.length);
  for (const [i, pixel] of pixels.entries()) input.writeUIntBE(pixel, 3 * i, 3);
  execFileSync('convert', ['-size', `${width}x${height}`, '-depth', '8', 'rgb:-', path], { input });
}

/** How many pixels of two pictures of one size differ. */
export function differingPixels(one: Picture, other: Picture): number {
  if (one.width !== other.width || one.height !== other.height)
    throw new Error(
      `${one.width} × ${one.height} pixels and ${other.width} × ${other.height} do not compare`,
    );
  return one.pixels.reduce((count, pixel, i) => count + (pixel === other.pixels[i] ? 0 : 1), 0);
}

/** How bright a picture is on the whole, from 0 for black to 1 for white: the luma of ITU-R BT.709. */
export function meanBrightness({ pixels }: Picture): number {
  const sum = pixels.reduce((before, pixel) => {
    const [red, green, blue] = channels(pixel);
    return before + 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }, 0);
  return sum / 255 / pixels.length;
}

/** How far a colour may be from another in each channel, of 255, to pass for it where edges are smoothed. */
const NEAR = 20;

/** Where something of a colour (`#RRGGBB`) stands in a picture, as the middle of all of it; `null` where there is none. */
export function placeOfColour(picture: Picture, colour: string): { x: number; y: number } | null {
  const wanted = channels(Number.parseInt(colour.slice(1), 16));
  const isNear = (pixel: number) =>
    channels(pixel).every((channel, i) => Math.abs(channel - wanted[i]!) <= NEAR);
  let [left, right, top, bottom] = [picture.width, -1, picture.height, -1];
  picture.pixels.forEach((pixel, i) => {
    if (!isNear(pixel)) return;
    const [x, y] = [i % picture.width, Math.floor(i / picture.width)];
    [left, right, top, bottom] = [
      Math.min(left, x),
      Math.max(right, x),
      Math.min(top, y),
      Math.max(bottom, y),
    ];
  });
  return right < 0 ? null : { x: Math.round((left + right) / 2), y: Math.round((top + bottom) / 2) };
}

/** Red, green and blue, each from 0 to 255. */
function channels(pixel: number): [number, number, number] {
  return [pixel >> 16, (pixel >> 8) & 255, pixel & 255];
}
