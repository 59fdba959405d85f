/** Writes an element tree as XML text, by way of a document of the XML library. */
import { DOMImplementation, type Document, type Element, XMLSerializer } from '@xmldom/xmldom';
import type { XmlElement } from './xmlTree.ts';

/** The text of a document: every element that holds elements on lines of its own, two spaces a level. */
export function documentText(root: XmlElement): string {
  const document = new DOMImplementation().createDocument(null, root.name, null);
  fill(document, document.documentElement!, root, '\n');
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(document)}\n`;
}

function fill(
  document: Document,
  element: Element,
  { attributes, children }: XmlElement,
  lineEnd: string,
): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  let hasElements = false;
  for (const child of children) {
    if (typeof child === 'object') {
      hasElements = true;
      const inner = document.createElement(child.name);
      fill(document, inner, child, `${lineEnd}  `);
      element.appendChild(document.createTextNode(`${lineEnd}  `));
      element.appendChild(inner);
    } else element.appendChild(document.createTextNode(String(child)));
  }
  if (hasElements) element.appendChild(document.createTextNode(lineEnd));
}
