/** Which parts were asked for. A part that the part list does not name is known only once the music comes to it. */
import { ScoreError } from '../bytes/scoreError.ts';
import type { PartEntry } from './partList.ts';

export class PartRequests {
  private readonly ids = new Set<string>();
  private unmet: readonly string[];

  constructor(requests: readonly string[]) {
    this.unmet = requests;
  }

  /** Looks among the parts that are known so far for what was not there before. */
  lookAmong(parts: readonly PartEntry[]): void {
    this.unmet = this.unmet.filter((request) => {
      const found = partsCalled(request, parts);
      for (const { id } of found) this.ids.add(id);
      return found.length === 0;
    });
  }

  has(id: string): boolean {
    return this.ids.has(id);
  }

  /**
   * To be asked once every part of the score is known.
   * @throws {ScoreError} when a part asked for is not among them
   */
  checkMet(parts: readonly PartEntry[]): void {
    const [missing] = this.unmet;
    if (missing === undefined) return;
    const names = parts.map(({ name }) => name);
    throw new ScoreError(({ noPart }) => noPart(missing, names));
  }
}

/** The parts that a request means: by id, by name, by place, or by a piece of their names. */
function partsCalled(request: string, parts: readonly PartEntry[]): readonly PartEntry[] {
  const wanted = request.trim().toLowerCase();
  const byId = parts.filter(({ id }) => id.toLowerCase() === wanted);
  if (byId.length > 0) return byId;
  const byName = parts.filter(({ name }) => name.toLowerCase() === wanted);
  if (byName.length > 0) return byName;
  if (/^\d+$/.test(wanted)) return parts.slice(Number(wanted) - 1, Number(wanted));
  return wanted === '' ? [] : parts.filter(({ name }) => name.toLowerCase().indexOf(wanted) >= 0);
}
