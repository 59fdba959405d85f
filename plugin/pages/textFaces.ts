/**
 * The letters of a page, carried in the page itself. The engraver leaves room for texts by the widths of Times; Tinos has
 * the same, so that nothing overprints, whatever fonts a reader has. @source the OFL-licensed package `@fontsource/tinos`
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { SIGN_FACE } from './signFace.ts';

/** The families under which a page finds its letters and the signs that these lack. */
export const TEXT_FAMILY = 'Bellhand Text';
export const SIGN_FAMILY = 'Bellhand Signs';

const FACES = [
  { file: '400-normal', weight: 400, style: 'normal' },
  { file: '400-italic', weight: 400, style: 'italic' },
  { file: '700-normal', weight: 700, style: 'normal' },
] as const;

/** The style rules that hold the letters; nothing where the package is not installed: the reader's own fonts do then. */
export function textFaces(): string {
  faces ??= FACES.map(face).join('') + signs();
  return faces;
}

let faces: string | null = null;

function face({ file, weight, style }: (typeof FACES)[number]): string {
  const bytes = fontFile(`@fontsource/tinos/files/tinos-latin-${file}.woff2`);
  if (!bytes) return '';
  return `@font-face{font-family:"${TEXT_FAMILY}";font-style:${style};font-weight:${weight};src:url(data:font/woff2;base64,${bytes.toString('base64')}) format("woff2")}`;
}

/** Light and bold alike: the signs are made once. */
function signs(): string {
  return `@font-face{font-family:"${SIGN_FAMILY}";font-weight:100 900;src:url(data:font/woff2;base64,${SIGN_FACE}) format("woff2")}`;
}

function fontFile(name: string): Buffer | null {
  try {
    return readFileSync(createRequire(import.meta.url).resolve(name));
  } catch {
    return null;
  }
}
