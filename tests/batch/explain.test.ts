/** `explain` tells how one note is played: its fingering, natural pitch and drop, and the curve as the hand closes. */
import { describe, expect, test } from 'vitest';
import { bellhandHere, folderWith, textOf } from './bellhand.ts';

describe('explain', () => {
  test('says what a stopping valve does, and what to finger with it', async () => {
    const said = async (horn: string) =>
      (await bellhandHere(folderWith(), ['explain', 'C5', '--horn', horn])).stdout;
    expect(await said('double-stop-valve')).toMatch(
      /\n {2}stopping valve {3}pressed: it lowers the horn by 150 cents, .*finger the note as written\n/,
    );
    expect(await said('double')).not.toContain('stopping valve');
  });

  // smalley: the F-horn chart, all 18 rows; fingered a semitone below on the F side: common practice, no source.
  test.each([
    ['F5', '0', 'E5'],
    ['E5', '2', 'Eb5'],
    ['Eb5', '0', 'D5'],
    ['D5', '2', 'C#5'],
    ['Db5', '0', 'C5'],
    ['C5', '2', 'B4'],
    ['B4', '1', 'Bb4'],
    ['Bb4', '12', 'A4'],
    ['A4', '23', 'Ab4'],
    ['Ab4', '0', 'G4'],
    ['G4', '2', 'F#4'],
    ['F#4', '1', 'F4'],
    ['F4', '0', 'E4'],
    ['E4', '2', 'Eb4'],
    ['Eb4', '1', 'D4'],
    ['D4', '12', 'C#4'],
    ['Db4', '0', 'C4'],
    ['C4', '2', 'B3'],
  ])('%s on the F side: %s', async (note, valves, fingered) => {
    const run = await bellhandHere(folderWith(), ['explain', note, '--horn', 'single-f', '--format', 'json']);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    expect(JSON.parse(run.stdout)).toMatchObject({
      written: note,
      valves,
      fingered,
      side: 'F',
      state: 'stopped',
    });
  });

  test('tells fingering, natural pitch, drop and the other ways', async () => {
    const { exit, stdout } = await bellhandHere(folderWith(), ['explain', 'C5']);
    expect(exit).toBe(0);
    expect(stdout).toContain('C5 stopped, on a double horn in F and B♭: sure');
    expect(stdout).toMatch(/finger +B4, F horn 2/);
    expect(stdout).toMatch(/natural pitch +C♯5, harmonic 9/);
    expect(stdout).toMatch(/drop +104 cents/);
    // smalley: C5 on the B♭ side is T23, with the 8th harmonic.
    expect(stdout).toMatch(/^ +\S+ +T23 +B♭ +8 /m);
  });

  test('--key reads the note in another key', async () => {
    // Written C5 for horn in E♭ sounds as written B♭4 for horn in F, which is 12: smalley.
    const run = await bellhandHere(folderWith(), [
      'explain',
      'C5',
      '--key',
      'Eb',
      '--horn',
      'single-f',
      '--format',
      'json',
    ]);
    expect(JSON.parse(run.stdout)).toMatchObject({ written: 'C5', valves: '12', fingered: 'B4' });
  });

  test.each([
    ['c#5', 'C#5'],
    ['C♯5', 'C#5'],
    ['Db5', 'Db5'],
    ['D♭5', 'Db5'],
  ])('reads the name %s', async (name, written) => {
    expect(
      JSON.parse((await bellhandHere(folderWith(), ['explain', name, '--format', 'json'])).stdout).written,
    ).toBe(written);
  });

  test('--curve shows the pitch as the hand closes, as text and as a picture', async () => {
    const folder = folderWith();
    const run = await bellhandHere(folder, ['explain', 'B4', '--curve']);
    expect(run.exit).toBe(0);
    const cents = [...run.stdout.matchAll(/^ +(\d+) % +(\S+) /gm)].map(([, , value]) =>
      Number(value!.replace('−', '-')),
    );
    expect(cents.length).toBeGreaterThan(10);
    // Closing lowers the tone all the way: common practice, no source.
    expect(cents).toEqual([...cents].sort((a, b) => b - a));
    expect(cents[0]).toBe(0);
    expect(await bellhandHere(folder, ['explain', 'B4', '--curve', 'b4.svg'])).toMatchObject({
      exit: 0,
      stderr: '',
    });
    expect(textOf(folder, 'b4.svg')).toMatch(
      /^<svg [\s\S]*B4 from C5[\s\S]*<\/svg>\n<!-- bellhand curve [0-9a-f]{8} -->\n$/,
    );
  });

  test('--horn takes a file that describes a horn', async () => {
    const horn = { label: 'horn in E♭', sides: [{ name: 'Eb', fundamental: 'Eb1' }] };
    const folder = folderWith({ 'mine.json': JSON.stringify(horn) });
    const run = await bellhandHere(folder, ['explain', 'C5', '--key', 'Eb', '--horn', 'mine.json']);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    // On its own length a horn is fingered as the F horn is: smalley, row C5.
    expect(run.stdout).toMatch(/on a horn in E♭: sure[\s\S]*B4, E♭ horn 2/);
  });

  test('--names f-horn names notes as a player of the F horn reads them', async () => {
    const run = await bellhandHere(folderWith(), [
      'explain',
      'C5',
      '--key',
      'Eb',
      '--names',
      'f-horn',
      '--format',
      'json',
    ]);
    // Written C5 for horn in E♭ sounds as written B♭4 for horn in F: fingered A, 12 (smalley).
    expect(JSON.parse(run.stdout)).toMatchObject({ written: 'C5', fingered: 'A4', valves: '12' });
  });

  // Hand positions on one fingering: smalley. Echo sounds a semitone below the fingered note.
  test('--hand echo fingers a semitone higher', async () => {
    const run = await bellhandHere(folderWith(), [
      'explain',
      'F#4',
      '--hand',
      'echo',
      '--horn',
      'single-f',
      '--format',
      'json',
    ]);
    expect(JSON.parse(run.stdout)).toMatchObject({ state: 'echo', fingered: 'G4', valves: '0' });
  });
});
