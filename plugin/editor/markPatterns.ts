/** Texts that look as marks look and stand where marks stand, to be cloned: what makes and removes elements, and nothing else does. */
import { escapedText, MARK_PREFIX } from '../../core/index.ts';
import { type Host, type HostCursor, type HostText, isAtLeast } from './hostApi.ts';
import type { PlannedText } from './plannedPlace.ts';
import type { UndoStep } from './undoStep.ts';

/** Points; small enough to stand between the notes of a busy bar. */
const MARK_SIZE = 8;
const UPRIGHT = 0;
/** The editor's numbers for both. */
const RIGHT_ON_BASELINE = 1 + 16;
/** Takes no room, so that nothing is in a pattern's way. */
const BLANK = MARK_PREFIX;

/**
 * One pattern in the score for each place where marks stand. A size or place set on a text in the score does not reach its
 * copies in part scores, and one set before it is added is lost; a clone of a text that had them in the score keeps them,
 * and so do the copies of the clone.
 */
export class MarkPatterns {
  private readonly host: Host;
  private readonly step: UndoStep;
  private readonly made = new Map<string, HostText>();

  constructor(host: Host, step: UndoStep) {
    this.host = host;
    this.step = step;
  }

  /** The pattern for a text. @param cursor at a place of its staff */
  of(text: PlannedText, cursor: HostCursor): HostText {
    const { isBelow, endsAtNote, offset } = text;
    const key = `${isBelow}/${endsAtNote}/${offset ? `${offset.x}/${offset.y}` : ''}`;
    const known = this.made.get(key);
    if (known) return known;
    const { Element, Placement } = this.host.root;
    const pattern = add(cursor, this.host.root.newElement(Element.STAFF_TEXT), BLANK, this.step);
    const placement = (isBelow ? Placement.BELOW : Placement.ABOVE) as number;
    pattern.fontSize = MARK_SIZE;
    if (pattern.fontStyle !== UPRIGHT) pattern.fontStyle = UPRIGHT;
    if (pattern.placement !== placement) pattern.placement = placement;
    if (endsAtNote) pattern.align = RIGHT_ON_BASELINE;
    if (offset) {
      pattern.offsetX = offset.x;
      pattern.offsetY = offset.y;
    }
    this.made.set(key, pattern);
    return pattern;
  }

  /** Takes the patterns themselves off the score. */
  remove(): void {
    this.made.forEach((pattern) => {
      removeText(this.host, pattern, this.step);
    });
  }
}

/**
 * True where the editor holds a text to the least height that it was given, and moves it up from there as need be. Version
 * 3 takes a text that was moved and not laid out since for one that its user pulled to where it is, whatever stands there;
 * 4.0 to 4.5 are untried.
 */
export function canLevel(host: Host): boolean {
  return isAtLeast(host, 4, 6);
}

/** Writes a text that is like a pattern. */
export function writeText(
  cursor: HostCursor,
  { text }: PlannedText,
  pattern: HostText,
  step: UndoStep,
): void {
  add(cursor, pattern.clone(), text, step);
}

/** Takes a text off the score. */
export function removeText({ root }: Host, element: HostText, step: UndoStep): void {
  if (typeof root.removeElement === 'function') root.removeElement(element);
  // An empty text prints and exports nothing.
  else element.text = '';
  step.changes += 1;
}

/** From 4.0 on the editor frees an element that was made and never added a second time, and dies of it: nothing in between can fail. */
function add(cursor: HostCursor, element: HostText, text: string, step: UndoStep): HostText {
  element.text = escapedText(text);
  cursor.add(element);
  step.changes += 1;
  return element;
}
