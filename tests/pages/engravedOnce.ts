/**
 * Stands in for `plugin/pages/engrave.ts` wherever pages are made in tests (`tests/vitest.config.ts` sees to it): what was
 * engraved once is not engraved again as long as the process lasts. The pages of a language differ in their words alone.
 */
import * as real from '../../plugin/pages/engrave.ts';

export const { EngravingError, PAGE_ID } = real;

const known = new Map<string, ReturnType<typeof real.engrave>>();

export const engrave: typeof real.engrave = (musicXml, look) => {
  const key = JSON.stringify([musicXml, look]);
  const engraving = known.get(key) ?? real.engrave(musicXml, look);
  known.set(key, engraving);
  return engraving;
};

/** From here on everything is engraved anew. */
export function forgetEngravings(): void {
  known.clear();
}
