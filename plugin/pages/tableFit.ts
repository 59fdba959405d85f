/** The largest letters at which tables side by side fit a sheet, where the last column of each may take several lines. */

/** How wide a table is, in parts of the size of its letters. */
export interface TableWidths {
  /** All columns but the last, with the room between them. */
  readonly fixed: number;
  /** The last column, head and rows: the pieces that each wants on one line, which is broken between them. */
  readonly last: readonly (readonly number[])[];
}

export interface TableFit {
  /** The size of letters, in millimetres. */
  readonly size: number;
  /** The height of a row of one line, in millimetres: all are as far apart as the sheet allows. */
  readonly row: number;
  /** The widths of the tables, in parts of the sheet's. */
  readonly shares: readonly number[];
}

/** The sheet for the tables, in millimetres. */
export interface Room {
  readonly width: number;
  readonly height: number;
  /** Between tables. */
  readonly gap: number;
}

/** From one line to the next in a row, and the nearest and the furthest that rows may be, in parts of the letters. */
const LINE = 1.15;
const NEAREST = 1.5;
const FURTHEST = 2;
/** Letters, in millimetres. Larger help nobody who has the sheet in hand; smaller are not tried. */
const LARGEST = 4.6;
const SMALLEST = 2.4;
const STEP = 0.04;

/** Fits tables to a sheet. */
export function fitTables(tables: readonly TableWidths[], room: Room): TableFit {
  const width = room.width - room.gap * (tables.length - 1);
  for (let size = LARGEST; ; size -= STEP) {
    const lasts = lastColumns(tables, width / size);
    const lines = tables.map(({ last }, i) => last.map((pieces) => linesOf(pieces, lasts[i]!)));
    const heights = (leading: number) =>
      lines.map((each) => sum(each.map((count) => size * Math.max(leading, LINE * count))));
    let leading = FURTHEST;
    while (leading > NEAREST && Math.max(...heights(leading)) > room.height) leading -= STEP;
    if (Math.max(...heights(leading)) > room.height && size > SMALLEST) continue;
    return {
      size: rounded(size),
      row: rounded(size * leading),
      shares: tables.map(({ fixed }, i) => rounded(fixed + lasts[i]!)),
    };
  }
}

/** The last columns share what the others leave: whoever wants less than an even part has all of it. */
function lastColumns(tables: readonly TableWidths[], width: number): readonly number[] {
  const wanted = tables.map(({ last }) => Math.max(0, ...last.map(sum)));
  let free = width - sum(tables.map(({ fixed }) => fixed));
  let left = wanted.length;
  const got = new Map<number, number>();
  for (const each of wanted.slice().sort((a, b) => a - b)) {
    const part = Math.min(each, Math.max(0, free) / left);
    got.set(each, part);
    free -= part;
    left -= 1;
  }
  return wanted.map((each) => got.get(each)!);
}

function linesOf(pieces: readonly number[], width: number): number {
  let lines = 1;
  let onLine = 0;
  for (const piece of pieces) {
    if (onLine > 0 && onLine + piece > width) {
      lines += 1;
      onLine = 0;
    }
    onLine += piece;
  }
  return lines;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, each) => total + each, 0);
}

function rounded(value: number): number {
  return Math.floor(100 * value) / 100;
}
