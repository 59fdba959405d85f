/** What stands at the places of a part: a chord's, or one of its graces', and at their notes. */

/** A chord's place, or a grace's. */
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

  has(place: Place): boolean {
    return this.get(place) !== undefined;
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

  /** In the order of ticks, then of tracks. */
  forEach(work: (value: V, place: Place) => void): void {
    this.stretches.forEach((stretch, at) => {
      if (!stretch) return;
      for (const key of Array.from(stretch.keys()).sort((a, b) => a - b))
        work(stretch.get(key)!, placeOf(key, at));
    });
  }
}

function keyIn(tick: number, track: number, graceIndex: number | null): number {
  return ((tick % STRETCH) * TRACKS + track) * GRACES + (graceIndex === null ? 0 : graceIndex + 1);
}

function placeOf(key: number, stretch: number): Place {
  const grace = key % GRACES;
  const trackAndTick = Math.floor(key / GRACES);
  return {
    tick: stretch * STRETCH + Math.floor(trackAndTick / TRACKS),
    track: trackAndTick % TRACKS,
    graceIndex: grace === 0 ? null : grace - 1,
  };
}

/** Notes of a part, by the place of their chord and their rank in it, 0 for the top note and less than 32. */
export class NoteSet {
  /** A bit for each rank. */
  private readonly ranks = new PlaceMap<number>();

  /** @param rank negative for a note that is not the player's, which is left out */
  add(place: Place, rank: number): void {
    if (rank < 0) return;
    this.ranks.set(place, (this.ranks.get(place) ?? 0) | (1 << rank));
  }

  has(place: Place, rank: number): boolean {
    return ((this.ranks.get(place) ?? 0) & (1 << rank)) !== 0;
  }

  forEach(work: (place: Place, rank: number) => void): void {
    this.ranks.forEach((bits, place) => {
      for (let rank = 0; bits >>> rank !== 0; rank++) if ((bits >>> rank) & 1) work(place, rank);
    });
  }
}
