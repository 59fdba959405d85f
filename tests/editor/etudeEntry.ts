/** What the tests of the script engine bundle: études on wish, with the horns by name. */
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { type EtudeWish, etudeOnWish, type WishedEtude } from '../../plugin/etude/etudeOnWish.ts';

export function wished(wish: EtudeWish, hornId: string): WishedEtude {
  const horn = HORNS.filter(({ id }) => id === hornId)[0]!;
  return etudeOnWish(wish, { ...DEFAULT_SETTINGS, horn });
}
