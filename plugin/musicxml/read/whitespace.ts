/** White space around elements, so that what is spliced in looks like its surroundings and comes out without a trace. */

function isSpace(code: number): boolean {
  return code === 32 || code === 9 || code === 10 || code === 13;
}

/** The first offset at or after `offset` that is not white space. */
export function skipSpace(text: string, offset: number): number {
  while (offset < text.length && isSpace(text.charCodeAt(offset))) offset += 1;
  return offset;
}

/** The first offset of the white space that ends at `offset`. */
export function spaceBefore(text: string, offset: number): number {
  while (offset > 0 && isSpace(text.charCodeAt(offset - 1))) offset -= 1;
  return offset;
}

/** The line end and indentation before `offset`; all white space there when it holds no line end; often empty. */
export function indentBefore(text: string, offset: number): string {
  const space = text.slice(spaceBefore(text, offset), offset);
  const line = Math.max(space.lastIndexOf('\n'), space.lastIndexOf('\r'));
  if (line < 0) return space;
  return space.slice(line > 0 && space[line] === '\n' && space[line - 1] === '\r' ? line - 1 : line);
}

/** The line end a text uses, by its first one: CR LF, LF or CR. */
export function lineEndOf(text: string): string {
  const match = /\r\n|\n|\r/.exec(text);
  return match ? match[0] : '\n';
}
