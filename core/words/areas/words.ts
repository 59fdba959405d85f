/** What one language says, by who says it. The command line's own words are in commandLine.ts. */
import type { NoteNaming, Syllables } from '../noteNaming.ts';
import type { AnswerWords } from './answers.ts';
import type { ChartWords } from './chart.ts';
import type { CurveWords } from './curves.ts';
import type { EtudeWords } from './etudes.ts';
import type { FindingWords } from './findings.ts';
import type { FingeringWords } from './fingerings.ts';
import type { HornWords } from './horns.ts';
import type { PanelWords } from './panel.ts';
import type { RepairWords } from './repairs.ts';
import type { ReportWords } from './report.ts';
import type { ScoreWords } from './scores.ts';
import type { StandWords } from './stand.ts';
import type { SummaryWords } from './summary.ts';

/** What both doors say. */
export interface Words {
  /** How notes are named where the language is spoken. @source commonPractice */
  readonly usualNaming: NoteNaming;
  /** The steps where notes are named by syllables. */
  readonly syllables: Syllables;
  readonly findings: FindingWords;
  readonly fingerings: FingeringWords;
  readonly horns: HornWords;
  readonly summary: SummaryWords;
  readonly repairs: RepairWords;
  readonly answers: AnswerWords;
  readonly etudes: EtudeWords;
  readonly scores: ScoreWords;
  readonly panel: PanelWords;
}

/** Why pages cannot be drawn, and what to do: one clause each, without a full stop. */
export interface EngravingWords {
  readonly unreadable: string;
  /** The engraver is optional for those who need no pages. */
  readonly noEngraver: string;
}

/** What pages say. */
export interface PageWords {
  readonly engraving: EngravingWords;
  readonly report: ReportWords;
  readonly chart: ChartWords;
  readonly curves: CurveWords;
  readonly stand: StandWords;
}
