import { ScoreError } from '../bytes/scoreError.ts';
import type { PartEntry } from './partList.ts';

/**
 * The ids of the parts that requests mean.
 * @throws {ScoreError} when there is none for a request
 */
export function requestedIds(requests: readonly string[], parts: readonly PartEntry[]): Set<string> {
  const ids = new Set<string>();
  for (const request of requests) {
    const found = partsCalled(request, parts);
    if (found.length === 0) {
      const names = parts.map(({ name }) => name);
      throw new ScoreError(({ noPart }) => noPart(request, names));
    }
    for (const { id } of found) ids.add(id);
  }
  return ids;
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
