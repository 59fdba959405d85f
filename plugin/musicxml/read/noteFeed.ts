/**
 * Feeds a score's text to the parser, but for notes that say what a note before them said, in the same characters: what
 * is well-formed once is so again. Music repeats itself: of the notes of most orchestral scores six to nine in ten are
 * left out so, and parsing is the dearest of all that is done to a score.
 */
import type { SaxesParser } from 'saxes';
import type { NoteContent } from './noteContent.ts';

/** Whoever reads the notes of the part at hand. */
export interface NoteListener {
  /**
   * Takes a whole note whose start tag says nothing that matters and whose inside is known.
   * @param content `null` where those who read that inside before passed it over
   * @param start the `<` of the note
   * @param contentAt directly after its start tag
   * @returns false when it has to be parsed all the same
   */
  repeat(content: NoteContent | null, start: number, contentAt: number): boolean;
  /** What the inside of the note that closes says; `null` where it was passed over, `undefined` where it is of this place alone. */
  heard(): NoteContent | null | undefined;
}

/** A place in a text: `line` counts from 1, `column` is how many characters stand before it there. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** Longer insides are hardly ever alike, and cost more to compare. In characters. */
const LONGEST = 2000;
/** More different ones are not kept: far more than any part has, far less than a file may. */
const MOST_KEPT = 20_000;
/** Where of the first so many notes less than a third were alike, the rest is fed as it is: looking costs a little too. */
const TRIAL = 500;

/**
 * Attributes of a note that nobody here reads, such as its place on the page: no name twice, and nothing in a value that
 * the parser would have to look at. Whatever is written otherwise is left to the parser.
 */
const PLAIN_ATTRIBUTES = '(?: (?!color=|print-object=)([a-z-]+)="[ !#-%\'-;=?-~]*"(?![^<>]* \\1=))*';

export class NoteFeed {
  private readonly text: string;
  private readonly parser: SaxesParser;
  /** How far the text is taken, parsed or left out, and how much of it was left out. */
  private taken = 0;
  private skipped = 0;
  /** Where a child of a measure may begin, who reads the part there, and how many such places there were. */
  private readyAt = -1;
  private listener: NoteListener | null = null;
  private readies = 0;
  private readonly known = new Map<string, NoteContent | null>();

  constructor(text: string, parser: SaxesParser) {
    this.text = text;
    this.parser = parser;
  }

  /** While the parser works, the offset in the text directly after what it has seen. */
  get offset(): number {
    return this.skipped + this.parser.position;
  }

  /** The same as a line and a column. */
  place(): TextPlace {
    const before = this.text.slice(0, this.offset);
    const lineEnd = /\r\n?|\n/g;
    let line = 1;
    let start = 0;
    for (; lineEnd.test(before); line++) start = lineEnd.lastIndex;
    return { line, column: Array.from(before.slice(start)).length };
  }

  /**
   * Takes note that a tag ends here after which a child of a measure may begin.
   * @param listener who reads the part; `null` where no notes are read
   */
  ready(listener: NoteListener | null): void {
    this.readyAt = this.offset;
    this.listener = listener;
    this.readies += 1;
  }

  /**
   * Feeds the whole text.
   * @param prefix the namespace prefix of MusicXML's own elements, known once the root is open
   */
  run(prefix: () => string): void {
    const { text } = this;
    // By the first end tag the root is open.
    this.parse(Math.max(0, text.indexOf('</')));
    const tagBegin = `<${prefix()}note`;
    const startTag = new RegExp(`[ \\t\\r\\n]*${tagBegin}${PLAIN_ATTRIBUTES}>`, 'y');
    const endTag = `</${prefix()}note>`;
    let looked = 0;
    let alike = 0;
    for (let at = this.taken; ; ) {
      const start = text.indexOf(tagBegin, at);
      if (start < 0) break;
      at = start + tagBegin.length;
      // Only white space stands between a tag and the note, where it is one: a comment may hold what looks like it.
      const tagEnd = text.lastIndexOf('>', start) + 1;
      if (tagEnd > this.taken) this.parse(tagEnd);
      startTag.lastIndex = tagEnd;
      if (this.listener === null || this.readyAt !== tagEnd || !startTag.test(text)) continue;
      const contentAt = startTag.lastIndex;
      const contentEnd = text.indexOf(endTag, contentAt);
      if (contentEnd < 0 || (looked === TRIAL && 3 * alike < looked)) break;
      if (contentEnd - contentAt > LONGEST) continue;
      at = contentEnd + endTag.length;
      looked += 1;
      if (this.take(this.listener, start, contentAt, contentEnd, at)) alike += 1;
    }
    this.parser.write(text.slice(this.taken)).close();
  }

  /** Takes one note to its end. @returns true when it was known and left out of the parse */
  private take(
    listener: NoteListener,
    start: number,
    contentAt: number,
    contentEnd: number,
    end: number,
  ): boolean {
    const inside = this.text.slice(contentAt, contentEnd);
    const content = this.known.get(inside);
    if (content !== undefined && listener.repeat(content, start, contentAt)) {
      this.skipped += end - this.taken;
      this.taken = end;
      this.readyAt = end;
      return true;
    }
    const before = this.readies;
    this.parse(end);
    // A comment may hold what looks like the end: then the note closes elsewhere, and is not what it seemed.
    if (this.readyAt !== end || this.readies !== before + 1) return false;
    const heard = listener.heard();
    // References count against what all of them may come to, wherever they stand.
    if (heard !== undefined && this.known.size < MOST_KEPT && inside.indexOf('&') < 0)
      this.known.set(inside, heard);
    return false;
  }

  private parse(to: number): void {
    this.parser.write(this.text.slice(this.taken, to));
    this.taken = to;
  }
}
