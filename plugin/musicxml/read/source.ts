import type { ScoreError, ScoreFault } from '../bytes/scoreError.ts';
import type { Span } from './score.ts';

/** The text being parsed, as the readers of its parts see it. */
export interface Source {
  readonly text: string;
  /** Our own marks found so far. */
  readonly ownSpans: Span[];
  /** The offset directly after the tag being handled. */
  offset(): number;
  /** The `<` of the tag being handled. */
  tagStart(): number;
  /** An element's name without MusicXML's own prefix. */
  localName(tagName: string): string;
  /** The error for a fault at the tag being handled. */
  fault(fault: ScoreFault): ScoreError;
  /** Counts notes, rests and words that are kept, and refuses more than any part has. */
  keep(count: number): void;
}

/** Attributes of an element, as the parser gives them. */
export type Attributes = { readonly [name: string]: string | undefined };

/** Something that reads what is inside one element. */
export interface ElementReader {
  /**
   * Takes the start of an element inside; `isChild` when it is a direct child.
   * @returns true when its text is wanted
   */
  open(name: string, attributes: Attributes, isChild: boolean): boolean;
  /** Takes the text of the element opened last, which was wanted. */
  take(name: string, text: string): void;
  /** Takes the end of a direct child. */
  endChild(name: string): void;
}
