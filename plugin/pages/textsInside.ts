/** Words that would run over the right edge of a system end at the edge instead. */

/** Letters are this wide on average, in ems, italics and bold with them. An upper guess, since fonts differ. */
const LETTER_EMS = 0.55;
const SPACE_EMS = 0.3;
/** Clear of the edge, in units of the drawing. */
const EDGE = 100;

/**
 * The content of an engraved system with its words kept inside.
 * @param offset how far the content is moved to the right inside its frame
 * @param width of the frame
 */
export function textsInside(content: string, offset: number, width: number): string {
  return content.replace(
    /<text x="(-?\d+)" (y="-?\d+" font-size="0px")>((?:(?! x="|<\/text>).)*)<\/text>/g,
    (text, x: string, rest: string, inside: string) => {
      const right = width - EDGE - offset;
      const needed = widthOf(inside);
      if (Number(x) + needed <= right) return text;
      const room = width - 2 * EDGE;
      const squeezed = needed > room ? ` textLength="${room}" lengthAdjust="spacingAndGlyphs"` : '';
      return `<text x="${right}" ${rest} text-anchor="end"${squeezed}>${inside}</text>`;
    },
  );
}

function widthOf(inside: string): number {
  let width = 0;
  for (const [, size, text] of inside.matchAll(/font-size="(\d+)px"[^>]*>([^<]+)/g)) {
    const letters = text!.replace(/&[^;]*;/g, '.');
    const printed = letters.replace(/\s/g, '').length;
    width += Number(size) * (LETTER_EMS * printed + SPACE_EMS * (letters.length - printed));
  }
  return width;
}
