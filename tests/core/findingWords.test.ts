/** What is said of findings, in every language: each rule in its own words, with all that its cause names. */
import { describe, expect, test } from 'vitest';
import type { Pitch } from '../../core/pitch/pitch.ts';
import type { Reach } from '../../core/rules/handJoin.ts';
import { RULES } from '../../core/rules/rules.ts';
import { findingText } from '../../core/words/findings.ts';
import { decimalText, fingeringText } from '../../core/words/fingerings.ts';
import { type Reader, readerOf } from '../../core/words/language.ts';
import { LANGUAGES } from '../../core/words/languages.ts';
import { noteName } from '../../core/words/noteNames.ts';
import { everyFinding } from './ruleCases.ts';

const FINDINGS = everyFinding();

describe.each(LANGUAGES)('findings in %s', (language) => {
  const reader = readerOf(language);

  test('every rule is spoken of, in two or three words and in sentences', () => {
    expect(new Set(FINDINGS.map(({ id }) => id)).size).toBe(RULES.length);
    for (const finding of FINDINGS) {
      const { brief, message, remedy } = findingText(finding, reader);
      expect(brief.split(' ').length, brief).toBeLessThanOrEqual(3);
      for (const sentence of [message, remedy]) {
        expect(sentence).toMatch(/^(["„«]|[A-ZÄÖÜÀÉ]).*\.$/);
        expect(sentence).not.toMatch(/undefined|NaN|\bnull\b|\.\.|\[object| {2}/);
      }
    }
  });

  test('nothing falls back to English', () => {
    if (language === 'en') return;
    for (const finding of FINDINGS) {
      const own = findingText(finding, reader);
      const english = findingText(finding, readerOf('en', reader.noteNaming));
      expect(own.brief).not.toBe(english.brief);
      expect(own.message).not.toBe(english.message);
      expect(own.remedy).not.toBe(english.remedy);
    }
  });

  test('every note, fingering, word and number of the cause is told', () => {
    for (const finding of FINDINGS) {
      const { message, remedy } = findingText(finding, reader);
      const said = `${message} ${remedy}`;
      for (const value of valuesOf(finding.cause, reader))
        expect(said, `${finding.id}: ${said}`).toContain(value);
    }
  });
});

/** What must be read somewhere: all that has a name or a number. */
function valuesOf(cause: object, reader: Reader): string[] {
  return Object.entries(cause).flatMap(([field, value]: [string, unknown]): string[] => {
    if (isPitch(value)) return [noteName(value, reader)];
    if (Array.isArray(value)) return (value as Reach[]).flatMap((reach) => reachValues(reach, reader));
    if (field === 'nearest' && isReach(value)) return reachValues(value, reader);
    if (field === 'word' || field === 'sinceMeasure') return [value as string];
    if (field === 'affectedCount') return value === 1 ? [] : [String(value)];
    if (field === 'assumedQuartersPerMinute') return value === null ? [] : [String(value)];
    if (field === 'neededSeconds') return [decimalText(value as number, 2, reader)];
    if (field === 'horn') return [];
    return [];
  });
}

function reachValues({ written, fingering }: Reach, reader: Reader): string[] {
  return [noteName(written, reader), fingeringText(fingering, reader)];
}

function isPitch(value: unknown): value is Pitch {
  return typeof value === 'object' && value !== null && 'octave' in value;
}

function isReach(value: unknown): value is Reach {
  return typeof value === 'object' && value !== null && 'written' in value;
}
