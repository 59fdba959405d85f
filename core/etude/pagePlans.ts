/** What stands on the pages of lessons: how many bars of each kind, by level and by what a horn has. */
import type { EtudeRequest } from './etude.ts';
import type { Key } from './key.ts';
import { ETUDE_KINDS, type EtudeKind } from './kinds.ts';
import type { Level } from './levels.ts';
import { materialsFor } from './materials.ts';

/** Bars of each kind on a page; 0 leaves it for another day. */
export type PagePlan = { readonly [kind in EtudeKind]?: number };

/** From the second level on, where long tones are held over bar lines and take twice the room. */
const WHOLE: readonly PagePlan[] = [
  { seal: 8, match: 4, bend: 8, scale: 4, phrase: 16, change: 4 },
  { seal: 8, match: 0, bend: 8, scale: 8, phrase: 16, change: 4 },
  { seal: 8, match: 4, bend: 0, scale: 8, phrase: 16, change: 8 },
  { seal: 8, match: 4, bend: 8, scale: 4, phrase: 8, change: 8 },
];
const WITHOUT_SCALES: readonly PagePlan[] = [
  { seal: 8, match: 8, bend: 8, phrase: 16, change: 4 },
  { seal: 8, match: 4, bend: 8, phrase: 16, change: 8 },
  { seal: 16, match: 8, bend: 0, phrase: 16, change: 8 },
  { seal: 16, match: 4, bend: 8, phrase: 8, change: 12 },
];
const WITHOUT_BENDS: readonly PagePlan[] = [
  { seal: 8, match: 8, scale: 8, phrase: 16, change: 4 },
  { seal: 8, match: 4, scale: 8, phrase: 16, change: 8 },
  { seal: 16, match: 4, scale: 12, phrase: 8, change: 8 },
];

/** Pages by level, each full: what one leaves out, the next has. The last is for a horn or range with little to offer. */
const PAGES: { readonly [level in Level]: readonly PagePlan[] } = {
  1: [
    { seal: 4, match: 8, bend: 8, scale: 0, phrase: 16, change: 4 },
    { seal: 4, match: 0, bend: 8, scale: 8, phrase: 16, change: 4 },
    { seal: 4, match: 4, bend: 0, scale: 8, phrase: 16, change: 8 },
    { seal: 4, match: 4, bend: 8, scale: 8, phrase: 8, change: 4 },
  ],
  2: WHOLE,
  3: WHOLE,
};

/**
 * Pages for a horn or range without scales, or without bends, each as full: what is left practises the longer, another
 * thing on each page.
 */
const PAGES_WITHOUT: {
  readonly [kind in 'scale' | 'bend']: { readonly [level in Level]: readonly PagePlan[] };
} = {
  scale: {
    1: [
      { seal: 4, match: 8, bend: 8, phrase: 16, change: 4 },
      { seal: 4, match: 4, bend: 8, phrase: 16, change: 8 },
      { seal: 8, match: 8, bend: 0, phrase: 16, change: 8 },
      { seal: 8, match: 4, bend: 8, phrase: 8, change: 12 },
    ],
    2: WITHOUT_SCALES,
    3: WITHOUT_SCALES,
  },
  bend: {
    1: [
      { seal: 4, match: 8, scale: 8, phrase: 16, change: 4 },
      { seal: 4, match: 4, scale: 8, phrase: 16, change: 8 },
      { seal: 8, match: 8, scale: 8, phrase: 8, change: 8 },
    ],
    2: WITHOUT_BENDS,
    3: WITHOUT_BENDS,
  },
};

/** Pages of the kinds that a horn has; those of any where it lacks more than one. */
export function pagesFor(
  { level, player, low, high }: Pick<EtudeRequest, 'level' | 'player' | 'low' | 'high'>,
  key: Key,
): readonly PagePlan[] {
  const [noScales, noBends] = (['scale', 'bend'] as const).map((name) => {
    const kind = ETUDE_KINDS.filter((each) => each.kind === name)[0]!;
    return !materialsFor(kind, { key, level, player, low, high, tempo: null }).ok;
  });
  if (noScales === noBends) return PAGES[level];
  return PAGES_WITHOUT[noScales ? 'scale' : 'bend'][level];
}
