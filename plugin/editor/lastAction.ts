/** What the panel did last, so that it can tell when undo took it back and redo did it again. */
import { isOurMark, type Passage, type Reader, repairWords } from '../../core/index.ts';
import { plainText } from './ownMarks.ts';
import type { ScoreText } from './scoreWalk.ts';

/** One thing done, with what the score was before it and what it has been since. */
export class LastAction {
  private readonly label: string;
  private readonly before: string;
  /** Big scores are looked at in slices: they pass through several states. */
  private readonly after = new Set<string>();
  private isDone = true;

  /**
   * @param label a few words, as on the button that did it
   * @param before the score's fingerprint
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

/** What the panel's buttons can change in a part, as one number. */
export function fingerprintOf(passage: Passage, texts: readonly ScoreText[]): number {
  let sum = 0;
  const add = (text: string) => {
    for (let i = 0; i < text.length; i++) sum = (Math.imul(sum, 31) + text.charCodeAt(i)) | 0;
  };
  for (const { written, sign, joins, onsetQuarters } of passage.notes) {
    add(`${onsetQuarters}${written.step}${written.alter}${written.octave}${sign ?? ''}`);
    for (const { kind, to } of joins) add(kind + to);
  }
  for (const { text, onsetQuarters } of passage.words) add(onsetQuarters + text);
  for (const { element, tick } of texts) {
    const text = plainText(element.text);
    if (isOurMark(text)) add(tick + text);
  }
  return sum;
}
