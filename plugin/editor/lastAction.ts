/** What the panel did last, so that it can tell when undo took it back and redo did it again. */
import { isOurMark, type Passage, type Reader, repairWords } from '../../core/index.ts';
import {
  type Host,
  type HostChord,
  type HostElement,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';
import { VOICES } from './place.ts';
import { plainText } from './plainValues.ts';

/** One thing done, with what the score was before it and what it has been since. */
export class LastAction {
  private readonly label: string;
  private readonly before: string;
  /** Big scores are looked at in slices: they pass through several states. */
  private readonly after = new Set<string>();
  private isDone = true;

  /**
   * @param label a few words, as on the button that did it
   * @param before the score's state, as far as it was changed
   */
  constructor(label: string, before: string) {
    this.label = label;
    this.before = before;
  }

  /** A sentence when the score has become again what it was before, or after; else `null`. */
  notice(now: string, reader: Reader): string | null {
    const { takenBack, doneAgain } = repairWords(reader);
    if (this.isDone && now !== this.before) this.after.add(now);
    else if (this.isDone && this.after.size > 0) {
      this.isDone = false;
      return takenBack(this.label);
    } else if (!this.isDone && this.after.has(now)) {
      this.isDone = true;
      return doneAgain(this.label);
    }
    return null;
  }
}

/** The music of some parts as a text to compare, short for what it stands for. */
export function musicOf(passages: readonly Passage[]): string {
  return passages.map(sumOf).join('/');
}

function sumOf({ notes, words }: Passage): number {
  let sum = 0;
  const add = (text: string) => {
    for (let i = 0; i < text.length; i++) sum = (Math.imul(sum, 31) + text.charCodeAt(i)) | 0;
  };
  for (const { written, sign, fingering, joins, onsetQuarters } of notes) {
    add(`${onsetQuarters}${written.step}${written.alter}${written.octave}${sign ?? ''}${fingering ?? ''}`);
    for (const { kind, to } of joins) add(kind + to);
  }
  for (const { text, onsetQuarters } of words) add(onsetQuarters + text);
  return sum;
}

/** Where something was marked. */
export interface MarkSpot {
  readonly tick: number;
  readonly track: number;
}

/** Our marks and the colours at one place, as a text to compare. */
export function marksAt({ root }: Host, score: HostScore, { tick, track }: MarkSpot): string {
  const staffOf = (element: HostElement) => Math.floor(element.track / VOICES);
  for (let measure = score.firstMeasure; measure; measure = measure.nextMeasure) {
    const next = measure.nextMeasure?.firstSegment;
    if (next && next.tick <= tick) continue;
    for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
      if (segment.tick !== tick) continue;
      const chord = segment.elementAt(track);
      if (!chord || chord.type !== root.Element.CHORD) continue;
      const texts = listOf(segment.annotations)
        .filter((element) => staffOf(element) === staffOf(chord))
        .map((element) => (element as HostText).text)
        .filter((text) => typeof text === 'string' && isOurMark(plainText(text)));
      return JSON.stringify([texts, listOf((chord as HostChord).notes).map(({ color }) => String(color))]);
    }
  }
  return '';
}
