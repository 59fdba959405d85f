/** The list of the score that is open: read at once as far as that goes, then in slices, then kept up to date. */
import { capital, countNotes, countText, isHandState, type Passage } from '../../core/index.ts';
import type { ChoiceControls } from './choiceControls.ts';
import { faultText } from './editorFault.ts';
import { FindingList } from './findingList.ts';
import type { Host, HostPart, HostScore } from './hostApi.ts';
import type { KnownPart } from './knownPart.ts';
import { ListPlace } from './listPlace.ts';
import { LiveReading } from './liveReading.ts';
import type { ListView } from './panelView.ts';

/** How long a press of a button may read before the panel is drawn, in milliseconds. */
const FIRST_SLICE_MS = 60;

export class LiveList {
  readonly place: ListPlace;
  /** Told whenever the list has become that of the score as it is now. */
  onRead: () => void = () => {};
  private readonly host: Host;
  private readonly controls: ChoiceControls;
  private reading: LiveReading;
  /** What keeps the score from being read, in one sentence; empty when nothing does. */
  private standsInTheWay = '';
  private counts = '';
  private isChecked = false;
  /** True while the user waits for the list. */
  private isBusy = false;
  private percent = 0;

  constructor(host: Host, controls: ChoiceControls) {
    this.host = host;
    this.controls = controls;
    this.reading = new LiveReading(host, controls.choice);
    this.place = new ListPlace(new FindingList([], controls.reader));
  }

  get obstacle(): string {
    return this.standsInTheWay;
  }

  /** True while keys come in. */
  get isTyping(): boolean {
    return this.reading.isTyping;
  }

  get passages(): readonly Passage[] {
    return this.reading.listed.map(({ passage }) => passage);
  }

  /** How far the reading is or what it waits for, in one sentence; empty when it is done. */
  get progress(): string {
    const { words } = this.controls;
    if (this.reading.awaitsLettingGo) return words.readOnceLetGo;
    return this.isBusy ? words.reading(this.percent) : '';
  }

  view(): ListView {
    const { place, reading, counts, isChecked, isBusy } = this;
    return {
      findings: place.rows,
      findingCount: place.list.count,
      chosen: place.view(this.controls.reader),
      startsAtCursor: place.startsAtCursor,
      counts,
      isChecked,
      seesEveryEdit: reading.seesEveryEdit,
      isBusy,
    };
  }

  /** What is known of a part; `null` for nothing. */
  knownOf(part: HostPart): KnownPart | null {
    return this.reading.knownOf(part);
  }

  /** Lists a score. @param isOther true where nothing that is known of the one before holds for it */
  listAnew(score: HostScore | null, isOther: boolean): void {
    const { host, controls } = this;
    this.standsInTheWay = '';
    if (isOther) this.reading = new LiveReading(host, controls.choice);
    else this.reading.readAgain(false);
    if (score?.firstMeasure) {
      this.readAtOnce(score);
      return;
    }
    this.standsInTheWay = score ? controls.words.emptyScore : controls.words.noScore;
    this.isBusy = false;
    this.list();
  }

  /** Everything is due again, at the next looks, after the panel has changed the music. */
  readAgain(): void {
    this.reading.readAgain(true);
  }

  /** Reads the score after its music was changed. */
  listAfterChange(score: HostScore): void {
    this.readAgain();
    this.readAtOnce(score);
  }

  /** Examines the same music for other settings. */
  examineAnew(): void {
    this.reading.choose(this.controls.choice);
    const score = this.host.root.curScore;
    if (score?.firstMeasure) this.readAtOnce(score);
  }

  /** What stood in the way is no news any more. */
  forgetObstacle(): void {
    this.standsInTheWay = '';
  }

  /** One slice. @returns true when there is something new to draw */
  readOn(score: HostScore): boolean {
    const { reading, isBusy, percent } = this;
    try {
      const isNew = reading.step(score, isBusy);
      this.isBusy = isBusy && reading.isReading && !reading.awaitsLettingGo;
      this.percent = 10 * Math.floor(10 * reading.share);
      const isDone = isBusy && !this.isBusy;
      if (isNew || isDone) this.list();
      return isNew || isDone || (isBusy && percent !== this.percent);
    } catch (error) {
      this.isBusy = false;
      this.standsInTheWay = `${capital(faultText(error, this.controls.reader))}.`;
      return true;
    }
  }

  /** What is small is read before the panel is drawn, what is big in slices. */
  private readAtOnce(score: HostScore): void {
    const until = Date.now() + FIRST_SLICE_MS;
    this.isBusy = true;
    this.list();
    do this.readOn(score);
    while (this.isBusy && Date.now() < until);
  }

  private list(): void {
    const { reader, words } = this.controls;
    const parts = this.reading.listed;
    const isRead = this.standsInTheWay === '' && !this.isBusy && !this.reading.awaitsLettingGo;
    if (isRead && !this.reading.hasHorns) this.standsInTheWay = words.noHorn;
    this.place.renew(parts, reader);
    const examinations = parts.map(({ examination }) => examination);
    this.counts = parts.length > 0 ? capital(countText(countNotes(examinations), reader)) : '';
    this.isChecked =
      isRead &&
      parts.some(({ examination }) => examination.notes.some(({ reading }) => isHandState(reading.state)));
    if (isRead) this.onRead();
  }
}
