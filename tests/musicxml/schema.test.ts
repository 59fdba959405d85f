/** Annotated scores have no schema error that the score did not have before. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { validateXML, type XMLFileInfo } from 'xmllint-wasm';
import { type CorpusFile, corpusText, describeWithCorpus, sharedFolder } from './corpus.ts';
import { generatePart } from './generate.ts';
import { annotated, madeUpMarks, readAllParts } from './marks.ts';

const folder = sharedFolder('schema');

/** Messages of the schema's complaints about each file. @source musicxml40: its schema, tag v4.0 */
async function complaints(files: XMLFileInfo[]): Promise<Map<string, string[]>> {
  const schemaFile = (fileName: string) => ({ fileName, contents: readFileSync(folder + fileName, 'utf8') });
  const { errors } = await validateXML({
    xml: files,
    schema: [schemaFile('musicxml.xsd')],
    preload: [schemaFile('xml.xsd'), schemaFile('xlink.xsd')],
    initialMemoryPages: 1024,
    maxMemoryPages: 32768,
  });
  const messages = new Map(files.map(({ fileName }): [string, string[]] => [fileName, []]));
  for (const { loc, message } of errors) {
    const list = messages.get(loc?.fileName ?? '');
    if (list) list.push(message);
    else if (!/ fails to validate$/.test(message)) throw new Error(`the linter stopped: ${message}`);
  }
  for (const list of messages.values()) list.sort();
  return messages;
}

/** The linter reads strings as UTF-8, whatever the file's own encoding was. */
function asUtf8(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/(<\?xml[^>]*?)\sencoding\s*=\s*["'][^"']*["']/, '$1');
}

function pair(name: string, text: string): XMLFileInfo[] {
  const marked = annotated(text, madeUpMarks, readAllParts, { fingerings: true });
  return [
    { fileName: `${name}.before.xml`, contents: asUtf8(text) },
    { fileName: `${name}.after.xml`, contents: asUtf8(marked) },
  ];
}

if (folder === null) {
  console.warn('NOT TESTED: schema errors: there is no ../shared/schema');
  describe.skip('the MusicXML schema', () => it('needs ../shared/schema', () => {}));
} else {
  describe('the MusicXML schema', () => {
    it('can complain at all', async () => {
      const found = await complaints([
        { fileName: 'bad.xml', contents: '<score-partwise><nonsense/></score-partwise>' },
      ]);
      expect(found.get('bad.xml')!.length).toBeGreaterThan(0);
    });

    it('accepts what is written into an invented part', async () => {
      const found = await complaints(pair('invented', generatePart(300)));
      expect(found.get('invented.before.xml')).toEqual([]);
      expect(found.get('invented.after.xml')).toEqual([]);
    });
  });

  describeWithCorpus('the MusicXML schema over real scores', (files) => {
    it.each(groups(files))('finds nothing new in $names', { timeout: 120_000 }, async ({ group }) => {
      const found = await complaints(group.flatMap((file, i) => pair(`${i}`, corpusText(file))));
      for (const [i, { name }] of group.entries()) {
        expect(found.get(`${i}.after.xml`), name).toEqual(found.get(`${i}.before.xml`));
      }
    });
  });
}

/** Files in groups that one run of the linter can hold. */
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
