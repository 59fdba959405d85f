/** The list of what was found, in one score, at one look: rows to draw, and the way from a row to the score and back. */
import {
  barSpansText,
  capital,
  type Entry,
  entriesOf,
  type Finding,
  findingText,
  type HandSign,
  noteName,
  type PanelWords,
  panelWords,
  placeText,
  type Reader,
  type Repair,
  repairsFor,
  type Severity,
  severityText,
} from '../../core/index.ts';
import type { ListedPart } from './listedPart.ts';
import type { NoteAddress } from './noteAddress.ts';

/** One line of the list: a finding, or several with one cause and one remedy. */
export interface FindingRow {
  /** The same for the same finding at the next look. */
  readonly key: string;
  /** Part (where there are several), bar and beat; the bars of several. */
  readonly place: string;
  /** The note, or what several are and how many. */
  readonly what: string;
  readonly severity: Severity;
  /** The severity in the user's language. */
  readonly label: string;
  readonly message: string;
  readonly remedy: string;
}

/** A finding of the list: its row, and which of the row's findings it is, both from 0. */
export interface Chosen {
  readonly row: number;
  readonly nth: number;
}

/** What a row stands for. */
interface RowSource {
  readonly entry: Entry;
  readonly examined: ListedPart;
}

/** A list that does not change. */
export class FindingList {
  readonly rows: readonly FindingRow[];
  readonly parts: readonly ListedPart[];
  private readonly sources: readonly RowSource[];
  private readonly reader: Reader;

  constructor(parts: readonly ListedPart[], reader: Reader) {
    this.reader = reader;
    this.parts = parts;
    this.sources = ([] as RowSource[]).concat(
      ...this.parts.map((examined) =>
        entriesOf(examined.examination.findings, reader).map((entry) => ({ entry, examined })),
      ),
    );
    this.rows = this.sources.map((source) => this.rowOf(source));
  }

  /** True for the list that these parts and this reader would make. */
  isOf(parts: readonly ListedPart[], reader: Reader): boolean {
    return (
      parts.length === this.parts.length &&
      parts.every((part, i) => part === this.parts[i]) &&
      reader.language === this.reader.language &&
      reader.noteNaming === this.reader.noteNaming
    );
  }

  /** How many findings there are, each of several in a row for itself. */
  get count(): number {
    return this.sources.reduce((sum, { entry }) => sum + entry.findings.length, 0);
  }

  /** How many findings a row stands for; 0 for none. */
  sizeOf(row: number): number {
    return this.sources[row]?.entry.findings.length ?? 0;
  }

  /** The finding after or before one, through all rows; the first or last one when none is chosen. */
  next({ row, nth }: Chosen, by: 1 | -1): Chosen | null {
    if (this.rows.length === 0) return null;
    if (row < 0) return by > 0 ? { row: 0, nth: 0 } : this.lastOf(this.rows.length - 1);
    if (nth + by >= 0 && nth + by < this.sizeOf(row)) return { row, nth: nth + by };
    const other = row + by;
    if (other < 0 || other >= this.rows.length) return null;
    return by > 0 ? { row: other, nth: 0 } : this.lastOf(other);
  }

  /** What is wrong there, said of this finding alone. */
  messageAt(chosen: Chosen): string {
    const finding = this.findingAt(chosen);
    return finding ? findingText(finding, this.reader).message : '';
  }

  addressAt(chosen: Chosen): NoteAddress | null {
    const finding = this.findingAt(chosen);
    return finding ? this.sources[chosen.row]!.examined.addresses[finding.noteIndex]! : null;
  }

  /** Takes a while: to be asked for one finding at a time. */
  repairsAt(chosen: Chosen): readonly Repair[] {
    const finding = this.findingAt(chosen);
    return finding ? repairsFor(this.sources[chosen.row]!.examined.examination, finding) : [];
  }

  /** The sign that was read at a place, or `null`. */
  signAt(address: NoteAddress): HandSign | null {
    for (const { addresses, examination } of this.parts) {
      const index = addresses.findIndex((one) => isSamePlace(one, address));
      if (index >= 0) return examination.passage.notes[index]!.sign;
    }
    return null;
  }

  partAt({ row }: Chosen): ListedPart | null {
    return this.sources[row]?.examined ?? null;
  }

  findingAt({ row, nth }: Chosen): Finding | null {
    return this.sources[row]?.entry.findings[nth] ?? null;
  }

  /** Where a finding of an earlier list stands now; null when it is gone. */
  placeOf(finding: Finding, address: NoteAddress): Chosen | null {
    for (let row = 0; row < this.sources.length; row++) {
      const { entry, examined } = this.sources[row]!;
      for (let nth = 0; nth < entry.findings.length; nth++) {
        const { id, noteIndex } = entry.findings[nth]!;
        if (id === finding.id && isSamePlace(examined.addresses[noteIndex]!, address)) return { row, nth };
      }
    }
    return null;
  }

  /** The first row with a finding at or after a tick; 0 where all stand before it. */
  rowFrom(tick: number): number {
    const row = this.sources.findIndex(({ entry, examined }) =>
      entry.findings.some(({ noteIndex }) => examined.addresses[noteIndex]!.tick >= tick),
    );
    return Math.max(0, row);
  }

  private lastOf(row: number): Chosen {
    return { row, nth: this.sizeOf(row) - 1 };
  }

  private rowOf({ entry, examined }: RowSource): FindingRow {
    const { reader } = this;
    const words: PanelWords = panelWords(reader);
    const { findings, severity, brief, remedy } = entry;
    const first = findings[0]!;
    const { name, notes } = examined.passage;
    const note = notes[first.noteIndex]!;
    const where =
      findings.length > 1
        ? barSpansText(
            findings.map(({ noteIndex }) => notes[noteIndex]!),
            reader,
          )
        : placeText(note.measure, note.beat, reader);
    const { tick, track, rank } = examined.addresses[first.noteIndex]!;
    return {
      key: `${first.id}/${track}/${tick}/${rank}`,
      place: capital(this.parts.length > 1 ? `${name}, ${where}` : where),
      what:
        findings.length > 1
          ? `${words.severalNotes(findings.length)}, ${brief}`
          : `${noteName(note.written, reader)}, ${brief}`,
      severity,
      label: severityText(severity, reader),
      message: findingText(first, reader).message,
      remedy,
    };
  }
}

export function isSamePlace(one: NoteAddress, other: NoteAddress): boolean {
  return (
    one.tick === other.tick &&
    one.track === other.track &&
    one.graceIndex === other.graceIndex &&
    one.rank === other.rank
  );
}
