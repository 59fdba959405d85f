/** What is to be said of hands and fingerings. */
import type { ChoiceReason } from '../../plan/plan.ts';
import type { Severity } from '../../rules/rule.ts';
import type { FingeringReason, HandState, Verdict } from '../../stopping/fingering.ts';

/** Words for what the hand does and how sure it is. */
export interface FingeringWords {
  /** As it stands behind the name of a note. */
  readonly states: { readonly [state in HandState]: string };
  readonly verdicts: { readonly [verdict in Verdict]: string };
  readonly severities: { readonly [severity in Severity]: string };
  /** Why a fingering is not sure. */
  readonly reasons: { readonly [reason in FingeringReason]: string };
  /** The same in two words. */
  readonly briefReasons: { readonly [reason in FingeringReason]: string };
  /** That an alternative rests above a flat harmonic. */
  readonly forSharpHand: string;
  /** Why another fingering than the standard one was chosen. @param instead the standard one, as printed: `T0` */
  readonly choices: {
    readonly [kind in ChoiceReason['kind']]: (instead: string, neighbour: string) => string;
  };
  /** A side with no valve down. @param key as `keys` names it */
  open(key: string): string;
  /** A side with valves down, as `1+2`. */
  pressed(key: string, valves: string): string;
  crook(key: string): string;
  harmonic(number: number): string;
  readonly inTune: string;
  /** @param cents 1 or more, whole */
  sharp(cents: number): string;
  flat(cents: number): string;
  /** How far the hand closes, at either end; `¼ ½ ¾` stand for themselves. */
  readonly closings: { readonly open: string; readonly full: string };
  /** A key with its register: `high F`, `C alto`, `C basso`. */
  readonly keys: { readonly [register in 'high' | 'alto' | 'basso']: (key: string) => string };
  /** The last of several choices: `a or b`. */
  readonly or: string;
  readonly and: string;
  readonly decimalSign: '.' | ',';
}
