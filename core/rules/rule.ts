/** What a rule is and what it finds. */

import type { Line } from '../part/lines.ts';
import type { Passage } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import type { Sounding } from '../part/sounding.ts';
import type { Step } from '../part/steps.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';

/** `impossible` cannot be played as written; `risky` can, with luck; `advice` concerns the page and not the hand. */
export type Severity = 'impossible' | 'risky' | 'advice';

/** A problem in the music, as data: `findingText` puts it into words. */
export interface FoundBy<Id extends string, Cause> {
  /** The rule's own id, e.g. `closes-upward`. */
  readonly id: Id;
  readonly severity: Severity;
  /** Index of the note it stands at. */
  readonly noteIndex: number;
  /** Index of the other note it is about: where a glissando starts, what the hand left; null where it is about one. */
  readonly otherIndex: number | null;
  /** What is wrong, by the fields of the rule. */
  readonly cause: Cause;
}

/** What a rule may look at. */
export interface RuleContext {
  readonly passage: Passage;
  readonly notes: readonly ExaminedNote[];
  readonly settings: Settings;
  /** Every player's notes, one after the other. */
  readonly lines: readonly Line[];
  readonly sounding: Sounding;
  /** The notes that the hand closes or a word for hand or mute holds at: few, in most parts. */
  readonly handNotes: readonly ExaminedNote[];
  /** The steps from note to note across which the hand goes in or out. */
  readonly handSteps: readonly Step[];
}

/** One check. Rules hold no state, change nothing and build no sentence. */
export interface Rule<Id extends string = string, Cause = unknown> {
  readonly id: Id;
  check(context: RuleContext): FoundBy<Id, Cause>[];
}

/** A rule that looks at one note at a time, of those that concern the hand. */
export function noteRule<Id extends string, Cause>(
  id: Id,
  look: (examined: ExaminedNote, context: RuleContext) => { severity: Severity; cause: Cause } | null,
): Rule<Id, Cause> {
  return {
    id,
    check(context) {
      const findings: FoundBy<Id, Cause>[] = [];
      for (const examined of context.handNotes) {
        const found = look(examined, context);
        if (found) findings.push({ id, noteIndex: examined.note.index, otherIndex: null, ...found });
      }
      return findings;
    },
  };
}
