/** What is to be said of findings. */
import type { FoundBy } from '../../rules/rule.ts';
import type { Finding, RuleId } from '../../rules/rules.ts';
import type { Speech } from './speech.ts';

/** A finding in words. */
export interface FindingText {
  /** Two words or so for the page, after the ×. */
  readonly brief: string;
  /** What is wrong and why, in the trade's words. */
  readonly message: string;
  /** What to do instead. */
  readonly remedy: string;
}

/** The fields that a rule's findings carry. */
export type CauseOf<Id extends RuleId> =
  Extract<Finding, { readonly id: Id }> extends FoundBy<Id, infer Cause> ? Cause : never;

/** One entry for each rule. */
export type FindingWords = {
  readonly [id in RuleId]: (cause: CauseOf<id>, speech: Speech) => FindingText;
};
