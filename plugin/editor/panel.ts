/**
 * What the panel's buttons do, and when it looks; `panelView.ts` says what it draws. Long, since every control of the
 * window has its method here.
 */
import {
  capital,
  countNotes,
  countText,
  HORNS,
  hornText,
  isHandState,
  NOTE_NAMINGS,
  noteClassName,
  type PanelWords,
  type Passage,
  panelWords,
  parsePitch,
  type Reader,
  repairText,
  repairWords,
} from '../../core/index.ts';
import { annotate, clear, type OnChange } from './annotateScore.ts';
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
import { FindingList } from './findingList.ts';
import type { Host, HostPart, HostScore } from './hostApi.ts';
import { LastAction, type MarkSpot, marksAt, musicOf } from './lastAction.ts';
import { ListPlace } from './listPlace.ts';
import { LiveReading } from './liveReading.ts';
import type { NoteAddress } from './noteAddress.ts';
import { NoteQuestion } from './noteQuestion.ts';
import {
  askDesktop,
  ETUDE_BARS,
  type EtudeForm,
  etudeKeyNames,
  etudeKindNames,
  openEtude,
} from './openEtude.ts';
import type { PanelView } from './panelView.ts';
import { readerFor } from './reader.ts';
import { selectedHornNotes } from './selectedHorns.ts';
import { showNote } from './showNote.ts';
import { keepWindowSize, keptWindowSize, type WindowSize } from './windowSize.ts';
import { writeRepair, writeSigns } from './writeRepair.ts';

/** How long a press of a button may read before the panel is drawn, in milliseconds. */
const FIRST_SLICE_MS = 60;

/** Notes by which ways to name them are told apart. */
const NAMED_NOTES = ['Bb4', 'B4'].map(parsePitch);

