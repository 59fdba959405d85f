/** How our own marks are known again in a text, however they got there. */
import { isOurMark, MARK_PREFIX } from '../../../core/index.ts';
import type { Span } from './score.ts';

/** Every element of ours carries an id of this beginning and a number. */
export const ID_PREFIX = 'bellhand-';

/** Children of ours inside a note: an added sign or a fingering, in a `notations` of their own, exactly as written. */
const OWN_NOTATIONS =
  /^<(?:[^\s<>:]+:)?notations id="bellhand-\d+"><(?:[^\s<>:]+:)?technical><(?:[^\s<>:]+:)?(?:stopped\/>|fingering[ >])/;
/** The first character of a mark as files write it that cannot hold the character. */
const REFERENCES = ['&#x2060;', '&#8288;'];
const NUMBERED_ID = /["']bellhand-(\d+)["']/g;

/** False when a text surely holds no mark of ours: a quick look before the careful one. */
export function mayHoldMarks(text: string): boolean {
  return (
    text.indexOf(MARK_PREFIX) >= 0 ||
    text.indexOf(ID_PREFIX) >= 0 ||
    REFERENCES.some((reference) => text.indexOf(reference) >= 0)
  );
}

/** True when a `notations` element with this id, which opens at `start`, is ours. */
export function isOwnNotations(id: string | undefined, text: string, start: number): boolean {
  return (
    id !== undefined && id.indexOf(ID_PREFIX) === 0 && OWN_NOTATIONS.test(text.slice(start, start + 160))
  );
}

/** True for the text of a `words` or `fingering` of ours. */
export function isOwnText(text: string): boolean {
  return isOurMark(text.trim());
}

/** The numbers of ids like ours that stand outside our own marks and must not be used again. */
export function foreignIdNumbers(text: string, ownSpans: readonly Span[]): Set<number> {
  const numbers = new Set<number>();
  if (text.indexOf(ID_PREFIX) < 0) return numbers;
  let next = 0;
  NUMBERED_ID.lastIndex = 0;
  for (let match = NUMBERED_ID.exec(text); match; match = NUMBERED_ID.exec(text)) {
    while (next < ownSpans.length && ownSpans[next]!.end <= match.index) next += 1;
    const own = ownSpans[next];
    if (!own || match.index < own.start) numbers.add(Number(match[1]));
  }
  return numbers;
}
