/**
 * Feeds a score's text to the parser, but for the insides of notes that stood in it before in the same characters: what
 * is well-formed once is so again and says the same. Music repeats itself: of the notes of most orchestral scores six to
 * nine in ten are left out so, and parsing is the dearest of all that is done to a score.
 */
import type { SaxesParser } from 'saxes';
import type { NoteContent } from './noteContent.ts';

/** Whoever reads the notes of the part at hand. */
export interface NoteListener {
  /**
   * Takes the inside of the note that is open as known.
   * @param content `null` where those who read it before passed it over
   * @returns false when it has to be parsed all the same
   */
  recall(content: NoteContent | null): boolean;
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

export class NoteFeed {
  private readonly text: string;
  private readonly parser: SaxesParser;
  /** Who reads the note that is open, and where its inside begins. */
  private listener: NoteListener | null = null;
  private openedAt = -1;
  private skipped = 0;
  private readonly known = new Map<string, NoteContent | null>();
  /** An inside that is parsed for the first time, and where its note ends if it is what it seems; −1 without one. */
  private fresh = '';
  private freshEnd = -1;

  constructor(text: string, parser: SaxesParser) {
    this.text = text;
    this.parser = parser;
  }

  /** The offset in the text directly after what the parser has seen. */
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

  /** Takes note of a `note` whose start tag ends here. */
  opened(listener: NoteListener): void {
    this.listener = listener;
    this.openedAt = this.offset;
  }

  /** Takes note of the end of a child of a measure. */
  closed(): void {
    const { listener } = this;
    this.listener = null;
    if (this.freshEnd < 0 || listener === null) return;
    // A comment may hold what looks like the end: then the note closes elsewhere, and is not what it seemed.
    const heard = this.offset === this.freshEnd ? listener.heard() : undefined;
    // References count against what all of them may come to, wherever they stand.
    if (heard !== undefined && this.known.size < MOST_KEPT && this.fresh.indexOf('&') < 0)
      this.known.set(this.fresh, heard);
    this.freshEnd = -1;
  }

  /**
   * Feeds the whole text.
   * @param prefix the namespace prefix of MusicXML's own elements, known once the root is open
   */
  run(prefix: () => string): void {
    const { text, parser } = this;
    // By the first end tag the root is open.
    let at = Math.max(0, text.indexOf('</'));
    parser.write(text.slice(0, at));
    const startTag = new RegExp(`<${prefix()}note(?:\\s[^<>]*)?>`, 'g');
    const endTag = `</${prefix()}note>`;
    let end = -1;
    let looked = 0;
    let alike = 0;
    for (startTag.lastIndex = at; startTag.test(text); startTag.lastIndex = at) {
      parser.write(text.slice(at, startTag.lastIndex));
      at = startTag.lastIndex;
      if (this.listener === null || this.openedAt !== at) continue;
      if (end < at) end = text.indexOf(endTag, at);
      if (end < 0 || (looked === TRIAL && 3 * alike < looked)) break;
      if (end - at > LONGEST) continue;
      looked += 1;
      const inside = text.slice(at, end);
      const content = this.known.get(inside);
      if (content !== undefined && this.listener.recall(content)) {
        alike += 1;
        this.skipped += inside.length;
        at = end;
      } else {
        this.fresh = inside;
        this.freshEnd = end + endTag.length;
      }
    }
    parser.write(text.slice(at)).close();
  }
}
