/** What each command does with good input, run as a user runs it. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith, score, textOf } from './bellhand.ts';

/** Stopped C5 is fingered B with valve 2 over the natural C♯: smalley, row C5 of the F-horn chart. */
const SURE = score(['C5+', 'E5']);
/** F2 is a fifth below the lowest stopped note a lip can force; common practice, no source. */
const IMPOSSIBLE = score(['C5+', 'F2+']);

describe('annotate', () => {
  test('writes a new file beside the input and leaves the input alone', () => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const run = bellhand(folder, ['annotate', 'part.musicxml']);
    expect(run).toEqual({ exit: 0, stdout: 'part.marked.musicxml: 1 stopped note: 1 sure\n', stderr: '' });
    expect(textOf(folder, 'part.musicxml')).toBe(SURE);
    expect(textOf(folder, 'part.marked.musicxml')).toContain('(C♯)\nB 2');
    expect(readdirSync(folder).sort()).toEqual(['part.marked.musicxml', 'part.musicxml']);
  });

  test('ends with 0 for an impossible note, and says so on standard error', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    const run = await bellhandHere(folder, ['annotate', 'part.musicxml']);
    expect(run.exit).toBe(0);
    expect(run.stdout).toBe('part.marked.musicxml: 2 stopped notes: 1 sure, 1 impossible\n');
    expect(run.stderr).toMatch(
      /^bellhand: part\.musicxml: 1 note cannot be played as written, in bar 1: .*\n$/,
    );
    expect(textOf(folder, 'part.marked.musicxml')).toContain('color="#D55F00"');
  });

  test.each([
    { what: 'a file', output: 'out.xml', made: 'out.xml' },
    { what: 'a folder that exists', output: '.', made: null },
    { what: 'a folder that does not exist yet', output: 'new/deep/', made: 'new/deep/part.musicxml' },
  ])('-o takes $what', async ({ output, made }) => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const run = await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', output]);
    if (made === null) {
      // The folder is the input's own, so the result would fall onto it.
      expect(run.exit).toBe(2);
      expect(run.stderr).toContain('would overwrite an input');
    } else {
      expect(run).toMatchObject({ exit: 0, stderr: '' });
      expect(textOf(folder, made)).toContain('(C♯)\nB 2');
    }
    expect(textOf(folder, 'part.musicxml')).toBe(SURE);
  });

  test('reads standard input and writes standard output for -', () => {
    const folder = folderWith();
    const run = bellhand(folder, ['annotate', '-'], SURE);
    expect(run.exit).toBe(0);
    expect(run.stdout).toContain('(C♯)\nB 2');
    expect(run.stdout).toMatch(/<\/score-partwise>\n$/);
    expect(run.stderr).toBe('bellhand: -: 1 stopped note: 1 sure\n');
    const back = bellhand(folder, ['clear', '-'], run.stdout);
    expect(back.stdout).toBe(SURE);
  });

  test.each<{ args: string[]; has: string[]; lacks: string[] }>([
    { args: ['--show', 'natural'], has: ['(C♯)</words>'], lacks: ['B 2', 'color='] },
    { args: ['--show', 'fingered,valves'], has: ['B 2</words>'], lacks: ['(C♯)', 'color='] },
    { args: ['--show', 'valves,verdict'], has: ['2</words>', '× too low'], lacks: ['B 2', '(C♯)', 'color='] },
    { args: ['--show', 'colour'], has: ['color="#D55F00"'], lacks: ['B 2', '(C♯)', '×'] },
    { args: ['--valves-as', 'fingering'], has: ['<fingering>', '(C♯)\nB</words>'], lacks: ['B 2'] },
    {
      args: ['--show', 'valves', '--valves-as', 'fingering'],
      has: ['2</fingering>'],
      lacks: ['<words', '(C♯)', 'color='],
    },
    // smalley: C5 is T23 on the B♭ side; a single B♭ horn has no thumb valve to name.
    { args: ['--horn', 'single-bflat'], has: ['(C♯)\nC♯ 23'], lacks: ['B 2'] },
    { args: ['--horn', 'double-stop-valve'], has: ['(C♯)\nC T0'], lacks: ['B 2'] },
  ])('$args', async ({ args, has, lacks }) => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    expect((await bellhandHere(folder, ['annotate', 'part.musicxml', ...args])).exit).toBe(0);
    const marked = textOf(folder, 'part.marked.musicxml');
    for (const text of has) expect(marked).toContain(text);
    for (const text of lacks) expect(marked).not.toContain(text);
  });

  test('--complete adds the signs and the cancelling word that are missing, and clear takes them out', async () => {
    const worded = score(['C5', 'D5', 'G4', 'G4', 'G4', 'G4'])
      .replace(
        '<note>',
        '<direction><direction-type><words>chiuso</words></direction-type></direction><note>',
      )
      // Two bars of rest, after which a horn player opens unless told otherwise; common practice, no source.
      .replace('<measure number="2">', `${restMeasure('1a')}${restMeasure('1b')}<measure number="2">`);
    const folder = folderWith({ 'part.musicxml': worded });
    const run = await bellhandHere(folder, ['annotate', 'part.musicxml', '--complete']);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    expect(run.stdout).toBe('part.marked.musicxml: 2 stopped notes: 2 sure; added 2 signs and 1 word\n');
    const marked = textOf(folder, 'part.marked.musicxml');
    expect(marked.match(/<stopped\/>/g)).toHaveLength(2);
    expect(marked.match(/aperto<\/words>/g)).toHaveLength(1);
    expect(marked.indexOf('aperto')).toBeGreaterThan(marked.indexOf('1b'));
    await bellhandHere(folder, ['annotate', 'part.marked.musicxml', '--complete', '-o', 'again.musicxml']);
    expect(textOf(folder, 'again.musicxml')).toBe(marked);
    await bellhandHere(folder, ['clear', 'part.marked.musicxml']);
    expect(textOf(folder, 'part.cleared.musicxml')).toBe(worded);
  });

  test('repeats are left out unless they are asked for', async () => {
    const folder = folderWith({ 'part.musicxml': score(['C5+', 'C5+', 'C5+', 'B4+']) });
    const texts = async (...args: string[]) => {
      await bellhandHere(folder, ['annotate', 'part.musicxml', ...args]);
      return textOf(folder, 'part.marked.musicxml').match(/<words/g);
    };
    // A bar says anew what the bar before said.
    expect(await texts()).toHaveLength(3);
    expect(await texts('--repeat', 'all')).toHaveLength(4);
  });

  test('annotating twice changes nothing more', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', 'once.musicxml']);
    await bellhandHere(folder, ['annotate', 'once.musicxml', '-o', 'twice.musicxml']);
    expect(textOf(folder, 'twice.musicxml')).toBe(textOf(folder, 'once.musicxml'));
  });
});

