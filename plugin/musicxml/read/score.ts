/** What is known of a MusicXML score once it is read: its parts, its horns as passages, and where everything stands in the text. */
import type { NamedCrook, Passage } from '../../../core/index.ts';
import type { Entities } from './entities.ts';
import type { NotesInText } from './notesInText.ts';

/** A part as the score lists it. */
export interface ListedPart {
  readonly id: string;
  /** The name as printed; its instrument's name or the id where the part has none. */
  readonly name: string;
  /** True when its sound, MIDI program or name say that it is a horn. */
  readonly isHorn: boolean;
}

/** Where a horn part's transposition was found. */
export type TranspositionOrigin = 'stated' | 'name' | 'concert-score' | 'nowhere';

/** How a transposition was found that the score does not state. */
export interface TranspositionRemark {
  readonly from: Exclude<TranspositionOrigin, 'stated'>;
  readonly partName: string;
  /** Why the part's name tells no transposition; null where it does. */
  readonly named: Extract<NamedCrook, { readonly ok: false }>['reason'] | null;
}

/** A part that was read: the horns, or the parts asked for. */
export interface HornPart extends ListedPart {
  readonly passage: Passage;
  /** How the first note's transposition was found. */
  readonly transpositionFrom: TranspositionOrigin;
  /** What the user should know where the transposition is not simply stated, else `null`. */
  readonly transpositionRemark: TranspositionRemark | null;
  /** Where its notes stand in `Score.text`. */
  readonly notesInText: NotesInText;
  /** Where its measures stand there, by measure index. */
  readonly measures: readonly MeasureSpan[];
}

/** A stretch of the text; `end` is excluded. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** One measure of a part in the text: of a timewise score, the part's element inside the measure. */
export interface MeasureSpan extends Span {
  /** As printed. */
  readonly number: string;
  /** True for a measure that is not counted, such as an upbeat. */
  readonly implicit: boolean;
}

/** A score as read. `text` is the input, unchanged. */
export interface Score {
  readonly text: string;
  /** Every part, in score order. */
  readonly parts: readonly ListedPart[];
  /** The parts that were read, in score order. */
  readonly horns: readonly HornPart[];
  /** What earlier runs have put into the text, in text order: without these spans it is as its author left it. */
  readonly ownSpans: readonly Span[];
  /** What references in the text stand for. */
  readonly entities: Entities;
  /** The namespace prefix of MusicXML's own elements with its colon, or an empty text. */
  readonly prefix: string;
}
