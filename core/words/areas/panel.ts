/** What the editor's panel says. */

/** On and beside the panel's controls. */
export interface PanelLabels {
  readonly horn: string;
  readonly noteNames: string;
  /** The heading over the switches for what is written over the notes. */
  readonly print: string;
  readonly fingered: string;
  readonly valves: string;
  readonly natural: string;
  readonly verdict: string;
  readonly colour: string;
  readonly onlyChanges: string;
  readonly quickValves: string;
  readonly widerBars: string;
  readonly tolerance: string;
  readonly handOffset: string;
  readonly toleranceHint: string;
  readonly handOffsetHint: string;
  readonly annotate: string;
  readonly clear: string;
  readonly lookAgain: string;
  /** Begins the list at the bar of the selection. */
  readonly fromCursor: string;
  readonly previous: string;
  readonly next: string;
  /** What the button with + does to the selected notes, and the one with o. */
  readonly stoppedSign: string;
  readonly openSign: string;
  /** Where an answer stands once a note is selected. */
  readonly noteAsked: string;
  /** The heading over the findings. */
  readonly findings: string;
  readonly nothingFound: string;
  /** Before what to do instead. */
  readonly instead: string;
  readonly etude: string;
  readonly etudeKind: string;
  /** After the kinds in their list. */
  readonly etudeLesson: string;
  readonly etudeKey: string;
  readonly etudeLevel: string;
  readonly etudeLength: string;
  readonly etudeTempo: string;
  readonly etudeCompass: string;
  readonly compose: string;
  readonly copyPath: string;
  readonly openOutside: string;
}

/** What was done, or what stands in the way, in a sentence or two. */
export interface PanelWords {
  readonly labels: PanelLabels;
  readonly noScore: string;
  readonly emptyScore: string;
  /** While a big score is read. @param percent 0 to 100 */
  reading(percent: number): string;
  /** Where a big score is read as soon as nothing is selected, which the key named there brings about. */
  readonly readOnceLetGo: string;
  readonly noHorn: string;
  readonly noStopped: string;
  readonly noStoppedSelected: string;
  /** The panel lists the counts of the whole score by itself. */
  readonly annotated: string;
  /** Before the counts of what was annotated. */
  readonly annotatedSelection: string;
  readonly upToDate: string;
  /** @param count 2 or more */
  severalNotes(count: number): string;
  /** @param nth from 1 */
  nthOf(nth: number, count: number): string;
  readonly noHornSelected: string;
  /** @param count 1 or more */
  cleared(count: number): string;
  readonly nothingToClear: string;
  /** @param reason without a full stop */
  failed(reason: string): string;
  readonly notShown: string;
  etudeOpened(title: string): string;
  etudeWritten(title: string, path: string): string;
  etudeAsked(path: string): string;
  etudeNotWritten(title: string): string;
  /** @param range what the user wrote */
  etudeRange(range: string): string;
  /** Why the editor's score cannot be read or marked, to stand in `failed`. */
  readonly faults: {
    notExported(path: string): string;
    readonly placeNotFound: string;
    /** Of a repair: what it was to take out is not where it was. */
    readonly nothingToTakeOut: string;
    /** Of a repair: the score is not as it should be afterwards. */
    readonly notTaken: string;
  };
}