describe('clear', () => {
  test('gives back the file as it was, under a name of its own', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    await bellhandHere(folder, ['annotate', 'part.musicxml']);
    const run = await bellhandHere(folder, ['clear', 'part.marked.musicxml']);
    expect(run).toEqual({ exit: 0, stdout: 'part.cleared.musicxml: marks taken out\n', stderr: '' });
    expect(textOf(folder, 'part.cleared.musicxml')).toBe(IMPOSSIBLE);
  });

  test('says so when there was nothing to take out', async () => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const run = await bellhandHere(folder, ['clear', 'part.musicxml']);
    expect(run.stdout).toBe('part.cleared.musicxml: there were no marks to take out\n');
    expect(textOf(folder, 'part.cleared.musicxml')).toBe(SURE);
  });
});

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

describe('help', () => {
  test.each([['--help'], ['help', 'annotate'], ['check', '--help']])('%s ends with 0', async (...args) => {
    const run = await bellhandHere(folderWith(), args);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    expect(run.stdout.length).toBeGreaterThan(4);
  });

  test('--version ends with 0', () => {
    expect(bellhand(folderWith(), ['--version'])).toEqual({
      exit: 0,
      stdout: expect.stringMatching(/^\d+\.\d+\.\d+\n$/),
      stderr: '',
    });
  });
});

function restMeasure(number: string): string {
  return `<measure number="${number}"><note><rest measure="yes"/><duration>4</duration><voice>1</voice></note></measure>`;
}

/** What check says, as data, of the first note of `part.musicxml`, on a single horn in F. */
async function firstNote(folder: string, ...options: readonly string[]) {
  const args = ['check', 'part.musicxml', '--format', 'json', '--horn', 'single-f', ...options];
  return JSON.parse((await bellhandHere(folder, args)).stdout).parts[0].notes[0];
}
