/** The words of a part, and its tempos. */
import { isOurMark, type PassageTempo, type PassageWord } from '../../core/index.ts';
import { type Host, TICKS_PER_QUARTER } from './hostApi.ts';
import { plainText } from './ownMarks.ts';
import type { PartEvidence } from './partEvidence.ts';
import { beatAt, staffOf } from './placesInPart.ts';
import type { PartWalk } from './scoreWalk.ts';

/** Words on staves and on lines, in the order of the music. @param numbers of the measures, as printed */
export function wordsOf(
  { root }: Host,
  walk: PartWalk,
  numbers: readonly string[],
  { lineWords }: PartEvidence,
): PassageWord[] {
  const { STAFF_TEXT, SYSTEM_TEXT, EXPRESSION, PLAYTECH_ANNOTATION } = root.Element;
  const kinds = [STAFF_TEXT, SYSTEM_TEXT, EXPRESSION, PLAYTECH_ANNOTATION].filter(
    (kind) => kind !== undefined,
  );
  const words: PassageWord[] = [];
  const add = (printed: string, measureIndex: number, tick: number, track: number) => {
    words.push({
      text: printed.replace(/\s+/g, ' ').trim(),
      measureIndex,
      measure: numbers[measureIndex]!,
      beat: beatAt(walk.measures[measureIndex]!, tick),
      onsetQuarters: tick / TICKS_PER_QUARTER,
      staff: staffOf(walk, track),
      voice: null,
    });
  };
  for (const { element, measureIndex, tick, track } of walk.texts) {
    if (kinds.indexOf(element.type) < 0) continue;
    const text = plainText(element.text);
    if (!isOurMark(text) && text.trim() !== '') add(text, measureIndex, tick, track);
  }
  for (const { text, tick, track } of lineWords) {
    const measureIndex = walk.measures.findIndex(({ endTick }) => tick < endTick);
    if (measureIndex >= 0) add(plainText(text), measureIndex, tick, track);
  }
  return lineWords.length > 0 ? words.sort((a, b) => a.onsetQuarters - b.onsetQuarters) : words;
}

export function temposOf({ root }: Host, walk: PartWalk): PassageTempo[] {
  return walk.texts
    .filter(({ element }) => element.type === root.Element.TEMPO_TEXT && Number(element.tempo) > 0)
    .map(({ element, tick }) => ({
      onsetQuarters: tick / TICKS_PER_QUARTER,
      // The host counts quarters a second.
      quartersPerMinute: Math.round(Number(element.tempo) * 60 * 1000) / 1000,
    }));
}
