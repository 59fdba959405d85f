/** One part of a score as a score of its own, with ids that a page can find again. */
import { SaxesParser } from 'saxes';
import type { HornPart, Score } from '../musicxml/read/score.ts';
import { PAGE_ID } from './engrave.ts';

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
    const at = horn.places.at(index).start + `<${prefix}note`.length;
    return { at, text: ` id="${noteId(place, index)}"` };
  });
  insertions.sort((a, b) => a.at - b.at);
  const measures = measuresOf(score.text, prefix, horn.id).map((measure, i) => {
    const inside = withInsertions(score.text, measure, insertions)
      .replace(/^<[^>]*>/, `<measure number="${measure.number}"${measure.implicit} id="${barId(place, i)}">`)
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

interface MeasureSpan {
  readonly start: number;
  readonly end: number;
  readonly number: string;
  /** The attribute of an upbeat, or nothing. */
  readonly implicit: string;
}

/** Where the measures of a part stand in a text, whichever way round parts and measures are nested. */
function measuresOf(text: string, prefix: string, partId: string): readonly MeasureSpan[] {
  const spans: MeasureSpan[] = [];
  const parser = new SaxesParser();
  const [partName, measureName] = [`${prefix}part`, `${prefix}measure`];
  let depth = 0;
  let isThisPart = false;
  let start = -1;
  let number = '';
  let implicit = '';
  parser.on('opentag', ({ name, attributes }) => {
    depth += 1;
    if (depth > 3) return;
    if (name === partName) isThisPart = attributes.id === partId;
    if (name === measureName) {
      number = attribute(String(attributes.number ?? ''));
      implicit = attributes.implicit === 'yes' ? ' implicit="yes"' : '';
    }
    // Partwise, the inner element is the measure; timewise, it is the part.
    if (depth === 3 && isThisPart) start = text.lastIndexOf('<', parser.position - 1);
  });
  parser.on('closetag', ({ name }) => {
    if (depth === 3 && start >= 0 && (name === measureName || name === partName)) {
      spans.push({ start, end: parser.position, number, implicit });
    }
    if (depth === 3) start = -1;
    if (depth <= 3 && name === partName) isThisPart = false;
    depth -= 1;
  });
  parser.write(text).close();
  return spans;
}

function attribute(value: string): string {
  return value.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
}

/** A stretch of the text with what is to go into it. */
function withInsertions(text: string, { start, end }: MeasureSpan, insertions: readonly Insertion[]): string {
  let result = '';
  let from = start;
  for (const { at, text: added } of within(insertions, start, end)) {
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

function within(insertions: readonly Insertion[], start: number, end: number): readonly Insertion[] {
  return insertions.filter(({ at }) => at > start && at < end);
}
