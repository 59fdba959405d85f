/** Short horn parts that tests of many commands begin with. */
import { score } from './bellhand.ts';

/** Stopped C5 is fingered B with valve 2 over the natural C♯: smalley, row C5 of the F-horn chart. */
export const SURE = score(['C5+', 'E5']);
/** F2 is a fifth below the lowest stopped note a lip can force; common practice, no source. */
export const IMPOSSIBLE = score(['C5+', 'F2+']);
