/** Bad input of every kind: one clear line that names the file, exit 2, nothing written. */
import { readdirSync } from 'node:fs';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { bellhandHere, folderWith, score } from './bellhand.ts';

const GOOD = score(['C5+', 'E5']);

interface BadFile {
  readonly what: string;
  readonly name: string;
  readonly content: string | Uint8Array;
  /** Words of the line: what is wrong, and what to do. */
  readonly says: readonly string[];
}

const packed = zipSync({
  'META-INF/container.xml': text(
    '<?xml version="1.0"?><container><rootfiles><rootfile full-path="score.xml"/></rootfiles></container>',
  ),
  'score.xml': text(GOOD),
});

const BAD_FILES: readonly BadFile[] = [
  { what: 'an empty file', name: 'a.musicxml', content: '', says: ['not XML', 'export'] },
  {
    what: 'plain text',
    name: 'a.musicxml',
    content: 'Dear horn,\nplease',
    says: ['line', 'not XML', 'export'],
  },
  {
    what: 'a cut file',
    name: 'a.musicxml',
    content: GOOD.slice(0, 500),
    says: ['line', 'cut short', 'again'],
  },
  {
    what: 'broken XML',
    name: 'a.musicxml',
    content: GOOD.replace('</pitch>', '</pitsch>'),
    says: ['line 6', 'closing tag', 'export'],
  },
  {
    what: 'XML that is no score',
    name: 'a.xml',
    content: '<html><body/></html>',
    says: ['<html>', 'MusicXML'],
  },
  {
    what: 'two parts of one id',
    name: 'a.musicxml',
    content: GOOD.replace(/<score-part[\s\S]*?<\/score-part>/, '$&$&'),
    says: ['line', 'two parts have the id "P1"', 'an id of its own'],
  },
  {
    what: 'a chord that no hand plays',
    name: 'a.musicxml',
    content: GOOD.replace(
      /<note>[\s\S]*?<\/note>/,
      (note) => note + note.replace('>', '><chord/>').repeat(1000),
    ),
    says: ['1,000 notes', 'where the file comes from'],
  },
  {
    what: 'a score without a horn',
    name: 'a.musicxml',
    content: score(['C5+', 'E5'], { name: 'Tin Whistle' }),
    says: ['no part is a horn', '"Tin Whistle"', '--part'],
  },
  {
    what: 'an English horn, which is no horn',
    name: 'a.musicxml',
    content: score(['C5+', 'E5'], { name: 'English Horn' }),
    says: ['no part is a horn', '"English Horn"'],
  },
  {
    what: 'a horn without a key',
    name: 'a.musicxml',
    content: score(['C5+', 'E5'], { name: 'Horn', transpose: null }),
    says: ['transposition', '"Horn in F"', '--key'],
  },
  { what: 'an archive cut short', name: 'a.mxl', content: packed.slice(0, 200), says: ['ZIP', 'again'] },
  {
    what: 'a wrong checksum',
    name: 'a.mxl',
    content: withWrongChecksum(packed),
    says: ['damaged', 'score.xml', 'again'],
  },
  {
    what: 'an archive that unpacks without end',
    name: 'a.mxl',
    content: withSize(packed, 3_000_000_000),
    says: ['MB'],
  },
  {
    what: 'an archive without a score',
    name: 'a.mxl',
    content: zipSync({ 'a.txt': text('no') }),
    says: ['ZIP', 'export'],
  },
];

describe.each(['annotate', 'check'])('%s', (command) => {
  test.each(BAD_FILES)('$what', async ({ name, content, says }) => {
    const folder = folderWith({ [name]: content });
    const { exit, stdout, stderr } = await bellhandHere(folder, [command, name]);
    expect(stderr).toMatch(/^[^\n]+\n$/);
    expect(stderr.startsWith(`bellhand: ${name}: `), stderr).toBe(true);
    for (const words of says) expect(stderr).toContain(words);
    expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
    expect(readdirSync(folder)).toEqual([name]);
  });
});

