/** The panel: what its controls call and when it looks. `panelView.ts` says what is drawn, `panelActions.ts` what is done. */
import { panelWords } from '../../core/index.ts';
import { ChoiceControls, type Control } from './choiceControls.ts';
import type { Host } from './hostApi.ts';
import { LiveList } from './liveList.ts';
import { NoteQuestion } from './noteQuestion.ts';
import { askDesktop, type EtudeForm, etudeFormView, openEtude } from './openEtude.ts';
import { PanelActions } from './panelActions.ts';
import type { PanelView } from './panelView.ts';
import { identityOf } from './scoreIdentity.ts';
import { keepWindowSize, keptWindowSize, type WindowSize } from './windowSize.ts';

/** The panel's life: opened once, looked at often. */
export class Panel {
  private readonly host: Host;
  private readonly controls: ChoiceControls;
  private readonly list: LiveList;
  private readonly actions: PanelActions;
  private readonly question = new NoteQuestion();
  private etudePath: string | null = null;
  private listedScore = '';

  constructor(host: Host) {
    this.host = host;
    this.controls = new ChoiceControls(host);
    this.list = new LiveList(host, this.controls);
    this.actions = new PanelActions(host, this.controls, this.list);
    this.lookAgain();
    this.followSelection();
  }

  view(): PanelView {
    const { controls, list, actions } = this;
    const { reader } = controls;
    return {
      words: panelWords(reader).labels,
      ...controls.view(),
      ...etudeFormView(reader),
      ...list.view(),
      sentence: list.obstacle || actions.sentence || list.progress,
      etudePath: this.etudePath ?? '',
      answer: this.question.answer,
    };
  }

  /**
   * Called by a timer: reads on, or looks whether something was edited and brings the list up to date.
   * @returns true when there is something new to draw
   */
  tick(): boolean {
    const score = this.host.root.curScore;
    if (identityOf(this.host, score) !== this.listedScore) {
      this.lookAgain();
      return true;
    }
    const isRead = score?.firstMeasure ? this.list.readOn(score) : false;
    if (this.list.isTyping) return isRead;
    const hasMoved = this.followSelection();
    return this.actions.noticeMarks() || hasMoved || isRead;
  }

  /** Reads the score afresh and makes the list anew. */
  lookAgain(): void {
    const score = this.host.root.curScore;
    const identity = identityOf(this.host, score);
    const isOther = !score || identity !== this.listedScore;
    if (isOther) {
      this.listedScore = identity;
      this.controls.takeFrom(score);
      this.actions.forget();
    }
    this.actions.sentence = '';
    this.list.listAnew(score, isOther);
  }

  annotate(): void {
    this.actions.annotate();
  }

  clear(): void {
    this.actions.clear();
  }

  /** Makes one of the repairs of the chosen finding. @param index from 0 */
  repair(index: number): void {
    this.actions.repair(index);
  }

  /** Writes a sign over the selected horn notes, or takes it away. */
  sign(sign: 'stopped' | 'open'): void {
    this.actions.sign(sign);
  }

  /** Composes an étude for the horn that is chosen; where it opens as a new score, its findings are then listed. */
  composeEtude(form: EtudeForm): void {
    const { settings, reader } = this.controls;
    const { sentence, path } = openEtude(this.host, form, settings, reader);
    this.lookAgain();
    this.actions.sentence = sentence;
    this.etudePath = path;
    this.list.forgetObstacle();
  }

  /** Hands the étude that was written last to the desktop. */
  openEtudeOutside(): void {
    if (this.etudePath === null) return;
    askDesktop(this.host, this.etudePath);
    this.actions.sentence = this.controls.words.etudeAsked(this.etudePath);
  }

  /** The user used a control: the music is the same, but not what is said of it. */
  decide(control: Control, value: number | boolean): void {
    if (this.controls.use(control, value)) this.list.examineAnew();
  }

  /** Chooses a finding and selects its note in the score; of several in a row the next one. @param index of the drawn row */
  choose(index: number): void {
    if (this.list.place.choose(index)) this.showChosen();
  }

  /** Goes on to the next finding of the list, or back. */
  step(by: 1 | -1): void {
    if (this.list.place.step(by)) this.showChosen();
  }

  /** Begins the list at the bar of the selection, or at the beginning of the score. */
  chooseStart(isAtCursor: boolean): void {
    this.list.place.startAtCursor(isAtCursor);
    this.actions.forgetShown();
    this.followSelection();
  }

  /** The size the window had the last time, or `null`. */
  windowSize(): WindowSize | null {
    return keptWindowSize(this.host);
  }

  keepWindowSize(width: number, height: number): void {
    keepWindowSize(this.host, { width, height });
  }

  private showChosen(): void {
    this.actions.showChosen();
    this.followSelection();
  }

  /** Answers for the note that is selected, and begins the list there if that is wished. @returns true for something new */
  private followSelection(): boolean {
    const { host, controls, actions } = this;
    const hasMoved = this.list.place.follow(host.root.curScore, actions.shown);
    return this.question.follow(host, controls.settings, controls.reader) || hasMoved;
  }
}
