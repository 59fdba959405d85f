/** Where a mark stands on its staff, and how its lines are set where there is little room. */

/** A mark wider than the space to the next one is pushed above it, and the next above that: a staircase. In quarter notes. */
const ROOM_QUARTERS = 0.75;

/**
 * The lines of a mark as they go over a note: as they are where there is room, else a column of single words, which is
 * hardly wider than the note.
 * @param quartersToNext from this note to the next one on the staff with a mark of its own
 */
export function setLines(lines: readonly string[], quartersToNext: number): readonly string[] {
  if (quartersToNext >= ROOM_QUARTERS) return lines;
  return ([] as string[]).concat(...lines.map((line) => line.split(' ')));
}

/** Voices 2 and 4 are the lower player's, stems down: their marks stand below the staff, all others above. */
export function isBelow(track: number): boolean {
  return track % 2 === 1;
}
