/**
 * The natural horn against three authors and a table of tubes. Written notes are those of any crook; the F crook is
 * played unless said otherwise. Degrees of closing are bands of a quarter each, since hands and sources differ: each row
 * states how many bands the model's linear rule lies from what the source prints.
 */
import { describe, expect, test } from 'vitest';
import { CROOKS } from '../../core/data/crooks.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { marksFor } from '../../core/marks/marks.ts';
import type { Passage } from '../../core/part/passage.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { CONCERT_PITCH, formatPitch, type Transposition } from '../../core/pitch/pitch.ts';
import type { ExaminedNote } from '../../core/plan/examinedNote.ts';
import { examine } from '../../core/rules/examine.ts';

const BANDS = ['open', '¼', '½', '¾', 'full'];

function on(hornId: string, passage: Passage): readonly ExaminedNote[] {
  return examine(passage, { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === hornId)! }).notes;
}

/** An unmarked note, as natural horn parts print it, on the F crook. */
function unmarked(written: string): ExaminedNote {
  return on('natural-f', passageOf(written))[0]!;
}

function band({ fingering }: ExaminedNote): string {
  return fingering?.band ?? 'open';
}

function bandsApart(written: string, source: string): number {
  return Math.abs(BANDS.indexOf(band(unmarked(written))) - BANDS.indexOf(source));
}

// C.-M. Widor, Initiation musicale (1923), p. 34. "Two thirds or three quarters" is the band ¾ (two thirds lies nearer
// to it than to ½). The last column is how many bands the model lies off, worked out by hand from the harmonic series
// and the rule (natural − wanted) / (natural − stopped).
const WIDOR: readonly (readonly [written: string, degree: string, bandsOff: number])[] = [
  ['F#3', '½', 1],
  ['B3', '½', 1],
  ['D#4', '½', 1],
  ['F#4', '½', 0],
  ['A4', '½', 0],
  ['B4', '½', 1],
  ['C#5', '½', 2],
  ['D#5', '½', 2],
  ['F5', '½', 1],
  // The 11th harmonic lies 49 cents below F♯5 already: the law leaves nothing to close.
  ['F#5', '½', 2],
  ['Ab3', '¾', 1],
  ['A3', '¾', 0],
  ['Bb3', '¾', 1],
  ['D4', '¾', 0],
  ['F4', '¾', 1],
  ['Ab4', '¾', 1],
  ...['G3', 'C4', 'E4', 'G4', 'Bb4', 'C5', 'D5', 'E5', 'G5'].map((open) => [open, 'open', 0] as const),
];

describe('Widor 1923, p. 34 (25 rows with a degree)', () => {
  test('the table is whole', () => expect(WIDOR).toHaveLength(25));
  test.each(WIDOR)('%s %s: %i bands off', (written, degree, bandsOff) => {
    expect(bandsApart(written, degree)).toBe(bandsOff);
  });
  test('13 rows agree, 9 lie one band off, 3 two', () => {
    const off = WIDOR.map(([written, degree]) => bandsApart(written, degree));
    expect([0, 1, 2, 3, 4].map((bands) => off.filter((row) => row === bands).length)).toEqual([
      13, 9, 3, 0, 0,
    ]);
  });
  test('what he opens is open, what he closes is closed, but for F♯5', () => {
    const wrong = WIDOR.filter(
      ([written, degree]) => (band(unmarked(written)) === 'open') !== (degree === 'open'),
    );
    expect(wrong.map(([written]) => written)).toEqual(['F#5']);
  });
  test('C♯4, stopped without a degree', () => expect(band(unmarked('C#4'))).toBe('full'));
});

// H. Berlioz, Grand traité d'instrumentation (1844), Le cor. He prints how stopped notes sound. The model has no sound,
// but a fall in cents, and that parts his rows: what is good falls by a semitone or less, what is bad or dull by more.
const BERLIOZ_GOOD = ['Eb4', 'F#4', 'A4', 'B4', 'C#5', 'Eb5', 'F5', 'Ab5'];
const BERLIOZ_BAD_OR_DULL = ['Db4', 'D4', 'F4', 'G#4'];
const BERLIOZ_AVOID = ['A3', 'Bb3', 'D4', 'Db4'];
const BERLIOZ_LESS_GOOD = ['F#5', 'A5'];
/** A semitone and the 4 cents by which the 9th harmonic stands sharp, over which C♯5 is reached. */
const SEMITONE_CENTS = 104.5;

