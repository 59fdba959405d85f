/** Spelling and harmonic arithmetic against tonal 6.4.3 (MIT), a general music theory library, as reference. */
import fc from 'fast-check';
import { Interval, Note } from 'tonal';
import { describe, expect, test } from 'vitest';
import { harmonicInterval } from '../../core/horn/harmonics.ts';
import {
  fifthsOf,
  formatPitch,
  frequencyHz,
  HORN_IN_F,
  movePitch,
  type Pitch,
  parsePitch,
  pitchCents,
  type Step,
  soundingPitch,
  spellCents,
  writtenPitch,
} from '../../core/pitch/pitch.ts';

const anyPitch: fc.Arbitrary<Pitch> = fc.record({
  step: fc.constantFrom<Step>('C', 'D', 'E', 'F', 'G', 'A', 'B'),
  alter: fc.integer({ min: -2, max: 2 }),
  octave: fc.integer({ min: 0, max: 8 }),
});

describe('pitches', () => {
  test('names, MIDI numbers, frequencies and places on the line of fifths', () => {
    fc.assert(
      fc.property(anyPitch, (pitch) => {
        const name = formatPitch(pitch);
        const reference = Note.get(name);
        expect(reference.empty).toBe(false);
        expect(parsePitch(name)).toEqual(pitch);
        expect(pitchCents(pitch)).toBe(100 * reference.height);
        // Both are doubles computed in another order: parts in a thousand million.
        expect(frequencyHz(pitchCents(pitch)) / (440 * 2 ** ((reference.height - 69) / 12))).toBeCloseTo(
          1,
          9,
        );
        expect(fifthsOf(pitch)).toBe(reference.coord![0]);
      }),
    );
  });

  test('the nearest named note of a frequency', () => {
    fc.assert(
      fc.property(fc.double({ min: 30, max: 2000, noNaN: true }), (hz) => {
        const cents = 6900 + 1200 * Math.log2(hz / 440);
        // Half way between two notes either name is right; the reference rounds to whole cents before it looks.
        fc.pre(Math.abs((((cents % 100) + 100) % 100) - 50) > 0.51);
        expect(formatPitch(spellCents(cents, 'flat'))).toBe(Note.fromFreq(hz));
        expect(formatPitch(spellCents(cents, 'sharp'))).toBe(Note.fromFreqSharps(hz));
      }),
    );
  });
});

describe('intervals and transpositions', () => {
  test('moving by an interval spells as the reference spells', () => {
    const intervals = [
      '2m',
      '2M',
      '3m',
      '3M',
      '4P',
      '4A',
      '5d',
      '5P',
      '6m',
      '6M',
      '7m',
      '7M',
      '8P',
      '9M',
      '-2M',
      '-5P',
      '-6M',
      '-8P',
    ];
    fc.assert(
      fc.property(anyPitch, fc.constantFrom(...intervals), (pitch, interval) => {
        const { step, semitones, dir, oct } = Interval.get(interval) as unknown as {
          step: number;
          semitones: number;
          dir: number;
          oct: number;
        };
        const expected = Note.transpose(formatPitch(pitch), interval);
        const moved = movePitch(pitch, dir * (step + 7 * oct), semitones);
        // Triple accidentals have no plain name here.
        fc.pre(Math.abs(moved.alter) <= 2);
        expect(formatPitch(moved)).toBe(expected);
      }),
    );
  });

  test('the horn in F sounds a perfect fifth below what is written, and back', () => {
    fc.assert(
      fc.property(anyPitch, (pitch) => {
        const sounding = soundingPitch(pitch, HORN_IN_F);
        fc.pre(Math.abs(sounding.alter) <= 2);
        expect(formatPitch(sounding)).toBe(Note.transpose(formatPitch(pitch), '-5P'));
        expect(writtenPitch(sounding, HORN_IN_F)).toEqual(pitch);
      }),
    );
  });
});

describe('the harmonic series', () => {
  const C2 = parsePitch('C2');
  test.each(Array.from({ length: 24 }, (_, i) => i + 1))('harmonic %i lies where its frequency does', (n) => {
    const [steps, semitones] = harmonicInterval(n);
    const named = movePitch(C2, steps, semitones);
    expect(Note.get(formatPitch(named)).midi).toBe(Note.get(Note.fromFreq(n * Note.get('C2').freq!)).midi);
  });

  // Spelled as musicians spell it: the 7th a minor seventh, the 11th a raised fourth, the 13th a minor sixth.
  test('the first sixteen are spelled like the reference spells their intervals', () => {
    const intervals = [
      '1P',
      '8P',
      '12P',
      '15P',
      '17M',
      '19P',
      '21m',
      '22P',
      '23M',
      '24M',
      '25A',
      '26P',
      '27m',
      '28m',
      '28M',
      '29P',
    ];
    intervals.forEach((interval, i) => {
      const [steps, semitones] = harmonicInterval(i + 1);
      expect(formatPitch(movePitch(C2, steps, semitones))).toBe(Note.transpose('C2', interval));
    });
  });
});
