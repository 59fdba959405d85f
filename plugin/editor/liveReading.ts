/**
 * The horn parts of one score, read and examined in slices between which the editor breathes, and kept up to date: bars
 * are looked at a few at a time, signs and lines where that costs nothing that a writer would feel.
 */
import { type Examination, examineInPieces, type Passage, type Pieces } from '../../core/index.ts';
import { BarWatch } from './barWatch.ts';
import { type Choice, settingsOf } from './choice.ts';
import { AT_WORK_MS, type Doing, type EvidenceSource } from './evidenceSource.ts';
import type { Host, HostPart, HostScore } from './hostApi.ts';
import type { KnownPart } from './knownPart.ts';
import { ListedEvidence } from './listedEvidence.ts';
import type { ListedPart } from './listedPart.ts';
import { addressOf, type NoteAddress } from './noteAddress.ts';
import { passageInPieces } from './passageFromScore.ts';
import { isReadAsText } from './readParts.ts';
import { WriterWatch } from './writerWatch.ts';
import { WrittenEvidence } from './writtenEvidence.ts';

/** How long a look at the bars may take, in milliseconds: while all is read, while somebody writes or works, and otherwise. */
const STRIDE_MS = { reading: 30, writing: 0, atWork: 10, atRest: 5 } as const;
/** In a long score, while nobody works, how often and how long: finding the place there takes as long again. */
const LONG_BARS = 100;
const LONG_AT_REST = { everyMs: 850, strideMs: 10 } as const;
/** How long one slice may make what has to be made, in milliseconds; what took longer waits until nobody writes. */
const MAKING_MS = 30;
/** How long after a look the next one may be while somebody writes, in milliseconds, however often the panel asks. */
const WRITING_EVERY_MS = 250;
/** What was made of a part; `null` for what has to be made anew. */
interface Made {
  passage: Passage | null;
  addresses: readonly NoteAddress[];
  examination: Examination | null;
  /** What was listed last. */
  listed: ListedPart | null;
  /** The making of it, as far as it is. */
  work: Pieces<void> | null;
  /** How long making it took last, in milliseconds. */
  took: number;
}

export class LiveReading {
  private readonly host: Host;
  private readonly watch: BarWatch;
  private readonly source: EvidenceSource;
  private choice: Choice;
  private made: Made[] = [];
  private readonly writer = new WriterWatch();
  private lookedAt = 0;
  private strodeAt = 0;
  /** True until what the panel itself has changed is read. */
  private isChanged = false;
  /** True while the writer types: nothing else is looked at then. */
  isTyping = false;

  constructor(host: Host, choice: Choice) {
    this.host = host;
    this.choice = choice;
    this.watch = new BarWatch(host);
    this.source = isReadAsText(host) ? new WrittenEvidence(host) : new ListedEvidence(host);
  }

  /** True while the list is not what it could be. */
  get isReading(): boolean {
    return !this.watch.isWhole || this.source.isDue || this.made.some(({ examination }) => !examination);
  }

  /** True where the list waits until nothing is selected. */
  get awaitsLettingGo(): boolean {
    return this.source.isDue && this.source.awaitsLettingGo;
  }

  /** How much of the reading is done, 0 to 1. */
  get share(): number {
    const done = this.made.filter(({ examination }) => examination).length / Math.max(1, this.made.length);
    return (this.watch.share + (this.source.isDue ? 0 : 1) + done) / 3;
  }

  /** True where every edit shows by itself. */
  get seesEveryEdit(): boolean {
    return this.source.seesEveryEdit;
  }

  get hasHorns(): boolean {
    return this.watch.hornParts.length > 0;
  }

  /** What is known, in the order of the score; parts that were never read are missing. */
  get listed(): readonly ListedPart[] {
    const listed: ListedPart[] = [];
    for (const made of this.made) if (made.listed) listed.push(made.listed);
    return listed;
  }

  /** What is known of a part, as long as nothing is due; `null` for nothing. */
  knownOf(part: HostPart): KnownPart | null {
    const { watch, source, made, writer } = this;
    const index = watch.hornParts.findIndex(({ startTrack }) => startTrack === part.startTrack);
    if (index < 0 || !watch.isWhole || source.isDue) return null;
    const { examination, listed } = made[index]!;
    const isUpToDate = examination !== null && !writer.isWriting;
    const evidence = source.evidenceOf(index);
    return { part, evidence, bars: watch.copies, index, listed: isUpToDate ? listed : null };
  }

