/** Tiny scores for tests: one part, its measures given as they are. */
import { formatPitch } from '../../core/pitch/pitch.ts';
import type { HornPart } from '../../plugin/musicxml/index.ts';
import { readScore } from '../../plugin/musicxml/index.ts';

export interface SmallScore {
  readonly name?: string;
  /** Inside `attributes` of the first measure, after divisions (2 to a quarter). */
  readonly attributes?: string;
  /** Inside `defaults`. */
  readonly defaults?: string;
  /** Inside `score-part`, after the name. */
  readonly instrument?: string;
}

export const IN_F = '<transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>';

/** A score of one part. */
export function smallScore(measures: readonly string[], options: SmallScore = {}): string {
  const { name = 'Horn in F', attributes = IN_F, defaults, instrument = '' } = options;
  const first = `<attributes><divisions>2</divisions>${attributes}</attributes>`;
  const body = measures.map(
    (measure, i) => `<measure number="${i + 1}">${i === 0 ? first : ''}${measure}</measure>`,
  );
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<score-partwise version="4.0">${defaults ? `<defaults>${defaults}</defaults>` : ''}`,
    `<part-list><score-part id="P1"><part-name>${name}</part-name>${instrument}</score-part></part-list>`,
    `<part id="P1">${body.join('')}</part></score-partwise>`,
  ].join('');
}

/** A note by name and length in eighths, e.g. `noteOf('C5', 2)`; `inside` comes after the duration, `before` first. */
export function noteOf(name: string, eighths: number, inside = '', before = ''): string {
  const [, step, sign, octave] = /^([A-G])([#b]?)(\d)$/.exec(name)!;
  const alter = sign === '#' ? '<alter>1</alter>' : sign === 'b' ? '<alter>-1</alter>' : '';
  const duration = eighths > 0 ? `<duration>${eighths}</duration>` : '';
  return `<note>${before}<pitch><step>${step}</step>${alter}<octave>${octave}</octave></pitch>${duration}${inside}</note>`;
}

/** The only part of a small score, read as a horn whatever it is called. */
export function readSmall(measures: readonly string[], options: SmallScore = {}): HornPart {
  return readScore(smallScore(measures, options), { parts: ['P1'] }).horns[0]!;
}

/** Inside a note: what its player does with hand or valves, for `inside` of `noteOf`. */
export function technical(content: string): string {
  return `<notations><technical>${content}</technical></notations>`;
}

/** The written notes of a part, by name. */
export function pitches({ passage }: HornPart): string[] {
  return passage.notes.map(({ written }) => formatPitch(written));
}
