/**
 * True for a staff's voices 2 and 4, the lower player's, stems down: marks and whatever else is theirs stand below the
 * staff, all others above. @param voice from 1 @source commonPractice
 */
export function isLowerVoice(voice: number): boolean {
  return voice % 2 === 0;
}

/**
 * The lines of a mark of a lower voice, from the top: below the staff, too, the fingering stands next to the note.
 * @param lines as a `Mark` has them, the line nearest the note last
 */
export function linesBelow(lines: readonly string[]): readonly string[] {
  return lines.slice().reverse();
}
