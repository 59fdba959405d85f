/**
 * Faults of scores against the published schema and document types of MusicXML; the checking is libxml2's.
 * @source musicxml40: its schema, tag v4.0; MusicXML 2.0, 3.0 and 3.1: their document type definitions
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { programNamed } from '../editor/rig/programs.ts';
import { sharedFolder } from './corpus.ts';

const FOLDER = sharedFolder('schema');
const PROGRAM = programNamed('xmllint');

/** True where the standards are at hand, and a program that checks against them. */
export const CAN_CHECK = FOLDER !== null && PROGRAM !== null;

/** How to get both. */
export const STANDARDS = 'put the standards into ../shared/schema; apt-get install libxml2-utils';

/** Older forms of MusicXML, which have document types. */
export const DOCUMENT_TYPES = (['2.0', '3.0', '3.1'] as const).flatMap((version) =>
  (['partwise', 'timewise'] as const).map((form) => ({ version, form })),
);
export type DocumentType = (typeof DOCUMENT_TYPES)[number];

/** What the schema of version 4.0 has against each of some texts, in words without their places, sorted. */
export function schemaFaults(texts: readonly string[]): string[][] {
  return faultsOf(texts, ['--schema', join(FOLDER!, 'musicxml.xsd')]);
}

/** What a document type has against each of some texts, in words without their places, sorted. */
export function documentTypeFaults({ version, form }: DocumentType, texts: readonly string[]): string[][] {
  return faultsOf(texts, ['--dtdvalid', join(FOLDER!, `dtd-${version}`, `${form}.dtd`)]);
}

/** What the program ends with: all is well, or something is not valid. */
const CHECKED = [0, 3, 4];

/** @throws Error where the program could not check */
function faultsOf(texts: readonly string[], standard: readonly string[]): string[][] {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-standards-'));
  try {
    const names = texts.map((_, i) => join(folder, `${i}.xml`));
    for (const [i, name] of names.entries()) writeFileSync(name, asUtf8(texts[i]!));
    const catalogue = join(folder, 'catalogue');
    writeFileSync(catalogue, catalogueText());
    const { status, stderr, error } = spawnSync(
      PROGRAM!,
      ['--nonet', '--noout', '--huge', ...standard, ...names],
      { encoding: 'utf8', maxBuffer: 2 ** 28, env: { ...process.env, XML_CATALOG_FILES: catalogue } },
    );
    if (error) throw error;
    if (!CHECKED.includes(status!)) throw new Error(`xmllint ends with ${status}:\n${stderr.slice(0, 1000)}`);
    const faults = new Map(names.map((name): [string, string[]] => [name, []]));
    for (const line of stderr.split('\n')) {
      const [, name, fault] = /^(.*?\.xml):\d+: (.* error : .*)$/.exec(line) ?? [];
      if (name !== undefined) faults.get(name)!.push(fault!);
    }
    return [...faults.values()].map((list) => list.sort());
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Where the schema finds those that it builds upon, which it names by their places on the web. */
function catalogueText(): string {
  const entries = ['xml.xsd', 'xlink.xsd'].map((name) => {
    const here = pathToFileURL(join(FOLDER!, name)).href;
    return `<system systemId="http://www.musicxml.org/xsd/${name}" uri="${here}"/>`;
  });
  return `<catalog xmlns="urn:oasis:names:tc:entity:xmlns:xml:catalog">${entries.join('')}</catalog>`;
}

/** Whatever the text's file was encoded in. */
function asUtf8(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/(<\?xml[^>]*?)\sencoding\s*=\s*["'][^"']*["']/, '$1');
}
