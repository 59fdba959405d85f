/** One part of a score as a score of its own, with ids that a page can find again. */
import type { HornPart, MeasureSpan, Score, Span } from '../musicxml/read/score.ts';
import { PAGE_ID } from './engrave.ts';
import { html } from './html.ts';

/**
 * A part's place on the page, from `0`; with an `n` behind it where the part is engraved once more, for narrow screens.
 */
export type PagePlace = `${number}` | `${number}n`;

/** The id of a bar. @param measureIndex its place in the part, from 0 */
export function barId(place: PagePlace, measureIndex: number): string {
  return `${PAGE_ID}${place}-bar-${measureIndex}`;
}

/** The id of a note. @param noteIndex its place in the passage, from 0 */
export function noteId(place: PagePlace, noteIndex: number): string {
  return `${PAGE_ID}${place}-note-${noteIndex}`;
}

/**
 * The text of a score that holds one part alone, partwise, its bars and the wanted notes under their ids.
 * @param wantedNotes indexes of the notes that need an id
 */
export function onePartText(
  score: Score,
  horn: HornPart,
  place: PagePlace,
  wantedNotes: readonly number[],
): string {
  const { prefix } = score;
  const insertions = wantedNotes.map((index): Insertion => {
    const at = horn.notesInText.at(index).start + `<${prefix}note`.length;
    return { at, text: ` id="${noteId(place, index)}"` };
  });
  insertions.sort((a, b) => a.at - b.at);
  const inserted = insertionsByStretch(insertions, horn.measures);
  const measures = horn.measures.map((measure, i) => {
    const inside = withoutEntities(withInsertions(score.text, measure, inserted[i]!), score)
      .replace(/^<[^>]*>/, `<measure ${measureAttributes(measure)} id="${barId(place, i)}">`)
      .replace(/<\/[^<>]*>$/, '</measure>');
    return prefix === '' ? inside : inside.split(`<${prefix}`).join('<').split(`</${prefix}`).join('</');
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<score-partwise version="4.0"><part-list><score-part id="P1"><part-name/></score-part></part-list><part id="P1">',
    ...measures,
    '</part></score-partwise>',
  ].join('\n');
}

interface Insertion {
  readonly at: number;
  readonly text: string;
}

function measureAttributes({ number, implicit }: MeasureSpan): string {
  const quoted = number.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
  return `number="${quoted}"${implicit ? ' implicit="yes"' : ''}`;
}

/** The insertions of each stretch of the text; both stand in the order of the text. */
function insertionsByStretch(insertions: readonly Insertion[], stretches: readonly Span[]): Insertion[][] {
  let next = 0;
  return stretches.map(({ end }) => {
    const first = next;
    while (next < insertions.length && insertions[next]!.at < end) next += 1;
    return insertions.slice(first, next);
  });
}

/** What references are not resolved in: these come out as they stand. */
const AS_IT_STANDS = /<!\[CDATA\[[\s\S]*?\]\]>|<!--[\s\S]*?-->|<\?[\s\S]*?\?>/;
const OWN_REFERENCE = new RegExp(`${AS_IT_STANDS.source}|&(?!(?:amp|lt|gt|quot|apos);)[^#;\\s]+;`, 'g');

/** The page's text declares no entities, so what the score's own stand for is written out. */
function withoutEntities(text: string, { entities }: Score): string {
  if (entities.isEmpty) return text;
  return text.replace(OWN_REFERENCE, (found) =>
    found[0] === '&' ? html`${entities.resolve(found)}`.text : found,
  );
}

/** A stretch of the text with what is to go into it. */
function withInsertions(text: string, { start, end }: Span, insertions: readonly Insertion[]): string {
  let result = '';
  let from = start;
  for (const { at, text: added } of insertions) {
    result += text.slice(from, at) + added;
    from = at;
    // An id of the score's own would be a second one.
    const tagEnd = text.indexOf('>', at);
    const own = / id\s*=\s*(?:"[^"]*"|'[^']*')/.exec(text.slice(at, tagEnd));
    if (own) {
      result += text.slice(at, at + own.index);
      from = at + own.index + own[0].length;
    }
  }
  return result + text.slice(from, end);
}
