/** Small helpers for building MusicXML elements with a DOM. */
import type { Document, Element } from '@xmldom/xmldom';

/** Attributes of an element, in the order in which they are written. */
export type Attributes = { readonly [name: string]: string | number };

/** A child: text, an element, or nothing. */
export type Child = Element | string | number | null;

/** Makes elements of one document. */
export type ElementMaker = (name: string, attributes?: Attributes, ...children: readonly Child[]) => Element;

/** An element maker for a document. */
export function elementMaker(document: Document): ElementMaker {
  return (name, attributes = {}, ...children) => {
    const element = document.createElement(name);
    for (const attribute of Object.keys(attributes))
      element.setAttribute(attribute, String(attributes[attribute]));
    for (const child of children) {
      if (child === null) continue;
      element.appendChild(typeof child === 'object' ? child : document.createTextNode(String(child)));
    }
    return element;
  };
}
