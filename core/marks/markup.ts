/** Text as markup holds it: XML and HTML alike. @source XML 1.0, 2.4 */

/** Text between tags. */
export function escapedText(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}

/** Text between the double quotation marks of an attribute; it may stand between tags too. */
export function escapedAttribute(text: string): string {
  return escapedText(text).replace(/"/g, '&quot;');
}
