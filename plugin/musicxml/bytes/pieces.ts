/** Bytes in pieces, one after the other: what is large, and made of what is there already, need not lie anywhere whole. */

/** How many bytes pieces have together. */
export function lengthOf(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}

/** Pieces as one; a single one is given back as it is. */
export function joinedBytes(pieces: readonly Uint8Array[]): Uint8Array {
  if (pieces.length === 1) return pieces[0]!;
  const whole = new Uint8Array(lengthOf(pieces));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
