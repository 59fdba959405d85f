/** What is said of a score file that cannot be read: what is wrong, then what to do. */

/** One clause each, without a full stop; `plain` is what the XML parser says, in its own words. */
export interface ScoreWords {
  /** `line 3, column 5`, where the fault stands. */
  place(line: number, column: number): string;
  /** The XML text. */
  cutShort(plain: string): string;
  unmatchedClosing(plain: string): string;
  notXml(plain: string): string;
  secondDocument(plain: string): string;
  undeclaredEntity(plain: string): string;
  attributeTwice(plain: string): string;
  disallowedCharacter(plain: string): string;
  malformed(plain: string): string;
  /** The document type and its entities. @param most in characters */
  doctypeTooLong(most: number): string;
  entityTooLong(name: string, most: number): string;
  entitiesTooLong(name: string, most: number): string;
  entityInCircle(name: string): string;
  /** The score. @param element its outermost element */
  notMusicXml(element: string): string;
  partTwice(part: string): string;
  idTwice(id: string): string;
  /** @param parts those there are; may be empty */
  noPart(request: string, parts: readonly string[]): string;
  /** @param most notes, rests and words */
  tooMuchMusic(most: number): string;
  chordTooLarge(mostNotes: number): string;
  /** The file's characters. */
  halfCharacter(encoding: string): string;
  unknownEncoding(encoding: string): string;
  /** The archive of a compressed score. */
  readonly whichFile: string;
  fileMissing(path: string): string;
  readonly containerMalformed: string;
  readonly noScoreInside: string;
  readonly zip64: string;
  readonly directoryDamaged: string;
  entryDamaged(name: string): string;
  encrypted(name: string): string;
  /** @param megabytes what it would unpack to @param most of those */
  unpacksTo(name: string, megabytes: number, most: number): string;
  /** @param times how much larger it would be @param most of those */
  growsTo(name: string, times: number, most: number): string;
  packedBy(name: string, method: number): string;
  readonly archiveCutShort: string;
}
