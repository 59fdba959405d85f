/**
 * Annotated scores have no fault against the schema, nor against the document type of their own version of the format,
 * that they did not have before: programs that check what they open still take them.
 */
import { describe, expect, it } from 'vitest';
import { skipLoudly } from '../editor/rig/programs.ts';
import { type CorpusFile, corpusText, describeWithCorpus } from './corpus.ts';
import { generatePart } from './generate.ts';
import { annotated, madeUpMarks, readAllParts } from './marks.ts';
import {
  CAN_CHECK,
  DOCUMENT_TYPES,
  type DocumentType,
  documentTypeFaults,
  STANDARDS,
  schemaFaults,
} from './standards.ts';

const marked = (text: string) => annotated(text, madeUpMarks, readAllParts, { fingerings: true });

if (!CAN_CHECK) {
  skipLoudly('scores against the schema and the older document types', STANDARDS);
  describe.skip('the MusicXML schema', () => it('needs ../shared/schema and xmllint', () => {}));
} else {
  describe('the MusicXML schema', () => {
    it('can complain at all', () => {
      expect(schemaFaults(['<score-partwise><nonsense/></score-partwise>'])[0]!.join('\n')).toContain(
        'nonsense',
      );
    });

    it('accepts what is written into an invented part', () => {
      const text = generatePart(300);
      expect(schemaFaults([text, marked(text)])).toEqual([[], []]);
    });
  });

  describe.each(DOCUMENT_TYPES)('the document type of version $version, $form', (type) => {
    it('can complain at all', () => {
      const bad = `<score-${type.form} version="${type.version}"><nonsense/></score-${type.form}>`;
      expect(documentTypeFaults(type, [bad])[0]!.join('\n')).toContain('nonsense');
    });

    it('accepts what is written into an invented part', () => {
      const text = typed(generatePart(300, { timewise: type.form === 'timewise' }), type);
      const after = marked(text);
      expect(after.length).toBeGreaterThan(text.length + 10_000);
      expect(documentTypeFaults(type, [text, after])).toEqual([[], []]);
    });
  });

  describeWithCorpus('the schema and the document types over real scores', (files) => {
    it('knows scores that declare a document type', () => {
      const declaring = files.filter((file) =>
        DOCUMENT_TYPES.some((type) => declares(corpusText(file), type)),
      );
      expect(declaring.length).toBeGreaterThan(20);
    });

    it.each(groups(files))('find nothing new in $names', ({ group }) => {
      const pairs = group.map((file) => {
        const before = corpusText(file);
        return { name: file.name, before, after: marked(before) };
      });
      const expectNothingNew = (
        compared: typeof pairs,
        faultsOf: (texts: readonly string[]) => string[][],
      ) => {
        const found = faultsOf(compared.flatMap(({ before, after }) => [before, after]));
        for (const [i, { name }] of compared.entries()) expect(found[2 * i + 1], name).toEqual(found[2 * i]);
      };
      expectNothingNew(pairs, schemaFaults);
      for (const type of DOCUMENT_TYPES) {
        const declaring = pairs.filter(({ before }) => declares(before, type));
        if (declaring.length > 0) expectNothingNew(declaring, (texts) => documentTypeFaults(type, texts));
      }
    });
  });
}

/** Files in groups that fit into memory together. */
function groups(files: readonly CorpusFile[]): { names: string; group: CorpusFile[] }[] {
  const sized: { size: number; group: CorpusFile[] }[] = [];
  for (const file of files) {
    const size = corpusText(file).length;
    const last = sized[sized.length - 1];
    if (last && last.size + size < 12_000_000) {
      last.group.push(file);
      last.size += size;
    } else sized.push({ size, group: [file] });
  }
  return sized.map(({ group }) => ({
    group,
    names: group.length === 1 ? group[0]!.name : `${group[0]!.name} and ${group.length - 1} more`,
  }));
}

/** Whether a score declares a document type. */
function declares(text: string, { version, form }: DocumentType): boolean {
  return text.slice(0, 1000).toLowerCase().includes(`musicxml ${version} ${form}`);
}

/** An invented score as one that declares this document type. */
function typed(text: string, { version, form }: DocumentType): string {
  const name = `${form[0]!.toUpperCase()}${form.slice(1)}`;
  const type = `<!DOCTYPE score-${form} PUBLIC "-//Recordare//DTD MusicXML ${version} ${name}//EN" "http://www.musicxml.org/dtds/${form}.dtd">`;
  return text.replace('\n<score', `\n${type}\n<score`).replace('version="4.0"', `version="${version}"`);
}
