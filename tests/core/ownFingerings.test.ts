/** The player's own fingerings: what is read as one, what is planned around it, and what marks leave to it. */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { marksFor, SHOW_ALL } from '../../core/marks/marks.ts';
import { resultOf } from '../../core/marks/result.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { repaired } from '../../core/repairs/repaired.ts';
import { repairsFor } from '../../core/repairs/repairsFor.ts';
import { examine } from '../../core/rules/examine.ts';

const on = (horn: string) => ({ ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === horn)! });

/** The valves of every note, its own in brackets. */
function valves(text: string, horn = 'double'): string {
  return examine(passageOf(text), on(horn))
    .notes.map(({ own, fingering }) => (own ? `[${fingering?.printed}]` : (fingering?.printed ?? '-')))
    .join(' ');
}

describe('a fingering at a note', () => {
  test.each([
    ['Ab3+', '0'],
    ['Ab3+<13>', '[13]'],
    ['Ab3+<1+3>', '[13]'],
    ['Ab3+<31>', '[13]'],
    ['Ab3+<T123>', '[T123]'],
    ['Ab3+<T1-2-3>', '[T123]'],
    // Without the thumb the plain side is meant, and the other where the plain one does not give the note.
    ['A4<12>', '[12]'],
    ['G#4<2>', '[T2]'],
    ['F4<T>', '[T0]'],
    // It does not give the note: the plan goes its own way.
    ['C5+<1>', '[2]'],
    // No valves of this horn, or none at all.
    ['C5+<4> C5+<p> C5+<i> C5+<T14> C5+<2a>', '2 2 2 2 2'],
  ])('%s is played %s', (text, played) => {
    expect(valves(text)).toBe(played);
  });

  test('a horn without valves or without a thumb has no such choice', () => {
    expect(valves('C5+<2>', 'natural')).not.toContain('[');
    expect(valves('A4<T12>', 'single-f')).toBe('12');
  });

  test('what is joined to it follows', () => {
    expect(valves('Ab3+<13>_ Ab3+')).toBe('[13] 13');
    expect(valves('Ab3+_ Ab3+<13>')).toBe('13 [13]');
    // D4 falls from E4 on 12 alone.
    expect(valves('E4~ D4+<12>')).toBe('12 [12]');
  });
});

describe('a word over the staff', () => {
  test.each([
    ['"T12" A4', '[T12]'],
    ['"T 12" A4', '[T12]'],
    // The fingered note and its valves, in letters of either kind or syllables.
    ['"B 2" C5+', '[2]'],
    ['"H 2" C5+', '[2]'],
    ['"Si 2" C5+', '[2]'],
    ['"G 13" Ab3+', '[13]'],
    ['"Sol 13" Ab3+', '[13]'],
    ['"E♭ 2" E4+', '[2]'],
    ['"Es 2" E4+', '[2]'],
    ['"Mi♭ 2" E4+', '[2]'],
    // In a chord it goes to the note that it gives.
    ['"B 2" [C5+ E4+]', '[2] 2'],
    // Counts, players, keys, and notes that are not fingered so.
    ['"2" C5+ "a 2" C5+ "A 2" C5+ "2." C5+ "12" A4', '2 2 2 2 T12'],
    ['"T" F4', '1'],
    ['"C 2" C5+', '2'],
  ])('%s is played %s', (text, played) => {
    expect(valves(text)).toBe(played);
  });
});

test('marks leave to the part what it prints itself', () => {
  const lines = (text: string) => marksFor(examine(passageOf(text)), SHOW_ALL).map((mark) => mark.lines);
  expect(lines('Ab3+<13>')).toEqual([['(B)', 'G']]);
  // In quick notes the valves alone would stand there.
  const quick = marksFor(examine(passageOf('C5/0.25+ D5/0.25+<2> E5/0.25+')));
  expect(quick.map((mark) => mark.lines)).toEqual([['2'], ['2']]);
  expect(marksFor(examine(passageOf('Ab3+<13>')))[0]!.valves).toBeNull();
  // One that does not give the note leaves everything to be said.
  expect(lines('C5+<1>')).toEqual(lines('C5+'));
});

test('results name it as the part prints it', () => {
  const { notes } = resultOf([examine(passageOf('Ab3+<1+3> C5+<1> C5+'))]).parts[0]!;
  expect(notes.map(({ chosen, valves: played }) => [chosen, played])).toEqual([
    ['1+3', '13'],
    ['1', '2'],
    [null, '2'],
  ]);
});

test('a repair takes the place of a word, and no other goes', () => {
  const passage = passageOf('"gestopft" C5 "C 0" Ab3 "offen" C4');
  const examination = examine(passage);
  const finding = examination.findings.find(({ id }) => id === 'rises-not-bends')!;
  const repair = repairsFor(examination, finding)[0]!;
  const after = repaired(passage, repair.steps);
  expect(examination.notes[1]!.own?.text).toBeUndefined();
  expect(after.notes[1]!.fingering).toBe('13');
  expect(after.words.map(({ text }) => text)).toEqual(['gestopft', 'C 0', 'offen']);
});
