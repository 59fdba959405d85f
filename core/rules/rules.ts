/** Every rule, in the order in which findings at one note are listed. */
import { aboveTheHand } from './aboveTheHand.ts';
import { belowTheHand } from './belowTheHand.ts';
import { offPitch } from './offPitch.ts';
import { risesNotBends } from './risesNotBends.ts';
import type { Rule } from './rule.ts';
import { unknownKey } from './unknownKey.ts';

export const RULES: readonly Rule[] = [unknownKey, belowTheHand, offPitch, risesNotBends, aboveTheHand];
