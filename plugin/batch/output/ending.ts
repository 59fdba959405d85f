/** The ending of a name tells what a file holds. A result is held as its name says, and gets no name that says otherwise. */
import { extname } from 'node:path';
import { Failure } from '../failure.ts';

/** What a result is. */
export type Content = 'score' | 'page' | 'picture' | 'sound';

/** How a score is held: as it is, or in an archive. */
export type Holding = 'plain' | 'compressed';

const ENDINGS: { readonly [content in Content]: readonly string[] } = {
  score: ['.musicxml', '.xml', '.mxl'],
  page: ['.html', '.htm'],
  picture: ['.svg'],
  sound: ['.wav'],
};

/**
 * Refuses a name whose ending promises something else. A name without an ending is as good as any, and so is one that
 * ends as an input does.
 * @throws {Failure} when it promises something else
 */
export function refuseOtherEnding(path: string, content: Content, inputs: readonly string[] = []): void {
  const ending = endingOf(path);
  if (ending === '' || ENDINGS[content].includes(ending)) return;
  if (content === 'score' && inputs.some((input) => endingOf(input) === ending)) return;
  throw new Failure(({ faults }) => faults.otherEnding(path, content, ENDINGS[content]));
}

/** How a score of this name is held; null where its name leaves that open. */
export function holdingOf(path: string): Holding | null {
  const ending = endingOf(path);
  if (ending === '.mxl') return 'compressed';
  return ENDINGS.score.includes(ending) ? 'plain' : null;
}

function endingOf(path: string): string {
  return extname(path).toLowerCase();
}
