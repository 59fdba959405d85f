/** Charts in words. */
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import type { ChartWords } from './areas/chart.ts';
import type { Reader } from './language.ts';
import { SAID } from './languages.ts';
import { noteName } from './noteNames.ts';

/** What a chart says beside its notes. */
export function chartWords({ language }: Pick<Reader, 'language'>): ChartWords {
  return SAID[language].pages.chart;
}

/** Notes a semitone apart in a row are joined, from so many on. */
const JOINED_FROM = 3;

/** Notes as a list, runs of semitones joined: `F2–F3, C6`. @param notes from the lowest, each once */
export function noteRanges(notes: readonly Pitch[], reader: Reader): string {
  const pieces: string[] = [];
  for (let i = 0; i < notes.length; ) {
    let end = i + 1;
    while (end < notes.length && pitchCents(notes[end]!) === pitchCents(notes[end - 1]!) + 100) end += 1;
    if (end - i < JOINED_FROM) end = i + 1;
    const [first, last] = [noteName(notes[i]!, reader), noteName(notes[end - 1]!, reader)];
    pieces.push(end - i === 1 ? first : `${first}–${last}`);
    i = end;
  }
  return pieces.join(', ');
}

export type { ChartWords } from './areas/chart.ts';
