/** What stands at the places of a part: a chord's, or one of its graces'. */

export interface Place {
  /** Ticks from the start of the score. */
  readonly tick: number;
  readonly track: number;
  /** As in `ScoreChord`. */
  readonly graceIndex: number | null;
}

/** About a bar, in ticks. */
const STRETCH = 1920;
/** More than there are tracks, and graces at a chord. */
const TRACKS = 4096;
const GRACES = 64;

/**
 * A map by place, for parts of any length: the maps of the editor's script engines look through all their keys one after
 * the other, so here is one for each stretch of the music.
 */
export class PlaceMap<V> {
  private readonly stretches: (Map<number, V> | undefined)[] = [];

  get({ tick, track, graceIndex }: Place): V | undefined {
    return this.stretches[Math.floor(tick / STRETCH)]?.get(keyIn(tick, track, graceIndex));
  }

  set({ tick, track, graceIndex }: Place, value: V): void {
    const at = Math.floor(tick / STRETCH);
    let stretch = this.stretches[at];
    if (!stretch) {
      stretch = new Map();
      this.stretches[at] = stretch;
    }
    stretch.set(keyIn(tick, track, graceIndex), value);
  }
}

function keyIn(tick: number, track: number, graceIndex: number | null): number {
  return ((tick % STRETCH) * TRACKS + track) * GRACES + (graceIndex === null ? 0 : graceIndex + 1);
}
