/** Reading the horn parts of the score that is open: one way in, whatever the host's version offers. */
import { type Host, isAtLeast } from './hostApi.ts';
import { readByChords } from './readByChords.ts';
import { readByExport } from './readByExport.ts';
import { readBySelection } from './readBySelection.ts';
import type { Reader } from './readPart.ts';

/** The horn parts of a score. Changes nothing that undo would know of; a selection that had to be used is put back. */
export const readPassages: Reader = (host, score) => readerFor(host)(host, score);

/** From 4.6 chords own their signs; from 3.5 a selection lists them; before that only the host's own export tells. */
function readerFor(host: Host): Reader {
  if (isAtLeast(host, 4, 6)) return readByChords;
  return isAtLeast(host, 3, 5) ? readBySelection : readByExport;
}