describe('Berlioz 1844, Le cor (18 rows, all agree)', () => {
  test('the tables are whole', () =>
    expect([BERLIOZ_GOOD, BERLIOZ_BAD_OR_DULL, BERLIOZ_AVOID, BERLIOZ_LESS_GOOD].flat()).toHaveLength(18));
  test.each(BERLIOZ_GOOD)('%s, good: falls by a semitone at most', (written) => {
    const { fingering, reading } = unmarked(written);
    expect(reading.state).not.toBe('open');
    expect(fingering!.dropCents).toBeGreaterThan(0);
    expect(fingering!.dropCents).toBeLessThan(SEMITONE_CENTS);
  });
  test.each([...BERLIOZ_BAD_OR_DULL, ...BERLIOZ_AVOID])(
    '%s, bad, dull or to be avoided: falls further',
    (written) => {
      expect(unmarked(written).fingering!.dropCents).toBeGreaterThan(SEMITONE_CENTS + 50);
    },
  );
  test.each(BERLIOZ_LESS_GOOD)('%s, less good: out of tune', (written) => {
    expect(unmarked(written).fingering!.reasons).toContain('off-pitch');
  });
  test('A3 and B♭3, to be avoided, are a risk; B3, which he does not name among them, is none', () => {
    expect(['A3', 'Bb3', 'B3'].map((written) => unmarked(written).verdict)).toEqual([
      'risky',
      'risky',
      'sure',
    ]);
  });
  test('the open 11th is a bit low, the open 13th a bit high', () => {
    expect(unmarked('F#5').fingering!.deviationCents).toBeLessThan(-25);
    const open13th = on('natural-f', passageOf('Ab5o'))[0]!.fingering!;
    expect([open13th.harmonic, open13th.deviationCents > 25]).toEqual([13, true]);
  });
});

// H. Pizka, article on Dukas, Villanelle (pizka.de): E♭4 half, G♭4 more, A♭4 more still; A4 light, B4 half.
// M. J. Anderson, DMA diss., Univ. Washington 2016: B "3/4 covered".
describe('Pizka and Anderson (6 rows: the order agrees throughout; in bands 2 agree, 2 lie one off, 2 state none)', () => {
  const degree = (written: string): number => BANDS.indexOf(band(unmarked(written)));
  test('E♭4, G♭4, A♭4 close ever more', () => {
    expect(degree('Eb4')).toBeLessThan(degree('Gb4'));
    expect(degree('Gb4')).toBeLessThan(degree('Ab4'));
  });
  test('A4 is lighter than B4', () => expect(degree('A4')).toBeLessThan(degree('B4')));
  test('A4 light: not beyond half', () => expect(degree('A4')).toBeLessThanOrEqual(BANDS.indexOf('½')));
  test('E♭4 half: one band off', () => expect(bandsApart('Eb4', '½')).toBe(1));
  test('B4 half (Pizka): one band off', () => expect(bandsApart('B4', '½')).toBe(1));
  test('B4 three quarters (Anderson): agrees', () => expect(bandsApart('B4', '¾')).toBe(0));
});

// Common practice, no source: the 7th and 10th harmonics are flat, so the notes above them need less than a full stop.
test('B4 and F5 need less than a full stop', () => {
  expect(['B4', 'F5'].map((written) => band(unmarked(written)))).toEqual(['¾', '¾']);
});

