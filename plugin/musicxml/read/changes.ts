/** A value that changes along a part, for one staff or for all: a clef, a transposition. */
export class Changes<T> {
  private readonly ofStaff = new Map<number, Change<T>[]>();
  private readonly ofAll: Change<T>[] = [];
  private count = 0;

  /** Notes a change from `onsetQuarters` on; `staff` is `null` for every staff. */
  set(staff: number | null, onsetQuarters: number, value: T): void {
    let changes = staff === null ? this.ofAll : this.ofStaff.get(staff);
    if (!changes) {
      changes = [];
      this.ofStaff.set(staff!, changes);
    }
    let at = changes.length;
    while (at > 0 && changes[at - 1]!.onsetQuarters > onsetQuarters) at -= 1;
    this.count += 1;
    changes.splice(at, 0, { onsetQuarters, order: this.count, value });
  }

  /** What holds for a staff at an onset, or `null` when nothing was stated. */
  at(staff: number, onsetQuarters: number): T | null {
    const changes = this.ofStaff.get(staff);
    const own = changes ? lastAt(changes, onsetQuarters) : null;
    const shared = this.ofAll.length > 0 ? lastAt(this.ofAll, onsetQuarters) : null;
    if (own === null || shared === null) return (own ?? shared)?.value ?? null;
    const isOwn =
      own.onsetQuarters === shared.onsetQuarters
        ? own.order > shared.order
        : own.onsetQuarters > shared.onsetQuarters;
    return (isOwn ? own : shared).value;
  }
}

interface Change<T> {
  readonly onsetQuarters: number;
  /** The order changes were stated in: of two at one place the later one holds. */
  readonly order: number;
  readonly value: T;
}

function lastAt<T>(changes: readonly Change<T>[], onsetQuarters: number): Change<T> | null {
  for (let i = changes.length - 1; i >= 0; i--)
    if (changes[i]!.onsetQuarters <= onsetQuarters) return changes[i]!;
  return null;
}
