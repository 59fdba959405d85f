/** Tempos, which a score states in one part for all of them. */
import type { PassageTempo } from '../../../core/index.ts';
import type { Clock } from './clock.ts';
import { inPlayingOrder } from './playingOrder.ts';

export class TempoMarks {
  private readonly marks: { measureIndex: number; quarters: number; quartersPerMinute: number }[] = [];

  /** Notes a tempo at a part's place, moved by `offsetQuarters`; anything but a positive number is passed over. */
  add(clock: Clock, offsetQuarters: number, quartersPerMinute: number): void {
    if (!(quartersPerMinute > 0)) return;
    const { measureIndex } = clock;
    this.marks.push({
      measureIndex,
      quarters: Math.max(0, clock.cursor + offsetQuarters),
      quartersPerMinute,
    });
  }

  /** The tempos as they fall in one part, the first where several stand at one place. */
  along(clock: Clock): PassageTempo[] {
    const tempos: PassageTempo[] = [];
    for (const { measureIndex, quarters, quartersPerMinute } of this.marks) {
      const start = clock.measureStarts[measureIndex];
      if (start !== undefined) tempos.push({ onsetQuarters: start + quarters, quartersPerMinute });
    }
    return inPlayingOrder(tempos, (tempo) => tempo.onsetQuarters).filter(
      (tempo, i, sorted) => i === 0 || sorted[i - 1]!.onsetQuarters !== tempo.onsetQuarters,
    );
  }
}
