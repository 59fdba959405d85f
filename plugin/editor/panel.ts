/** What the panel shows and what its buttons do. The QML beside it draws this and nothing else. */
import {
  capital,
  countNotes,
  countText,
  findingText,
  HORNS,
  hornText,
  isHandState,
  NOTE_NAMINGS,
  noteClassName,
  noteName,
  type PanelLabels,
  type PanelWords,
  panelWords,
  parsePitch,
  placeText,
  type Reader,
  type Severity,
  severityText,
} from '../../core/index.ts';
import { annotate, clear, type ExaminedPart, examineScore } from './annotateScore.ts';
import { ChangeWatch } from './changeWatch.ts';
import {
  type Choice,
  chosenFor,
  HAND_OFFSET_RANGE,
  keepAsDefault,
  type Switches,
  settingsOf,
  TOLERANCE_RANGE,
} from './choice.ts';
import { faultText } from './editorFault.ts';
import type { Host } from './hostApi.ts';
import { addressOf, type NoteAddress } from './noteAddress.ts';
import {
  askDesktop,
  ETUDE_BARS,
  type EtudeForm,
  etudeKeyNames,
  etudeKindNames,
  openEtude,
} from './openEtude.ts';
import { breaksEdits } from './readByExport.ts';
import { readerFor } from './reader.ts';
import { showNote } from './showNote.ts';
import { keepWindowSize, keptWindowSize, type WindowSize } from './windowSize.ts';

/** A score that takes longer than this to read, in milliseconds, is read only when asked: nobody's typing waits for it. */
const READING_LIMIT_MS = 600;

/** Notes by which ways to name them are told apart. */
const NAMED_NOTES = ['Bb4', 'B4'].map(parsePitch);

/** One line of the list of findings. */
export interface FindingRow {
  /** Part (where there are several), bar and beat. */
  readonly place: string;
  readonly written: string;
  readonly severity: Severity;
  /** The severity in the user's language. */
  readonly label: string;
  readonly message: string;
  readonly remedy: string;
}

/** Everything the panel draws. */
export interface PanelView {
  readonly words: PanelLabels;
  readonly horns: readonly string[];
  readonly hornIndex: number;
  /** Each by two notes of it: `B♭  B`. */
  readonly noteNamings: readonly string[];
  readonly noteNamingIndex: number;
  readonly choice: Choice;
  readonly toleranceRange: { readonly from: number; readonly to: number };
  readonly handOffsetRange: { readonly from: number; readonly to: number };
  readonly etudeKinds: readonly string[];
  readonly etudeKeys: readonly string[];
  readonly etudeBars: { readonly from: number; readonly to: number; readonly step: number };
  /** One sentence on the last thing done, or what stands in the way. */
  readonly sentence: string;
  /** Where an étude was written that the user has to open; empty when there is none. */
  readonly etudePath: string;
  readonly findings: readonly FindingRow[];
  /** How many stopped notes there are, by verdict; empty where nothing was read. */
  readonly counts: string;
  /** True when a horn part with a stopped note was read, so that an empty list means that all is well. */
  readonly isChecked: boolean;
  /** False where the host shows edits of signs to nobody, or the score is too big to be read all the time: then the user asks for a look. */
  readonly seesEveryEdit: boolean;
}

/** The panel's life: opened once, looked at often. */
export class Panel {
  private readonly host: Host;
  private readonly watch: ChangeWatch;
  private choice: Choice;
  private sentence = '';
  private etudePath: string | null = null;
  /** What keeps the score from being read, in one sentence; empty when nothing does. */
  private obstacle = '';
  private rows: readonly FindingRow[] = [];
  private counts = '';
  private addresses: readonly NoteAddress[] = [];
  private shown: NoteAddress | null = null;
  private scoreName: string | null = null;
  private isSettling = false;
  private isChecked = false;
  private isSlow = false;
  /** True when something was edited and only the user may have the list brought up to date. */
  private isWaiting = false;

  constructor(host: Host) {
    this.host = host;
    this.watch = new ChangeWatch(host);
    this.choice = chosenFor(host, host.root.curScore);
    this.lookAgain();
  }

  view(): PanelView {
    const { choice, reader } = this;
    return {
      words: panelWords(reader).labels,
      horns: HORNS.map((horn) => capital(hornText(horn, reader))),
      hornIndex: HORNS.findIndex(({ id }) => id === choice.horn),
      noteNamings: NOTE_NAMINGS.map((noteNaming) =>
        NAMED_NOTES.map((note) => noteClassName(note, { ...reader, noteNaming })).join('  '),
      ),
      noteNamingIndex: NOTE_NAMINGS.indexOf(reader.noteNaming),
      choice,
      toleranceRange: TOLERANCE_RANGE,
      handOffsetRange: HAND_OFFSET_RANGE,
      etudeKinds: etudeKindNames(reader),
      etudeKeys: etudeKeyNames(reader),
      etudeBars: ETUDE_BARS,
      sentence: this.obstacle === '' ? this.sentence : this.obstacle,
      etudePath: this.etudePath ?? '',
      findings: this.rows,
      counts: this.counts,
      isChecked: this.isChecked,
      seesEveryEdit: this.watch.seesEveryEdit && !this.isSlow && !this.isWaiting,
    };
  }

