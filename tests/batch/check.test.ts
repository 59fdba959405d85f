/** `check` tells what it finds in a part, as a table and by its exit code, and reads the part as its options say. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith, score } from './bellhand.ts';
import { IMPOSSIBLE, SURE } from './hornParts.ts';

describe('check', () => {
  test.each([
    { what: 'sure notes only', text: SURE, exit: 0 },
    { what: 'an impossible note', text: IMPOSSIBLE, exit: 1 },
    { what: 'no stopped note', text: score(['C5', 'E5']), exit: 0 },
    { what: 'a risky note, which is no impossible one', text: score(['C#3+', 'E4']), exit: 0 },
  ])('ends with $exit for $what and writes nothing', async ({ text, exit }) => {
    const folder = folderWith({ 'part.musicxml': text });
    // The code of findings as a shell sees it, too.
    const run = exit === 1 ? bellhand : bellhandHere;
    expect(await run(folder, ['check', 'part.musicxml'])).toMatchObject({ exit, stderr: '' });
    expect(readdirSync(folder)).toEqual(['part.musicxml']);
  });

  test('prints a table of the notes, then each finding with its remedy', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    const lines = (await bellhandHere(folder, ['check', 'part.musicxml'])).stdout.split('\n');
    expect(lines[0]).toBe('part.musicxml');
    expect(lines[2]).toBe('  Horn in F, sounding 7 semitones lower: 2 stopped notes: 1 sure, 1 impossible');
    const [head, first, second] = lines.slice(4, 7);
    expect(head!.trim().split(/ {2,}/)).toEqual([
      'bar',
      'beat',
      'written',
      'hand',
      'finger',
      'valves',
      'natural',
      'drop',
      'off',
      'verdict',
    ]);
    // 9th harmonic of the F side on valve 2, drop 104: sources of the drop table, computed from the harmonic series.
    expect(first!.trim().split(/ {2,}/)).toEqual([
      '1',
      '1',
      'C5',
      'stopped',
      'B',
      '2',
      'C♯',
      '104',
      '0',
      'sure',
    ]);
    expect(second!.trim().split(/ {2,}/).slice(0, 4)).toEqual(['1', '3', 'F2', 'stopped']);
    expect(first!.indexOf('sure')).toBe(second!.indexOf('impossible'));
    expect(lines[8]).toBe('    bar 1, beat 3, F2: impossible (below-the-hand)');
    expect(lines[10]).toMatch(/^ {6}\S/);
  });

  test('--part takes any part for a horn, by name, id or place', async () => {
    const folder = folderWith({ 'part.musicxml': score(['C5+', 'E5'], { name: 'Tin Whistle' }) });
    for (const part of ['Tin Whistle', 'tin whistle', 'P1', '1']) {
      const run = await bellhandHere(folder, ['check', 'part.musicxml', '--part', part]);
      expect(run, part).toMatchObject({ exit: 0, stderr: '' });
      expect(run.stdout, part).toContain('Tin Whistle, sounding 7 semitones lower: 1 stopped note: 1 sure');
    }
  });

  test('--part takes a part that the part list does not name; one without music is told', async () => {
    const unlisted = score(['C5+', 'E5'])
      .replace('<score-part id="P1"><part-name>Horn in F', '<score-part id="P9"><part-name>Viola')
      .replace('</part-list>', '<score-part id="P8"><part-name>Flute</part-name></score-part></part-list>');
    const folder = folderWith({ 'part.musicxml': unlisted });
    const check = async (...args: string[]) =>
      await bellhandHere(folder, ['check', 'part.musicxml', ...args]);
    for (const part of ['P1', 'p1', '3'])
      expect((await check('--part', part)).stdout, part).toContain(
        'P1, sounding 7 semitones lower: 1 stopped note',
      );
    expect(await check()).toMatchObject({ exit: 2 });
    expect((await check()).stderr).toContain('no part is a horn; there is "Viola", "Flute", "P1"');
    expect((await check('--part', 'tuba')).stderr).toContain('"tuba": choose one of the parts');
    expect((await check('--part', 'tuba')).stderr).toContain('("Viola", "Flute", "P1")');
    expect((await check('--part', 'Flute')).stderr).toContain('the part "Flute" is listed but has no music');
  });

  test('--key gives a part the key it does not state, and no other', async () => {
    const silent = score(['C5+', 'E5'], { name: 'Horn', transpose: null });
    const folder = folderWith({ 'silent.musicxml': silent, 'stated.musicxml': SURE });
    const run = await bellhandHere(folder, ['check', 'silent.musicxml', '--key', 'Eb']);
    expect(run.stderr).toBe('');
    expect(run.stdout).toContain('sounding 9 semitones lower');
    expect((await bellhandHere(folder, ['check', 'stated.musicxml', '--key', 'Eb'])).stdout).toContain(
      'sounding 7 semitones',
    );
  });

  test('--bass-clef says how notes in the bass clef are meant', async () => {
    const bass = score(['C3+', 'E3']).replace(
      '<transpose>',
      '<clef><sign>F</sign><line>4</line></clef><transpose>',
    );
    const folder = folderWith({ 'part.musicxml': bass });
    const harmonic = (notation: string) => firstNote(folder, '--bass-clef', notation);
    // Old notation is written an octave low (grove1879, p. 750): C3 is then C4, fingered 2 (smalley).
    expect(await harmonic('old')).toMatchObject({ written: 'C3', valves: '2', harmonic: 5, verdict: 'sure' });
    expect((await harmonic('new')).harmonic).toBeLessThan(5);
  });

  test('--hand-offset and --tolerance move what is in tune', async () => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const noteWith = (...args: string[]) => firstNote(folder, ...args);
    expect(await noteWith()).toMatchObject({ deviationCents: 0, verdict: 'sure' });
    expect(await noteWith('--hand-offset', '-10')).toMatchObject({ verdict: 'sure' });
    expect(await noteWith('--hand-offset', '60', '--tolerance', '0')).toMatchObject({
      verdict: 'impossible',
      valves: null,
    });
  });
});

/** What check says, as data, of the first note of `part.musicxml`, on a single horn in F. */
async function firstNote(folder: string, ...options: readonly string[]) {
  const args = ['check', 'part.musicxml', '--format', 'json', '--horn', 'single-f', ...options];
  return JSON.parse((await bellhandHere(folder, args)).stdout).parts[0].notes[0];
}
