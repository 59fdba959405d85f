/** What charts say beside their notes. */

/** `notes` are names of notes as a list, such as `F2–F3, C6`; `horn` is without an article. */
export interface ChartWords {
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
