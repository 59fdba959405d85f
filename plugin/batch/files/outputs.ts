/** Where results go: a new file beside each input unless told otherwise, and never silently onto an input. */
import { basename, dirname, join, parse } from 'node:path';
import { Failure } from '../failure.ts';
import { makeFolder } from '../output/folder.ts';
import { identityOf, whatIsAt } from '../output/place.ts';
import { isStandardOutput, STANDARD } from '../output/streams.ts';

/** What the user said about the place of results. */
export interface OutputWishes {
  /** A file, a folder, or `-` for standard output. */
  readonly output?: string;
  readonly inPlace?: boolean;
}

/** An input with the place of its result. */
export interface FilePair {
  readonly input: string;
  readonly output: string;
}

/** Words put before the ending of a result's name: `part.marked.musicxml`. */
export type NameWord = 'marked' | 'cleared';

/**
 * Pairs every input with its output.
 * @throws {Failure} when an output would fall onto an input, or two onto one another
 */
export function pairOutputs(
  inputs: readonly string[],
  { output, inPlace = false }: OutputWishes,
  word: NameWord,
): readonly FilePair[] {
  if (inPlace && output !== undefined) throw new Failure(({ faults }) => faults.placeAndInPlace);
  if (inPlace) {
    if (inputs.includes(STANDARD)) throw new Failure(({ faults }) => faults.inputInPlace);
    return distinct(inputs.map((input) => ({ input, output: input })));
  }
  const isFolder = output !== undefined && output !== STANDARD && takesMany(output);
  if (output !== undefined && !isFolder && inputs.length > 1) {
    throw new Failure(({ faults }) => faults.manyIntoOne(output, inputs.length));
  }
  if (output === undefined && inputs.length > 1 && inputs.includes(STANDARD)) {
    throw new Failure(({ faults }) => faults.inputAmongFiles);
  }
  if (isFolder) makeFolder(output);
  const pairs = inputs.map((input): FilePair => {
    if (output === undefined) {
      return { input, output: input === STANDARD ? STANDARD : join(dirname(input), resultName(input, word)) };
    }
    if (!isFolder) return { input, output };
    return { input, output: join(output, input === STANDARD ? 'part.musicxml' : basename(input)) };
  });
  const originals = new Set(inputs.filter((input) => input !== STANDARD).map(identityOf));
  for (const { output: target } of pairs) {
    if (target !== STANDARD && originals.has(identityOf(target))) {
      throw new Failure(({ faults }) => faults.ontoInputInPlace(target));
    }
  }
  refuseInputAsStandardOutput(inputs);
  return distinct(pairs);
}

/**
 * Refuses a command whose standard output was sent into one of its own inputs.
 * @throws {Failure} when it was
 */
export function refuseInputAsStandardOutput(inputs: readonly string[]): void {
  const target = inputs.find((input) => input !== STANDARD && isStandardOutput(input));
  if (target !== undefined && whatIsAt(target)?.isFile())
    throw new Failure(({ faults }) => faults.outputIntoInput(target));
}

/** `part.musicxml` becomes `part.marked.musicxml`; what was marked before is not marked twice in the name. */
export function resultName(input: string, word: NameWord): string {
  const { name, ext } = parse(input);
  return `${word === 'cleared' ? name.replace(/\.marked$/, '') : name}.${word}${ext}`;
}

function takesMany(output: string): boolean {
  return /[\\/]$/.test(output) || whatIsAt(output)?.isDirectory() === true;
}

function distinct(pairs: readonly FilePair[]): readonly FilePair[] {
  const seen = new Map<string, string>();
  for (const { input, output } of pairs) {
    if (output === STANDARD) continue;
    const key = identityOf(output);
    const earlier = seen.get(key);
    if (earlier !== undefined) {
      const isSame = identityOf(earlier) === identityOf(input);
      throw new Failure(({ faults }) =>
        isSame ? faults.namedTwice(input) : faults.twoOntoOne(output, earlier, input),
      );
    }
    seen.set(key, input);
  }
  return pairs;
}
