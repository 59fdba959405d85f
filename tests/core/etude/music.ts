/** Bars written as words, for examples. */
import { asPhrase, type Bar, bar, type EtudeNote, FOUR_FOUR, note, rest } from '../../../core/etude/bar.ts';
import { finished } from '../../../core/etude/finish.ts';
import { parsePitch } from '../../../core/pitch/pitch.ts';

/** A bar as print has it, from words such as `o2C5 s1C5 r1`: hand, quarters, note; with `=` it is tied to the next. */
export function music(text: string): readonly Bar[] {
  return text.split(' | ').map((words) =>
    bar(
      FOUR_FOUR,
      words.split(' ').map((word): EtudeNote => {
        const [, hand, quarters, name, tie] = /^([osr])([\d.]+)(.*?)(=?)$/.exec(word)!;
        if (hand === 'r') return rest(Number(quarters));
        const one = note(parsePitch(name!), Number(quarters), hand === 'o' ? 'open' : 'stopped');
        return { ...one, ties: tie === '=' };
      }),
    ),
  );
}

/** The same as it is printed, a second to a quarter. */
export const printed = (text: string) => finished(music(text), 1);
/** Every word a phrase of its own. */
export const phrases = (...texts: readonly string[]) =>
  finished(
    texts.flatMap((text) => asPhrase(music(text))),
    1,
  );
/** The hand slides to every closed note. */
export const slid = (text: string) =>
  printed(text).map((each) => ({
    ...each,
    notes: each.notes.map((one) => ({ ...one, slides: one.hand === 'open' })),
  }));
/** Bars with marks of their own, a note each. */
export const withMarks = (text: string, marks: readonly Partial<EtudeNote>[]) => {
  let next = 0;
  return printed(text).map((each) => ({
    ...each,
    notes: each.notes.map((one) => ({ ...one, ...marks[next++] })),
  }));
};
