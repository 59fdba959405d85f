import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandLineWords, LANGUAGES } from '../../core/index.ts';
import { bellhand, bellhandHere, folderWith, score, textOf } from './bellhand.ts';

describe('in the reader’s language', () => {
  const PART = { 'part.musicxml': score(['C5+', 'E5', 'F2+', 'Bb4+']) };

  test.each([
    ['de', 'gestopfte Töne', 'zu tief'],
    ['fr', 'notes bouchées', 'trop grave'],
    ['it', 'note chiuse', 'troppo grave'],
    ['es', 'notas tapadas', 'demasiado grave'],
  ])(
    '--language %s tells and writes in it, the files of the system’s language too',
    async (language, told, mark) => {
      const folder = folderWith(PART);
      const asked = await bellhandHere(folder, [
        'annotate',
        'part.musicxml',
        '--language',
        language,
        '-o',
        'a.musicxml',
      ]);
      expect(asked.stdout).toContain(told);
      expect(textOf(folder, 'a.musicxml')).toContain(`× ${mark}`);
      for (const env of [{ LANG: `${language}_XX.UTF-8` }, { LANG: 'en_GB', LC_ALL: language }]) {
        const { LC_ALL: _, LC_MESSAGES: __, ...rest } = process.env;
        await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', 'b.musicxml'], '', {
          ...rest,
          ...env,
        });
        expect(textOf(folder, 'b.musicxml')).toBe(textOf(folder, 'a.musicxml'));
      }
      const check = await bellhandHere(folder, ['check', 'part.musicxml', '--language', language]);
      expect(check.stdout).toContain(told);
      expect(check.stdout).not.toMatch(/stopped|sounding|too low/);
    },
  );

  test('a process asks its own environment', () => {
    const { stderr } = bellhand(folderWith(), ['check', 'no.musicxml'], '', { ...process.env, LC_ALL: 'it' });
    expect(stderr).toContain('questo file non esiste');
  });

  test('--note-names names notes otherwise than the language does', async () => {
    const folder = folderWith(PART);
    const marks = async (...args: string[]) => {
      await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', 'a.musicxml', ...args]);
      return [...textOf(folder, 'a.musicxml').matchAll(/\n([^\n<]*)<\/words>/g)].map((match) =>
        match[1]!.trim(),
      );
    };
    const english = await marks();
    expect(english[0]).toBe('B 2');
    expect((await marks('--note-names', 'german'))[0]).toBe('H 2');
    expect((await marks('--language', 'de'))[0]).toBe('H 2');
    expect((await marks('--language', 'de', '--note-names', 'english'))[0]).toBe('B 2');
    expect((await marks('--language', 'fr'))[0]).toBe('si 2');
  });

  test('clear takes out marks in every naming', async () => {
    const folder = folderWith(PART);
    for (const [language, names] of [
      ['de', 'german'],
      ['fr', 'solfege'],
      ['es', 'english'],
    ] as const) {
      await bellhandHere(folder, [
        ...['annotate', 'part.musicxml', '-o', 'a.musicxml', '--language', language, '--note-names', names],
      ]);
      expect(textOf(folder, 'a.musicxml')).not.toBe(PART['part.musicxml']);
      await bellhandHere(folder, ['clear', 'a.musicxml', '-o', 'b.musicxml']);
      expect(textOf(folder, 'b.musicxml')).toBe(PART['part.musicxml']);
    }
  });

  test('data stays English', async () => {
    const folder = folderWith(PART);
    const json = async (...args: string[]) =>
      (await bellhandHere(folder, ['check', 'part.musicxml', '--format', 'json', ...args])).stdout;
    expect(await json('--language', 'de')).toBe(await json());
    const note = async (...args: string[]) =>
      (await bellhandHere(folder, ['explain', 'C5', '--format', 'json', ...args])).stdout;
    expect(await note('--language', 'fr')).toBe(await note());
  });

  test('help and faults are in the language too, options and commands as ever', async () => {
    const folder = folderWith(PART);
    const help = (await bellhandHere(folder, ['annotate', '--help', '--language', 'de'])).stdout;
    for (const word of ['Aufruf:', 'Optionen:', 'sonst: double', '--in-place', '--note-names'])
      expect(help).toContain(word);
    const fault = async (...args: string[]) => (await bellhandHere(folder, args)).stderr;
    expect(await fault('check', 'no.musicxml', '--language', 'fr')).toContain('ce fichier n’existe pas');
    writeFileSync(join(folder, 'cut.musicxml'), '<score-partwise><part');
    expect(await fault('check', 'cut.musicxml', '--language', 'de')).toMatch(
      /^bellhand: cut\.musicxml: Zeile 1, Spalte \d+: die Datei bricht ab \(.*\): noch einmal holen oder exportieren\n$/,
    );
    const curve = (await bellhandHere(folder, ['explain', 'C5', '--curve', '--language', 'fr'])).stdout;
    expect(curve).toMatch(/Harmonique \d+, ouverte à \d+,\d Hz ; cents depuis la note ouverte/);
    expect(await fault('explain', 'Q5', '--language=it')).toContain('«Q5» non è una nota');
    expect(await fault('explian', '--language', 'es')).toContain(
      'orden desconocida «explian» (¿Quizá explain?)',
    );
    expect(await fault('check', 'part.musicxml', '--language', 'xx')).toContain(
      'Choose one of en, de, fr, it',
    );
  });

  test('general options stand before the command as well as after it, in every language', async () => {
    const folder = folderWith(PART);
    for (const language of LANGUAGES) {
      const after = await bellhandHere(folder, [
        'check',
        'part.musicxml',
        '--language',
        language,
        '--note-names',
        'german',
      ]);
      for (const before of [
        ['--language', language, '--note-names', 'german', 'check', 'part.musicxml'],
        [`--language=${language}`, 'check', '--note-names=german', 'part.musicxml'],
      ])
        expect(await bellhandHere(folder, before)).toEqual(after);
      expect(after.stdout).toContain('H ');
      const help = (await bellhandHere(folder, ['check', '--help', '--language', language])).stdout;
      expect(help).toContain('--language <language>');
      expect((await bellhandHere(folder, ['--language', language, 'check', '--help'])).stdout).toBe(help);
      expect((await bellhandHere(folder, ['--language', language, 'help', 'check'])).stdout).toBe(help);
      expect(help).toContain(`\n${commandLineWords({ language }).help.generalOptions}\n`);
    }
    expect((await bellhandHere(folder, ['--', '--language', 'de'])).stderr).toContain(
      "unknown command '--language'",
    );
  });

  test('what stands in the wrong place, or is no command, is told as that', async () => {
    const folder = folderWith(PART);
    const fault = async (...args: string[]) => await bellhandHere(folder, args);
    expect(await fault('--jobs', '2', 'check', 'part.musicxml')).toEqual({
      exit: 2,
      stdout: '',
      stderr: "bellhand: option '--jobs' goes after the command 'check' (see: bellhand check --help)\n",
    });
    expect((await fault('--jbos', '2', 'check', 'part.musicxml')).stderr).toContain(
      "unknown option '--jbos'",
    );
    expect((await fault('help', 'nothing')).stderr).toContain("unknown command 'nothing'");
    expect((await fault('--language', 'xx', 'check', 'part.musicxml')).stderr).toContain(
      'Choose one of en, de',
    );
    expect((await fault('check', 'part.musicxml', '--language')).stderr).toContain(
      '(see: bellhand check --help)',
    );
    const bare = await fault();
    expect(bare.exit).toBe(2);
    expect(bare.stderr).toBe((await fault('--help')).stdout);
  });
});