  /**
   * Called by a timer. Waits until the writer pauses, then brings the list up to date.
   * @returns true when there is something new to draw
   */
  tick(): boolean {
    const score = this.host.root.curScore;
    if ((score ? score.scoreName : null) !== this.scoreName) {
      // Another score: nothing that is known of the one before holds for it.
      this.isSlow = false;
      this.watch.remember();
      this.lookAgain();
      return true;
    }
    if (this.watch.hasChanged()) {
      this.isSettling = !this.isSlow && !this.isWaiting;
      if (this.isWaiting || !score || !breaksEdits(this.host, score)) return false;
      this.isSettling = false;
      this.isWaiting = true;
      return true;
    }
    if (!this.isSettling) return false;
    this.watch.remember();
    this.lookAgain();
    return true;
  }

  /** Reads the score afresh and makes the list anew. */
  lookAgain(): void {
    this.isSettling = false;
    this.isWaiting = false;
    const score = this.host.root.curScore;
    if (score && score.scoreName !== this.scoreName) {
      this.scoreName = score.scoreName;
      this.choice = chosenFor(this.host, score);
      this.sentence = '';
      this.shown = null;
    }
    this.rows = [];
    this.counts = '';
    this.isChecked = false;
    this.addresses = [];
    this.obstacle = '';
    if (!score) {
      this.scoreName = null;
      this.obstacle = this.words.noScore;
      return;
    }
    if (!score.firstMeasure) {
      this.obstacle = this.words.emptyScore;
      return;
    }
    const start = Date.now();
    try {
      this.list(examineScore(this.host, score, this.choice));
      this.isSlow = Date.now() - start > READING_LIMIT_MS;
    } catch (error) {
      this.obstacle = `${capital(faultText(error, this.reader))}.`;
    }
  }

  annotate(): void {
    this.sentence = annotate(this.host, this.choice, this.reader, this.shown);
    this.afterChange();
  }

  clear(): void {
    this.sentence = clear(this.host, this.reader, this.shown);
    this.afterChange();
  }

  /** Composes an étude for the horn that is chosen; where it opens as a new score, its findings are then listed. */
  composeEtude(form: EtudeForm): void {
    const { sentence, path } = openEtude(this.host, form, settingsOf(this.choice), this.reader);
    this.lookAgain();
    this.sentence = sentence;
    this.etudePath = path;
    this.obstacle = '';
  }

  /** Hands the étude that was written last to the desktop. */
  openEtudeOutside(): void {
    if (this.etudePath === null) return;
    askDesktop(this.host, this.etudePath);
    this.sentence = this.words.etudeAsked(this.etudePath);
  }

  chooseHorn(index: number): void {
    const horn = HORNS[index];
    if (horn) this.choose({ ...this.choice, horn: horn.id });
  }

  chooseNoteNaming(index: number): void {
    const noteNaming = NOTE_NAMINGS[index];
    if (noteNaming) this.choose({ ...this.choice, noteNaming });
  }

  chooseTolerance(cents: number): void {
    this.choose({ ...this.choice, tolerance: cents });
  }

  chooseHandOffset(cents: number): void {
    this.choose({ ...this.choice, handOffset: cents });
  }

  /** Switches one of the printed things on or off. */
  chooseShow(field: keyof Switches, isShown: boolean): void {
    this.choose({ ...this.choice, show: { ...this.choice.show, [field]: isShown } });
  }

  /** Leaves out a text that the player's last note already carries, or prints it every time. */
  chooseRepeats(areLeftOut: boolean): void {
    this.choose({ ...this.choice, show: { ...this.choice.show, repeat: areLeftOut ? 'changes' : 'all' } });
  }

  /** Selects the note of a finding in the score. */
  show(row: number): void {
    const address = this.addresses[row];
    const score = this.host.root.curScore;
    if (!address || !score) return;
    try {
      this.shown = showNote(this.host, score, address) ? address : null;
    } catch {
      this.shown = null;
    }
    if (!this.shown) this.sentence = this.words.notShown;
  }

  /** The size the window had the last time, or `null`. */
  windowSize(): WindowSize | null {
    return keptWindowSize(this.host);
  }

  keepWindowSize(width: number, height: number): void {
    keepWindowSize(this.host, { width, height });
  }

  private get reader(): Reader {
    return readerFor(this.host, this.choice);
  }

  private get words(): PanelWords {
    return panelWords(this.reader);
  }

  private choose(choice: Choice): void {
    if (JSON.stringify(choice) === JSON.stringify(this.choice)) return;
    this.choice = choice;
    keepAsDefault(this.host, choice);
    this.lookAgain();
  }

  /** Our own marks are no news to the watch. */
  private afterChange(): void {
    this.watch.remember();
    this.lookAgain();
  }

  private list(parts: readonly ExaminedPart[]): void {
    if (parts.length === 0) this.obstacle = this.words.noHorn;
    const rows: FindingRow[] = [];
    const addresses: NoteAddress[] = [];
    const { reader } = this;
    for (const { part, examination } of parts) {
      for (const finding of examination.findings) {
        const note = part.passage.notes[finding.noteIndex]!;
        const { message, remedy } = findingText(finding, reader);
        const where = placeText(note.measure, note.beat, reader);
        rows.push({
          place: parts.length > 1 ? `${part.passage.name}, ${where}` : where,
          written: noteName(note.written, reader),
          severity: finding.severity,
          label: severityText(finding.severity, reader),
          message,
          remedy,
        });
        addresses.push(addressOf(part.places[finding.noteIndex]!));
      }
    }
    this.rows = rows;
    const examinations = parts.map(({ examination }) => examination);
    this.counts = parts.length > 0 ? capital(countText(countNotes(examinations), reader)) : '';
    this.isChecked = parts.some(({ examination }) =>
      examination.notes.some(({ reading }) => isHandState(reading.state)),
    );
    this.addresses = addresses;
  }
}
