/** Old bass clef, keys and names: what a note sounds, and what it is called over the part. */
import { describe, expect, test } from 'vitest';
import { DOUBLE } from '../../core/horn/horns/double.ts';
import { marksFor, SHOW_ALL } from '../../core/marks/marks.ts';
import { noteResult } from '../../core/marks/result.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { type BassClef, DEFAULT_SETTINGS, type NoteNames } from '../../core/part/settings.ts';
import { formatPitch, spellCents } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';

/** What the notes of a part sound. */
function sounding(text: string, bassClef: BassClef): string {
  return examine(passageOf(text), { ...DEFAULT_SETTINGS, bassClef })
    .notes.map(({ soundingCents }) =>
      soundingCents === null ? '?' : formatPitch(spellCents(soundingCents, 'flat')),
    )
    .join(' ');
}

// G. Grove, Dictionary vol. 1 (1879), p. 750: in old notation the bass clef sounds a fourth higher in F, not a fifth lower.
describe('the bass clef', () => {
  test.each<[string, BassClef, string]>([
    ['G3 bass: C3 G2', 'new', 'C3 F2 C2'],
    ['G3 bass: C3 G2', 'old', 'C3 F3 C3'],
    // Within the horn's reach either way, and the leap is smaller as it stands: as it stands.
    ['G3 bass: F3 E3 C3 treble: G3', 'auto', 'C3 Bb2 A2 F2 C3'],
    // C2 as it stands would sound F1, below the 2nd harmonic of the longest tube (B1): old.
    ['C4 bass: C3 G2 C2', 'auto', 'F3 F3 C3 F2'],
    ['bass: C3 G2 C2', 'auto', 'F3 C3 F2'],
    // Nothing too low, but both leaps are an octave longer than need be: old.
    ['C4 bass: C3 treble: C4', 'auto', 'F3 F3 F3'],
    // A low note of today: too low by the rule, but reached by step from the treble clef.
    ['C4 A3 bass: G3 C3 C2', 'auto', 'F3 D3 C3 F2 F1'],
    ['in:? bass: C2', 'auto', '?'],
  ])('%s read as %s sounds %s', (text, bassClef, expected) =>
    expect(sounding(text, bassClef)).toBe(expected),
  );

  test('changes the fingering with the reading, and keeps the name in the clef as written', () => {
    const stopped = (bassClef: BassClef) =>
      examine(passageOf('bass: E3+'), { ...DEFAULT_SETTINGS, bassClef }).notes.map(noteResult)[0]!;
    // Old E3 sounds like treble E4: fingered E♭ on the second valve, by the stopped chart.
    expect(stopped('old')).toMatchObject({ written: 'E3', fingered: 'Eb3', valves: '2', harmonic: 6 });
    expect(stopped('new').harmonic).toBeLessThan(6);
  });
});

describe('names', () => {
  const marks = (text: string, names: NoteNames, bassClef: BassClef = 'auto') =>
    marksFor(examine(passageOf(text), { ...DEFAULT_SETTINGS, names, bassClef, horn: DOUBLE }), SHOW_ALL).map(
      ({ lines }) => lines.join('/'),
    );

  test('in F both readings are one', () => {
    expect(marks('E4+ Ab4+', 'f-horn')).toEqual(marks('E4+ Ab4+', 'as-written'));
  });
  test('in E♭ the F horn reads a whole tone lower than written', () => {
    // Written F♯4 in E♭ sounds A3, which the F horn reads as E4: fingered E♭, second valve.
    expect(marks('in:Eb F#4+', 'as-written')).toEqual(['(A♭)/F 2']);
    expect(marks('in:Eb F#4+', 'f-horn')).toEqual(['(F♯)/E♭ 2']);
  });
  test('in D a minor third lower, spelled plainly', () => {
    expect(marks('in:D G4+', 'as-written')).toEqual(['(A)/F♯ 2']);
    expect(marks('in:D G4+', 'f-horn')).toEqual(['(F♯)/E♭ 2']);
  });
  test('old bass clef notes are named in the octave that sounds', () => {
    const { notes } = examine(passageOf('bass: E3+'), {
      ...DEFAULT_SETTINGS,
      names: 'f-horn',
      bassClef: 'old',
    });
    expect(noteResult(notes[0]!)).toMatchObject({ written: 'E3', fingered: 'Eb4', natural: 'F#4' });
  });
  test('a transposition that changes changes the names with it', () => {
    expect(marks('in:F E4+ in:Eb F#4+ in:D G4+', 'f-horn')).toEqual(Array(3).fill('(F♯)/E♭ 2'));
  });
});
