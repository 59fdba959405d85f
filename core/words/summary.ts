/** Places and counts in words, the same at every door. */

import type { RepairKind } from '../repairs/repair.ts';
import { type Counts, totalOf, type VerdictCounts } from '../rules/counts.ts';
import type { Verdict } from '../stopping/fingering.ts';
import { decimalText, listText } from './fingerings.ts';
import type { Reader } from './language.ts';

const VERDICTS: readonly Verdict[] = ['sure', 'risky', 'impossible'];

/** `12 stopped notes: 9 sure, 2 risky, 1 impossible; open notes: 1 risky`. */
export function countText({ stopped, open }: Counts, reader: Reader): string {
  const { stoppedNotes, openNotes } = reader.words.summary;
  const first = stoppedNotes(totalOf(stopped), verdictsText(stopped, reader));
  const beside = verdictsText({ ...open, sure: 0 }, reader);
  return beside === '' ? first : `${first}; ${openNotes(beside)}`;
}

function verdictsText(counts: VerdictCounts, { words }: Reader): string {
  return VERDICTS.filter((verdict) => counts[verdict] > 0)
    .map((verdict) => words.summary.verdicts[verdict](counts[verdict]))
    .join(', ');
}

/** Bars beyond so many are counted, not listed. */
const MOST_BARS = 12;

/**
 * `bar 4`, `bars 4, 7 and 12`; long lists are cut.
 * @param count how many bars that is, where some of them are told together, as in `3–5`
 */
export function barsText(measures: readonly string[], reader: Reader, count = measures.length): string {
  const { bars, more } = reader.words.summary;
  const shown = measures.slice(0, MOST_BARS);
  const rest = measures.length - shown.length;
  return bars(listText(rest > 0 ? [...shown, more(rest)] : shown, reader), count);
}

/** `3 more`, at the end of a list that was cut. @param count of what is left out */
export function moreText(count: number, { words }: Reader): string {
  return words.summary.more(count);
}

/** That some notes, whose verdict would colour them, kept a colour of their own. @param count 1 or more */
export function keptColourText(count: number, { words }: Reader): string {
  return words.summary.keptColour(count);
}

/** `bar 4`. */
export function barText(measure: string, { words }: Reader): string {
  return words.summary.bar(measure);
}

/** `bar 3, beat 2½`. @param beat in beats of the time signature, from 1 */
export function placeText(measure: string, beat: number, reader: Reader): string {
  return reader.words.summary.place(measure, beatText(beat, reader));
}

/** Beats as they are spoken of: `2`, `2½`, or with a decimal. @param beat in beats of the time signature, from 1 */
export function beatText(beat: number, reader: Reader): string {
  const whole = Math.floor(beat);
  const fraction = FRACTIONS[Math.round((beat - whole) * 1000) / 1000];
  return fraction === undefined ? decimalText(beat, 2, reader) : `${whole}${fraction}`;
}

const FRACTIONS: { readonly [rest: number]: string } = {
  '0': '',
  '0.25': '¼',
  '0.5': '½',
  '0.75': '¾',
  '0.333': '⅓',
  '0.667': '⅔',
};

/** `added 3 signs and 1 word`. @param completions what was added, each a sign or a word */
export function completionText(
  completions: readonly { readonly kind: RepairKind }[],
  reader: Reader,
): string {
  const { nothingAdded, signs, words, added } = reader.words.summary;
  const signCount = completions.filter(({ kind }) => kind === 'sign-added').length;
  const wordCount = completions.length - signCount;
  const what = [signCount > 0 ? signs(signCount) : '', wordCount > 0 ? words(wordCount) : ''];
  return completions.length === 0
    ? nothingAdded
    : added(
        listText(
          what.filter((text) => text !== ''),
          reader,
        ),
      );
}
