import type { Step } from '../part/steps.ts';
import type { Fingering, HandState } from '../stopping/fingering.ts';
import type { PlannedNote } from './pathCost.ts';

/** The notes of a line as they are planned: one object serves many, since a part is long and asks for few different things. */
export class PlannedNotes {
  /** By their options, the latest that was made. */
  private readonly known = new Map<readonly Fingering[], PlannedNote>();

  of(options: readonly Fingering[], state: HandState, joined: Step['joined'], hurry: number): PlannedNote {
    const known = this.known.get(options);
    if (known && known.state === state && known.joined === joined && known.hurry === hurry) return known;
    const planned = { options, state, joined, hurry };
    this.known.set(options, planned);
    return planned;
  }
}
