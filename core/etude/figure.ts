/**
 * Figures: a bar's rhythm with its hand, its attacks and its slurs, written as one line, so that a table of them reads
 * like music.
 *
 *     o2 s1_ 'o1      open half; the same note stopped for a quarter, tenuto; the next note of the line, open
 *
 * A word is a hand (`o` open, `s` stopped, `r` rest), a length in quarters (`1`, `.5`, `1/3`) and marks: `_` tenuto,
 * `>` accent, `~` the hand slides on to the next note, `=` the tone is held on into the next note, `^` fermata, `,`
 * breath, `(` and `)` a slur, `<` a crescendo and `-` a diminuendo that begins, `!` a hairpin that ends, `z` a sforzato,
 * `p` a forte-piano. A `'` before it takes the next note of the line.
 */
import { type Bar, bar, type EtudeNote, type Meter, note, rest } from './bar.ts';
import type { Tone } from './tone.ts';

/** One note or rest of a figure. */
export interface Stroke {
  readonly hand: 'open' | 'closed' | null;
  readonly quarters: number;
  /** True when it takes the next note of the line; the first of a figure always does. */
  readonly moves: boolean;
  readonly marks: Pick<
    EtudeNote,
    'attack' | 'slur' | 'slides' | 'ties' | 'breath' | 'fermata' | 'dynamic' | 'hairpin' | 'hairpinEnds'
  >;
}

export type Figure = readonly Stroke[];

/**
 * Reads a figure.
 * @throws {RangeError} when a word is none
 */
export function figure(text: string): Figure {
  return text.split(' ').map((word, i) => {
    const match = /^('?)([osr])(\d*\.?\d+)(?:\/(\d))?([_>~=^,()<!zp-]*)$/.exec(word);
    if (!match)
      throw new RangeError(`"${word}" is no word of a figure: write a hand, a length and its marks`);
    const [, next, hand, length, divisor, marks] = match as unknown as string[];
    const has = (mark: string) => marks!.indexOf(mark) >= 0;
    return {
      hand: hand === 'o' ? 'open' : hand === 's' ? 'closed' : null,
      quarters: Number(length) / Number(divisor ?? 1),
      moves: i === 0 || next !== '',
      marks: {
        attack: has('_') ? 'tenuto' : has('>') ? 'accent' : null,
        slur: has('(') ? 'start' : has(')') ? 'stop' : null,
        slides: has('~'),
        ties: has('='),
        breath: has(','),
        fermata: has('^'),
        dynamic: has('z') ? 'sfz' : has('p') ? 'fp' : null,
        hairpin: has('<') ? 'crescendo' : has('-') ? 'diminuendo' : null,
        hairpinEnds: has('!'),
      },
    };
  });
}

/** A bar of a figure over the tones it takes, in turn. */
export function played(figure: Figure, tones: readonly Tone[], meter: Meter): Bar {
  let at = -1;
  return bar(
    meter,
    figure.map(({ hand, quarters, moves, marks }) => {
      if (hand === null) return { ...rest(quarters), fermata: marks.fermata };
      if (moves || at < 0) at += 1;
      const tone = tones[Math.min(at, tones.length - 1)]!;
      const one =
        hand === 'open' ? note(tone.open, quarters, 'open') : note(tone.written, quarters, tone.hand);
      return { ...one, ...marks };
    }),
  );
}

/** A figure that fills four quarters as one that fills three: the last of its longest notes is a quarter shorter. */
export function inThree(strokes: Figure): Figure {
  const longest = Math.max(...strokes.map(({ quarters }) => quarters));
  const at = strokes.map(({ quarters }) => quarters).lastIndexOf(longest);
  return strokes
    .map((stroke, i) => (i === at ? { ...stroke, quarters: stroke.quarters - 1 } : stroke))
    .filter(({ quarters }) => quarters > 0);
}

/** Lengths of one, two and three strokes in a bar of 6/8: changes of the hand fall on the second beat. */
const SIXES: readonly (readonly number[])[] = [[], [3], [1.5, 1.5], [1.5, 1, 0.5]];

/** A figure of three strokes at most, whatever it fills, as one that fills a bar of 6/8. */
function inSix(strokes: Figure): Figure {
  return strokes.map((stroke, i) => ({ ...stroke, quarters: SIXES[strokes.length]![i]! }));
}

/** A figure for a bar of four quarters as one for a bar of this meter. */
export function inMeter(strokes: Figure, { beats, beatType }: Meter): Figure {
  return beatType === 8 ? inSix(strokes) : beats === 3 ? inThree(strokes) : strokes;
}

/** How many notes of a line a figure takes. */
export function notesTaken(strokes: Figure): number {
  return strokes.filter(({ hand }, i) => hand !== null && (i === 0 || strokes[i]!.moves)).length;
}

/** The shortest time between two notes where the hand changes, and where in the bar that is, in quarters. */
export function changesIn(
  strokes: Figure,
): readonly { readonly after: number; readonly at: number; readonly overRest: boolean }[] {
  const changes: { after: number; at: number; overRest: boolean }[] = [];
  let at = 0;
  let before: { hand: Stroke['hand']; onset: number; end: number } | null = null;
  for (const { hand, quarters } of strokes) {
    if (hand !== null) {
      if (before && before.hand !== hand)
        changes.push({ after: at - before.onset, at, overRest: before.end < at });
      before = { hand, onset: at, end: at + quarters };
    }
    at += quarters;
  }
  return changes;
}
