/** Pictures that the editor made, and how much two of them differ. */
import { execFile, spawnSync } from 'node:child_process';
import { promisify } from 'node:util';

/** Gives a picture a white ground, in place: the editor paints on nothing, where black on black would compare equal. */
export async function onWhite(picture: string): Promise<string> {
  await promisify(execFile)('convert', [picture, '-background', 'white', '-alpha', 'remove', picture]);
  return picture;
}

/** How many pixels of two pictures differ. */
export async function differingPixels(one: string, other: string): Promise<number> {
  const compared = spawnSync('compare', ['-metric', 'AE', one, other, 'null:'], { encoding: 'utf8' });
  const count = Number.parseFloat(compared.stderr);
  if (compared.status === null || compared.status > 1 || Number.isNaN(count))
    throw new Error(`compare: ${compared.stderr}`);
  return count;
}

/** How bright a picture is on the whole, from 0 for black to 1 for white. */
export async function meanBrightness(picture: string): Promise<number> {
  const { stdout } = await promisify(execFile)('convert', [
    picture,
    '-colorspace',
    'Gray',
    '-format',
    '%[fx:mean]',
    'info:',
  ]);
  return Number(stdout);
}

/** Where something of a colour stands in a picture, as the middle of all of it; `null` where there is none. */
export function placeOfColour(
  picture: string,
  colour: string,
  within: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): { x: number; y: number } | null {
  const crop = `${within.width}x${within.height}+${within.x}+${within.y}`;
  const only = ['-fuzz', '6%', '-fill', 'white', '+opaque', colour];
  const { stdout } = spawnSync(
    'convert',
    [picture, '-crop', crop, ...only, '-trim', '-format', '%w %h %X %Y', 'info:'],
    { encoding: 'utf8' },
  );
  const [width, height, x, y] = stdout.split(' ').map(Number);
  if (width === undefined || height === undefined || x === undefined || y === undefined || x < 0) return null;
  return { x: Math.round(x + width / 2), y: Math.round(y + height / 2) };
}
