/** Changes at single places of a text, made on the bytes that hold it: what stays is neither encoded anew nor copied. */

/** What stands from `start` up to `end` in the text gives way to `text`. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** @param splices in the order of the text, none reaching into another */
export function splicedText(text: string, splices: readonly Splice[]): string {
  const pieces: string[] = [];
  let done = 0;
  for (const { start, end, text: put } of splices) {
    pieces.push(text.slice(done, start), put);
    done = end;
  }
  pieces.push(text.slice(done));
  return pieces.join('');
}

/**
 * The bytes of the spliced text, in pieces; those that stay are stretches of `bytes`.
 * @param splices in the order of the text, none reaching into another
 * @param byteAt where a character of the text begins in its bytes; asked for ever later ones
 */
export function splicedBytes(
  bytes: Uint8Array,
  splices: readonly Splice[],
  byteAt: (offset: number) => number,
  encode: (text: string) => Uint8Array,
): Uint8Array[] {
  const pieces: Uint8Array[] = [];
  // What is put in is much the same everywhere.
  const known = new Map<string, Uint8Array>();
  let done = 0;
  for (const { start, end, text } of splices) {
    const at = byteAt(start);
    if (at > done) pieces.push(bytes.subarray(done, at));
    const put = known.get(text) ?? encode(text);
    known.set(text, put);
    if (put.length > 0) pieces.push(put);
    done = byteAt(end);
  }
  pieces.push(bytes.subarray(done));
  return pieces;
}
