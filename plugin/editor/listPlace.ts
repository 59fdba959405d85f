/** Where the user is in the list of findings, kept while the list is made anew. */
import { panelWords, type Reader, type Repair, repairText } from '../../core/index.ts';
import { type Chosen, FindingList, type FindingRow } from './findingList.ts';
import type { HostScore } from './hostApi.ts';
import type { ListedPart } from './listedPart.ts';
import type { NoteAddress } from './noteAddress.ts';
import type { ChosenView } from './panelView.ts';
import { selectionTick } from './selectedHorns.ts';

const NOTHING: Chosen = { row: -1, nth: 0 };

/** A list with the finding that is chosen in it and the row it begins with. */
export class ListPlace {
  private chosen: Chosen = NOTHING;
  private firstRow = 0;
  private chosenRepairs: readonly Repair[] = [];
  private isFromCursor = false;

  constructor(private current: FindingList) {}

  get list(): FindingList {
    return this.current;
  }

  get startsAtCursor(): boolean {
    return this.isFromCursor;
  }

  /** What can be done about the chosen finding. */
  get repairs(): readonly Repair[] {
    return this.chosenRepairs;
  }

  get address(): NoteAddress | null {
    return this.current.addressAt(this.chosen);
  }

  /** The chosen finding and the part it is in; `null` when none is chosen. */
  get target() {
    const finding = this.current.findingAt(this.chosen);
    const part = this.current.partAt(this.chosen);
    const { address } = this;
    return finding && part && address ? { finding, part, address } : null;
  }

  /** The rows in the order in which they are drawn. */
  get rows(): readonly FindingRow[] {
    const { rows } = this.current;
    return this.firstRow === 0 ? rows : rows.slice(this.firstRow).concat(rows.slice(0, this.firstRow));
  }

  view(reader: Reader): ChosenView {
    const { current, chosen, firstRow } = this;
    const size = current.sizeOf(chosen.row);
    const rows = current.rows.length;
    return {
      row: chosen.row < 0 ? -1 : (chosen.row - firstRow + rows) % rows,
      nth: size > 1 ? panelWords(reader).nthOf(chosen.nth + 1, size) : '',
      message: current.messageAt(chosen),
      repairs: this.chosenRepairs.map((repair) => repairText(repair, reader)),
    };
  }

  /** Lists other parts; what was chosen stays chosen as long as it is there. */
  renew(parts: readonly ListedPart[], reader: Reader): void {
    if (this.current.isOf(parts, reader)) return;
    const { target } = this;
    const list = new FindingList(parts, reader);
    this.current = list;
    this.firstRow = Math.min(this.firstRow, Math.max(0, list.rows.length - 1));
    this.set((target && list.placeOf(target.finding, target.address)) ?? NOTHING);
  }

  /** Chooses a row; of several findings in it the next one. @param index of the row as it is drawn */
  choose(index: number): boolean {
    const rows = this.current.rows.length;
    if (index < 0 || index >= rows) return false;
    const row = (index + this.firstRow) % rows;
    this.set({ row, nth: row === this.chosen.row ? (this.chosen.nth + 1) % this.current.sizeOf(row) : 0 });
    return true;
  }

  /** Goes on to the next finding, or back. @returns false at the end of the list */
  step(by: 1 | -1): boolean {
    const next = this.current.next(this.chosen, by);
    if (next) this.set(next);
    return next !== null;
  }

  startAtCursor(isFromCursor: boolean): void {
    this.isFromCursor = isFromCursor;
    if (!isFromCursor) this.firstRow = 0;
  }

  /**
   * Begins the list at the bar of the selection, where that is wished.
   * @param shown the note the panel itself has selected, which moves no rows
   * @returns true when the list begins elsewhere
   */
  follow(score: HostScore | null, shown: NoteAddress | null): boolean {
    if (!this.isFromCursor || !score) return false;
    const tick = selectionTick(score);
    if (tick === null || tick === shown?.tick) return false;
    const before = this.firstRow;
    this.firstRow = this.current.rowFrom(barStart(score, tick));
    return this.firstRow !== before;
  }

  private set(chosen: Chosen): void {
    this.chosen = chosen;
    this.chosenRepairs = this.current.repairsAt(chosen);
  }
}

/** The first tick of the bar that holds a tick. */
function barStart(score: HostScore, tick: number): number {
  let start = 0;
  for (let measure = score.firstMeasure; measure; measure = measure.nextMeasure) {
    const first = measure.firstSegment?.tick ?? 0;
    if (first > tick) break;
    start = first;
  }
  return start;
}
