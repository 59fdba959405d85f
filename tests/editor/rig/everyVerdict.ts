/** A horn part that has something of everything: what tests of annotating begin with. */
import { hornScore, open, type Played, rest, stopped } from './music.ts';

/** A part with sure, risky and impossible stopped notes, open ones, and signs and words of its own. */
export const EVERY_VERDICT_BARS: readonly (readonly Played[])[] = [
  [stopped('C5'), stopped('Eb4'), { ...open('G4'), glissando: '+' }, { ...stopped('C5'), glissando: '-' }],
  [
    { ...open('E4', 2), words: 'dolce', slur: '+' },
    { ...stopped('C#4', 2), slur: '-' },
  ],
  [stopped('C3', 2), rest(2)],
];

/** The same as a score. */
export const EVERY_VERDICT = hornScore(EVERY_VERDICT_BARS);
