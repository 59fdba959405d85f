/** A passage from short text: every token of its grammar, and what is said of text that cannot be read. */
import { describe, expect, test } from 'vitest';
import { passageOf } from '../../core/part/passageOf.ts';
import { formatPitch, HORN_IN_F } from '../../core/pitch/pitch.ts';

/** Bar, beat, pitch and length of every note. */
function rows(text: string): string[] {
  return passageOf(text).notes.map(
    ({ measure, beat, written, durationQuarters }) =>
      `${measure}/${beat} ${formatPitch(written)} ${durationQuarters}`,
  );
}

describe('notes and time', () => {
  test.each([
    ['C5 E5/2 G4/0.5', ['1/1 C5 1', '1/2 E5 2', '1/4 G4 0.5']],
    ['C5 E5 | G4 F4', ['1/1 C5 1', '1/2 E5 1', '2/1 G4 1', '2/2 F4 1']],
    ['C5/4 E5', ['1/1 C5 4', '2/1 E5 1']],
    ['C5/4 | E5', ['1/1 C5 4', '2/1 E5 1']],
    ['| C5', ['1/1 C5 1']],
    ['C5/6 E5', ['1/1 C5 6', '2/3 E5 1']],
    ['time:3/4 C5/3 E5', ['1/1 C5 3', '2/1 E5 1']],
    ['time:6/8 C5/1.5 E5/1.5 G5', ['1/1 C5 1.5', '1/4 E5 1.5', '2/1 G5 1']],
    ['C5/4 time:3/4 D5/3 E5', ['1/1 C5 4', '2/1 D5 3', '3/1 E5 1']],
    ['r E5 r/2 | F#5', ['1/2 E5 1', '2/1 F#5 1']],
    ['g:D5 C5', ['1/1 D5 0', '1/1 C5 1']],
    ['C5 v2: E4/2', ['1/1 C5 1', '1/1 E4 2']],
    ['C5 | D5 v2: E4 F4', ['1/1 C5 1', '1/1 E4 1', '2/1 D5 1', '2/1 F4 1']],
    ['time:3/4 C5/3 D5/3 v2: E4/3 F4', ['1/1 C5 3', '1/1 E4 3', '2/1 D5 3', '2/1 F4 1']],
    [
      'C5/4 time:3/4 D5/3 E5/3 v2: A4/4 B4/3 G4',
      ['1/1 C5 4', '1/1 A4 4', '2/1 D5 3', '2/1 B4 3', '3/1 E5 3', '3/1 G4 1'],
    ],
    ['[E4 C4] D4', ['1/1 E4 1', '1/1 C4 1', '1/2 D4 1']],
    [
      'C5/1/3 C5/1/3 C5/1/3 C5/3 D5',
      ['1/1 C5 0.333', '1/1.333 C5 0.333', '1/1.667 C5 0.333', '1/2 C5 3', '2/1 D5 1'],
    ],
  ])('%s', (text, expected) => {
    const rounded = rows(text).map((row) =>
      row.replace(/\d\.\d{4,}/g, (number) => Number(number).toFixed(3)),
    );
    expect(rounded).toEqual(expected);
  });

  test('a rest, a tempo and a word stand where they are written', () => {
    const { rests, tempos, words } = passageOf('C5/3 @72 r "con sord." D5');
    expect(rests).toEqual([{ onsetQuarters: 3, durationQuarters: 1, staff: 1, voice: '1' }]);
    expect(tempos).toEqual([{ onsetQuarters: 3, quartersPerMinute: 72 }]);
    expect(words).toEqual([
      { text: 'con sord.', measureIndex: 1, measure: '2', beat: 1, onsetQuarters: 4, staff: 1, voice: null },
    ]);
  });
});

describe('signs and joins', () => {
  test.each([
    ['C5+', 'stopped'],
    ['C5o', 'open'],
    ['C5½', 'half-stopped'],
    ['C5', null],
    ['C5/2+', 'stopped'],
    ['C5+/2', 'stopped'],
  ])('%s', (text, sign) => {
    expect(passageOf(text).notes[0]!.sign).toBe(sign);
  });

  test.each([
    ['G4o~ F4+', [[{ kind: 'glissando', to: 1 }], []]],
    ['G4o/2^ F4+', [[{ kind: 'bend', to: 1 }], []]],
    ['G4_ G4', [[{ kind: 'tie', to: 1 }], []]],
    ['(G4 A4 B4)', [[{ kind: 'slur', to: 2 }], [], []]],
    [
      '((G4 A4) B4)',
      [
        [
          { kind: 'slur', to: 1 },
          { kind: 'slur', to: 2 },
        ],
        [],
        [],
      ],
    ],
    ['[G4~ E4~] [F4 D4]', [[{ kind: 'glissando', to: 2 }], [{ kind: 'glissando', to: 3 }], [], []]],
    ['C5~ D5 v2: E4 F4', [[{ kind: 'glissando', to: 2 }], [], [], []]],
  ])('%s', (text, joins) => {
    expect(passageOf(text).notes.map((note) => note.joins)).toEqual(joins);
  });
});

describe('key, clef, staff', () => {
  test.each([
    ['C5', HORN_IN_F],
    ['in:Eb C5', { chromatic: -9, diatonic: -5, octaveChange: 0 }],
    ['in:Bb-basso C5', { chromatic: -2, diatonic: -1, octaveChange: -1 }],
    ['in:C-alto C5', { chromatic: 0, diatonic: 0, octaveChange: 0 }],
    ['in:concert C5', { chromatic: 0, diatonic: 0, octaveChange: 0 }],
    ['in:? C5', null],
  ])('%s', (text, transposition) => {
    expect(passageOf(text).notes[0]!.transposition).toEqual(transposition);
  });

  test('the options say what the text does not', () => {
    const { name, notes } = passageOf('C5 in:F C5', { name: 'Corno II', transposition: null });
    expect(name).toBe('Corno II');
    expect(notes.map(({ transposition }) => transposition)).toEqual([null, HORN_IN_F]);
  });

  test('a clef holds until the next, a staff begins anew', () => {
    const { notes } = passageOf('bass: C3 treble: C4 s2: E4');
    expect(notes.map(({ clef, staff }) => `${clef} ${staff}`)).toEqual(['bass 1', 'treble 2', 'treble 1']);
  });
});

describe('what cannot be read', () => {
  test.each([
    ['H4', /cannot read "H4"/],
    ['C5 C55x', /cannot read "C55x"/],
    ['C5++', /cannot read "C5\+\+"/],
    ['C#b5', /cannot read "C#b5"/],
    ['"gestopft C5', /cannot read ""gestopft"/],
    ['@fast', /cannot read "@fast"/],
    ['time:0/4 C5', /cannot read "time:0\/4"/],
    ['C5/0', /"\/0" is no length/],
    ['C5 C5 | D5 v2: E4 | F4', /bar 1 is shorter in one voice than in another/],
    ['[C5 r E4]', /a rest stands in a chord/],
    ['(C5 D5', /slur is not closed/],
    ['C5 D5)', /ends a slur that never began/],
    ['[C5 D5', /chord is not closed/],
    ['C5~', /glissando leads to no note/],
    ['in:Bb C5', /"in:Bb" is no key: write one such as/],
    ['in:X C5', /"in:X" is no key/],
  ])('%s', (text, message) => {
    expect(() => passageOf(text)).toThrow(RangeError);
    expect(() => passageOf(text)).toThrow(message);
  });

  test('anything but a text', () => {
    // @ts-expect-error as from plain JavaScript
    expect(() => passageOf(5)).toThrow(TypeError);
  });
});