/** The panel's life: opened once, looked at often. */
export class Panel {
  private readonly host: Host;
  private reading: LiveReading;
  private choice: Choice;
  private sentence = '';
  private etudePath: string | null = null;
  /** What keeps the score from being read, in one sentence; empty when nothing does. */
  private obstacle = '';
  private readonly place: ListPlace;
  private readonly question = new NoteQuestion();
  private counts = '';
  private last: LastAction | null = null;
  /** Where the last action wrote or took away a mark; null where it changed the music. */
  private spot: MarkSpot | null = null;
  /** What is to be done once the score was read after a change. */
  private afterReading: (() => void) | null = null;
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
    this.place = new ListPlace(new FindingList([], this.reader));
    this.lookAgain();
    this.followSelection();
  }

  view(): PanelView {
    const { choice, reader, place } = this;
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
      sentence: this.obstacle || this.sentence || (this.isBusy ? this.words.reading(this.percent) : ''),
      etudePath: this.etudePath ?? '',
      findings: place.rows,
      findingCount: place.list.count,
      chosen: place.view(reader),
      startsAtCursor: place.startsAtCursor,
      answer: this.question.answer,
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
    const isRead = score?.firstMeasure ? this.readOn(score) : false;
    const hasMoved = this.followSelection();
    return this.noticeMarks() || hasMoved || isRead;
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
      this.last = null;
      this.afterReading = null;
      this.reading = new LiveReading(this.host, this.choice);
    } else {
      this.sentence = '';
      this.reading.readAgain();
    }
    if (!score?.firstMeasure) {
      this.obstacle = score ? this.words.emptyScore : this.words.noScore;
      this.isBusy = false;
      this.list();
      return;
    }
    this.readAtOnce(score);
  }

  annotate(): void {
    const { host, choice, reader, shown } = this;
    const known = (part: HostPart) => this.reading.knownOf(part);
    this.mark(this.words.labels.annotate, (onChange) =>
      annotate(host, choice, reader, shown, onChange, known),
    );
  }

  clear(): void {
    const { host, reader, shown } = this;
    this.mark(this.words.labels.clear, (onChange) => clear(host, reader, shown, onChange));
  }

  /** Makes one of the repairs of the chosen finding, and looks whether it helped. @param index from 0 */
  repair(index: number): void {
    const { host, place } = this;
    const repair = place.repairs[index];
    const { target } = place;
    if (!repair || !target) return;
    const { finding, address, part } = target;
    this.change(
      repairText(repair, this.reader),
      (score) => {
        writeRepair(host, score, repair.steps, part.passage.notes, part.addresses);
        this.shown = this.showAt(address) ? address : null;
      },
      () => place.list.placeOf(finding, address) === null,
    );
  }

  /** Writes a sign over the selected horn notes, or takes it away where all of them have it. */
  sign(sign: 'stopped' | 'open'): void {
    const score = this.host.root.curScore;
    const selected = score ? selectedHornNotes(this.host, score) : [];
    if (selected.length === 0) {
      this.sentence = this.words.noHornSelected;
      return;
    }
    const { list } = this.place;
    const wanted = selected.every((address) => list.signAt(address) === sign) ? null : sign;
    const label = repairText(
      {
        kind: wanted ? 'sign-added' : 'sign-removed',
        steps: selected.map((_, noteIndex) => ({ change: 'sign', noteIndex, sign: wanted })),
      },
      this.reader,
    );
    this.change(
      label,
      (now) => {
        writeSigns(this.host, now, selected, wanted);
        // Before 4.6 a single note's sign is found only by selecting around it.
        if (selected.length === 1) this.showAt(selected[0]!);
      },
      () => selected.every((address) => this.place.list.signAt(address) === wanted),
    );
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
    if (horn) this.decide({ ...this.choice, horn: horn.id });
  }

  chooseNoteNaming(index: number): void {
    const noteNaming = NOTE_NAMINGS[index];
    if (noteNaming) this.decide({ ...this.choice, noteNaming });
  }

  chooseTolerance(cents: number): void {
    this.decide({ ...this.choice, tolerance: cents });
  }

  chooseHandOffset(cents: number): void {
    this.decide({ ...this.choice, handOffset: cents });
  }

  /** Switches one of the printed things on or off. */
  chooseShow(field: keyof Switches, isShown: boolean): void {
    this.decide({ ...this.choice, show: { ...this.choice.show, [field]: isShown } });
  }

  /** Leaves out a text that the player's last note in the bar already carries, or prints it every time. */
  chooseRepeats(areLeftOut: boolean): void {
    this.decide({ ...this.choice, show: { ...this.choice.show, repeat: areLeftOut ? 'changes' : 'all' } });
  }

  /** Prints the valves alone where notes are too close for more, or everything everywhere. */
  chooseQuick(areValvesAlone: boolean): void {
    this.decide({ ...this.choice, show: { ...this.choice.show, quick: areValvesAlone ? 'valves' : 'full' } });
  }

  /** Chooses a finding and selects its note in the score; of several in a row the next one. @param index of the drawn row */
  choose(index: number): void {
    if (this.place.choose(index)) this.show();
  }

  /** Goes on to the next finding of the list, or back. */
  step(by: 1 | -1): void {
    if (this.place.step(by)) this.show();
  }

  /** Begins the list at the bar of the selection, or at the beginning of the score. */
  chooseStart(isAtCursor: boolean): void {
    this.place.startAtCursor(isAtCursor);
    this.shown = null;
    this.followSelection();
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

  private decide(choice: Choice): void {
    if (JSON.stringify(choice) === JSON.stringify(this.choice)) return;
    this.choice = choice;
    keepAsDefault(this.host, choice);
    this.reading.choose(choice);
    const score = this.host.root.curScore;
    if (score?.firstMeasure) this.readAtOnce(score);
  }

  private show(): void {
    const { address } = this.place;
    this.shown = address && this.showAt(address) ? address : null;
    if (!this.shown) this.sentence = this.words.notShown;
    this.followSelection();
  }

  private showAt(address: NoteAddress): boolean {
    const score = this.host.root.curScore;
    try {
      return score !== null && showNote(this.host, score, address);
    } catch {
      return false;
    }
  }

  /** Answers for the note that is selected, and begins the list there if that is wished. @returns true for something new */
  private followSelection(): boolean {
    const hasMoved = this.place.follow(this.host.root.curScore, this.shown);
    return this.question.follow(this.host, settingsOf(this.choice), this.reader) || hasMoved;
  }

  /**
   * Changes the music, reads it again, and says what was done or why nothing was.
   * @param hasHelped asked once the score was read: what did not come out as it was meant is taken back
   */
  private change(label: string, work: (score: HostScore) => void, hasHelped: () => boolean): void {
    const { host, reader, words } = this;
    const score = host.root.curScore;
    if (!score?.firstMeasure) return;
    const before = musicOf(this.passages);
    this.last = null;
    this.spot = null;
    try {
      work(score);
    } catch (error) {
      this.sentence = words.failed(faultText(error, reader));
      return;
    }
    this.sentence = repairWords(reader).done(label);
    this.last = new LastAction(label, before);
    this.afterReading = () => {
      if (hasHelped()) return;
      host.root.cmd('undo');
      this.last = null;
      this.sentence = words.failed(words.faults.notTaken);
      this.reading.readAgain();
    };
    this.reading.readAgain();
    this.readAtOnce(score);
  }

  /** Writes or takes away marks, which are not part of the music that is read. */
  private mark(label: string, work: (onChange: OnChange) => string): void {
    const { host } = this;
    const score = host.root.curScore;
    this.last = null;
    this.spot = null;
    this.sentence = work((spot) => {
      this.spot = spot;
      this.last = new LastAction(label, marksAt(host, score!, spot));
    });
    // What it is afterwards is known at once.
    this.noticeMarks();
  }

  /** @returns true when undo or redo has changed what the panel did */
  private noticeMarks(): boolean {
    const { host, last, spot } = this;
    const score = host.root.curScore;
    const said = score && last && spot ? last.notice(marksAt(host, score, spot), this.reader) : null;
    if (said !== null) this.sentence = said;
    return said !== null;
  }

  private get passages(): readonly Passage[] {
    return this.reading.listed.map(({ passage }) => passage);
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
    const { reader } = this;
    this.place.renew(parts, reader);
    const examinations = parts.map(({ examination }) => examination);
    this.counts = parts.length > 0 ? capital(countText(countNotes(examinations), reader)) : '';
    this.isChecked =
      isRead &&
      parts.some(({ examination }) => examination.notes.some(({ reading }) => isHandState(reading.state)));
    if (!isRead) return;
    if (this.last && !this.spot)
      this.sentence = this.last.notice(musicOf(this.passages), reader) ?? this.sentence;
    const next = this.afterReading;
    this.afterReading = null;
    if (next) next();
  }
}
