/**
 * Annotated scores have no fault against the document type of their own version of the format that they did not have
 * before: programs that check what they open still take them.
 * @source MusicXML 2.0, 3.0 and 3.1: their document type definitions, as published; the checking is libxml2's
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { programNamed, skipLoudly } from '../editor/rig/programs.ts';
import { corpusText, describeWithCorpus, sharedFolder } from './corpus.ts';
import { generatePart } from './generate.ts';
import { annotated, madeUpMarks, readAllParts } from './marks.ts';

const VERSIONS = ['2.0', '3.0', '3.1'] as const;
const FORMS = ['partwise', 'timewise'] as const;
const schemas = sharedFolder('schema');
const xmllint = programNamed('xmllint');

if (schemas === null || xmllint === null) {
  skipLoudly(
    'scores against the older document types',
    'put them at ../shared/schema; apt install libxml2-utils',
  );
  describe.skip('the document types of older versions', () =>
    it('need ../shared/schema and xmllint', () => {}));
} else {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-types-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  /** What is wrong with each text against a document type, in words without their places. */
  const faultsOf = (definition: string, texts: readonly string[]): string[][] => {
    const names = texts.map((_, i) => join(folder, `${i}.xml`));
    for (const [i, name] of names.entries()) writeFileSync(name, asUtf8(texts[i]!));
    const args = ['--nonet', '--noout', '--huge', '--dtdvalid', join(schemas, definition), ...names];
    const { stderr, error } = spawnSync(xmllint, args, { encoding: 'utf8', maxBuffer: 2 ** 28 });
    if (error) throw error;
    const lines = stderr.split('\n');
    return names.map((name) => {
      const faults = lines.flatMap((line) =>
        line.startsWith(`${name}:`) && / error : /.test(line) ? [line.slice(name.length)] : [],
      );
      return faults.map((fault) => fault.replace(/^:\d+: /, '')).sort();
    });
  };

  const marked = (text: string) => annotated(text, madeUpMarks, readAllParts, { fingerings: true });

  describe.each(VERSIONS)('the document type of version %s', (version) => {
    it.each(FORMS)('%s, can complain at all', (form) => {
      const bad = `<score-${form} version="${version}"><nonsense/></score-${form}>`;
      expect(faultsOf(`dtd-${version}/${form}.dtd`, [bad])[0]!.join('\n')).toContain('nonsense');
    });

    it.each(FORMS)('%s, accepts what is written into an invented part', (form) => {
      const text = typed(generatePart(300, { timewise: form === 'timewise' }), version, form);
      const after = marked(text);
      expect(after.length).toBeGreaterThan(text.length + 10_000);
      expect(faultsOf(`dtd-${version}/${form}.dtd`, [text, after])).toEqual([[], []]);
    });
  });

  describeWithCorpus('the document types over real scores', (files) => {
    it.each(
      VERSIONS.flatMap((version) => FORMS.map((form) => ({ version, form }))).filter(
        ({ version, form }) => scoresOf(files.map(corpusText), version, form).length > 0,
      ),
    )('of version $version, $form, find nothing new', ({ version, form }) => {
      const texts = scoresOf(files.map(corpusText), version, form);
      const found = faultsOf(
        `dtd-${version}/${form}.dtd`,
        texts.flatMap((text) => [text, marked(text)]),
      );
      texts.forEach((text, i) => {
        expect(found[2 * i + 1], text.slice(0, 300)).toEqual(found[2 * i]);
      });
    });
  });
}

/** The scores that declare a document type. */
function scoresOf(texts: readonly string[], version: string, form: string): string[] {
  return texts.filter((text) => text.slice(0, 1000).toLowerCase().includes(`musicxml ${version} ${form}`));
}

/** An invented score as one that declares this document type. */
function typed(text: string, version: string, form: string): string {
  const name = `${form[0]!.toUpperCase()}${form.slice(1)}`;
  const type = `<!DOCTYPE score-${form} PUBLIC "-//Recordare//DTD MusicXML ${version} ${name}//EN" "http://www.musicxml.org/dtds/${form}.dtd">`;
  return text.replace('\n<score', `\n${type}\n<score`).replace('version="4.0"', `version="${version}"`);
}

/** Whatever the file's own encoding was. */
function asUtf8(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/(<\?xml[^>]*?)\sencoding\s*=\s*["'][^"']*["']/, '$1');
}
