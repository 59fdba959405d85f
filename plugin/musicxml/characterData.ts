/** The characters of elements, cut out of the text where they are wanted: cheaper than listening to all of them. */
import { SaxesParser } from 'saxes';

const LESS_THAN = 60;
const SLASH = 47;
const AMPERSAND = 38;
const CARRIAGE_RETURN = 13;

export class CharacterData {
  private readonly text: string;
  /** What entities that the document declares stand for; the parser knows only XML's own five. */
  private readonly entities: { [name: string]: string } = {};

  constructor(text: string) {
    this.text = text;
  }

  /** Takes the entities that a document type declares. @returns what each stands for, by name */
  declare(doctype: string): { readonly [name: string]: string } {
    const declaration = /<!ENTITY\s+([^\s%"'<>]+)\s+(?:"([^"<&%]*)"|'([^'<&%]*)')\s*>/g;
    for (let match = declaration.exec(doctype); match; match = declaration.exec(doctype)) {
      this.entities[match[1]!] = match[2] ?? match[3] ?? '';
    }
    return this.entities;
  }

  /** The characters of the element whose content begins at `start` and whose end tag ends at `end`. */
  between(start: number, end: number): string {
    const { text } = this;
    for (let at = start; at < end; at++) {
      const code = text.charCodeAt(at);
      if (code === LESS_THAN && text.charCodeAt(at + 1) === SLASH) return text.slice(start, at);
      if (code === LESS_THAN || code === AMPERSAND || code === CARRIAGE_RETURN) break;
    }
    const endTag = text.lastIndexOf('<', end - 1);
    return endTag <= start ? '' : this.resolved(text.slice(start, endTag));
  }

  /** What a stretch of content stands for: references, CDATA, comments and line ends resolved. */
  private resolved(content: string): string {
    const parser = new SaxesParser({ fragment: true });
    let text = '';
    const take = (piece: string) => {
      text += piece;
    };
    // Faults were found by the parser of the whole document.
    parser.on('error', () => {});
    parser.on('text', take);
    parser.on('cdata', take);
    for (const name in this.entities) parser.ENTITIES[name] = this.entities[name]!;
    parser.write(content).close();
    return text;
  }
}
