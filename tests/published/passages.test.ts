/**
 * Passages of the repertory (all in the public domain), typed in as notes with what their sources tell of them; lengths
 * are ours where a source gives none. Horn in F on a double horn.
 */
import { describe, expect, test } from 'vitest';
import { marksFor, SHOW_ALL } from '../../core/marks/marks.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { printPitch } from '../../core/pitch/pitch.ts';
import { type Examination, examine } from '../../core/rules/examine.ts';

function played({ notes }: Examination): string[] {
  return notes.map(
    ({ note, fingering, verdict }) => `${printPitch(note.written)} ${fingering?.printed ?? '-'} ${verdict}`,
  );
}

// C. Saint-Saëns, Morceau de concert op. 94, Adagio, bars 7–9 (Mutopia edition): "sons bouchés", the echo of two open bars.
describe('Saint-Saëns, op. 94', () => {
  const examination = examine(
    passageOf('@60 "sons bouchés" Eb4 F4 Db5 r/1 C5 Ab4 Bb4/0.5 Cb5/0.5 Bb4/0.5 Ab4/0.5 G4/4'),
  );

  test('is stopped throughout by its word, fingered by the chart, and nothing is found', () => {
    expect(examination.notes.every(({ reading }) => reading.state === 'stopped')).toBe(true);
    // Fingerings: C. Smalley, "Starting Stopping" (CC0), the F side's chart.
    expect(played(examination)).toEqual([
      'E♭4 1 sure',
      'F4 0 sure',
      'D♭5 0 sure',
      'C5 2 sure',
      'A♭4 0 sure',
      'B♭4 12 sure',
      'C♭5 1 sure',
      'B♭4 12 sure',
      'A♭4 0 sure',
      'G4 2 sure',
    ]);
    expect(examination.findings).toEqual([]);
  });

  test('is printed with the note a semitone below, which is the one fingered', () => {
    const fingered = marksFor(examination, SHOW_ALL).map(({ lines }) => lines[1]);
    expect(fingered).toEqual(['D 1', 'E 0', 'C 0', 'B 2', 'G 0', 'A 12', 'B♭ 1', 'A 12', 'G 0', 'F♯ 2']);
  });
});

// P. Tchaikovsky, Symphony no. 6, iv, letter K, after J. Boldin's excerpt notes: C♯4 stopped, then C♯3, and both are
// played; so the low one is a risk and no impossibility.
test('Tchaikovsky 6, iv: C♯4 is sure, C♯3 a risk that the lip takes', () => {
  const examination = examine(passageOf('C#4+/4 C#3+/4'));
  expect(played(examination)).toEqual(['C♯4 0 sure', expect.stringMatching(/^C♯3 \S+ risky$/)]);
  expect(examination.findings.map(({ id, noteIndex }) => [id, noteIndex])).toEqual([['rises-not-bends', 1]]);
});

// G. Mahler, Symphony no. 1, ii, after J. Boldin's excerpt notes: stopped down to A♭3.
test('Mahler 1, ii: stopped down to A♭3, which can be played', () => {
  const examination = examine(passageOf('"gestopft" C4 Bb3 Ab3 C4 "offen" C4'));
  expect(examination.notes.map(({ verdict }) => verdict)).not.toContain('impossible');
  expect(examination.notes.map(({ reading }) => reading.state)).toEqual([
    ...Array(4).fill('stopped'),
    'open',
  ]);
});

// P. Dukas, Villanelle: editions disagree whether the passage is stopped or echo (after hornmatters.com 2008 and Pizka).
test('Dukas, Villanelle: "en écho" is read as echo, and the reader is told that others stop it', () => {
  const { notes, findings } = examine(passageOf('"en_écho" Eb4 Gb4 Ab4 "ouvert" A4'));
  // Echo sounds a semitone below its fingering: E, G and A are fingered open, as the open chart has them.
  expect(notes.slice(0, 3).map(({ fingering }) => fingering!.fingeredSemitones)).toEqual([1, 1, 1]);
  expect(notes.slice(0, 2).map(({ fingering }) => fingering!.printed)).toEqual(['0', '0']);
  expect(findings.map(({ id, noteIndex }) => [id, noteIndex])).toEqual([['echo-or-stopped', 0]]);
});