  /**
   * Everything is due again, and what the panel itself has changed or selected is nobody's writing.
   * @param isChanged true where the panel has just changed the music, and has to see what came of it
   */
  readAgain(isChanged: boolean): void {
    this.watch.forget();
    this.source.readAgain(isChanged);
    this.isChanged = isChanged;
    this.writer.forget();
  }

  /** Other settings: the music is the same. */
  choose(choice: Choice): void {
    this.choice = choice;
    for (const made of this.made) {
      made.examination = null;
      made.work = null;
    }
  }

  /**
   * One slice of the work.
   * @param isAsked true when the user waits for the list, unless something was written since
   * @returns true when the list is new
   */
  step(score: HostScore, isAsked: boolean): boolean {
    this.isTyping = this.writer.follow(score);
    if (this.isTyping || this.isBetweenKeys()) return false;
    const doing = this.writer.doing(isAsked);
    const wasWhole = this.watch.isWhole;
    const { changed, isOther } = this.watch.stride(score, this.strideFor(doing), this.writer.takePlaces());
    if (isOther) this.startOver();
    changed.forEach((index) => {
      this.unmake(index);
    });
    const hasNews = wasWhole && changed.size > 0;
    if (hasNews) this.writer.noteChange(doing.now);
    if (!this.watch.isWhole || hasNews) return false;
    const index = this.source.step(score, this.watch, doing);
    if (index !== null) {
      this.unmake(index);
      return false;
    }
    // While a note may be in the writer's hand the list is made of what is known.
    if (!doing.isStill || (this.source.isDue && !doing.mayBeDragging)) return false;
    if (doing.isWriting && this.isSlow) return false;
    const until = Date.now() + MAKING_MS;
    let isNew = false;
    while (this.isReading && Date.now() < until) isNew = this.makeOne() || isNew;
    return isNew;
  }

  /** True where something that took long has to be made again. */
  private get isSlow(): boolean {
    return this.made.some(({ examination, took }) => !examination && took > MAKING_MS);
  }

  private isBetweenKeys(): boolean {
    const now = Date.now();
    if (this.writer.isWriting && now - this.lookedAt < WRITING_EVERY_MS) return true;
    this.lookedAt = now;
    return false;
  }

  private strideFor({ isWriting, stillFor, now }: Doing): number {
    if (!this.watch.isWhole) return STRIDE_MS.reading;
    if (isWriting) return STRIDE_MS.writing;
    if (stillFor < AT_WORK_MS) return STRIDE_MS.atWork;
    if (this.watch.barCount < LONG_BARS) return STRIDE_MS.atRest;
    if (now - this.strodeAt < LONG_AT_REST.everyMs) return 0;
    this.strodeAt = now;
    return LONG_AT_REST.strideMs;
  }

  private startOver(): void {
    this.source.readAgain(this.isChanged);
    this.isChanged = false;
    this.made = this.watch.hornParts.map((_, i) => ({
      passage: null,
      addresses: [],
      examination: null,
      listed: this.made[i]?.listed ?? null,
      work: null,
      took: 0,
    }));
  }

  private unmake(index: number): void {
    const made = this.made[index]!;
    made.passage = null;
    made.examination = null;
    made.work = null;
  }

  /** Goes on making what has to be made, by one piece. @returns true when the list is new */
  private makeOne(): boolean {
    const index = this.made.findIndex(({ examination }) => !examination);
    const made = this.made[index];
    if (!made) return false;
    const start = Date.now();
    if (!made.work) {
      made.work = this.make(made, index);
      made.took = 0;
    }
    const { done } = made.work.next();
    made.took += Date.now() - start;
    return done === true;
  }

  private *make(made: Made, index: number): Pieces<void> {
    const { watch, source, host } = this;
    if (!made.passage) {
      const part = yield* passageInPieces(host, watch.walkOf(index), source.evidenceOf(index));
      made.passage = part.passage;
      made.addresses = part.chordNotes.map(addressOf);
    }
    const { passage, addresses } = made;
    const examination = yield* examineInPieces(passage, settingsOf(this.choice));
    made.examination = examination;
    made.listed = { passage, addresses, examination };
    made.work = null;
  }
}
