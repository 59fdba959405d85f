/** Texts that look as marks look and stand where marks stand, cloned into the score: what makes and removes elements, and nothing else does. */
import { escapedText, MARK_PREFIX } from '../../core/index.ts';
import type { Host, HostCursor, HostText } from './hostApi.ts';
import type { PlannedText } from './plannedPlace.ts';
import type { UndoStep } from './undoStep.ts';

/** Points; small enough to stand between the notes of a busy bar. */
const MARK_SIZE = 8;
const UPRIGHT = 0;
/** Takes no room, so that nothing is in a pattern's way. */
const BLANK = MARK_PREFIX;

/**
 * Makes marks alike. A size or place set on a text in the score does not reach its copies in part scores, and one set
 * before it is added is lost; a clone of a text that had them in the score keeps them, and so do the copies of the clone.
 */
export class MarkWriter {
  private readonly host: Host;
  private readonly step: UndoStep;
  /** In the score for as long as marks are written: one for above the staff and one for below. */
  private readonly patterns = new Map<boolean, HostText>();
  /** The first mark at each offset. */
  private readonly made = new Map<string, HostText>();

  constructor(host: Host, step: UndoStep) {
    this.host = host;
    this.step = step;
  }

  /** Writes a mark. @param cursor at its place */
  write(cursor: HostCursor, { text, isBelow, offset }: PlannedText): void {
    const key = `${isBelow}/${offset.x}/${offset.y}`;
    const known = this.made.get(key);
    const mark = (known ?? this.pattern(cursor, isBelow)).clone();
    if (!known) {
      moveTo(mark, 'offsetX', offset.x);
      moveTo(mark, 'offsetY', offset.y);
      this.made.set(key, mark);
    }
    add(cursor, mark, text, this.step);
  }

  /** Takes the patterns off the score. */
  finish(): void {
    this.patterns.forEach((pattern) => {
      removeText(this.host, pattern, this.step);
    });
  }

  private pattern(cursor: HostCursor, isBelow: boolean): HostText {
    const known = this.patterns.get(isBelow);
    if (known) return known;
    const { root } = this.host;
    const { Element, Placement } = root;
    const pattern = add(cursor, root.newElement(Element.STAFF_TEXT), BLANK, this.step);
    const placement = (isBelow ? Placement.BELOW : Placement.ABOVE) as number;
    pattern.fontSize = MARK_SIZE;
    if (pattern.fontStyle !== UPRIGHT) pattern.fontStyle = UPRIGHT;
    if (pattern.placement !== placement) pattern.placement = placement;
    // Its place is its own from now on and no longer its style's, and the editor does not take it for one that was moved:
    // a text that was moved in the score lies over whatever stands there, and so would its clones.
    const { offset } = pattern;
    pattern.offset = offset;
    this.patterns.set(isBelow, pattern);
    return pattern;
  }
}

/** Takes a text off the score. */
export function removeText({ root }: Host, element: HostText, step: UndoStep): void {
  if (typeof root.removeElement === 'function') root.removeElement(element);
  // An empty text prints and exports nothing.
  else element.text = '';
  step.changes += 1;
}

/** Gives a text that is not in the score yet a place. Version 3 adds what it is given to what was there. */
function moveTo(text: HostText, axis: 'offsetX' | 'offsetY', to: number): void {
  text[axis] = to;
  const far = to - text[axis];
  if (Math.abs(far) > 0.001) text[axis] = far;
}

/** From 4.0 on the editor frees an element that was made and never added a second time, and dies of it: nothing in between can fail. */
function add(cursor: HostCursor, element: HostText, text: string, step: UndoStep): HostText {
  element.text = escapedText(text);
  cursor.add(element);
  step.changes += 1;
  return element;
}
