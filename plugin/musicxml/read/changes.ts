/** A value that changes along a part, for one staff or for all: a clef, a transposition. */
export class Changes<T> {
  private readonly entries: { staff: number | null; onsetQuarters: number; value: T }[] = [];

  /** Notes a change from `onsetQuarters` on; `staff` is `null` for every staff. */
  set(staff: number | null, onsetQuarters: number, value: T): void {
    let at = this.entries.length;
    while (at > 0 && this.entries[at - 1]!.onsetQuarters > onsetQuarters) at -= 1;
    this.entries.splice(at, 0, { staff, onsetQuarters, value });
  }

  /** What holds for a staff at an onset, or `null` when nothing was stated. */
  at(staff: number, onsetQuarters: number): T | null {
    for (let i = this.entries.length - 1; i >= 0; i--) {
      const entry = this.entries[i]!;
      if (entry.onsetQuarters <= onsetQuarters && (entry.staff === null || entry.staff === staff))
        return entry.value;
    }
    return null;
  }
}
