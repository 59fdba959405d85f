/** Keys of études, as they are written and as their scales go. */
import { describe, expect, test } from 'vitest';
import { parseKey, printKey, scaleBetween } from '../../core/etude/key.ts';
import { parsePitch, printPitch } from '../../core/pitch/pitch.ts';

describe('keys', () => {
  test.each([
    ['C', 'C major', 0],
    ['Bb', 'B♭ major', -2],
    ['F#', 'F♯ major', 6],
    ['Cb', 'C♭ major', -7],
    ['Dm', 'D minor', -1],
    ['C# minor', 'C♯ minor', 4],
    ['e♭ major', 'E♭ major', -3],
    ['a-minor', 'A minor', 0],
  ])('%s is %s with %i sharps', (text, name, fifths) => {
    expect(printKey(parseKey(text))).toBe(name);
    expect(parseKey(text).fifths).toBe(fifths);
  });

  test.each(['H', '', 'C major minor', 'G#', 'Dbm', 'X'])('%j is refused', (text) => {
    expect(() => parseKey(text)).toThrow(RangeError);
  });

  test('minor has its leading note', () => {
    const names = scaleBetween(parseKey('Dm'), parsePitch('D4'), parsePitch('D5')).map(({ written }) =>
      printPitch(written),
    );
    expect(names).toEqual(['D4', 'E4', 'F4', 'G4', 'A4', 'B♭4', 'C♯5', 'D5']);
  });
});
