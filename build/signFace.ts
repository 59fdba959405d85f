/**
 * Makes `plugin/pages/signFace.ts`: the few signs that pages use and their letters lack, cut out of DejaVu Serif:
 * `npm run signs`. Run it when a page needs another sign.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';

/** Accidentals, the sign for luck, arrows, thirds of a beat, strokes and numbers behind German note names. */
const SIGNS = '♭♮♯≈→↘↗⅓⅔‴⁗₁₂';

const FILE = new URL('../plugin/pages/signFace.ts', import.meta.url);

const font = readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSerif.ttf'));
const subset = await subsetFont(font, SIGNS, { targetFormat: 'woff2' });
writeFileSync(
  FILE,
  `/**
 * ${SIGNS} as a font of their own, made by \`npm run signs\`. From DejaVu Serif: glyphs by Bitstream (Vera), copyright 2003
 * Bitstream, Inc., under the Bitstream Vera license; DejaVu's changes are in the public domain.
 */
export const SIGN_FACE =
  '${subset.toString('base64')}';
`,
);
