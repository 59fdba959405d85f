/** A horn part as the panel lists it: plain data, which may be kept while the score changes. */
import type { Examination, Passage } from '../../core/index.ts';
import type { NoteAddress } from './noteAddress.ts';

export interface ListedPart {
  readonly passage: Passage;
  readonly examination: Examination;
  /** By note index. */
  readonly addresses: readonly NoteAddress[];
}
