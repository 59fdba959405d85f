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
import { annotate, clear } from './annotateScore.ts';
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
import type { Host, HostScore } from './hostApi.ts';
import { LiveReading } from './liveReading.ts';
import type { NoteAddress } from './noteAddress.ts';
import {
  askDesktop,
  ETUDE_BARS,
  type EtudeForm,
  etudeKeyNames,
  etudeKindNames,
  openEtude,
} from './openEtude.ts';
import { readerFor } from './reader.ts';
import { showNote } from './showNote.ts';
import { keepWindowSize, keptWindowSize, type WindowSize } from './windowSize.ts';

/** How long a press of a button may read before the panel is drawn, in milliseconds. */
const FIRST_SLICE_MS = 60;

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
  /** True while the score is read in slices: the panel is to be ticked without a pause. */
  readonly isBusy: boolean;
}

/** The panel's life: opened once, looked at often. */
export class Panel {
  private readonly host: Host;
  private reading: LiveReading;
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
  private isChecked = false;
  /** True while the user waits for the list. */
  private isBusy = false;
  private percent = 0;

  constructor(host: Host) {
    this.host = host;
    this.choice = chosenFor(host, host.root.curScore);
    this.reading = new LiveReading(host, this.choice);
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
      sentence: this.obstacle || (this.isBusy ? this.words.reading(this.percent) : this.sentence),
      etudePath: this.etudePath ?? '',
      findings: this.rows,
      counts: this.counts,
      isChecked: this.isChecked,
      seesEveryEdit: this.reading.seesEveryEdit,
      isBusy: this.isBusy,
    };
  }

  /**
   * Called by a timer: reads on, or looks whether something was edited and brings the list up to date.
   * @returns true when there is something new to draw
   */
  tick(): boolean {
    const score = this.host.root.curScore;
    if ((score ? score.scoreName : null) !== this.scoreName) {
      this.lookAgain();
      return true;
    }
    return score?.firstMeasure ? this.readOn(score) : false;
  }

  /** Reads the score afresh and makes the list anew. */
  lookAgain(): void {
    const score = this.host.root.curScore;
    this.obstacle = '';
    if (!score || score.scoreName !== this.scoreName) {
      // Another score: nothing that is known of the one before holds for it.
      this.scoreName = score ? score.scoreName : null;
      this.choice = chosenFor(this.host, score);
      this.sentence = '';
      this.shown = null;
      this.reading = new LiveReading(this.host, this.choice);
    } else this.reading.readAgain();
    if (!score?.firstMeasure) {
      this.obstacle = score ? this.words.emptyScore : this.words.noScore;
      this.isBusy = false;
      this.list();
      return;
    }
    this.readAtOnce(score);
  }

  annotate(): void {
    this.sentence = annotate(this.host, this.choice, this.reader, this.shown);
  }

  clear(): void {
    this.sentence = clear(this.host, this.reader, this.shown);
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
    this.reading.choose(choice);
    const score = this.host.root.curScore;
    if (score?.firstMeasure) this.readAtOnce(score);
  }

  /** What is small is read before the panel is drawn, what is big in slices. */
  private readAtOnce(score: HostScore): void {
    const until = Date.now() + FIRST_SLICE_MS;
    this.isBusy = true;
    this.list();
    do this.readOn(score);
    while (this.isBusy && Date.now() < until);
  }

  /** @returns true when there is something new to draw */
  private readOn(score: HostScore): boolean {
    const { reading, isBusy, percent } = this;
    try {
      const isNew = reading.step(score, isBusy);
      this.isBusy = isBusy && reading.isReading;
      this.percent = 10 * Math.floor(10 * reading.share);
      const isDone = isBusy && !this.isBusy;
      if (isNew || isDone) this.list();
      return isNew || isDone || (isBusy && percent !== this.percent);
    } catch (error) {
      this.isBusy = false;
      this.obstacle = `${capital(faultText(error, this.reader))}.`;
      return true;
    }
  }

  private list(): void {
    const parts = this.reading.listed;
    const isRead = this.obstacle === '' && !this.isBusy;
    if (isRead && !this.reading.hasHorns) this.obstacle = this.words.noHorn;
    const rows: FindingRow[] = [];
    const addresses: NoteAddress[] = [];
    const { reader } = this;
    for (const { passage, examination, addresses: noteAddresses } of parts) {
      for (const finding of examination.findings) {
        const note = passage.notes[finding.noteIndex]!;
        const { message, remedy } = findingText(finding, reader);
        const where = placeText(note.measure, note.beat, reader);
        rows.push({
          place: parts.length > 1 ? `${passage.name}, ${where}` : where,
          written: noteName(note.written, reader),
          severity: finding.severity,
          label: severityText(finding.severity, reader),
          message,
          remedy,
        });
        addresses.push(noteAddresses[finding.noteIndex]!);
      }
    }
    this.rows = rows;
    const examinations = parts.map(({ examination }) => examination);
    this.counts = parts.length > 0 ? capital(countText(countNotes(examinations), reader)) : '';
    this.isChecked =
      isRead &&
      parts.some(({ examination }) => examination.notes.some(({ reading }) => isHandState(reading.state)));
    this.addresses = addresses;
  }
}
