/**
 * Parts of the repertory on the horns they were written for, read through the MusicXML door. Skips, and says so, without
 * the corpus. Facts of the trade (common practice, no source): Haydn, Beethoven, Schubert and, by conviction, Brahms
 * wrote for the natural horn, mostly its open notes and no note that the hand cannot make; Bruckner, Beach and Boulanger
 * wrote for valves, any note of the scale.
 */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { type Examination, examine } from '../../core/rules/examine.ts';
import { openScoreFile } from '../../plugin/musicxml/bytes/scoreFile.ts';
import { readScore } from '../../plugin/musicxml/read/readScore.ts';

// Scores CC0-1.0, github.com/MarkGotham/Hauptstimme.
const CORPUS = new URL('../../../shared/corpus/horn/', import.meta.url);
const isThere = existsSync(CORPUS);
if (!isThere) console.warn(`skipped: no ${CORPUS.pathname}`);

const FOR_NATURAL_HORN = [
  'Haydn_104_1',
  'Beethoven_Op.55_2',
  'Beethoven_Op.68_1',
  'Beethoven_Op.92_1',
  'Beethoven_Op.125_3',
  'Schubert_D.485_1',
  'Brahms_Op.68_2',
  'Brahms_Op.73_3',
  'Brahms_Op.98_2',
];
const FOR_VALVES = ['Bruckner_WAB.105_4', 'Beach_Op.32_2', 'D_un_matin_de_printemps'];

const settings = { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === 'natural')! };

/** A score's horn parts, each on the crooks it asks for. */
function onNaturalHorns(score: string): readonly Examination[] {
  const { text } = openScoreFile(readFileSync(new URL(`osorch__${score}.mxl`, CORPUS)));
  return readScore(text).horns.map(({ passage }) => examine(passage, settings));
}

/** How much of a part lies on open harmonics. */
function shareOpen({ notes }: Examination): number {
  return (
    notes.filter(({ reading, fingering }) => reading.state === 'open' && fingering).length / notes.length
  );
}

describe.skipIf(!isThere)('the repertory on natural horns', () => {
  test.each(FOR_NATURAL_HORN)('%s lies mostly on open harmonics, and the hand makes the rest', (score) => {
    const parts = onNaturalHorns(score);
    expect(parts.length).toBeGreaterThanOrEqual(2);
    for (const part of parts) {
      expect(shareOpen(part)).toBeGreaterThan(0.8);
      const impossible = part.notes.filter(({ verdict }) => verdict === 'impossible');
      // The file of op. 92 has G1 in its 2nd horn, below every horn even in old notation: most likely an octave too low.
      const odd = impossible.filter(({ note }) => score === 'Beethoven_Op.92_1' && note.written.octave === 1);
      expect(impossible.length - odd.length).toBe(0);
    }
  });

  test.each(FOR_VALVES)('%s does not', (score) => {
    const shares = onNaturalHorns(score).map(shareOpen);
    expect(Math.max(...shares)).toBeLessThan(0.7);
  });
});
