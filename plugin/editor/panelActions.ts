/** What the panel's buttons do to the score, each one step of its undo history, and what is said of it. */
import { repairText, repairWords } from '../../core/index.ts';
import { annotate, clear, type OnChange } from './annotateScore.ts';
import type { ChoiceControls } from './choiceControls.ts';
import { faultText } from './editorFault.ts';
import type { Host, HostScore } from './hostApi.ts';
import { LastAction, type MarkSpot, marksAt, musicOf } from './lastAction.ts';
import type { LiveList } from './liveList.ts';
import type { NoteAddress } from './noteAddress.ts';
import { isReadAsText } from './readParts.ts';
import { selectedHornNotes } from './selectedHorns.ts';
import { hasNoSelection } from './selectedScore.ts';
import { showNote } from './showNote.ts';
import { writeRepair, writeSigns } from './writeRepair.ts';

export class PanelActions {
  private readonly host: Host;
  private readonly controls: ChoiceControls;
  private readonly list: LiveList;
  /** One sentence on the last thing done. */
  sentence = '';
  private last: LastAction | null = null;
  /** Where the last action wrote or took away a mark; null where it changed the music. */
  private spot: MarkSpot | null = null;
  /** What is to be done once the score was read after a change. */
  private afterReading: (() => void) | null = null;
  private shownNote: NoteAddress | null = null;

  constructor(host: Host, controls: ChoiceControls, list: LiveList) {
    this.host = host;
    this.controls = controls;
    this.list = list;
    list.onRead = () => this.noticeMusic();
  }

  /** The note that the panel itself has selected. */
  get shown(): NoteAddress | null {
    return this.shownNote;
  }

  /** Nothing that was done to the score before holds for another one. */
  forget(): void {
    this.sentence = '';
    this.shownNote = null;
    this.last = null;
    this.afterReading = null;
  }

  /** What is selected next is the user's own. */
  forgetShown(): void {
    this.shownNote = null;
  }

  annotate(): void {
    const { host, list } = this;
    const { choice, reader, words } = this.controls;
    this.mark(words.labels.annotate, (onChange) =>
      annotate(host, choice, reader, this.shown, onChange, (part) => list.knownOf(part)),
    );
  }

  clear(): void {
    const { reader, words } = this.controls;
    this.mark(words.labels.clear, (onChange) => clear(this.host, reader, this.shown, onChange));
  }

  /** Makes one of the repairs of the chosen finding, and looks whether it helped. @param index from 0 */
  repair(index: number): void {
    const { host, list } = this;
    const { place } = list;
    const repair = place.repairs[index];
    const { target } = place;
    if (!repair || !target) return;
    const { finding, address, part } = target;
    this.change(
      repairText(repair, this.controls.reader),
      (score) =>
        writeRepair(host, score, repair.steps, part.passage.notes, part.addresses, this.controls.reader),
      () => place.list.placeOf(finding, address) === null,
      address,
    );
  }

  /** Writes a sign over the selected horn notes, or takes it away where all of them have it. */
  sign(sign: 'stopped' | 'open'): void {
    const score = this.host.root.curScore;
    const selected = score ? selectedHornNotes(this.host, score) : [];
    if (selected.length === 0) {
      this.sentence = this.controls.words.noHornSelected;
      return;
    }
    const { place } = this.list;
    const wanted = selected.every((address) => place.list.signAt(address) === sign) ? null : sign;
    const label = repairText(
      {
        kind: wanted ? 'sign-added' : 'sign-removed',
        steps: selected.map((_, noteIndex) => ({ change: 'sign', noteIndex, sign: wanted })),
      },
      this.controls.reader,
    );
    this.change(
      label,
      (now) => {
        writeSigns(this.host, now, selected, wanted);
        // Before 4.6 a single note's sign is found only by selecting around it.
        if (selected.length === 1) this.select(selected[0]!);
      },
      () => selected.every((address) => place.list.signAt(address) === wanted),
    );
  }

  /** Selects the note of the finding that is chosen. */
  showChosen(): void {
    const { address } = this.list.place;
    this.shownNote = null;
    if (address) this.show(address);
    if (!this.shownNote) this.sentence = this.controls.words.notShown;
  }

  /** @returns true when undo or redo has changed what the panel marked */
  noticeMarks(): boolean {
    const { host, last, spot } = this;
    const score = host.root.curScore;
    const said = score && last && spot ? last.notice(marksAt(host, score, spot), this.controls.reader) : null;
    if (said !== null) this.sentence = said;
    return said !== null;
  }

  /** The score was read: whether undo or redo has changed what the panel did to its music. */
  private noticeMusic(): void {
    if (this.last && !this.spot)
      this.sentence = this.last.notice(musicOf(this.list.passages), this.controls.reader) ?? this.sentence;
    const next = this.afterReading;
    this.afterReading = null;
    if (next) next();
  }

  private select(address: NoteAddress): boolean {
    const score = this.host.root.curScore;
    try {
      return score !== null && showNote(this.host, score, address);
    } catch {
      return false;
    }
  }

  /**
   * Changes the music, reads it again, and says what was done or why nothing was.
   * @param hasHelped asked once the score was read: what did not come out as it was meant is taken back
   * @param shown the note that is then selected; `null` leaves the selection to the user
   */
  private change(
    label: string,
    work: (score: HostScore) => void,
    hasHelped: () => boolean,
    shown: NoteAddress | null = null,
  ): void {
    const { host, list } = this;
    const { reader, words } = this.controls;
    const score = host.root.curScore;
    if (!score?.firstMeasure) return;
    const before = musicOf(list.passages);
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
    // Where a large score is read quickest with nothing selected, what the panel has selected is let go meanwhile.
    const isLetGo = shown !== null && isReadAsText(host);
    if (isLetGo) host.root.cmd('escape');
    else if (shown) this.show(shown);
    this.afterReading = () => {
      if (!hasHelped()) {
        host.root.cmd('undo');
        this.last = null;
        this.sentence = words.failed(words.faults.notTaken);
        list.readAgain();
      }
      if (isLetGo && hasNoSelection(score)) this.show(shown);
    };
    list.listAfterChange(score);
  }

  private show(address: NoteAddress): void {
    this.shownNote = this.select(address) ? address : null;
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
}
