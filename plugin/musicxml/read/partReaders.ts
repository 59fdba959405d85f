/** One reader for each part of a score, as thorough as what is wanted of the part. */
import { mayHoldMarks } from './ownMarks.ts';
import type { PartEntry, PartList } from './partList.ts';
import { PartReader } from './partReader.ts';
import { PartRequests } from './partRequest.ts';
import type { HornPart } from './score.ts';
import type { Source } from './source.ts';
import { TempoMarks } from './tempoMarks.ts';
import { TempoReader } from './tempoReader.ts';

export class PartReaders {
  private readonly source: Source;
  private readonly partList: PartList;
  /** What parts were asked for as horns, or `null` for those that are. */
  private readonly asked: PartRequests | null;
  private readonly tempos = new TempoMarks();
  private readonly readers = new Map<string, PartReader | TempoReader>();
  private mayHold: boolean | null = null;

  constructor(source: Source, partList: PartList, asked: readonly string[] | undefined) {
    this.source = source;
    this.partList = partList;
    this.asked = asked ? new PartRequests(asked) : null;
  }

  of(id: string, isConcertScore: boolean): PartReader | TempoReader {
    const known = this.readers.get(id);
    if (known) return known;
    const entry = this.partList.entryOf(id);
    this.asked?.lookAmong(this.partList.parts);
    const isThorough = this.isWanted(entry) || this.holdsMarks();
    const reader = isThorough
      ? new PartReader(entry, isConcertScore, this.source, this.tempos)
      : new TempoReader(this.source, this.tempos);
    this.readers.set(id, reader);
    return reader;
  }

  has(id: string): boolean {
    return this.readers.has(id);
  }

  /**
   * The wanted parts, in score order, once the score has been read to its end.
   * @throws {ScoreError} when a part asked for is not in the score
   */
  finish(): HornPart[] {
    this.asked?.lookAmong(this.partList.parts);
    this.asked?.checkMet(this.partList.parts);
    const horns: HornPart[] = [];
    for (const entry of this.partList.parts) {
      const reader = this.isWanted(entry) ? this.readers.get(entry.id) : undefined;
      if (reader instanceof PartReader) horns.push(reader.finish());
    }
    return horns;
  }

  private isWanted({ id, isHorn }: PartEntry): boolean {
    return this.asked ? this.asked.has(id) : isHorn;
  }

  /** Parts that are no horns need a closer look only in a text that may hold marks of ours. */
  private holdsMarks(): boolean {
    this.mayHold = this.mayHold ?? mayHoldMarks(this.source.text);
    return this.mayHold;
  }
}
