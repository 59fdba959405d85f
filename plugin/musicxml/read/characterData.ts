/** The characters of elements, cut out of the text where they are wanted: cheaper than listening to all of them. */
import { SaxesParser } from 'saxes';
import type { Entities } from './entities.ts';

const LESS_THAN = 60;
const SLASH = 47;
const AMPERSAND = 38;
const CARRIAGE_RETURN = 13;

export class CharacterData {
  private readonly text: string;
  private readonly entities: Entities;

  constructor(text: string, entities: Entities) {
    this.text = text;
    this.entities = entities;
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
      // A single character needs no new string.
      const content = at === start + 1 ? text[start]! : text.slice(start, at);
      return isPlain ? content : this.entities.resolve(content.replace(/\r\n?/g, '\n'));
    }
    const endTag = text.lastIndexOf('<', end - 1);
    return endTag <= start ? '' : this.withoutMarkup(text.slice(start, endTag));
  }

  /** The same of content with CDATA or comments, which is rare. */
  private withoutMarkup(content: string): string {
    let result = '';
    const parser = new SaxesParser({ fragment: true });
    // Faults were found by the parser of the whole document.
    parser.on('error', () => {});
    parser.on('text', (piece) => {
      result += piece;
    });
    parser.on('cdata', (piece) => {
      result += piece;
    });
    this.entities.lendTo(parser);
    parser.write(content).close();
    return result;
  }
}
