/** What is to be said of a note that somebody asks about before writing it. */

/** Lines of an answer; each a sentence or a part of one, without a full stop. */
export interface AnswerWords {
  /** @param fingered the note to finger @param fingering side and valves @param natural the natural pitch */
  played(fingered: string, fingering: string, natural: string): string;
  readonly noFingering: string;
  /** @param valves other sure fingerings, listed */
  alsoSure(valves: string): string;
  /** @param notes the nearest sure notes, listed */
  nearestSure(notes: string): string;
  /** Where the hand takes the open note. @param reached listed with their fingerings; empty for nowhere */
  closing(reached: string): string;
  /** Where the hand takes the stopped note. */
  opening(reached: string): string;
}
