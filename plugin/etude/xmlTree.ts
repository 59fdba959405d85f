/** XML elements as plain data, built before anybody decides how they are written. */

export interface XmlElement {
  readonly name: string;
  readonly attributes: { readonly [name: string]: string | number };
  readonly children: readonly (XmlElement | string | number)[];
}

/** An element; null children are left out. */
export function element(
  name: string,
  attributes: XmlElement['attributes'] = {},
  ...children: readonly (XmlElement | string | number | null)[]
): XmlElement {
  return {
    name,
    attributes,
    children: children.filter((child): child is XmlElement | string | number => child !== null),
  };
}
