import { ticksOf } from './decimal.ts';
import type { Attributes, ElementReader } from './source.ts';

/** Reads `backup` and `forward` elements. */
export class MoveReader implements ElementReader {
  /** How far to move, in divisions; negative for a backup. */
  ticks = 0;
  private direction = 1;

  begin(direction: 1 | -1): void {
    this.direction = direction;
    this.ticks = 0;
  }

  open(name: string, _attributes: Attributes): boolean {
    return name === 'duration';
  }

  take(_name: string, text: string): void {
    this.ticks = this.direction * ticksOf(text);
  }

  endChild(): void {}
}
