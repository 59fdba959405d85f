/** Études over many seeds on the usual horn. */
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { lawsHoldOn } from './etude/lawsHoldOn.ts';

lawsHoldOn(HORNS.filter(({ id }) => id === DEFAULT_SETTINGS.horn.id));
