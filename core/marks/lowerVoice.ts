/**
 * True for a staff's voices 2 and 4, the lower player's, stems down: marks and whatever else is theirs stand below the
 * staff, all others above. @param voice from 1 @source commonPractice
 */
export function isLowerVoice(voice: number): boolean {
  return voice % 2 === 0;
}
