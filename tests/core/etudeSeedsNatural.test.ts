/** Études over many seeds on natural horns. */
import { HORNS } from '../../core/horn/horns.ts';
import { lawsHoldOn } from './etude/lawsHoldOn.ts';

lawsHoldOn(HORNS.filter(({ natural }) => natural));
