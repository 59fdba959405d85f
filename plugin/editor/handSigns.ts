/** Which articulations of the host are signs for the hand. */
import type { HandSign } from '../../core/index.ts';
import type { HostArticulation, HostRoot } from './hostApi.ts';

/** The hand's signs by the names of their glyphs; their numbers change from version to version. @source smufl14 */
const GLYPHS: readonly (readonly [string, HandSign])[] = [
  ['brassMuteClosed', 'stopped'],
  ['brassMuteHalfClosed', 'half-stopped'],
  ['brassMuteOpen', 'open'],
];

/** The sign an articulation prints, or `null` when it is none for the hand. */
export function signOf({ SymId }: HostRoot, articulation: HostArticulation): HandSign | null {
  if (!SymId) return null;
  for (const [glyph, sign] of GLYPHS) {
    if (SymId[glyph] !== undefined && SymId[glyph] === articulation.symbol) return sign;
  }
  return null;
}
