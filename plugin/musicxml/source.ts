import type { Span } from './score.ts';

/** The text being parsed, as the readers of its parts see it. */
export interface Source {
  readonly text: string;
  /** True when the text may hold marks of ours, so that they must be looked for. */
  readonly mayHoldMarks: boolean;
  /** Our own marks found so far. */
  readonly ownSpans: Span[];
  /** The offset directly after the tag being handled. */
  offset(): number;
  /** The `<` of the tag being handled. */
  tagStart(): number;
}

/** Attributes of an element, as the parser gives them. */
export type Attributes = { readonly [name: string]: string | undefined };
