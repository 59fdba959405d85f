/** What stands where on a page that the editor drew. Lengths in staff spaces. */

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Drawing {
  /** The five lines of each staff, from the top of the page. */
  readonly staves: readonly Box[];
  /** Each printed line of each staff text. */
  readonly texts: readonly Box[];
  /** Articulations and signs for the hand. */
  readonly signs: readonly Box[];
}

/** Reads an SVG drawing of the editor's, in which every shape has the name of what it belongs to as its class. */
export function readDrawing(svg: string): Drawing {
  const lines = boxesOf(svg, 'polyline', 'StaffLines', 'points');
  const staffLines = lines.sort((a, b) => a.top - b.top || a.left - b.left);
  const space = staffLines[1]!.top - staffLines[0]!.top;
  const inSpaces = ({ left, right, top, bottom }: Box): Box => ({
    left: left / space,
    right: right / space,
    top: top / space,
    bottom: bottom / space,
  });
  const staves = staffLines
    .filter((_, i) => i % 5 === 0)
    .map((first, i) => inSpaces({ ...first, bottom: staffLines[5 * i + 4]!.bottom }));
  const shapes = (name: string) => boxesOf(svg, 'path', name, 'd').map(inSpaces);
  return { staves, texts: shapes('StaffText'), signs: shapes('Articulation') };
}

function boxesOf(svg: string, shape: string, name: string, attribute: string): Box[] {
  const drawn = new RegExp(`<${shape} class="${name}"([^>]*) ${attribute}="([^"]*)"`, 'g');
  return Array.from(svg.matchAll(drawn), ([, others, data]) => moved(boxOf(data!), others!));
}

/** Version 4 draws a glyph at the origin, makes it larger or smaller and moves it to its place. */
function moved({ left, right, top, bottom }: Box, attributes: string): Box {
  const [scale, , , , x, y] = numbersIn(
    / transform="matrix\((.*?)\)"/.exec(attributes)?.[1] ?? '1,0,0,1,0,0',
  );
  return {
    left: scale! * left + x!,
    right: scale! * right + x!,
    top: scale! * top + y!,
    bottom: scale! * bottom + y!,
  };
}

function numbersIn(text: string): readonly number[] {
  return (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
}

function boxOf(data: string): Box {
  const numbers = numbersIn(data);
  const across = numbers.filter((_, i) => i % 2 === 0);
  const down = numbers.filter((_, i) => i % 2 === 1);
  return {
    left: Math.min(...across),
    right: Math.max(...across),
    top: Math.min(...down),
    bottom: Math.max(...down),
  };
}

/** True where two boxes share more than a hair. */
export function overlap(one: Box, other: Box, hair = 0.1): boolean {
  return (
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > hair &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > hair
  );
}
