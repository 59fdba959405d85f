/** `bellhand etude`, `lesson` and `course`. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ETUDE_KINDS } from '../../core/index.ts';
import { bellhand, bellhandHere, folderWith, textOf } from '../batch/bellhand.ts';

describe('bellhand etude', () => {
  it.each(ETUDE_KINDS.map(({ kind }) => kind))(
    'writes a %s that check finds fault with nowhere',
    async (kind) => {
      const folder = folderWith();
      const made = await bellhandHere(folder, [
        'etude',
        '--kind',
        kind,
        '--seed',
        '4',
        '--level',
        '2',
        '--key',
        'Bb',
      ]);
      expect(made.stderr).toBe('');
      expect(made.exit).toBe(0);
      expect(made.stdout).toMatch(
        /^etude-\w+-4\.musicxml: .+ \(Horn in F\. Level 2, seed 4, difficulty \d+\. .+ Double horn in F and B♭\. B♭ major, .+ No risky note\.\)\n$/,
      );
      const checked = await bellhandHere(folder, ['check', '--format', 'json', `etude-${kind}-4.musicxml`]);
      expect(checked.exit).toBe(0);
      expect(JSON.parse(checked.stdout).findings).toEqual([]);
    },
  );

  it('draws a seed, tells it, and makes the same étude from it again', async () => {
    const folder = folderWith();
    const seed = /seed (\d+)/.exec((await bellhandHere(folder, ['etude', '--kind', 'phrase'])).stdout)![1]!;
    const [name] = readdirSync(folder);
    expect(name).toBe(`etude-phrase-${seed}.musicxml`);
    await bellhandHere(folder, ['etude', '--kind', 'phrase', '--seed', seed, '-o', 'again.musicxml']);
    expect(textOf(folder, 'again.musicxml')).toBe(textOf(folder, name!));
  });

  it('writes the same bars without fingerings for the student', async () => {
    const folder = folderWith();
    const args = ['etude', '--kind', 'scale', '--seed', '3'];
    await bellhandHere(folder, [...args, '-o', 'marked.musicxml']);
    await bellhandHere(folder, [...args, '--copy', 'plain', '-o', 'plain.musicxml']);
    await bellhandHere(folder, ['clear', 'marked.musicxml', '-o', 'cleared.musicxml']);
    const notes = (name: string) => textOf(folder, name).match(/<note[\s\S]*<\/part>/)![0];
    expect(notes('plain.musicxml')).toBe(notes('cleared.musicxml'));
    expect(notes('plain.musicxml')).not.toBe(notes('marked.musicxml'));
  });

  it('says what a low range costs, and takes the bass clef there', async () => {
    const folder = folderWith();
    const made = await bellhandHere(folder, [
      'etude',
      '--kind',
      'match',
      '--level',
      '2',
      '--range',
      'D3-D4',
      '--seed',
      '2',
    ]);
    expect(made.stdout).toMatch(/\d+ risky notes? \(blue, ≈\), where the tone may slip up/);
    expect(textOf(folder, 'etude-match-2.musicxml')).toContain('<sign>F</sign>');
    const hopeless = await bellhandHere(folder, ['etude', '--kind', 'match', '--range', 'C2-F2']);
    expect([hopeless.exit, hopeless.stderr]).toEqual([
      2,
      expect.stringMatching(/has no .*: choose a wider range/),
    ]);
  });

  it('writes the score alone to standard output', () => {
    const { stdout, stderr } = bellhand(folderWith(), ['etude', '--kind', 'scale', '--seed', '1', '-o', '-']);
    expect(stdout).toMatch(/^<\?xml[\s\S]+<\/score-partwise>\n$/);
    expect(stderr).toMatch(/^bellhand: -: /);
  });

  it('keeps to range, bars and tempo', async () => {
    const args = ['etude', '--kind', 'change', '--range', 'E4-B4', '--bars', '8', '--tempo', '50', '-o', '-'];
    const { stdout } = await bellhandHere(folderWith(), args);
    expect(stdout.match(/<measure /g)).toHaveLength(8);
    expect(stdout).toContain('<per-minute>50</per-minute>');
    const pitches = [...stdout.matchAll(/<step>(.)<\/step>(?:\s*<alter>.*?<\/alter>)?\s*<octave>(\d)/g)];
    expect(pitches.length).toBeGreaterThan(8);
    for (const [, step, octave] of pitches) {
      expect(octave).toBe('4');
      expect('EFGAB').toContain(step);
    }
  });

  it.each([
    [[], /required option '--kind <kind>'/],
    [['--kind', 'polka'], /Choose one of seal, match, bend, .*scale/],
    [['--kind', 'match', '--bars', '9'], /Give a multiple of 4 from 4 to 64/],
    [['--kind', 'match', '--key', 'H'], /"H" is not a key/],
    [['--kind', 'match', '--range', 'G5-C4'], /Name the lower note first/],
    [['--kind', 'match', '--range', 'C4'], /Give two notes/],
    [['--kind', 'match', '--seed', '-1'], /Give a whole number from 0/],
    [['--kind', 'match', '--level', '5'], /Choose one of 1, 2 or 3/],
    [['--kind', 'match', '--tempo', 'fast'], /from 40 to 132/],
    [['--kind', 'bend', '--range', 'C6-G6'], /choose a wider range/],
    [['--kind', 'match', '-o', 'none/here.musicxml'], /cannot be written/],
  ])('refuses %j in one line and writes nothing', async (args, message) => {
    const folder = folderWith();
    const run = await bellhandHere(folder, ['etude', ...args]);
    expect(run.exit).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
    expect(run.stderr).toMatch(message);
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('bellhand lesson', () => {
  it.each(['1', '2', '3'])(
    'writes a page of level %s that check finds nothing impossible in',
    async (level) => {
      const folder = folderWith();
      const made = await bellhandHere(folder, ['lesson', '--level', level, '--seed', '4']);
      expect([made.exit, made.stderr]).toEqual([0, '']);
      const name = `lesson-${level}-4.musicxml`;
      expect(readdirSync(folder)).toEqual([name]);
      const checked = await bellhandHere(folder, ['check', '--format', 'json', name]);
      expect(checked.exit).toBe(0);
      const findings = JSON.parse(checked.stdout).findings as { severity: string }[];
      expect(findings.filter(({ severity }) => severity === 'impossible')).toEqual([]);
      if (level !== '3') expect(findings).toEqual([]);
      const numbers = [...textOf(folder, name).matchAll(/font-weight="bold">(\d) {3}</g)].map(
        ([, number]) => number,
      );
      expect(numbers.length).toBeGreaterThanOrEqual(5);
      expect(numbers).toEqual(numbers.map((_, i) => String(i + 1)));
    },
  );

  it('refuses what is no level in one line', async () => {
    const run = await bellhandHere(folderWith(), ['lesson', '--level', '4']);
    expect([run.exit, run.stderr]).toEqual([2, expect.stringMatching(/^bellhand: [^\n]+1, 2 or 3[^\n]*\n$/)]);
  });
});

describe('bellhand course', () => {
  it('writes a sheet a week into a folder, and tells of each', async () => {
    const folder = folderWith();
    const made = await bellhandHere(folder, ['course', '--weeks', '3', '--seed', '7']);
    expect([made.exit, made.stderr]).toEqual([0, '']);
    expect(readdirSync(`${folder}/course-7`)).toEqual([
      'week-01.musicxml',
      'week-02.musicxml',
      'week-03.musicxml',
    ]);
    expect(made.stdout.match(/difficulty \d+/g)).toHaveLength(3);
    expect(textOf(folder, 'course-7/week-02.musicxml')).toContain('Week 2');
  });

  it('refuses no weeks in one line', async () => {
    const run = await bellhandHere(folderWith(), ['course', '--weeks', '0']);
    expect([run.exit, run.stderr]).toEqual([2, expect.stringMatching(/^bellhand: [^\n]+\n$/)]);
  });
});
