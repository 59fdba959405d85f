/** When each note of a passage begins, in seconds. */
import type { Passage } from './passage.ts';

/**
 * Onsets in seconds from the start of the part, by note index.
 * @param assumedQuartersPerMinute the speed before the first tempo, or throughout a part that states none
 */
export function onsetSecondsOf(
  { notes, tempos }: Passage,
  assumedQuartersPerMinute: number,
): readonly number[] {
  const changes = tempos.slice().sort((a, b) => a.onsetQuarters - b.onsetQuarters);
  let next = 0;
  let quartersPerMinute = assumedQuartersPerMinute;
  let sinceQuarters = 0;
  let sinceSeconds = 0;
  return notes.map(({ onsetQuarters }) => {
    for (; next < changes.length && changes[next]!.onsetQuarters <= onsetQuarters; next++) {
      const change = changes[next]!;
      sinceSeconds += ((change.onsetQuarters - sinceQuarters) * 60) / quartersPerMinute;
      sinceQuarters = change.onsetQuarters;
      quartersPerMinute = change.quartersPerMinute;
    }
    return sinceSeconds + ((onsetQuarters - sinceQuarters) * 60) / quartersPerMinute;
  });
}

/** True when the part states how fast it goes at this place. */
export function isTempoStated({ tempos }: Passage, onsetQuarters: number): boolean {
  return tempos.some((tempo) => tempo.onsetQuarters <= onsetQuarters);
}
