import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandLineWords, LANGUAGES } from '../../core/index.ts';
import { bellhand, folderWith, score, textOf } from './bellhand.ts';

describe('in the reader’s language', () => {
  const PART = { 'part.musicxml': score(['C5+', 'E5', 'F2+', 'Bb4+']) };

  test.each([
    ['de', 'gestopfte Töne', 'zu tief'],
    ['fr', 'notes bouchées', 'trop grave'],
    ['it', 'note chiuse', 'troppo grave'],
    ['es', 'notas tapadas', 'demasiado grave'],
  ])(
    '--language %s tells and writes in it, the files of the system’s language too',
    (language, told, mark) => {
      const folder = folderWith(PART);
      const asked = bellhand(folder, [
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
        bellhand(folder, ['annotate', 'part.musicxml', '-o', 'b.musicxml'], '', { ...rest, ...env });
        expect(textOf(folder, 'b.musicxml')).toBe(textOf(folder, 'a.musicxml'));
      }
      const check = bellhand(folder, ['check', 'part.musicxml', '--language', language]);
      expect(check.stdout).toContain(told);
      expect(check.stdout).not.toMatch(/stopped|sounding|too low/);
    },
  );

  test('--note-names names notes otherwise than the language does', () => {
    const folder = folderWith(PART);
    const marks = (...args: string[]) => {
      bellhand(folder, ['annotate', 'part.musicxml', '-o', 'a.musicxml', ...args]);
      return [...textOf(folder, 'a.musicxml').matchAll(/\n([^\n<]*)<\/words>/g)].map((match) =>
        match[1]!.trim(),
      );
    };
    const english = marks();
    expect(english[0]).toBe('B 2');
    expect(marks('--note-names', 'german')[0]).toBe('H 2');
    expect(marks('--language', 'de')[0]).toBe('H 2');
    expect(marks('--language', 'de', '--note-names', 'english')[0]).toBe('B 2');
    expect(marks('--language', 'fr')[0]).toBe('si 2');
  });

  test('clear takes out marks in every naming', () => {
    const folder = folderWith(PART);
    for (const [language, names] of [
      ['de', 'german'],
      ['fr', 'solfege'],
      ['es', 'english'],
    ] as const) {
      bellhand(folder, [
        ...['annotate', 'part.musicxml', '-o', 'a.musicxml', '--language', language, '--note-names', names],
      ]);
      expect(textOf(folder, 'a.musicxml')).not.toBe(PART['part.musicxml']);
      bellhand(folder, ['clear', 'a.musicxml', '-o', 'b.musicxml']);
      expect(textOf(folder, 'b.musicxml')).toBe(PART['part.musicxml']);
    }
  });

  test('data stays English', () => {
    const folder = folderWith(PART);
    const json = (...args: string[]) =>
      bellhand(folder, ['check', 'part.musicxml', '--format', 'json', ...args]).stdout;
    expect(json('--language', 'de')).toBe(json());
    const note = (...args: string[]) =>
      bellhand(folder, ['explain', 'C5', '--format', 'json', ...args]).stdout;
    expect(note('--language', 'fr')).toBe(note());
  });

  test('help and faults are in the language too, options and commands as ever', () => {
    const folder = folderWith(PART);
    const help = bellhand(folder, ['annotate', '--help', '--language', 'de']).stdout;
    for (const word of ['Aufruf:', 'Optionen:', 'sonst: double', '--in-place', '--note-names'])
      expect(help).toContain(word);
    const fault = (...args: string[]) => bellhand(folder, args).stderr;
    expect(fault('check', 'no.musicxml', '--language', 'fr')).toContain('ce fichier n’existe pas');
    writeFileSync(join(folder, 'cut.musicxml'), '<score-partwise><part');
    expect(fault('check', 'cut.musicxml', '--language', 'de')).toMatch(
      /^bellhand: cut\.musicxml: Zeile 1, Spalte \d+: die Datei bricht ab \(.*\): noch einmal holen oder exportieren\n$/,
    );
    const curve = bellhand(folder, ['explain', 'C5', '--curve', '--language', 'fr']).stdout;
    expect(curve).toMatch(/Harmonique \d+, ouverte à \d+,\d Hz ; cents depuis la note ouverte/);
    expect(fault('explain', 'Q5', '--language=it')).toContain('«Q5» non è una nota');
    expect(fault('explian', '--language', 'es')).toContain('orden desconocida «explian» (¿Quizá explain?)');
    expect(fault('check', 'part.musicxml', '--language', 'xx')).toContain('Choose one of en, de, fr, it');
  });

  test('general options stand before the command as well as after it, in every language', () => {
    const folder = folderWith(PART);
    for (const language of LANGUAGES) {
      const after = bellhand(folder, [
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
        expect(bellhand(folder, before)).toEqual(after);
      expect(after.stdout).toContain('H ');
      const help = bellhand(folder, ['check', '--help', '--language', language]).stdout;
      expect(help).toContain('--language <language>');
      expect(bellhand(folder, ['--language', language, 'check', '--help']).stdout).toBe(help);
      expect(bellhand(folder, ['--language', language, 'help', 'check']).stdout).toBe(help);
      expect(help).toContain(`\n${commandLineWords({ language }).help.generalOptions}\n`);
    }
    expect(bellhand(folder, ['--', '--language', 'de']).stderr).toContain("unknown command '--language'");
  });

  test('what stands in the wrong place, or is no command, is told as that', () => {
    const folder = folderWith(PART);
    const fault = (...args: string[]) => bellhand(folder, args);
    expect(fault('--jobs', '2', 'check', 'part.musicxml')).toEqual({
      exit: 2,
      stdout: '',
      stderr: "bellhand: option '--jobs' goes after the command 'check' (see: bellhand check --help)\n",
    });
    expect(fault('--jbos', '2', 'check', 'part.musicxml').stderr).toContain("unknown option '--jbos'");
    expect(fault('help', 'nothing').stderr).toContain("unknown command 'nothing'");
    expect(fault('--language', 'xx', 'check', 'part.musicxml').stderr).toContain('Choose one of en, de');
    expect(fault('check', 'part.musicxml', '--language').stderr).toContain('(see: bellhand check --help)');
    const bare = fault();
    expect(bare.exit).toBe(2);
    expect(bare.stderr).toBe(fault('--help').stdout);
  });
});
