/** Plain text tables for people: aligned columns, no frames, nothing that a screen reader stumbles over. */

/** One column; numbers are best read with their ends aligned. */
export interface Column {
  readonly heading: string;
  readonly align?: 'left' | 'right';
}

/**
 * Lays rows out under their headings, two spaces between columns, no space at the end of a line.
 * @param indent put before every line
 * @returns lines without line ends; a column that is empty in every row is left out
 */
export function textTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  indent = '',
): string[] {
  const shown = columns
    .map((column, i) => ({ column, i, width: widest(rows.map((row) => row[i] ?? '')) }))
    .filter(({ width }) => width > 0 || rows.length === 0)
    .map((entry) => ({ ...entry, width: Math.max(entry.width, textWidth(entry.column.heading)) }));
  const line = (cell: (i: number, column: Column) => string): string =>
    (
      indent + shown.map(({ column, i, width }) => pad(cell(i, column), width, column.align)).join('  ')
    ).trimEnd();
  return [line((_, column) => column.heading), ...rows.map((row) => line((i) => row[i] ?? ''))];
}

/** Columns a text takes on a terminal: marks that stand over other letters take none. */
export function textWidth(text: string): number {
  return [...text.replace(/[\p{Mn}\p{Cf}]/gu, '')].length;
}

function pad(text: string, width: number, align: Column['align'] = 'left'): string {
  const gap = ' '.repeat(Math.max(0, width - textWidth(text)));
  return align === 'right' ? gap + text : text + gap;
}

function widest(texts: readonly string[]): number {
  return texts.reduce((width, text) => Math.max(width, textWidth(text)), 0);
}
