/** Études in the editor: the same text from its script engine as from Node, and a score that it opens. */
import { execFile } from 'node:child_process';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { runInNewContext } from 'node:vm';
import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { editorScript } from '../../build/bundle.ts';
import { ETUDE_KINDS } from '../../core/etude/kinds.ts';
import type { EtudeWish, WishedEtude } from '../../plugin/etude/etudeOnWish.ts';
import { wished } from './etudeEntry.ts';
import { freshProfile, PROGRAM_3 } from './rig/host3.ts';
import { skipLoudly } from './rig/programs.ts';

const ENTRY = fileURLToPath(new URL('etudeEntry.ts', import.meta.url));
const WISH: EtudeWish = {
  kind: 'change',
  key: 'F',
  level: 2,
  bars: 16,
  tempo: null,
  low: null,
  high: null,
  seed: 3,
};
const KEYS = ['C', 'F', 'D', 'Gm', 'Bb'];
const WISHES = [...ETUDE_KINDS.map(({ kind }) => kind), 'lesson' as const].map(
  (kind, i): EtudeWish => ({ ...WISH, kind, key: KEYS[i % KEYS.length]!, seed: i }),
);
/** What both engines must come to, and the script that they are given. */
const COMPOSED = WISHES.map((wish) => wished(wish, 'double'));
const SCRIPT = editorScript(ENTRY);

describe('an étude on wish', () => {
  it('comes from a script that has nothing but the language', async () => {
    const sandbox: { made: unknown; wishes: unknown } = { made: null, wishes: WISHES };
    runInNewContext(
      `${await SCRIPT}; made = wishes.map((wish) => Bellhand.wished(wish, 'double'));`,
      sandbox,
    );
    expect(JSON.parse(JSON.stringify(sandbox.made))).toEqual(COMPOSED);
  });

  it.each([
    [{ ...WISH, key: 'H' }, /"H" is not a key/],
    [{ ...WISH, bars: 7 }, /"bars" must be a multiple of 4/],
    [{ ...WISH, low: 'X' }, /"X" is not a note name/],
    [{ ...WISH, low: 'C2', high: 'E2' }, /choose a wider range/],
  ])('says in a sentence what is wrong: %o', (wish, reason) => {
    expect(wished(wish, 'double')).toEqual({ ok: false, reason: expect.stringMatching(reason) });
  });
});

if (!PROGRAM_3) {
  skipLoudly(
    'études in the real editor, which is not installed',
    'apt-get install --no-install-recommends musescore3',
  );
  describe.skip('in the real editor', () => it('needs the editor', () => {}));
} else {
  describe('in the real editor', () => {
    it('is composed by its engine to the letter, opened, and written out again whole', async () => {
      const { folder, env } = await freshProfile();
      try {
        await writeFile(join(folder, 'etude.js'), await SCRIPT);
        await writeFile(join(folder, 'compose.qml'), composer(folder));
        const [start] = COMPOSED as [WishedEtude];
        await writeFile(join(folder, 'start.musicxml'), start.ok ? start.text : '');
        await promisify(execFile)(
          PROGRAM_3!,
          ['-p', join(folder, 'compose.qml'), join(folder, 'start.musicxml')],
          {
            env: { ...env, QT_QPA_PLATFORM: 'offscreen' },
            timeout: 60_000,
          },
        );
        for (const [i, wish] of WISHES.entries()) {
          const expected = COMPOSED[i]!;
          if (!expected.ok) throw new Error(expected.reason);
          const composed = await readFile(join(folder, `${i}.musicxml`), 'utf8');
          expect(composed).toBe(expected.text);
          const written = await readFile(join(folder, `${i}-again.musicxml`), 'utf8');
          expect(contents(written), wish.kind).toEqual(contents(expected.text));
        }
      } finally {
        await rm(folder, { recursive: true, force: true });
      }
    });
  });
}

/** Composes every wish, writes it, opens it and writes what was opened. */
function composer(folder: string): string {
  return `
import QtQuick 2.9
import MuseScore 3.0
import FileIO 3.0
import "etude.js" as Script
MuseScore {
  menuPath: "Plugins.compose"
  FileIO { id: file }
  onRun: {
    var wishes = ${JSON.stringify(WISHES)};
    try {
      for (var i = 0; i < wishes.length; i++) {
        file.source = ${JSON.stringify(folder)} + "/" + i + ".musicxml";
        file.write(Script.Bellhand.wished(wishes[i], "double").text);
        var score = readScore(file.source);
        writeScore(score, ${JSON.stringify(folder)} + "/" + i + "-again", "musicxml");
      }
    } catch (fault) {
      file.source = ${JSON.stringify(folder)} + "/fault.txt";
      file.write(String(fault));
    }
    Qt.quit();
  }
}
`;
}

/** What must survive: every note with its length and sign, every mark, title, tempo and measure. */
function contents(text: string): unknown {
  const document = new DOMParser().parseFromString(text, 'text/xml');
  const all = (name: string) => [...document.getElementsByTagName(name)];
  const child = (parent: ReturnType<typeof all>[number], name: string) =>
    parent.getElementsByTagName(name)[0]?.textContent ?? '';
  const divisions = Number(all('divisions')[0]!.textContent);
  return {
    title: all('work-title')[0]?.textContent,
    tempo: all('sound')
      .map((sound) => sound.getAttribute('tempo'))
      .filter(Boolean),
    measures: all('measure').length,
    notes: all('note').map((note) => [
      child(note, 'step') + child(note, 'alter') + child(note, 'octave'),
      Math.round((48 * Number(child(note, 'duration'))) / divisions),
      note.getElementsByTagName('stopped').length,
      note.getElementsByTagName('open-string').length,
    ]),
    slides: all('slide').filter((slide) => slide.getAttribute('type') === 'start').length,
    breaths: all('breath-mark').length,
    texts: all('words')
      .map((words) => words.textContent)
      .filter((words) => words?.startsWith('\u2060'))
      // The editor writes a second line as a text of its own.
      .map((words) => words!.split('\n')[0])
      .sort(),
  };
}
