/** One reader's way to name notes, fingerings and horns, for the sentences of every language. */
import type { Speech } from './areas/speech.ts';
import {
  choicesText,
  decimalText,
  deviationText,
  fingeringText,
  hornText,
  stateText,
  valvesText,
} from './fingerings.ts';
import type { Reader } from './language.ts';
import { noteName } from './noteNames.ts';

/** Names and phrases for a reader. */
export function speechFor(reader: Reader): Speech {
  const note: Speech['note'] = (pitch) => noteName(pitch, reader);
  const fingering: Speech['fingering'] = (played) => fingeringText(played, reader);
  return {
    note,
    fingering,
    valves: (played) => valvesText(played, reader),
    deviation: (cents) => deviationText(cents, reader),
    reached: (reached) =>
      choicesText(
        reached.map((reach) => `${note(reach.written)} (${fingering(reach.fingering)})`),
        reader,
      ),
    horn: (horn) => hornText(horn, reader),
    state: (state) => stateText(state, reader),
    decimal: (value, digits) => decimalText(value, digits, reader),
  };
}
