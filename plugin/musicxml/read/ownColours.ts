/** Colours of ours on a note, and where they stand in the text. */
import { PAINTED_COLOURS, VERDICT_COLOURS } from '../../../core/index.ts';
import type { Span } from './score.ts';
import { spaceBefore } from './whitespace.ts';

const NOTEHEAD = /<(?:[^\s<>:]+:)?notehead(?=[\s>])[^<>]*>([^<>]*)<\/[^<>]*>/;
/** What the editor colours with a note. */
const WITH_THE_HEAD = /<(?:[^\s<>:]+:)?(?:accidental|dot)(?=[\s/>])/;
const STEM = /<(?:[^\s<>:]+:)?stem(?=[\s>])/;
const ATTRIBUTE = /\s+([^\s=<>/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/y;

/** True for a colour that we may have given: needed besides the claim in a mark, since hosts move marks about. */
function isOwnColour(colour: string): boolean {
  const rgb = rgbOf(colour);
  return rgb === VERDICT_COLOURS.risky || rgb === VERDICT_COLOURS.impossible || isPainted(colour);
}

/** True for a colour that nobody but us gives, which needs no claim: somebody may have deleted the mark. */
export function isPainted(colour: string | null): boolean {
  if (colour === null) return false;
  const rgb = rgbOf(colour);
  return rgb === PAINTED_COLOURS.risky || rgb === PAINTED_COLOURS.impossible;
}

function rgbOf(colour: string): string {
  return colour.replace(/^#(?:FF)?(?=[0-9A-F]{6}$)/i, '#').toUpperCase();
}

/**
 * Where our colours of one note stand: its own attribute, as we write it, that of its notehead, where hosts move it, and
 * those of its accidental and dots, which version 4 of the editor writes.
 * A notehead that a host made for the colour alone goes as a whole.
 * @param start the `<` of the note
 * @param isOurs tells which colours to look for
 */
export function ownColours(text: string, start: number, isOurs = isOwnColour): Span[] {
  const spans: Span[] = [];
  const own = colourOf(text, start);
  if (own && isOurs(own.value)) spans.push(own.span);
  const note = text.slice(start, noteEnd(text, start));
  const notehead = NOTEHEAD.exec(note);
  const head = notehead ? colourOf(text, start + notehead.index) : null;
  if (notehead && head && isOurs(head.value)) {
    const at = start + notehead.index;
    const isMade = head.attributes === 1 && notehead[1] === 'normal';
    spans.push(isMade ? { start: spaceBefore(text, at), end: at + notehead[0].length } : head.span);
  }
  if (spans.length === 0) return spans;
  const others = new RegExp(WITH_THE_HEAD, 'g');
  for (let other = others.exec(note); other; other = others.exec(note)) {
    const colour = colourOf(text, start + other.index);
    if (colour && isOurs(colour.value)) spans.push(colour.span);
  }
  return spans;
}

/**
 * Where our colour stands at the stem of a note: version 4 of the editor gives it the colour of the note when it reads a file.
 * @param start the `<` of the note
 */
export function stemColours(text: string, start: number): Span[] {
  const stem = STEM.exec(text.slice(start, noteEnd(text, start)));
  const colour = stem && colourOf(text, start + stem.index);
  return colour && isOwnColour(colour.value) ? [colour.span] : [];
}

/** The colour in the tag that begins at `start`: its value, its place with the white space before it, and how many attributes there are. */
function colourOf(text: string, start: number): { value: string; span: Span; attributes: number } | null {
  let at = start;
  while (!/[\s/>]/.test(text[at] ?? '>')) at += 1;
  let colour: { value: string; span: Span } | null = null;
  let attributes = 0;
  ATTRIBUTE.lastIndex = at;
  for (let match = ATTRIBUTE.exec(text); match; match = ATTRIBUTE.exec(text)) {
    attributes += 1;
    const span = { start: match.index, end: ATTRIBUTE.lastIndex };
    if (match[1] === 'color') colour = { value: match[2] ?? match[3] ?? '', span };
  }
  return colour && { ...colour, attributes };
}

function noteEnd(text: string, start: number): number {
  const end = /<\/(?:[^\s<>:]+:)?note\s*>/g;
  end.lastIndex = start;
  return end.exec(text)?.index ?? text.length;
}
