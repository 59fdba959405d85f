/** One reader for each part of a score, as thorough as what is wanted of the part. */
import { mayHoldMarks } from './ownMarks.ts';
import type { PartEntry, PartList } from './partList.ts';
import { PartReader } from './partReader.ts';
import { requestedIds } from './partRequest.ts';
import type { HornPart } from './score.ts';
import type { Source } from './source.ts';
import { TempoMarks } from './tempoMarks.ts';
import { TempoReader } from './tempoReader.ts';

export class PartReaders {
  private readonly source: Source;
  private readonly partList: PartList;
  /** What parts were asked for as horns, or `undefined` for those that are. */
  private readonly asked: readonly string[] | undefined;
  private readonly tempos = new TempoMarks();
  private readonly readers = new Map<string, PartReader | TempoReader>();
  private wantedIds: ReadonlySet<string> | null = null;
  private mayHold: boolean | null = null;

  constructor(source: Source, partList: PartList, asked: readonly string[] | undefined) {
    this.source = source;
    this.partList = partList;
    this.asked = asked;
  }

  /** @throws {ScoreError} when a part asked for is not in the score */
  of(id: string, isConcertScore: boolean): PartReader | TempoReader {
    const known = this.readers.get(id);
    if (known) return known;
    const entry = this.partList.entryOf(id);
    const isThorough = this.wanted().has(id) || this.holdsMarks();
    const reader = isThorough
      ? new PartReader(entry, isConcertScore, this.source, this.tempos)
      : new TempoReader(this.source, this.tempos);
    this.readers.set(id, reader);
    return reader;
  }

  has(id: string): boolean {
    return this.readers.has(id);
  }

  /** The wanted parts, in score order, once the score has been read to its end. */
  finish(): HornPart[] {
    const wanted = this.wanted();
    const horns: HornPart[] = [];
    for (const { id } of this.partList.parts) {
      const reader = wanted.has(id) ? this.readers.get(id) : undefined;
      if (reader instanceof PartReader) horns.push(reader.finish());
    }
    return horns;
  }

  private wanted(): ReadonlySet<string> {
    const { parts } = this.partList;
    const isHorn = ({ isHorn: itIs }: PartEntry) => itIs;
    this.wantedIds =
      this.wantedIds ??
      (this.asked ? requestedIds(this.asked, parts) : new Set(parts.filter(isHorn).map(({ id }) => id)));
    return this.wantedIds;
  }

  /** Parts that are no horns need a closer look only in a text that may hold marks of ours. */
  private holdsMarks(): boolean {
    this.mayHold = this.mayHold ?? mayHoldMarks(this.source.text);
    return this.mayHold;
  }
}
