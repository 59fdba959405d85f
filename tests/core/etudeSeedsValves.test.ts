/** Études over many seeds on other horns with valves. */
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { lawsHoldOn } from './etude/lawsHoldOn.ts';

lawsHoldOn(HORNS.filter(({ id, natural }) => !natural && id !== DEFAULT_SETTINGS.horn.id));
