/** Words in horn parts that others engraved, read through the MusicXML door. Skips, and says so, without the corpus. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readHandText } from '../../core/part/handWords.ts';
import { examine } from '../../core/rules/examine.ts';
import { openScoreFile } from '../../plugin/musicxml/bytes/scoreFile.ts';
import { readScore } from '../../plugin/musicxml/read/readScore.ts';

// L. Boulanger, D'un matin de printemps; score CC0-1.0, github.com/MarkGotham/Hauptstimme.
const FILE = new URL('../../../shared/corpus/horn/osorch__D_un_matin_de_printemps.mxl', import.meta.url);
const isThere = existsSync(FILE);
if (!isThere) console.warn(`skipped: no ${FILE.pathname}`);

describe.skipIf(!isThere)("D'un matin de printemps: mutes of four horns, printed in French", () => {
  const { horns } = readScore(openScoreFile(readFileSync(FILE)).text);
  const first = horns.find(({ name }) => /horn.*1/i.test(name))!;
  const texts = first.passage.words.map(({ text }) => text);
  const { notes, findings } = examine(first.passage);

  test('the part prints 1 O, for primo, and nothing takes it for an open note', () => {
    const primo = texts.filter((text) => /^1 O\b/.test(text));
    expect(primo.length).toBeGreaterThan(0);
    for (const text of primo) {
      const { effects, sign, player } = readHandText(text);
      expect([sign, player, effects.filter(({ effect }) => effect === 'open')]).toEqual([null, 1, []]);
    }
  });

  test('sourd. puts the mute in, sans sourd. takes it out', () => {
    const inBar = (bar: string) =>
      notes.filter(({ note }) => note.measure === bar).map(({ reading }) => reading.state);
    expect(inBar('16')).toContain('straight-mute');
    const muted = notes.filter(({ reading }) => reading.state === 'straight-mute');
    expect(muted.length).toBeGreaterThan(20);
    // From `sans sourd.` in bar 20 to the next `sourdine` in bar 52 the part is open.
    const between = notes.filter(({ note }) => note.measureIndex > 19 && note.measureIndex < 51);
    expect(between.every(({ reading }) => reading.state === 'open')).toBe(true);
  });

  test('nothing is stopped, so nothing is found against the hand', () => {
    expect(notes.some(({ reading }) => reading.state === 'stopped')).toBe(false);
    expect(findings.filter(({ severity }) => severity !== 'advice')).toEqual([]);
  });
});
