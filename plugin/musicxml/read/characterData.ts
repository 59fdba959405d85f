/** The characters of elements, cut out of the text where they are wanted: cheaper than listening to all of them. */
import { SaxesParser } from 'saxes';

const LESS_THAN = 60;
const SLASH = 47;
const AMPERSAND = 38;
const CARRIAGE_RETURN = 13;

export class CharacterData {
  private readonly text: string;
  /** What named entities stand for: XML's own five and those that the document declares. */
  private readonly entities: { [name: string]: string } = {
    amp: '&',
    lt: '<',
    gt: '>',
    quot: '"',
    apos: "'",
  };

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
    let isPlain = true;
    for (let at = start; at < end; at++) {
      const code = text.charCodeAt(at);
      if (code === AMPERSAND || code === CARRIAGE_RETURN) isPlain = false;
      if (code !== LESS_THAN) continue;
      if (text.charCodeAt(at + 1) !== SLASH) break;
      const content = text.slice(start, at);
      return isPlain ? content : this.withoutReferences(content);
    }
    const endTag = text.lastIndexOf('<', end - 1);
    return endTag <= start ? '' : this.withoutMarkup(text.slice(start, endTag));
  }

  private withoutReferences(content: string): string {
    return content
      .replace(/\r\n?/g, '\n')
      .replace(/&(#x)?(#)?([^;]*);/g, (reference, hex, decimal, name: string) => {
        if (hex || decimal) return String.fromCodePoint(Number.parseInt(name, hex ? 16 : 10));
        return this.entities[name] ?? reference;
      });
  }

  /** The same of content with CDATA or comments, which is rare. */
  private withoutMarkup(content: string): string {
    const parser = new SaxesParser({ fragment: true });
    let text = '';
    const take = (piece: string) => {
      text += piece;
    };
    // Faults were found by the parser of the whole document.
    parser.on('error', () => {});
    parser.on('text', take);
    parser.on('cdata', take);
    Object.assign(parser.ENTITIES, this.entities);
    parser.write(content).close();
    return text;
  }
}
