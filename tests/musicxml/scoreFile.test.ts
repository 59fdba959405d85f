/** Bytes in, bytes out: encodings and compressed files, whole, odd and broken. */
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../plugin/musicxml/bytes/crc32.ts';
import { joinedBytes, openScoreFile } from '../../plugin/musicxml/bytes/files.ts';
import { openZip, readEntry } from '../../plugin/musicxml/bytes/zip.ts';
import { clearMarks, markSplices, readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { corpusText, describeWithCorpus } from './corpus.ts';
import { madeUpMarks } from './marks.ts';
import { noteOf, smallScore } from './smallScore.ts';

const PLAIN = smallScore([noteOf('C5', 2).repeat(9)]);

function declared(encoding: string, text = PLAIN): string {
  return text.replace('encoding="UTF-8"', `encoding="${encoding}"`);
}

function bytesOf(text: string, codeUnitBytes: (code: number) => number[]): Uint8Array {
  return Uint8Array.from([...text].flatMap((_, i) => codeUnitBytes(text.charCodeAt(i))));
}

const ascii = (text: string) => bytesOf(text, (code) => [code]);
const littleEndian = (text: string) => bytesOf(text, (code) => [code & 255, code >> 8]);
const bigEndian = (text: string) => bytesOf(text, (code) => [code >> 8, code & 255]);

/** Compares bytes as such: one by one as numbers takes long with whole scores. */
function expectBytes(found: Uint8Array, wanted: Uint8Array, what: string): void {
  expect(Buffer.compare(found, wanted), what).toBe(0);
}

/** Marks a file, and checks that reading the bytes again and clearing gives the bytes of before. */
function markAndClear(bytes: Uint8Array): { marked: Uint8Array; encoding: string } {
  const file = openScoreFile(bytes);
  const score = readScore(file.text);
  const before = Uint8Array.from(bytes);
  const marked = file.withText(writeMarks(score, madeUpMarks(score)));
  expectBytes(bytes, before, 'the input is left alone');
  expect(marked.length).toBeGreaterThan(bytes.length);
  const again = openScoreFile(marked);
  expect(again.encoding).toBe(file.encoding);
  const rescored = readScore(again.text);
  expectBytes(again.withText(writeMarks(rescored, madeUpMarks(rescored))), marked, 'marked twice');
  expectBytes(again.withText(clearMarks(again.text)), bytes, 'cleared');
  // The same by changing single places of the bytes, of the file as it is and once it is sealed.
  const splices = markSplices(score, madeUpMarks(score));
  expectBytes(joinedBytes(file.withSplices(splices)), marked, 'by splices');
  const sealed = openScoreFile(joinedBytes(file.withSplices(splices, { seal: 'annotate' })));
  expect(sealed.sealedAs).toBe('annotate');
  const unsealed = sealed.withSplices(markSplices(readScore(sealed.text), []));
  expectBytes(joinedBytes(unsealed), bytes, 'cleared by splices');
  return { marked, encoding: file.encoding };
}

describe('encodings', () => {
  it.each<[string, Uint8Array, string]>([
    ['UTF-8', ascii(PLAIN), 'UTF-8'],
    ['UTF-8 with a byte order mark', ascii(`\xef\xbb\xbf${PLAIN}`), 'UTF-8'],
    ['no declaration', ascii(PLAIN.replace(/^<\?.*?\?>/, '')), 'UTF-8'],
    ['UTF-16, little-endian', littleEndian(`\ufeff${declared('UTF-16')}`), 'UTF-16LE'],
    ['UTF-16, big-endian', bigEndian(`\ufeff${declared('UTF-16')}`), 'UTF-16BE'],
    ['UTF-16 without a byte order mark', littleEndian(declared('UTF-16')), 'UTF-16LE'],
    ['UTF-16 in name only', ascii(declared('UTF-16')), 'UTF-8'],
    [
      'Latin-1',
      ascii(declared('ISO-8859-1').replace('Horn in F', 'Horn in F (M\xfcnchen \x96)')),
      'ISO-8859-1',
    ],
    [
      'Windows-1252',
      ascii(declared('windows-1252').replace('Horn in F', 'Horn in F \x93M\xfcnchen\x94')),
      'windows-1252',
    ],
    ['Latin-9', ascii(declared('iso-8859-15').replace('Horn in F', 'Horn in F \xa4')), 'iso-8859-15'],
    ['bytes that are no UTF-8', ascii(PLAIN.replace('Horn in F', 'Horn in F \xfc')), 'ISO-8859-1'],
    ['CR LF', ascii(PLAIN.replace(/></g, '>\r\n<')), 'UTF-8'],
    ['CR', ascii(PLAIN.replace(/></g, '>\r<')), 'UTF-8'],
  ])('%s', (_case, bytes, encoding) => {
    expect(markAndClear(bytes).encoding).toBe(encoding);
  });

  it.each(['ISO-8859-1', 'windows-1252', 'iso-8859-15', 'koi8-r', 'macintosh'])(
    'keeps all upper bytes of %s',
    (encoding) => {
      const upper = String.fromCharCode(...Array.from({ length: 128 }, (_, i) => 128 + i));
      const bytes = ascii(declared(encoding).replace('Horn in F', `Horn in F ${upper}`));
      const file = openScoreFile(bytes);
      expect(file.withText(`${file.text} `)).toEqual(ascii(`${String.fromCharCode(...bytes)} `));
    },
  );

  it('writes what Latin-1 cannot hold as numeric character references', () => {
    const { marked } = markAndClear(ascii(declared('ISO-8859-1')));
    const text = String.fromCharCode(...marked);
    expect(text).toContain('&#x2060;&#x2063;&#x200B;&#x2063;&#x2060;');
    expect(text).toContain('(C&#x266F;)');
  });

  it('follows the line ends of the file inside its marks', () => {
    const { marked } = markAndClear(ascii(PLAIN.replace(/></g, '>\r\n<')));
    expect(new TextDecoder().decode(marked)).not.toMatch(/[^\r]\n/);
  });

  it.each<[string, Uint8Array, RegExp]>([
    ['UTF-32', Uint8Array.of(0xff, 0xfe, 0, 0, 0x3c, 0, 0, 0), /UTF-32.*: save the file as UTF-8/],
    ['an unknown encoding', ascii(declared('klingon-8')), /klingon-8.*: save the file as UTF-8/],
    ['an encoding of several bytes', ascii(declared('Shift_JIS')), /shift_jis.*: save the file as UTF-8/i],
    ['half a character', littleEndian(`\ufeff${PLAIN}`).subarray(0, 301), /half a character: fetch/],
  ])('refuses %s', (_case, bytes, message) => {
    expect(() => openScoreFile(bytes)).toThrow(message);
  });

  it('gives the same bytes for the same text', () => {
    const bytes = ascii(PLAIN);
    expect(openScoreFile(bytes).withText(PLAIN)).toEqual(bytes);
  });
});

const container = (...paths: string[]) =>
  strToU8(
    `<container><rootfiles>${paths.map((path) => `<rootfile full-path="${path}"/>`).join('')}</rootfiles></container>`,
  );

function packed(entries: Record<string, Uint8Array> = {}): Uint8Array {
  return zipSync({
    mimetype: [strToU8('application/vnd.recordare.musicxml'), { level: 0 }],
    'META-INF/container.xml': container('score.musicxml'),
    'score.musicxml': strToU8(PLAIN),
    'picture.png': Uint8Array.of(1, 2, 3),
    ...entries,
  });
}

describe('checksums', () => {
  // The check value of this CRC: G. Cook, "Catalogue of parametrised CRC algorithms", CRC-32/ISO-HDLC.
  it('gives the published check value', () => expect(crc32(strToU8('123456789'))).toBe(0xcbf43926));
  it('gives 0 for nothing', () => expect(crc32(new Uint8Array())).toBe(0));
});

describe('compressed files', () => {
  it('replaces the score and copies all else', () => {
    const bytes = packed();
    const file = openScoreFile(bytes);
    expect(file.entryName).toBe('score.musicxml');
    expect(file.text).toBe(PLAIN);
    const changed = file.withText(`${PLAIN}<!-- 𝄪 -->`);
    expect(openScoreFile(changed).text).toBe(`${PLAIN}<!-- 𝄪 -->`);
    const [before, after] = [openZip(bytes), openZip(changed)];
    expect(after.entries.map(({ name }) => name)).toEqual(before.entries.map(({ name }) => name));
    before.entries.forEach((entry, i) => {
      if (entry.name !== 'score.musicxml')
        expect(readEntry(after, after.entries[i]!)).toEqual(readEntry(before, entry));
    });
    expect(openScoreFile(openScoreFile(changed).withText(PLAIN)).text).toBe(PLAIN);
  });

  it.each<[string, Record<string, Uint8Array>, string]>([
    [
      'the first root file',
      { 'META-INF/container.xml': container('b.xml', 'score.musicxml'), 'b.xml': strToU8(PLAIN) },
      'b.xml',
    ],
    [
      'a path written otherwise',
      { 'META-INF/container.xml': container('.\\Score.musicxml') },
      'score.musicxml',
    ],
    [
      'a root file that is music',
      {
        'META-INF/container.xml': strToU8(
          '<container><rootfiles><rootfile full-path="picture.png" media-type="image/png"/><rootfile full-path="score.musicxml" media-type="application/vnd.recordare.musicxml+xml"/></rootfiles></container>',
        ),
      },
      'score.musicxml',
    ],
    [
      'a name beyond ASCII',
      { 'META-INF/container.xml': container('其れ.xml'), '其れ.xml': strToU8(PLAIN) },
      '其れ.xml',
    ],
  ])('takes %s', (_case, entries, name) => {
    expect(openScoreFile(packed(entries)).entryName).toBe(name);
  });

  it('takes the only score where nothing says which', () => {
    expect(openScoreFile(zipSync({ 'a.musicxml': strToU8(PLAIN) })).entryName).toBe('a.musicxml');
  });

  /** An archive with a change at the first place of `signature`, moved by `offset`. */
  function spoiled(signature: number[], offset: number, ...values: number[]): Uint8Array {
    const bytes = zipSync({ 'a.musicxml': strToU8(PLAIN) });
    const at = bytes.findIndex((_, i) => signature.every((byte, j) => bytes[i + j] === byte));
    bytes.set(values, at + offset);
    return bytes;
  }
  const CENTRAL = [0x50, 0x4b, 1, 2];

  it.each<[string, Uint8Array, RegExp]>([
    ['cut short', packed().subarray(0, 400), /no end: fetch or export the file again/],
    ['empty', zipSync({}), /does not say which file/],
    [
      'without the named score',
      packed({ 'META-INF/container.xml': container('gone.xml') }),
      /"gone.xml", which is not in it/,
    ],
    [
      'with a broken container.xml',
      packed({ 'META-INF/container.xml': strToU8('<container>') }),
      /container.xml is not well-formed/,
    ],
    [
      'of no music',
      packed({ 'META-INF/container.xml': strToU8('<container/>') }),
      /holds no MusicXML: export/,
    ],
    [
      'of several scores and no container',
      zipSync({ 'a.xml': strToU8(PLAIN), 'b.xml': strToU8(PLAIN) }),
      /which file/,
    ],
    ['with a wrong checksum', spoiled(CENTRAL, 16, 0, 0, 0, 0), /damaged: "a.musicxml" does not match/],
    ['with a wrong size', spoiled(CENTRAL, 24, 1, 0, 0, 0), /damaged: "a.musicxml"/],
    ['with spoiled data', spoiled([0x50, 0x4b, 3, 4], 45, 255, 255, 255, 255), /damaged: "a.musicxml"/],
    ['with a password', spoiled(CENTRAL, 8, 1), /encrypted: pack the score again without/],
    ['packed in an unusual way', spoiled(CENTRAL, 10, 14), /packed by method 14/],
    [
      'that unpacks to too much',
      spoiled(CENTRAL, 24, 0, 0, 0, 0x40),
      /unpacks to 1,024 MB, and 128 MB is the most/,
    ],
    ['of ZIP64', spoiled([0x50, 0x4b, 5, 6], 16, 255, 255, 255, 255), /ZIP64/],
    ['with a lost directory', spoiled([0x50, 0x4b, 5, 6], 16, 7, 0, 0, 0), /damaged: its directory/],
    ['whose entry lies elsewhere', spoiled(CENTRAL, 42, 9), /damaged: "a.musicxml"/],
  ])('refuses an archive %s', (_case, bytes, message) => {
    expect(() => openScoreFile(bytes)).toThrow(message);
  });

  it('refuses what grows beyond any score, and takes what grows as much as repetitive music does', () => {
    const bar = `${'<measure number="1"><note><pitch><step>C</step><octave>5</octave></pitch></note></measure>'.repeat(40)}\n`;
    const filled = PLAIN.replace('</part>', `${bar.repeat(5000)}</part>`);
    const bomb = zipSync({ 'a.musicxml': strToU8(filled) }, { level: 9 });
    expect(filled.length / bomb.length).toBeGreaterThan(150);
    expect(() => openScoreFile(bomb)).toThrow(
      /"a.musicxml" unpacks to \d+ times its size, and 150 times is the most that is opened: check/,
    );
    const small = PLAIN.replace('</part>', `${bar.repeat(300)}</part>`);
    expect(openScoreFile(zipSync({ 'a.musicxml': strToU8(small) })).text === small).toBe(true);
  });

  it('refuses a container.xml that is no list of files', () => {
    const large = packed({
      'META-INF/container.xml': strToU8(`<container>${' '.repeat(2 ** 20)}</container>`),
    });
    expect(() => openScoreFile(large)).toThrow(/container.xml" unpacks to 2 MB, and 1 MB is the most/);
  });

  it('stops a stream that unpacks to more than it says', () => {
    const bomb = zipSync({ 'a.musicxml': new Uint8Array(50_000_000) });
    const view = new DataView(bomb.buffer);
    const record = openZip(bomb).entries[0]!.record;
    view.setUint32(record + 24, 1000, true);
    expect(() => openScoreFile(bomb)).toThrow(/damaged/);
  });
});

describeWithCorpus('compressed real scores', (files) => {
  it.each(files.filter(({ name }) => name.endsWith('.mxl')))('$name', (file) => {
    const text = corpusText(file);
    const bytes = Uint8Array.from(file.bytes);
    const changed = openScoreFile(file.bytes).withText(`${text}<!-- -->`);
    expect(Buffer.compare(file.bytes, bytes), 'the input is left alone').toBe(0);
    expect(openScoreFile(changed).text === `${text}<!-- -->`).toBe(true);
    const [before, after] = [openZip(file.bytes), openZip(changed)];
    before.entries.forEach((entry, i) => {
      if (entry.name === openScoreFile(file.bytes).entryName) return;
      expect(readEntry(after, after.entries[i]!)).toEqual(readEntry(before, entry));
    });
  });
});
