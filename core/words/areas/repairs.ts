/** What is to be said of repairs. */
import type { RepairKind } from '../../repairs/repair.ts';

/** Words on buttons, and what is said once one was pressed. */
export interface RepairWords {
  /**
   * A few words for each kind, as a request, without a full stop.
   * @param what the note, the sign or the word (in its quotation marks) that is written; empty where nothing is
   * @param count over how many notes
   */
  readonly labels: { readonly [kind in RepairKind]: (what: string, count: number) => string };
  /** @param label a label, or several words on anything else that was done */
  done(label: string): string;
  /** Undo took it back. */
  takenBack(label: string): string;
  /** Redo did it again. */
  doneAgain(label: string): string;
  /** @param text a word of the part, as it is quoted in a sentence */
  quoted(text: string): string;
}
