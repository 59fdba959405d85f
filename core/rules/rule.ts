/** What a rule is and what it finds. */

import type { Line } from '../part/lines.ts';
import type { Passage } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import type { Sounding } from '../part/sounding.ts';
import type { Step } from '../part/steps.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';

/** `impossible` cannot be played as written; `risky` can, with luck; `advice` concerns the page and not the hand. */
export type Severity = 'impossible' | 'risky' | 'advice';

/** A problem in the music, as data; the doors show it, each in its way. */
export interface Finding {
  /** The rule's own id, e.g. `closes-upward`. */
  readonly id: string;
  readonly severity: Severity;
  /** Index of the note it stands at. */
  readonly noteIndex: number;
  /** Two words or so for the page, after the ×. */
  readonly brief: string;
  /** What is wrong and why, in the trade's words. */
  readonly message: string;
  /** What to do instead. */
  readonly remedy: string;
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

/** One check. Rules hold no state and change nothing. */
export interface Rule {
  readonly id: string;
  check(context: RuleContext): Finding[];
}

/** A rule that looks at one note at a time, of those that concern the hand. */
export function noteRule(
  id: string,
  look: (examined: ExaminedNote, context: RuleContext) => Omit<Finding, 'id' | 'noteIndex'> | null,
): Rule {
  return {
    id,
    check(context) {
      const findings: Finding[] = [];
      for (const examined of context.handNotes) {
        const found = look(examined, context);
        if (found) findings.push({ id, noteIndex: examined.note.index, ...found });
      }
      return findings;
    },
  };
}
