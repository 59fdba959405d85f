/** The hand's signs as the host knows them: articulations, told by their glyphs. */
import type { HandSign } from '../../core/index.ts';
import type { HostArticulation, HostList, HostRoot } from './hostApi.ts';

/** A glyph's name, which stays, and the number it has before 3.5, where versions name none. */
interface Glyph {
  readonly sign: HandSign;
  readonly name: string;
  readonly number: number;
}

/** @source smufl14 for the names; the numbers as seen in 3.2.3 */
const GLYPHS: readonly Glyph[] = [
  { sign: 'stopped', name: 'brassMuteClosed', number: 646 },
  { sign: 'half-stopped', name: 'brassMuteHalfClosed', number: 647 },
  { sign: 'open', name: 'brassMuteOpen', number: 648 },
];

/** The sign an articulation prints, or `null` when it is none for the hand. */
export function signOf(root: HostRoot, { symbol }: HostArticulation): HandSign | null {
  if (symbol === undefined) return null;
  // Without names the host wraps its numbers.
  const printed = root.SymId ? symbol : Number(symbol);
  return GLYPHS.filter((glyph) => symbolOf(root, glyph) === printed)[0]?.sign ?? null;
}

/** The hand's signs among the articulations of a chord. */
export function handSignsIn(
  root: HostRoot,
  articulations: HostList<HostArticulation>,
): { readonly sign: HandSign; readonly isBelow: boolean }[] {
  const signs: { sign: HandSign; isBelow: boolean }[] = [];
  for (let i = 0; i < articulations.length; i++) {
    const sign = signOf(root, articulations[i]!);
    if (sign) signs.push({ sign, isBelow: articulations[i]!.articulationAnchor === ANCHOR_BELOW });
  }
  return signs;
}

/** The sign of a glyph, by its name; `null` for a glyph that is none for the hand. */
export function signNamed(glyph: string): HandSign | null {
  return GLYPHS.filter(({ name }) => name === glyph)[0]?.sign ?? null;
}

/** What makes an articulation print a sign. */
export function glyphOf(root: HostRoot, sign: HandSign): unknown {
  return symbolOf(root, GLYPHS.filter((glyph) => glyph.sign === sign)[0]!);
}

/** The anchor of a sign below its staff, the same in 3.2.3 and 4.6.5. */
export const ANCHOR_BELOW = 1;

function symbolOf({ SymId }: HostRoot, { name, number }: Glyph): unknown {
  return SymId ? SymId[name] : number;
}
