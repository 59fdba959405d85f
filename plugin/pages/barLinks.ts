/** Bars named as a player looks for them, each a link to its music. */
import { type Html, html } from './html.ts';
import { barId } from './onePart.ts';

export interface BarPlace {
  /** Place in the part, from 0. */
  readonly index: number;
  /** As printed. */
  readonly number: string;
}

/** Bars in a row are joined, `28–31`, from so many on. */
const JOINED_FROM = 3;

/**
 * `12, 20, 28–31`, each piece a link: to the wide music, and, shown in its place on a narrow screen, to the narrow.
 * @param part the part's place on the page, from 0
 * @param bars in order, each once
 */
export function barLinks(part: number, bars: readonly BarPlace[]): Html {
  const pieces: Html[] = [];
  for (let i = 0; i < bars.length; ) {
    let end = i + 1;
    while (end < bars.length && bars[end]!.index === bars[end - 1]!.index + 1) end += 1;
    const isJoined = end - i >= JOINED_FROM;
    const [first, last] = [bars[i]!, bars[isJoined ? end - 1 : i]!];
    const text = isJoined ? `${first.number}–${last.number}` : first.number;
    pieces.push(barLink(part, first.index, text));
    i = isJoined ? end : i + 1;
  }
  return html`${pieces.map((piece, i) => html`${i > 0 ? ', ' : ''}${piece}`)}`;
}

/** One link to a bar. */
export function barLink(part: number, index: number, text: string): Html {
  return html`<a class="to-wide" href="#${barId(`${part}`, index)}">${text}</a><a class="to-narrow" href="#${barId(`${part}n`, index)}">${text}</a>`;
}

/** The bars of some notes, in order, each once. */
export function barsOfNotes(
  notes: readonly { readonly measureIndex: number; readonly measure: string }[],
): readonly BarPlace[] {
  const bars = new Map(notes.map(({ measureIndex, measure }) => [measureIndex, measure]));
  return [...bars].sort(([a], [b]) => a - b).map(([index, number]) => ({ index, number }));
}