test.each([
  {
    what: 'a missing file',
    args: ['annotate', 'none.musicxml'],
    says: ['none.musicxml: there is no such file', 'check'],
  },
  { what: 'a folder', args: ['check', '.'], says: ['.: this is a folder', 'name a file'] },
  {
    what: 'a part that is not there',
    args: ['check', 'part.musicxml', '--part', 'Tuba'],
    says: ['"Tuba"', '"Horn in F"'],
  },
  {
    what: 'a target in no folder',
    args: ['annotate', 'part.musicxml', '-o', 'no/where.xml'],
    says: ['no/where.xml: cannot be written', 'folder does not exist'],
  },
  {
    what: 'a target under a file',
    args: ['annotate', 'part.musicxml', '-o', 'part.musicxml/x.xml'],
    says: ['cannot be written', 'check the path'],
  },
  {
    what: 'a course under a file',
    args: ['course', '--weeks', '1', '-o', 'part.musicxml/weeks'],
    says: ['part.musicxml/weeks', 'cannot be made', 'a file and not a folder'],
  },
  // Linux makes no folder there, and says of one that is there that it is not.
  ...(process.platform === 'linux'
    ? [
        {
          what: 'a target folder where none can be',
          args: ['annotate', 'part.musicxml', '-o', '/proc/none/'],
          says: ['/proc/none/', 'cannot be made'],
        },
      ]
    : []),
  {
    what: 'a target folder under a file',
    args: ['annotate', 'part.musicxml', '-o', 'part.musicxml/'],
    says: ['part.musicxml/', 'folder'],
  },
  {
    what: 'the input as target',
    args: ['annotate', 'part.musicxml', '-o', './part.musicxml'],
    says: ['overwrite an input', '--in-place'],
  },
  {
    what: '-o with --in-place',
    args: ['clear', 'part.musicxml', '-o', 'x.xml', '--in-place'],
    says: ['-o and --in-place'],
  },
  {
    what: 'two files into one',
    args: ['annotate', 'part.musicxml', 'part.musicxml', '-o', 'x.xml'],
    says: ['do not fit into one file', 'folder'],
  },
  { what: 'no note name', args: ['explain', 'X5'], says: ['"X5" is not a note name', 'C#5'] },
  { what: 'a note name without octave', args: ['explain', 'C'], says: ['"C" is not a note name', 'octave'] },
  {
    what: 'no horn of ours',
    args: ['explain', 'C5', '--horn', 'tuba'],
    says: ["'tuba'", 'double', 'single-f', 'single-bflat-stop-valve'],
  },
  {
    what: 'no horn file',
    args: ['explain', 'C5', '--horn', 'my.json'],
    says: ['my.json: there is no such file'],
  },
  {
    what: 'a curve as text among data',
    args: ['explain', 'C5', '--format', 'json', '--curve'],
    says: ['--curve', 'leave one of them out'],
  },
  {
    what: 'a curve of nothing',
    args: ['explain', 'C3', '--horn', 'single-bflat', '--curve'],
    says: ['C3: no fingering'],
  },
  {
    what: 'an unknown kind of names',
    args: ['check', 'part.musicxml', '--names', 'french'],
    says: ['as-written or f-horn'],
  },
  {
    what: 'an unknown bass clef',
    args: ['check', 'part.musicxml', '--bass-clef', 'low'],
    says: ['auto, old or new'],
  },
  { what: 'no key', args: ['explain', 'C5', '--key', 'Q'], says: ["'Q'", 'Bb basso'] },
  {
    what: 'no number',
    args: ['check', 'part.musicxml', '--tolerance', 'wide'],
    says: ["'wide'", 'from 0 to 100'],
  },
  {
    what: 'a number out of range',
    args: ['check', 'part.musicxml', '--tolerance', '101'],
    says: ['from 0 to 100'],
  },
  {
    what: 'an empty number',
    args: ['check', 'part.musicxml', '--hand-offset', ''],
    says: ['number of cents'],
  },
  { what: 'no jobs at all', args: ['check', 'part.musicxml', '--jobs', '0'], says: ['from 1 up'] },
  {
    what: 'an unknown format',
    args: ['check', 'part.musicxml', '--format', 'yaml'],
    says: ['table, json or json-lines'],
  },
  {
    what: 'an unknown item',
    args: ['annotate', 'part.musicxml', '--show', 'valves,names'],
    says: ['fingered', 'colour'],
  },
  {
    what: 'an unknown option',
    args: ['check', 'part.musicxml', '--loud'],
    says: ["'--loud'", 'bellhand check --help'],
  },
  { what: 'an unknown command', args: ['stop'], says: ["'stop'", 'bellhand --help'] },
  { what: 'no file named', args: ['annotate'], says: ['files', 'bellhand annotate --help'] },
])('$what', async ({ args, says }) => {
  const folder = folderWith({ 'part.musicxml': GOOD });
  const { exit, stdout, stderr } = await bellhandHere(folder, args);
  expect(stderr).toMatch(/^bellhand: [^\n]+\n$/);
  for (const words of says) expect(stderr).toContain(words);
  expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
  expect(readdirSync(folder)).toEqual(['part.musicxml']);
});

test.each([
  { what: 'no JSON', content: '{', says: ['not JSON'] },
  { what: 'no sides', content: '{}', says: ['sides'] },
  { what: 'a misspelt field', content: '{"sides":[{"name":"F","fundamentl":"F1"}]}', says: ['fundamentl'] },
])('a horn file with $what', async ({ content, says }) => {
  const folder = folderWith({ 'mine.json': content });
  const { exit, stdout, stderr } = await bellhandHere(folder, ['explain', 'C5', '--horn', 'mine.json']);
  expect(stderr).toMatch(/^bellhand: [^\n]*mine\.json: [^\n]+\n$/);
  for (const words of says) expect(stderr).toContain(words);
  expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
});

function text(content: string): Uint8Array {
  return new TextEncoder().encode(content);
}

/** Places of the headers of an archive's last entry, by their signatures. @source PKWARE, APPNOTE 6.3, 4.3.7 and 4.3.12 */
function headersOf(archive: Uint8Array): { local: number; central: number } {
  const last = (signature: readonly number[]) => {
    for (let at = archive.length - 4; at >= 0; at--)
      if (signature.every((byte, i) => archive[at + i] === byte)) return at;
    throw new Error('no such header');
  };
  return { local: last([0x50, 0x4b, 3, 4]), central: last([0x50, 0x4b, 1, 2]) };
}

function withWrongChecksum(archive: Uint8Array): Uint8Array {
  const changed = archive.slice();
  const { local, central } = headersOf(changed);
  changed[local + 14]! ^= 1;
  changed[central + 16]! ^= 1;
  return changed;
}

function withSize(archive: Uint8Array, size: number): Uint8Array {
  const changed = archive.slice();
  const { local, central } = headersOf(changed);
  const view = new DataView(changed.buffer);
  view.setUint32(local + 22, size, true);
  view.setUint32(central + 24, size, true);
  return changed;
}
