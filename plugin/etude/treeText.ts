/**
 * Writes an element tree as XML text by hand, for the editor's script engine, in which the XML library of
 * `documentText.ts` does not load. A test holds the two to the same text.
 */
import { escapedAttribute, escapedText } from '../../core/index.ts';
import type { XmlElement } from './xmlTree.ts';

/** The text of a document: every element that holds elements on lines of its own, two spaces a level. */
export function treeText(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${elementText(root, '\n')}\n`;
}

function elementText({ name, attributes, children }: XmlElement, lineEnd: string): string {
  const listed = Object.keys(attributes).map(
    (key) => ` ${key}="${escapedAttribute(String(attributes[key]))}"`,
  );
  const start = `<${name}${listed.join('')}`;
  if (children.length === 0) return `${start}/>`;
  let inside = '';
  let hasElements = false;
  for (const child of children) {
    if (typeof child === 'object') {
      hasElements = true;
      inside += `${lineEnd}  ${elementText(child, `${lineEnd}  `)}`;
    } else inside += escapedText(String(child));
  }
  return `${start}>${inside}${hasElements ? lineEnd : ''}</${name}>`;
}
