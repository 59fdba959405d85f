/** What the panel draws: plain data, which the QML beside it shows and nothing else. */
import type { PanelLabels, Verdict } from '../../core/index.ts';
import type { Choice } from './choice.ts';
import type { FindingRow } from './findingList.ts';

/** Everything the panel draws. */
export interface PanelView extends ChoiceView, EtudeFormView, ListView {
  readonly words: PanelLabels;
  /** One sentence on the last thing done, or what stands in the way. */
  readonly sentence: string;
  /** Where an étude was written that the user has to open; empty when there is none. */
  readonly etudePath: string;
  /** Null while no horn note is selected. */
  readonly answer: AnswerView | null;
}

/** Who plays, how notes are named, what is printed. */
export interface ChoiceView {
  readonly horns: readonly string[];
  readonly hornIndex: number;
  /** Each by two notes of it: `B♭  B`. */
  readonly noteNamings: readonly string[];
  readonly noteNamingIndex: number;
  readonly choice: Choice;
  readonly toleranceRange: { readonly from: number; readonly to: number };
  readonly handOffsetRange: { readonly from: number; readonly to: number };
}

/** What an étude may be asked for. */
export interface EtudeFormView {
  readonly etudeKinds: readonly string[];
  readonly etudeKeys: readonly string[];
  readonly etudeBars: { readonly from: number; readonly to: number; readonly step: number };
}

/** What was found. */
export interface ListView {
  readonly findings: readonly FindingRow[];
  /** How many findings that is, each of several in a row for itself. */
  readonly findingCount: number;
  readonly chosen: ChosenView;
  readonly startsAtCursor: boolean;
  /** How many stopped notes there are, by verdict; empty where nothing was read. */
  readonly counts: string;
  /** True when a horn part with a stopped note was read, so that an empty list means that all is well. */
  readonly isChecked: boolean;
  /** False where the host shows edits of signs to nobody, or the score is too big to be read all the time: then the user asks for a look. */
  readonly seesEveryEdit: boolean;
  /** True while the score is read in slices: the panel is to be ticked without a pause. */
  readonly isBusy: boolean;
}

/** What is told of the note that is selected. */
export interface AnswerView {
  readonly heading: string;
  readonly verdict: Verdict;
  /** The verdict in the user's language. */
  readonly label: string;
  readonly lines: readonly string[];
}

/** The finding that is chosen in the list. */
export interface ChosenView {
  /** Its place in the list as it is drawn, from 0; −1 for none. */
  readonly row: number;
  /** `2 of 3` where its row stands for several; else empty. */
  readonly nth: string;
  readonly message: string;
  /** What the buttons at it say. */
  readonly repairs: readonly string[];
}
