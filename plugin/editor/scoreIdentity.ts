/** Which score it is: the editor hands out a new wrapper for each access and tells no place in the file system. */
import { type Host, type HostScore, listOf } from './hostApi.ts';

/** The host's own names for what a score carries with it. */
const TITLES = ['workTitle', 'workNumber', 'movementTitle', 'movementNumber', 'creationDate', 'source'];

/**
 * A text that is another one for another open score. Files in two folders may have one name: their titles tell them apart,
 * and where those are the same too, their place among the scores that are open.
 * @returns an empty text for no score
 */
export function identityOf({ root }: Host, score: HostScore | null): string {
  if (!score) return '';
  const name = nameOf(score);
  const alike = listOf(root.scores).filter((other) => nameOf(other) === name);
  return alike.length < 2 ? name : `${name} ${placeAmong(alike, score)}`;
}

function nameOf(score: HostScore): string {
  return JSON.stringify([score.scoreName, ...TITLES.map((tag) => score.metaTag(tag))]);
}

/** A tag set for a moment shows which one it is; that is no change that the editor would save or undo. */
function placeAmong(alike: readonly HostScore[], score: HostScore): number {
  const tag = TITLES.filter((name) => score.metaTag(name) !== '')[0] ?? 'source';
  const title = score.metaTag(tag);
  score.setMetaTag(tag, `${title}\u2060`);
  const at = alike.findIndex((other) => other.metaTag(tag) !== title);
  score.setMetaTag(tag, title);
  return at;
}
