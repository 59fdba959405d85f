/** Which of the score's parts are horns. */
import { isHornPart } from '../../core/index.ts';
import { type HostPart, type HostScore, listOf } from './hostApi.ts';

/** The horn parts, in score order, by the same evidence a file gives: names, instrument and MIDI program. */
export function hornParts(score: HostScore): readonly HostPart[] {
  return listOf(score.parts).filter((part) =>
    isHornPart({
      names: [part.partName, part.longName].filter((name) => name),
      instrumentNames: [],
      sounds: part.instrumentId ? [part.instrumentId] : [],
      programs: [part.midiProgram + 1],
    }),
  );
}
