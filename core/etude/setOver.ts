/** Long tones set over into another meter, as a teacher does when a course goes on in three: the same notes, signs and swells. */
import { examine } from '../rules/examine.ts';
import { type Bar, FOUR_FOUR, type Meter, SIX_EIGHT, THREE_FOUR } from './bar.ts';
import { difficultyOf } from './difficulty.ts';
import { type Etude, SLOWEST_TEMPO } from './etude.ts';
import { etudePassage } from './etudePassage.ts';
import { ETUDE_KINDS } from './kinds.ts';
import { tempoWords } from './tempo.ts';

/** How long one, two and three notes or rests last that fill a bar, in quarters. */
const LENGTHS: ReadonlyMap<Meter, readonly (readonly number[])[]> = new Map([
  [FOUR_FOUR, [[4], [2, 2], [1, 2, 1]]],
  [THREE_FOUR, [[3], [2, 1], [1, 1, 1]]],
  [SIX_EIGHT, [[3], [1.5, 1.5], [1.5, 1, 0.5]]],
]);

/** An étude of bars with three notes and rests at most in another meter, its quarters as quick as before. */
export function setOver(etude: Etude, meter: Meter): Etude {
  const { kind, key, player, transposition } = etude;
  const lengths = LENGTHS.get(meter)!;
  const bars = etude.bars.map(
    (bar): Bar => ({
      ...bar,
      meter,
      notes: bar.notes.map((note, i) => ({ ...note, quarters: lengths[bar.notes.length - 1]![i]! })),
    }),
  );
  const quarters = etude.tempo * etude.bars[0]!.meter.beatQuarters;
  const tempo = Math.max(SLOWEST_TEMPO, Math.round(quarters / meter.beatQuarters));
  const { notes } = examine(etudePassage(bars, transposition, tempo), player);
  return {
    ...etude,
    bars,
    tempo,
    tempoWords: tempoWords(tempo, ETUDE_KINDS.filter((each) => each.kind === kind)[0]!.character),
    difficulty: difficultyOf(
      bars,
      key,
      tempo,
      notes.map(({ verdict }) => verdict !== 'sure'),
    ),
  };
}
