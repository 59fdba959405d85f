/** Compressed MusicXML (.mxl): a ZIP archive whose container.xml names the score inside. */
import { SaxesParser } from 'saxes';
import { decodeText } from './encodings.ts';
import { ScoreError } from './scoreError.ts';
import { openZip, readEntry, replaceEntry, type ZipArchive, type ZipEntry } from './zip.ts';

export interface Container {
  /** The path of the score inside. */
  readonly scoreName: string;
  readonly score: Uint8Array;
  /** The container with another score in this one's place; all else in it stays. */
  withScore(score: Uint8Array): Uint8Array;
}

const CONTAINER = 'meta-inf/container.xml';
/** @source musicxml40, container: the root file's media type, or none */
const SCORE_TYPE = /^(?:application\/vnd\.recordare\.musicxml(?:\+xml)?|application\/xml|text\/xml)?$/;

/**
 * Opens a container and unpacks its score: the first root file that is MusicXML, or, where a container says nothing, the
 * only XML file in it.
 * @throws {ScoreError} when the archive cannot be read or holds no score
 */
export function openContainer(bytes: Uint8Array): Container {
  const archive = openZip(bytes);
  const entry = findScore(archive);
  return {
    scoreName: entry.name,
    score: readEntry(archive, entry),
    withScore: (score) => replaceEntry(archive, entry, score),
  };
}

function findScore(archive: ZipArchive): ZipEntry {
  const { entries } = archive;
  const container = entries.filter(({ name }) => plainPath(name) === CONTAINER)[0];
  if (!container) {
    const scores = entries.filter(
      ({ name }) => /\.(?:musicxml|xml)$/i.test(name) && !/^meta-inf\//i.test(plainPath(name)),
    );
    if (scores.length === 1) return scores[0]!;
    throw new ScoreError(
      'the ZIP archive does not say which file in it is the score',
      'export the music as .mxl or .musicxml',
    );
  }
  const path = rootPath(readEntry(archive, container));
  const entry = entries.filter(({ name }) => plainPath(name) === plainPath(path))[0];
  if (entry) return entry;
  throw new ScoreError(`the container names "${path}", which is not in it`, 'export the music again');
}

function rootPath(container: Uint8Array): string {
  const parser = new SaxesParser();
  const paths: string[] = [];
  parser.on('opentag', ({ name, attributes }) => {
    const path = attributes['full-path'];
    if (/(?:^|:)rootfile$/.test(name) && path && SCORE_TYPE.test(attributes['media-type'] ?? ''))
      paths.push(path);
  });
  try {
    parser.write(decodeText(container).text).close();
  } catch {
    throw new ScoreError('META-INF/container.xml is not well-formed XML', 'export the music again');
  }
  if (paths[0] === undefined)
    throw new ScoreError('the ZIP archive holds no MusicXML', 'export the music as .mxl or .musicxml');
  return paths[0];
}

function plainPath(path: string): string {
  return path
    .replace(/\\/g, '/')
    .replace(/^(?:\.?\/)+/, '')
    .toLowerCase();
}