// Grove, Dictionary, 5th ed. (1954), by way of J. Ericson (hornmatters.com, 2023): inches of tube by crook. Lengths are
// printed to an eighth of an inch (1.5 to 2 cents); real crooks are not cut to equal temperament: 6 cents of room.
describe('lengths of the crooks (10 rows)', () => {
  const rows = CROOKS.filter(({ lengthInches }) => lengthInches !== null);
  const f = CROOKS.find(({ name }) => name === 'F')!;
  test('the table is whole', () => {
    expect(rows.map(({ name, lengthInches }) => `${name} ${lengthInches}`)).toEqual([
      'C alto 98.125',
      'Bb alto 110.5',
      'A 117',
      'G 131',
      'F 147.5',
      'E 156',
      'Eb 165.25',
      'D 175.25',
      'C basso 196.25',
      'Bb basso 221',
    ]);
  });
  test.each(rows.map(({ name, semitones, lengthInches }) => [name, semitones, lengthInches!] as const))(
    '%s sounds %i semitones from what is written',
    (_, semitones, lengthInches) => {
      const cents = 1200 * Math.log2(f.lengthInches! / lengthInches);
      expect(Math.abs(cents - 100 * (semitones - f.semitones))).toBeLessThan(6);
    },
  );
});

describe('every crook', () => {
  // Written → sounding semitones as the trade has them; the diatonic part only spells.
  const transpositionOf = (semitones: number): Transposition => ({ ...CONCERT_PITCH, chromatic: semitones });
  const inKey = (text: string, semitones: number): Passage => {
    const passage = passageOf(text);
    return {
      ...passage,
      notes: passage.notes.map((note) => ({ ...note, transposition: transpositionOf(semitones) })),
    };
  };

  test.each(CROOKS.map(({ id, semitones }) => [id, semitones] as const))(
    '%s plays the written harmonics open',
    (id, semitones) => {
      const notes = on(id, inKey('C3 G3 C4 E4 G4 Bb4 C5 D5 E5 F#5 G5 C6', semitones));
      expect(notes.map(({ fingering }) => fingering!.harmonic)).toEqual([
        2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 16,
      ]);
      expect(notes.every(({ reading }) => reading.state === 'open')).toBe(true);
    },
  );

  test('the horn that follows its part changes crooks with it', () => {
    for (const { semitones } of CROOKS) {
      const notes = on('natural', inKey('C4 A4 C5', semitones));
      expect(notes.map(({ fingering }) => [fingering!.harmonic, fingering!.band])).toEqual([
        [4, null],
        [7, notes[1]!.fingering!.band],
        [8, null],
      ]);
      expect(notes[1]!.reading.state).toBe('half-stopped');
    }
    const names = on('natural', passageOf('in:Eb C5 in:D C5 in:Bb-basso C5')).map(
      ({ player }) => player.horn.sides[0]!.name,
    );
    expect(names).toEqual(['Eb', 'D', 'Bb basso']);
  });

  test('what is printed: the natural pitch, and the degree below it', () => {
    const examination = examine(passageOf('C5 A4 B4 C#4'), {
      ...DEFAULT_SETTINGS,
      horn: HORNS.find(({ id }) => id === 'natural-f')!,
    });
    expect(
      marksFor(examination).map(({ noteIndex, lines, valves }) => [noteIndex, ...lines, valves]),
    ).toEqual([
      [1, '(B♭)', '½', null],
      [2, '(C)', '¾', null],
      [3, '(E)', '+', null],
    ]);
  });
});

// Beethoven, Horn Sonata op. 17, ii: C5 E♭5 B4 D5 B♭4 D♭5 F5 on a natural F horn (open-scores, public domain).
test('Beethoven, op. 17 ii: every note is played on the F crook, by the hand where the harmonics leave it out', () => {
  const notes = on('natural-f', passageOf('C5 Eb5 B4 D5 Bb4 Db5 F5'));
  expect(
    notes.map(({ note, reading, verdict }) => `${formatPitch(note.written)} ${reading.state} ${verdict}`),
  ).toEqual([
    'C5 open sure',
    'Eb5 stopped sure',
    'B4 half-stopped sure',
    'D5 open sure',
    // The 7th harmonic, 31 cents flat, which the hand cannot raise.
    'Bb4 open risky',
    'Db5 stopped sure',
    'F5 half-stopped sure',
  ]);
});
