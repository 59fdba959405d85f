/** Where a part stands in time while it is read: measures, divisions, backup and forward. */
export class Clock {
  measureIndex = -1;
  measure = '';
  /** Onset of the measure from the start of the part, in quarters. */
  measureStart = 0;
  /** Onset of every measure so far, in quarters, by measure index. */
  readonly measureStarts: number[] = [];
  /** The lower number of the time signature. */
  beatType = 4;
  /** Length of a full measure by the time signature, in quarters. */
  measureQuarters = 4;
  private divisions = 1;
  private base = 0;
  private ticks = 0;
  private furthest = 0;
  private hasMoved = false;

  startMeasure(index: number, measure: string): void {
    // A part of a timewise score may leave measures out.
    while (this.measureStarts.length < index) {
      this.measureStarts.push(this.measureStart);
      this.measureStart += this.measureQuarters;
    }
    this.measureIndex = index;
    this.measure = measure;
    this.measureStarts.push(this.measureStart);
    this.base = 0;
    this.ticks = 0;
    this.furthest = 0;
    this.hasMoved = false;
  }

  endMeasure(): void {
    this.measureStart += this.hasMoved ? this.furthest : this.measureQuarters;
  }

  /** Quarters since the start of the measure. */
  get cursor(): number {
    return this.base + this.ticks / this.divisions;
  }

  /** Moves the cursor; `ticks` counts divisions and is negative for a backup, which stops at the barline. */
  move(ticks: number): void {
    this.ticks += ticks;
    this.hasMoved = true;
    const cursor = this.cursor;
    if (cursor > this.furthest) this.furthest = cursor;
    else if (cursor < 0) {
      this.base = 0;
      this.ticks = 0;
    }
  }

  setDivisions(divisions: number): void {
    if (!(divisions > 0) || divisions === this.divisions) return;
    this.base = this.cursor;
    this.ticks = 0;
    this.divisions = divisions;
  }

  /** A number of divisions in quarters. */
  quarters(ticks: number): number {
    return ticks / this.divisions;
  }

  /** A place in the measure, in quarters from its start, as a beat of the time signature's lower number, from 1. */
  beatAt(quarters: number): number {
    return 1 + (quarters * this.beatType) / 4;
  }
}
