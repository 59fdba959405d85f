/** Clefs and transpositions, stated, changed, or told by a name. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import { noteOf, pitches, readSmall } from './smallScore.ts';

describe('clefs and transposition', () => {
  it('reads clefs per staff and from their place on', () => {
    const clef = (sign: string, number = 1) => `<clef number="${number}"><sign>${sign}</sign></clef>`;
    const change = `<attributes>${clef('G')}</attributes>`;
    const lower = `<backup><duration>8</duration></backup>${noteOf('C4', 8, '<staff>2</staff>')}`;
    const { passage } = readSmall([`${noteOf('C3', 4)}${change}${noteOf('C5', 4)}${lower}`], {
      attributes: clef('F') + clef('C', 2),
    });
    expect(passage.notes.map((note) => note.clef)).toEqual(['bass', 'other', 'treble']);
  });

  it('follows transpositions that change, with octaves, for one staff or all', () => {
    const transpose = (diatonic: number, chromatic: number, more = '', attribute = '') =>
      `<transpose${attribute}><diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic>${more}</transpose>`;
    const change = `<attributes>${transpose(-5, -9, '', ' number="1"')}${transpose(-1, -2, '<octave-change>-1</octave-change>', ' number="2"')}</attributes>`;
    const { passage } = readSmall([
      noteOf('C5', 2) + change + noteOf('C5', 2) + noteOf('C5', 2, '<staff>2</staff>'),
    ]);
    expect(passage.notes.map(({ transposition }) => transposition)).toEqual([
      { diatonic: -4, chromatic: -7, octaveChange: 0 },
      { diatonic: -5, chromatic: -9, octaveChange: 0 },
      { diatonic: -1, chromatic: -2, octaveChange: -1 },
    ]);
  });

  it('keeps an earlier transposition for a voice that goes back before the change', () => {
    const change =
      '<attributes><transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></transpose></attributes>';
    const { passage } = readSmall([
      `${noteOf('C5', 4)}${change}${noteOf('C5', 4)}<backup><duration>8</duration></backup>${noteOf('E4', 8, '<voice>2</voice>')}`,
    ]);
    expect(passage.notes.map(({ transposition }) => transposition!.chromatic)).toEqual([-7, -7, -9]);
  });

  it.each([
    ['Horn in F', '', 'name', -7],
    ['Horn 1', '', 'nowhere', null],
    ['Horn in Es', '<transpose><chromatic>-7</chromatic></transpose>', 'stated', -7],
  ])('%s with "%s": from %s', (name, attributes, from, chromatic) => {
    const part = readSmall([noteOf('C5', 2)], { name, attributes });
    expect(part.transpositionFrom).toBe(from);
    expect(part.passage.notes[0]!.transposition?.chromatic ?? null).toBe(chromatic);
    expect(part.transpositionRemark === null).toBe(from === 'stated');
  });

  it.each([
    [
      'with the transposition of the part to be',
      'Horn',
      '<for-part><part-transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></part-transpose></for-part>',
      'D5',
      -9,
      'stated',
    ],
    [
      'an octave off',
      'Horn in F',
      '<transpose><diatonic>0</diatonic><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>',
      'C4',
      -7,
      'name',
    ],
    ['with a key in its name', 'Horn in F', '', 'C5', -7, 'name'],
    ['with nothing', 'Horn', '', 'F4', 0, 'concert-score'],
  ])(
    'turns a concert-pitch score %s into what the part prints',
    (_case, name, attributes, written, chromatic, from) => {
      const part = readSmall([noteOf('F4', 2)], { name, attributes, defaults: '<concert-score/>' });
      expect(pitches(part)).toEqual([written]);
      expect(part.passage.notes[0]!.transposition!.chromatic).toBe(chromatic);
      expect(part.transpositionFrom).toBe(from);
    },
  );

  it('keeps pitches under an octave line as they are: the file has already moved them', () => {
    const shift =
      '<direction><direction-type><octave-shift type="down" size="8"/></direction-type></direction>';
    expect(pitches(readSmall([shift + noteOf('C6', 2)]))).toEqual(['C6']);
  });
});
