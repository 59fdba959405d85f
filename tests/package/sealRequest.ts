/** A request for an étude in which everything is right: what a test changes in it is what is wrong. */
import { DEFAULT_SETTINGS, type EtudeRequest, parseKey } from '../../core/index.ts';

export const SEAL_REQUEST: EtudeRequest = {
  kind: 'seal',
  key: parseKey('C'),
  level: 1,
  bars: 4,
  tempo: null,
  low: null,
  high: null,
  seed: 1,
  player: DEFAULT_SETTINGS,
};
