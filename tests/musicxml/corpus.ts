/** The real scores by others that tests read where they are at hand: a folder beside the project, never part of it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, it } from 'vitest';
import { openScoreFile } from '../../plugin/musicxml/bytes/files.ts';

const SHARED = new URL('../../../shared/', import.meta.url);

export interface CorpusFile {
  /** Folder and name, e.g. `horn/….mxl`. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A folder beside the project, or `null` where it is not there. */
export function sharedFolder(name: string): string | null {
  const folder = fileURLToPath(new URL(`${name}/`, SHARED));
  return existsSync(folder) ? folder : null;
}

let files: readonly CorpusFile[] | null = null;
const texts = new Map<CorpusFile, string>();

/** Every score of the corpus. One of them is not XML and is left to the test of faults. */
export function corpusFiles(): readonly CorpusFile[] {
  files ??= readCorpus();
  return files;
}

function readCorpus(): readonly CorpusFile[] {
  const folder = sharedFolder('corpus');
  if (folder === null) return [];
  return ['horn', 'stopped', 'varied'].flatMap((kind) =>
    readdirSync(`${folder}${kind}`)
      .filter((file) => !file.startsWith('mx__ly33d'))
      .map((file) => ({ name: `${kind}/${file}`, bytes: readFileSync(`${folder}${kind}/${file}`) })),
  );
}

/** Runs tests over the corpus, or says loudly that they were left out. */
export function describeWithCorpus(title: string, tests: (files: readonly CorpusFile[]) => void): void {
  const all = corpusFiles();
  if (all.length > 0) describe(title, () => tests(all));
  else {
    console.warn(`NOT TESTED: ${title}: there is no ../shared/corpus`);
    describe.skip(title, () => it('needs ../shared/corpus', () => {}));
  }
}

/** The text of a corpus file, which is unpacked once. */
export function corpusText(file: CorpusFile): string {
  let text = texts.get(file);
  if (text === undefined) {
    text = openScoreFile(file.bytes).text;
    texts.set(file, text);
  }
  return text;
}

/**
 * The same score with a stopped sign at every fourth note with a pitch. The corpus has stopped signs in no horn part, so
 * that tests of marks must put them there.
 */
export function withStoppedSigns(text: string): string {
  let count = 0;
  return text.replace(
    /<note[ >](?:(?!<\/note>)[\s\S])*?<\/pitch>(?:(?!<\/note>)[\s\S])*?(?=\s*<\/note>|\s*<lyric|\s*<play|\s*<listen)/g,
    (note) => {
      count += 1;
      return count % 4 === 0 ? `${note}<notations><technical><stopped/></technical></notations>` : note;
    },
  );
}
