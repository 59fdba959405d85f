/** Compressed MusicXML (.mxl): a ZIP archive whose container.xml names the score inside. */
import { zipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { decodeText } from './encodings.ts';
import { ScoreError } from './scoreError.ts';
import { isZip, openZip, readEntry, type ZipArchive, type ZipEntry } from './zip.ts';
import {
  onlyEntryOf,
  type PackedEntry,
  packedAnew,
  packedAsItIs,
  packedStored,
  rewriteZip,
  zipOf,
} from './zipRewrite.ts';

/**
 * What an archive is to keep of the packed score that gives way to another: this one, the one an earlier run kept, or
 * nothing.
 */
export type Keep = 'this' | 'earlier' | 'nothing';

export interface Container {
  /** The path of the score inside. */
  readonly scoreName: string;
  readonly score: Uint8Array;
  /** Every other entry by name and checksum, one a line. */
  readonly beside: string;
  /**
   * The container with another score in this one's place; all else in it stays. A score that equals the one kept comes
   * back as it was packed, so that the archive is again what it was, byte for byte.
   */
  withScore(score: Uint8Array, keep: Keep): Uint8Array;
}

/** Where an archive keeps the score as it was packed: a ZIP archive of that one entry, which anyone can open. */
const KEPT = 'META-INF/bellhand-before.zip';
/** No container.xml comes near this, in bytes. */
const LARGEST_CONTAINER = 1024 * 1024;
const CONTAINER = 'meta-inf/container.xml';
/** What a new archive holds. */
const NEW_CONTAINER = 'META-INF/container.xml';
const NEW_SCORE = 'score.musicxml';
/** The first day that a zip can tell, by the local clock, as zips count. */
const EARLIEST = [1980, 0, 1] as const;
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
  const keptEntry = archive.entries.filter(({ name }) => name === KEPT)[0];
  return {
    scoreName: entry.name,
    score: readEntry(archive, entry),
    beside: archive.entries
      .filter((other) => other !== entry && other !== keptEntry)
      .map(({ name, crc }) => `${name} ${crc}`)
      .join('\n'),
    withScore(score, keep) {
      const kept = keptEntry && onlyEntryOf(contentOf(archive, keptEntry));
      if (kept && keptEntry && isSame(contentOf(kept.archive, kept.entry), score)) {
        const entries = new Map<ZipEntry, PackedEntry | null>([
          [entry, packedAsItIs(kept.archive, kept.entry)],
          [keptEntry, null],
        ]);
        return rewriteZip(archive, { entries });
      }
      const entries = new Map<ZipEntry, PackedEntry | null>([[entry, packedAnew(archive, entry, score)]]);
      if (keptEntry && keep !== 'earlier') entries.set(keptEntry, null);
      if (keep !== 'this') return rewriteZip(archive, { entries });
      return rewriteZip(archive, {
        entries,
        added: packedStored(KEPT, zipOf(packedAsItIs(archive, entry))),
      });
    },
  };
}

/** A score on its own, out of whatever holds it. @throws {ScoreError} as for `openContainer` */
export function unpackedScore(bytes: Uint8Array): Uint8Array {
  return isZip(bytes) ? openContainer(bytes).score : bytes;
}

/**
 * A score in an archive, a new one where it is not in one yet; the same score always gives the same archive.
 * @source musicxml40, container: META-INF/container.xml names the root file and its media type
 */
export function packedScore(bytes: Uint8Array): Uint8Array {
  if (isZip(bytes)) return bytes;
  const container = `<?xml version="1.0" encoding="UTF-8"?>
<container>
  <rootfiles>
    <rootfile full-path="${NEW_SCORE}" media-type="application/vnd.recordare.musicxml+xml"/>
  </rootfiles>
</container>
`;
  const entries = { [NEW_CONTAINER]: new TextEncoder().encode(container), [NEW_SCORE]: bytes };
  return zipSync(entries, { mtime: new Date(...EARLIEST) });
}

/** An entry's content; nothing where it is damaged, which is then as good as not there. */
function contentOf(archive: ZipArchive, entry: ZipEntry): Uint8Array {
  try {
    return readEntry(archive, entry);
  } catch {
    return new Uint8Array();
  }
}

function isSame(one: Uint8Array, other: Uint8Array): boolean {
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return false;
  return true;
}

function findScore(archive: ZipArchive): ZipEntry {
  const { entries } = archive;
  const container = entries.filter(({ name }) => plainPath(name) === CONTAINER)[0];
  if (!container) {
    const scores = entries.filter(
      ({ name }) => /\.(?:musicxml|xml)$/i.test(name) && !/^meta-inf\//i.test(plainPath(name)),
    );
    if (scores.length === 1) return scores[0]!;
    throw new ScoreError(({ whichFile }) => whichFile);
  }
  const path = rootPath(readEntry(archive, container, LARGEST_CONTAINER));
  const entry = entries.filter(({ name }) => plainPath(name) === plainPath(path))[0];
  if (entry) return entry;
  throw new ScoreError(({ fileMissing }) => fileMissing(path));
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
    throw new ScoreError(({ containerMalformed }) => containerMalformed);
  }
  if (paths[0] === undefined) throw new ScoreError(({ noScoreInside }) => noScoreInside);
  return paths[0];
}

function plainPath(path: string): string {
  return path
    .replace(/\\/g, '/')
    .replace(/^(?:\.?\/)+/, '')
    .toLowerCase();
}
