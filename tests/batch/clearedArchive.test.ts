/** A score in an archive, cleared: the archive of before, byte for byte, unless its score was changed meanwhile. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { bellhandHere, folderWith } from './bellhand.ts';
import { SURE as PART } from './hornParts.ts';

describe('a cleared archive', () => {
  const container =
    '<?xml version="1.0"?><container><rootfiles><rootfile full-path="in/score.xml"/></rootfiles></container>';
  const packed = zipSync({
    mimetype: [strToU8('application/vnd.recordare.musicxml'), { level: 0 }],
    'META-INF/container.xml': strToU8(container),
    'in/score.xml': [strToU8(PART), { level: 1, comment: 'as engraved' }],
    'notes.txt': strToU8('keep me'),
  });

  test('is the same archive byte for byte, however often it was marked', async () => {
    const folder = folderWith({ 'part.mxl': packed });
    await bellhandHere(folder, ['annotate', 'part.mxl']);
    await bellhandHere(folder, ['annotate', 'part.marked.mxl', '-o', 'twice.mxl', '--show', 'natural']);
    await bellhandHere(folder, ['annotate', 'twice.mxl', '--in-place', '--complete']);
    for (const marked of ['part.marked.mxl', 'twice.mxl']) {
      await bellhandHere(folder, ['clear', marked, '-o', 'back.mxl', '--force']);
      expect(readFileSync(join(folder, 'back.mxl')), marked).toEqual(Buffer.from(packed));
    }
    await bellhandHere(folder, ['annotate', 'part.mxl', '--in-place']);
    await bellhandHere(folder, ['clear', 'part.mxl', '--in-place']);
    expect(readFileSync(join(folder, 'part.mxl'))).toEqual(Buffer.from(packed));
  });

  test('keeps nothing of before when the score was changed meanwhile', async () => {
    const folder = folderWith({ 'part.mxl': packed });
    await bellhandHere(folder, ['annotate', 'part.mxl', '--in-place']);
    const entries = unzipSync(readFileSync(join(folder, 'part.mxl')));
    const changed = strFromU8(entries['in/score.xml']!).replace('Horn in F', 'Horn 2 in F');
    writeFileSync(join(folder, 'part.mxl'), zipSync({ ...entries, 'in/score.xml': strToU8(changed) }));
    await bellhandHere(folder, ['clear', 'part.mxl', '--in-place']);
    const cleared = unzipSync(readFileSync(join(folder, 'part.mxl')));
    expect(Object.keys(cleared)).toEqual(['mimetype', 'META-INF/container.xml', 'in/score.xml', 'notes.txt']);
    expect(strFromU8(cleared['in/score.xml']!)).toBe(PART.replace('Horn in F', 'Horn 2 in F'));
  });
});
