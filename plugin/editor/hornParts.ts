/** Which of the score's parts are horns. */
import { isHornPart } from '../../core/index.ts';
import { type HostPart, type HostScore, listOf } from './hostApi.ts';

/** The horn parts, in score order, by the same evidence a file gives: names, instrument and MIDI program. */
export function hornParts(score: HostScore): readonly HostPart[] {
  return listOf(score.parts).filter(isHorn);
}

/** Asked at every look, of every part: names are read once. */
const KNOWN = new Map<string, boolean>();

function isHorn({ partName, longName, instrumentId, midiProgram }: HostPart): boolean {
  const key = JSON.stringify([partName, longName, instrumentId, midiProgram]);
  let known = KNOWN.get(key);
  if (known === undefined) {
    known = isHornPart({
      names: [partName, longName].filter((name) => name),
      instrumentNames: [],
      sounds: instrumentId ? [instrumentId] : [],
      programs: [midiProgram + 1],
    });
    KNOWN.set(key, known);
  }
  return known;
}
