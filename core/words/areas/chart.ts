/** What charts say beside their notes. */

/** `notes` are names of notes as a list, such as `F2–F3, C6`; `horn` is without an article. */
export interface ChartWords {
  /** The title of the chart of fingerings. */
  stoppedNotesOn(horn: string): string;
  /** The same on a natural horn, with the open notes. */
  notesOn(horn: string): string;
  /** How to read what stands over a note. @param example such as `F♯ 2` */
  fingeredReading(example: string): string;
  readonly naturalReading: string;
  readonly naturalPitchReading: string;
  readonly arrows: string;
  readonly bassClef: string;
  /** A stopping valve is used. @param key the side's */
  stoppingValve(key: string): string;
  /** How to read the small notes behind each note of the score. */
  readonly otherWaysReading: string;
  /** Headings of the two sides of the sheet and of its parts. */
  readonly chart: string;
  readonly low: string;
  readonly high: string;
  readonly back: string;
  /** Heads of the columns of its tables. */
  readonly heads: {
    readonly note: string;
    readonly fingering: string;
    readonly natural: string;
    readonly falls: string;
    readonly otherWays: string;
    readonly open: string;
    readonly fallsTo: string;
  };
  /** What the small numbers are. @param least from how many on they are shown */
  centsReading(least: number): string;
  /** For screens: `C5, stopped`. */
  stoppedNote(note: string): string;
  /** The title of the chart of slides. */
  slidesOn(horn: string): string;
  /** How to read it. */
  readonly slidesReading: string;
  /** The same on a natural horn. */
  readonly slidesReadingNatural: string;
  /** What a letter before the valves means. @param key the side's, such as `B♭` */
  prefix(letter: string, key: string): string;
  /** What is played with luck. */
  readonly withLuck: string;
  /** Headings: where open notes go, and where stopped ones go. */
  readonly asTheHandCloses: string;
  readonly asTheHandOpens: string;
  readonly cannotBeWritten: string;
  /** One slide in words, to stand in a list. @param way the fingering, such as `open F horn` */
  slide(from: string, to: string, way: string): string;
  /** The law that no slide breaks. */
  readonly neverUp: string;
  /** No slide is wider. @param semitones 1 or more */
  widest(semitones: number): string;
  /** Why no slide starts at some open notes. */
  tooLow(notes: string): string;
  tooHigh(notes: string): string;
  between(notes: string): string;
  /** Stopped notes that nothing falls to. */
  notReached(notes: string): string;
  /** A stopping valve has no part in a slide. */
  readonly withoutStoppingValve: string;
  readonly madeBy: string;
}
