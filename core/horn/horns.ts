/** The list of horns. A new horn is a file in horns and a line here. */

import type { Horn } from './horn.ts';
import { DESCANT } from './horns/descant.ts';
import { DOUBLE } from './horns/double.ts';
import { DOUBLE_ASCENDING } from './horns/doubleAscending.ts';
import { DOUBLE_STOP_VALVE } from './horns/doubleStopValve.ts';
import { CROOKED, NATURAL } from './horns/natural.ts';
import { SINGLE_BFLAT } from './horns/singleBflat.ts';
import { SINGLE_BFLAT_STOP_VALVE } from './horns/singleBflatStopValve.ts';
import { SINGLE_F } from './horns/singleF.ts';
import { TRIPLE_HIGH_F } from './horns/tripleHighF.ts';

/** The horns that can be named in an option, the default first. */
export const HORNS: readonly Horn[] = [
  DOUBLE,
  SINGLE_F,
  SINGLE_BFLAT,
  SINGLE_BFLAT_STOP_VALVE,
  DOUBLE_STOP_VALVE,
  DOUBLE_ASCENDING,
  TRIPLE_HIGH_F,
  DESCANT,
  NATURAL,
  ...CROOKED,
];
