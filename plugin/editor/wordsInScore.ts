/** The words of a part, and its tempos. */
import type { PassageTempo, PassageWord } from '../../core/index.ts';
import { type Host, TICKS_PER_QUARTER } from './hostApi.ts';
import type { PartEvidence } from './partEvidence.ts';
import { beatAt, staffOf } from './placesInPart.ts';
import { plainText } from './plainValues.ts';
import type { ScoreText } from './scoreBar.ts';
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
  for (const { type, text, isOurs, measureIndex, tick, track } of textsIn(walk))
    if (kinds.indexOf(type) >= 0 && !isOurs && text.trim() !== '') add(text, measureIndex, tick, track);
  for (const { text, tick, track } of lineWords) {
    const measureIndex = walk.measures.findIndex(({ endTick }) => tick < endTick);
    if (measureIndex >= 0) add(plainText(text), measureIndex, tick, track);
  }
  return lineWords.length > 0 ? words.sort((a, b) => a.onsetQuarters - b.onsetQuarters) : words;
}

export function temposOf({ root }: Host, walk: PartWalk): PassageTempo[] {
  return textsIn(walk)
    .filter(({ type, tempo }) => type === root.Element.TEMPO_TEXT && Number(tempo) > 0)
    .map(({ tempo, tick }) => ({
      onsetQuarters: tick / TICKS_PER_QUARTER,
      // The host counts quarters a second.
      quartersPerMinute: Math.round(Number(tempo) * 60 * 1000) / 1000,
    }));
}

function textsIn({ bars }: PartWalk): readonly ScoreText[] {
  const all: ScoreText[] = [];
  for (const { texts } of bars) all.push(...texts);
  return all;
}
