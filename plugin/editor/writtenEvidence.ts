/** Signs and lines out of the score as the editor writes it, or where that takes long out of its own list: versions before 3.5. */
import type { BarWatch } from './barWatch.ts';
import { AT_WORK_MS, type Doing, type EvidenceSource } from './evidenceSource.ts';
import type { Host, HostPart, HostScore } from './hostApi.ts';
import { evidenceIn } from './ownFormat.ts';
import { isSameEvidence, NO_EVIDENCE, type PartEvidence } from './partEvidence.ts';
import type { PartWalk } from './scoreWalk.ts';
import { evidenceOfAll, hasNoSelection, isBestListed } from './selectedScore.ts';
import { BarReader, type PartText } from './writtenBars.ts';
import { WrittenScore } from './writtenScore.ts';

/** What takes the editor longer than this to write in one piece, in milliseconds, is written only when the user asks for a look. */
const WRITING_LIMIT_MS = 80;
/** How long one slice may parse, in milliseconds. */
const PARSING_MS = 30;
/** How often a smaller score is written while somebody works on it, in milliseconds, and otherwise. */
const WRITTEN_EVERY_MS = 700;
const WRITTEN_AT_REST_EVERY_MS = 3000;
/** How much longer than the writing itself the time between two writings is. */
const LEAST_RATIO = { atWork: 10, atRest: 60 } as const;

/** What one writing of the horns cost, in milliseconds. */
interface WritingCost {
  readonly all: number;
  /** Its longest piece. */
  readonly longest: number;
  /** True where no writing before it counts: the user asked for it. */
  readonly isOnlyMeasure: boolean;
}

const NO_COST: WritingCost = { all: 0, longest: 0, isOnlyMeasure: true };

export class WrittenEvidence implements EvidenceSource {
  awaitsLettingGo = false;
  private mayAwait = true;
  private readonly host: Host;
  private readonly bars = new BarReader();
  private known: { readonly text: PartText | null; readonly evidence: PartEvidence }[] = [];
  /** Parts of which something new is known that nobody was told. */
  private news: number[] = [];
  /** What is being read. */
  private written: WrittenScore | null = null;
  private unread: number[] = [];
  /** The part that is being parsed. */
  private text: PartText | null = null;
  private isAskedFor = true;
  private writtenAt = 0;
  private cost: WritingCost = NO_COST;
  /** The longest pieces of the last two writings: one slow moment of the machine does not make a score big. */
  private longest: readonly [number, number] = [0, 0];

  constructor(host: Host) {
    this.host = host;
  }

  get isDue(): boolean {
    return this.isAskedFor || this.unread.length > 0 || this.news.length > 0;
  }

  get seesEveryEdit(): boolean {
    return Math.min(...this.longest) <= WRITING_LIMIT_MS;
  }

  evidenceOf(index: number): PartEvidence {
    return this.known[index]?.evidence ?? NO_EVIDENCE;
  }

  readAgain(isChanged: boolean): void {
    this.isAskedFor = true;
    this.mayAwait = !isChanged;
  }

  step(score: HostScore, watch: BarWatch, doing: Doing): number | null {
    const news = this.news.shift();
    if (news !== undefined) return news;
    const index = this.unread[0];
    if (index === undefined) {
      if (!this.mayWrite(doing)) return null;
      if (this.isAskedFor) this.readAsked(score, watch, doing.now);
      else this.begin(score, watch, doing.now);
      return null;
    }
    // A note may have come into the writer's hand since.
    if (!this.text && doing.isWriting) return null;
    return this.readPart(index, watch);
  }

  private mayWrite({ now, stillFor, isStill, isWriting }: Doing): boolean {
    if (!isStill || isWriting) return false;
    if (this.isAskedFor) return true;
    if (!this.seesEveryEdit) return false;
    const isWorking = stillFor < AT_WORK_MS;
    const ratio = isWorking ? LEAST_RATIO.atWork : LEAST_RATIO.atRest;
    const every = Math.max(isWorking ? WRITTEN_EVERY_MS : WRITTEN_AT_REST_EVERY_MS, ratio * this.cost.all);
    return now - this.writtenAt >= every;
  }

  private readAsked(score: HostScore, watch: BarWatch, now: number): void {
    if (this.awaitsLettingGo && !hasNoSelection(score)) return;
    const walks = watch.hornParts.map((_, i) => watch.walkOf(i));
    const isListed = isBestListed(score, walks);
    this.awaitsLettingGo = this.mayAwait && isListed && !hasNoSelection(score);
    if (this.awaitsLettingGo) return;
    if (!isListed || !hasNoSelection(score) || !this.readAll(score, walks)) this.begin(score, watch, now);
  }

  /** @returns false where the score has to be written */
  private readAll(score: HostScore, walks: readonly PartWalk[]): boolean {
    const all = evidenceOfAll(this.host, score, walks);
    if (!all) return false;
    this.isAskedFor = false;
    // What is read so is read when the user asks for it, and only then.
    this.longest = [Infinity, Infinity];
    all.forEach((evidence, index) => {
      if (this.take(index, null, evidence) !== null) this.news.push(index);
    });
    return true;
  }

  /** @returns the part, where what is known of it is new */
  private take(index: number, text: PartText | null, evidence: PartEvidence): number | null {
    const before = this.known[index];
    this.known[index] = { text, evidence };
    return before && isSameEvidence(before.evidence, evidence) ? null : index;
  }

  private begin(score: HostScore, watch: BarWatch, now: number): void {
    this.written = new WrittenScore(this.host, score);
    this.cost = { all: 0, longest: 0, isOnlyMeasure: this.isAskedFor };
    this.writtenAt = now;
    this.isAskedFor = false;
    this.text = null;
    this.unread = watch.hornParts.map((_, i) => i);
  }

  private end(): void {
    const { longest, isOnlyMeasure } = this.cost;
    this.longest = isOnlyMeasure ? [longest, longest] : [this.longest[1], longest];
    this.written = null;
  }

  private write(part: HostPart): PartText {
    const start = Date.now();
    const text = this.written!.textOf(part);
    const { all, longest, isOnlyMeasure } = this.cost;
    const took = Date.now() - start;
    this.cost = { all: all + took, longest: Math.max(longest, took), isOnlyMeasure };
    return text;
  }

  private readPart(index: number, watch: BarWatch): number | null {
    const part = watch.hornParts[index];
    const before = this.known[index];
    const text = part ? (this.text ?? this.write(part)) : null;
    if (text && !this.bars.prepare(text, Date.now() + PARSING_MS)) {
      this.text = text;
      return null;
    }
    this.text = null;
    this.unread.shift();
    if (this.unread.length === 0) this.end();
    if (!text || (before?.text && isSameText(before.text, text))) return null;
    const news = this.take(index, text, evidenceIn(text, watch.walkOf(index), this.bars));
    this.bars.keepOnly(this.known.map((part) => part.text).filter((known) => known !== null));
    return news;
  }
}

function isSameText(one: PartText, other: PartText): boolean {
  return (
    JSON.stringify(one.interval) === JSON.stringify(other.interval) &&
    one.staves.length === other.staves.length &&
    one.staves.every((bars, staff) => {
      const others = other.staves[staff]!;
      return bars.length === others.length && bars.every((bar, i) => bar === others[i]);
    })
  );
}
