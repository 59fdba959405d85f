/**
 * Stands in for `engrave.ts` in tests that make many pages of the same music: what was engraved once is not engraved again.
 *
 *     vi.mock('../../plugin/pages/engrave.ts', () => import('./engravedOnce.ts'));
 */
import { vi } from 'vitest';

type Real = typeof import('../../plugin/pages/engrave.ts');

const real = await vi.importActual<Real>('../../plugin/pages/engrave.ts');
const known = new Map<string, ReturnType<Real['engrave']>>();

export const { EngravingError, PAGE_ID } = real;

export const engrave: Real['engrave'] = (musicXml, look) => {
  const key = JSON.stringify([musicXml, look]);
  const engraving = known.get(key) ?? real.engrave(musicXml, look);
  known.set(key, engraving);
  return engraving;
};

/** From here on everything is engraved anew. */
export function forgetEngravings(): void {
  known.clear();
}
