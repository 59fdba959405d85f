/** How data is put into the reader's words: what every sentence is made of. */
import type { Horn } from '../../horn/horn.ts';
import type { Pitch } from '../../pitch/pitch.ts';
import type { Reach } from '../../rules/handJoin.ts';
import type { Fingering, HandState } from '../../stopping/fingering.ts';

/** Names and phrases for one reader, to be put into sentences. */
export interface Speech {
  /** `C♯5`, `cis″`, `do♯5`. */
  note(pitch: Pitch): string;
  /** `open F horn`, `B♭ horn 1+2`, `E♭ crook`. */
  fingering(fingering: Fingering): string;
  /** The valves as printed, `T12`; on a horn without valves the harmonic. */
  valves(fingering: Fingering): string;
  /** `in tune`, `12 cents flat`. */
  deviation(deviationCents: number): string;
  /** `C♯4 (open F horn) or D4 (F horn 1+2)`. */
  reached(reached: readonly Reach[]): string;
  /** `double horn in F and B♭`, without an article. */
  horn(horn: Horn): string;
  /** `stopped`, as it stands behind the name of a note. */
  state(state: HandState): string;
  /** A number with so many decimals at most, and the language's decimal sign. */
  decimal(value: number, digits: number): string;
}
