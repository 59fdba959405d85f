/** What named references stand for: XML's own five, and those that a document type declares. */
import type { SaxesParser } from 'saxes';
import { ScoreError } from '../bytes/scoreError.ts';

/** An entity stands for a character or a phrase: longer texts stand in the score itself. In characters. */
const LONGEST = 1000;
/** All references of a score together stand for no more than this, in characters. */
const MOST_IN_ALL = 1_000_000;
/** The longest document type with declarations of its own, in characters. */
const LONGEST_TYPE = 65_536;
/** An entity may use others, which use others, down to here. */
const DEEPEST = 20;

/** Comments and instructions first, so that no declaration is read out of them; then general entities with a value. */
const DECLARATION =
  /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!ENTITY\s+([^\s%"'<>]+)\s+(?:"([^"%]*)"|'([^'%]*)')\s*>/g;
const REFERENCE = /&(#x[\da-f]+|#\d+|[^#;&\s]+);/gi;

const XMLS_OWN: readonly (readonly [string, string])[] = [
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
];

/**
 * The entities of one document.
 * @source W3C, XML 1.0 (Fifth Edition), sections 4.2, 4.4, 4.5 and 4.6
 */
export class Entities {
  /** What each stands for; `null` for those that hold elements, which no score needs. */
  private readonly texts = new Map<string, string | null>(XMLS_OWN);
  private readonly values = new Map<string, string>();
  private spent = 0;

  /**
   * Takes what a document type declares.
   * @throws {ScoreError} when an entity stands for more than any text of a score, or for itself
   */
  declare(doctype: string): void {
    if (doctype.length > LONGEST_TYPE)
      throw new ScoreError(({ doctypeTooLong }) => doctypeTooLong(LONGEST_TYPE));
    DECLARATION.lastIndex = 0;
    for (let match = DECLARATION.exec(doctype); match; match = DECLARATION.exec(doctype)) {
      const [, name, quoted, apostrophed] = match;
      // Of two declarations of a name the first one binds.
      if (name === undefined || this.values.has(name)) continue;
      // References to characters are included at once, others where the entity is used.
      this.values.set(name, (quoted ?? apostrophed ?? '').replace(REFERENCE, atOnce));
    }
    this.values.forEach((_, name) => {
      this.replacement(name, 0);
    });
  }

  /** True when the document declares none. */
  get isEmpty(): boolean {
    return this.values.size === 0;
  }

  /** Lets a parser know what is declared. It throws a `ScoreError` when all uses together come to more than any score holds. */
  lendTo(parser: SaxesParser): void {
    // The parser's own table is a bare object, which would know "constructor" too.
    const table = Object.create(null) as typeof parser.ENTITIES;
    parser.ENTITIES = table;
    for (const [name, text] of XMLS_OWN) table[name] = text;
    this.values.forEach((_, name) => {
      const text = this.texts.get(name) ?? null;
      if (text !== null) Object.defineProperty(table, name, { get: () => this.use(name, text) });
    });
  }

  /** A text with its references resolved; one to nothing known stays. */
  resolve(text: string): string {
    return text.replace(REFERENCE, (reference, to: string) =>
      to[0] === '#' ? characterOf(to) : (this.texts.get(to) ?? reference),
    );
  }

  private use(name: string, text: string): string {
    this.spent += text.length;
    if (this.spent <= MOST_IN_ALL) return text;
    throw new ScoreError(({ entitiesTooLong }) => entitiesTooLong(name, MOST_IN_ALL));
  }

  private replacement(name: string, depth: number): string | null {
    const known = this.texts.get(name);
    if (known !== undefined) return known;
    const value = this.values.get(name);
    if (value === undefined || value.indexOf('<') >= 0) return null;
    if (depth > DEEPEST) throw new ScoreError(({ entityInCircle }) => entityInCircle(name));
    let length = 0;
    let isText = true;
    const text = value.replace(REFERENCE, (_, to: string) => {
      const piece = to[0] === '#' ? characterOf(to) : this.replacement(to, depth + 1);
      if (piece === null) isText = false;
      length += piece?.length ?? 0;
      return length > LONGEST ? '' : (piece ?? '');
    });
    if (Math.max(length, text.length) > LONGEST)
      throw new ScoreError(({ entityTooLong }) => entityTooLong(name, LONGEST));
    this.texts.set(name, isText ? text : null);
    return isText ? text : null;
  }
}

function atOnce(reference: string, to: string): string {
  return to[0] === '#' ? characterOf(to) : reference;
}

/** The character that `#233` or `#xE9` refers to; nothing for a number that is no character. */
function characterOf(reference: string): string {
  const isHex = reference[1] === 'x' || reference[1] === 'X';
  const code = Number.parseInt(reference.slice(isHex ? 2 : 1), isHex ? 16 : 10);
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : '';
}
