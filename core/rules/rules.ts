/** The list of rules. A new rule is a file beside this one and a line here. */
import { aboveTheHand } from './aboveTheHand.ts';
import { belowTheHand } from './belowTheHand.ts';
import { closesUpward } from './closesUpward.ts';
import { echoOrStopped } from './echoOrStopped.ts';
import { fingeringMisses } from './fingeringMisses.ts';
import { handTooQuick } from './handTooQuick.ts';
import { muteAndHand } from './muteAndHand.ts';
import { neverOpened } from './neverOpened.ts';
import { noCommonTube } from './noCommonTube.ts';
import { offPitch } from './offPitch.ts';
import { opensDownward } from './opensDownward.ts';
import { risesNotBends } from './risesNotBends.ts';
import type { FoundBy, Rule, RuleContext } from './rule.ts';
import { signAgainstWord } from './signAgainstWord.ts';
import { slurLeaps } from './slurLeaps.ts';
import { unknownKey } from './unknownKey.ts';
import { whichOctave } from './whichOctave.ts';

const LIST = [
  // What the part leaves open.
  unknownKey,
  whichOctave,
  // One note.
  belowTheHand,
  offPitch,
  risesNotBends,
  aboveTheHand,
  muteAndHand,
  // Two notes.
  closesUpward,
  opensDownward,
  noCommonTube,
  slurLeaps,
  handTooQuick,
  // The fingerings and words of the part.
  fingeringMisses,
  signAgainstWord,
  neverOpened,
  echoOrStopped,
] as const;

type FindingOf<R> = R extends Rule<infer Id, infer Cause> ? FoundBy<Id, Cause> : never;

/** A problem in the music, as data; its `id` tells which fields its `cause` has. */
export type Finding = FindingOf<(typeof LIST)[number]>;

/** The name of a rule. */
export type RuleId = Finding['id'];

/** Every rule, in the order in which findings at one note are listed. */
export const RULES: readonly { readonly id: RuleId; check(context: RuleContext): Finding[] }[] = LIST;
