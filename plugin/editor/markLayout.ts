/** Voices 2 and 4 are the lower player's, stems down: their marks stand below the staff, all others above. */
export function isBelow(track: number): boolean {
  return track % 2 === 1;
}
