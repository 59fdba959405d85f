/** Lessons and courses: what stands on a page, and how pages grow. */
import { describe, expect, test } from 'vitest';
import { type Bar, barAsPlayed, printMeter } from '../../core/etude/bar.ts';
import { composeCourse } from '../../core/etude/course.ts';
import type { Etude } from '../../core/etude/etude.ts';
import { printKey } from '../../core/etude/key.ts';
import { ETUDE_KINDS, type EtudeKind } from '../../core/etude/kinds.ts';
import { composeLesson, type LessonRequest, PAGE_LINES } from '../../core/etude/lesson.ts';
import { LEVELS } from '../../core/etude/levels.ts';
import { countLines, lineStarts } from '../../core/etude/pageLines.ts';
import { meanDifficulty, type Sheet } from '../../core/etude/sheet.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { readHandText } from '../../core/part/handWords.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { kindWords, lessonTitle } from '../../core/words/etudes.ts';
import { LANGUAGES, readerOf } from '../../core/words/language.ts';

function lesson(changes: Partial<LessonRequest>): Sheet {
  const made = composeLesson({
    level: 1,
    key: null,
    low: null,
    high: null,
    seed: 1,
    player: DEFAULT_SETTINGS,
    ...changes,
  });
  if (!made.ok) throw new Error(made.reason);
  return made.sheet;
}

const ORDER = ETUDE_KINDS.map(({ kind }) => kind);
const isRepetition = (kind: EtudeKind) =>
  ETUDE_KINDS.some((each) => each.kind === kind && 'isRepetition' in each);
const seeds = (count: number) => Array.from({ length: count }, (_, i) => i);

describe('a lesson', () => {
  test.each(LEVELS)(
    'of level %i has four to six exercises in the order of practice, on one page, and says no bar more than twice',
    (level) => {
      for (const seed of seeds(40)) {
        const { etudes, lines } = lesson({ level, seed });
        const kinds = etudes.map(({ kind }) => kind);
        expect(kinds.length).toBeGreaterThanOrEqual(4);
        expect(kinds).toEqual(ORDER.filter((kind) => kinds.includes(kind)));
        expect(kinds).toEqual(expect.arrayContaining(['seal', 'phrase', 'change']));
        expect(countLines(etudes)).toBe(PAGE_LINES);
        // One meter at the beginning and end of every exercise: none is announced behind a double bar.
        const meters = etudes.flatMap(({ bars }) => [bars[0]!, bars[bars.length - 1]!]);
        expect(new Set(meters.map(({ meter }) => printMeter(meter))).size).toBe(1);
        // One signature on the page, and none of the lines too full.
        expect(new Set(etudes.map(({ key }) => key.fifths)).size).toBe(1);
        for (const { bars, kind } of etudes) {
          const starts = [...lineStarts(bars).flatMap((is, i) => (is ? [i] : [])), bars.length];
          const lengths = starts.slice(1).map((to, i) => to - starts[i]!);
          expect(Math.max(...lengths)).toBeLessThanOrEqual(kind === 'seal' ? 8 : 5);
        }
        const counts = new Map<string, number>();
        for (const { kind, bars } of etudes) {
          if (isRepetition(kind)) continue;
          for (const text of bars.map(barAsPlayed)) counts.set(text, (counts.get(text) ?? 0) + 1);
        }
        expect(Math.max(...counts.values())).toBeLessThanOrEqual(2);
        expect(lines[0]).toMatch(
          new RegExp(`^Horn in F\\. Level ${level}, seed ${seed}, difficulty \\d+\\. Rest .* played`),
        );
        // Risky notes are announced, and there are none before the third level.
        const risky = /(\d+) risky notes? \(blue, ≈\)|No risky note\./.exec(lines.join(' '))!;
        if (level < 3) expect(risky[0]).toBe('No risky note.');
        const notes = etudes.flatMap(({ bars }) => bars.flatMap((each) => each.notes));
        expect(Number(risky[1] ?? 0)).toBeLessThanOrEqual(notes.filter(({ written }) => written).length / 10);
      }
    },
  );

  test('is there for every horn that stops more than a few notes', () => {
    for (const horn of HORNS)
      for (const level of LEVELS) {
        const made = composeLesson({
          level,
          key: null,
          low: null,
          high: null,
          seed: 3,
          player: { ...DEFAULT_SETTINGS, horn },
        });
        if (made.ok) expect(made.sheet.etudes.length).toBeGreaterThanOrEqual(4);
        else expect([horn.id, made.reason]).toEqual(['single-bflat', expect.stringMatching(/: choose /)]);
      }
  });

  test('says on each horn how its marks are read', () => {
    const lines = (id: string) =>
      lesson({ player: { ...DEFAULT_SETTINGS, horn: HORNS.find((horn) => horn.id === id)! } }).lines.join(
        ' ',
      );
    expect(lines('natural-eb')).toMatch(/^Natural horn in E♭\..*o open, ¼ ½ ¾ and \+ closed/);
    expect(lines('double-stop-valve')).toMatch(/^Horn in F\..*stopping valve down: the fingerings/);
  });

  test('is the same for the same seed, and another for another', () => {
    const texts = seeds(10).map((seed) => JSON.stringify(lesson({ seed }).etudes.map(({ bars }) => bars)));
    expect(JSON.stringify(lesson({ seed: 4 }).etudes.map(({ bars }) => bars))).toBe(texts[4]);
    expect(new Set(texts).size).toBe(10);
  });
});

describe.each(LANGUAGES)('a sheet in %s', (language) => {
  const reader = readerOf(language);

  test('says every line in the language, with every value in it', () => {
    for (const id of ['double', 'natural-eb', 'double-stop-valve'])
      for (const level of LEVELS) {
        const player = { ...DEFAULT_SETTINGS, horn: HORNS.find((horn) => horn.id === id)! };
        const own = lesson({ reader, level, player });
        const english = lesson({ level, player });
        const texts = [own.title, ...own.lines, ...own.trains];
        for (const text of texts) expect(text).not.toMatch(/undefined|NaN|\bnull\b|\.\.|\[object| {2}/);
        for (const line of [...own.lines, ...own.trains]) expect(line).toMatch(/\.$/);
        if (language === 'en') continue;
        [english.title, ...english.lines, ...english.trains].forEach((text, i) => {
          expect(texts[i]).not.toBe(text);
        });
        // The tempo words are the trade's Italian everywhere.
        expect(own.etudes.map(({ tempoWords }) => tempoWords)).toEqual(
          english.etudes.map(({ tempoWords }) => tempoWords),
        );
      }
  });

  test('has a name and a title for every kind', () => {
    const words = ETUDE_KINDS.map(({ kind }) => kindWords(kind, reader));
    expect(new Set(words.map(({ title }) => title)).size).toBe(ETUDE_KINDS.length);
    expect(new Set(words.map(({ name }) => name)).size).toBe(ETUDE_KINDS.length);
    expect(lessonTitle(52, reader).length).toBeLessThanOrEqual(50);
    for (const { trains, trainsOnNaturalHorn, title } of words) {
      // Longer titles lose their sizes in version 4.6.5 of an editor, and with them the lines below.
      expect(title.length).toBeLessThanOrEqual(50);
      // A heading stands on one line with the tempo.
      expect(trains.length).toBeLessThanOrEqual(112);
      // It stands over the staff, where a word for the hand would rule the notes below it.
      for (const text of [trains, trainsOnNaturalHorn, title]) expect(readHandText(text).effects).toEqual([]);
    }
  });
});

/** The notes and what the hand does at them, in whatever meter. */
const tune = (bars: readonly Bar[]) =>
  JSON.stringify(bars.map(({ notes }) => notes.map(({ written, hand, sign }) => [written, hand, sign])));
const meterOf = (etudes: readonly Etude[]) => printMeter(etudes[0]!.bars[0]!.meter);

describe('a course', () => {
  test.each([3, 8, 12])(
    'of %i weeks grows from week to week, and each comes back to one thing from the last',
    (weeks) => {
      for (const seed of seeds(2)) {
        const made = composeCourse({ weeks, low: null, high: null, seed, player: DEFAULT_SETTINGS });
        if (!made.ok) throw new Error(made.reason);
        const { sheets } = made;
        expect(sheets).toHaveLength(weeks);
        // One signature on each page, whatever comes back, and more than one key in the first weeks.
        for (const { etudes } of sheets) expect(new Set(etudes.map(({ key }) => key.fifths)).size).toBe(1);
        // Scales and phrases stand under the signature they were made for.
        sheets.slice(1).forEach(({ etudes }, i) => {
          for (const { kind, bars, key } of etudes)
            for (const before of sheets[i]!.etudes)
              if (before.bars === bars && (kind === 'scale' || kind === 'phrase'))
                expect(key.fifths).toBe(before.key.fifths);
        });
        const first = sheets.filter(({ etudes }) => etudes[0]!.level === 1);
        const keys = new Set(first.flatMap(({ etudes }) => etudes.map(({ key }) => printKey(key))));
        expect(keys.size).toBeGreaterThan(first.length > 1 ? 1 : 0);
        const scores = sheets.map(({ etudes }) => meanDifficulty(etudes).score);
        scores.slice(1).forEach((score, i) => {
          expect(score).toBeGreaterThan(scores[i]!);
        });
        sheets.slice(1).forEach(({ etudes }, i) => {
          const again = etudes.filter(({ kind, bars }) =>
            sheets[i]!.etudes.some((each) => each.kind === kind && tune(each.bars) === tune(bars)),
          );
          expect(again.length).toBeGreaterThan(0);
          expect(again.length).toBeLessThan(3);
          // In another meter the long tones come back.
          const [meter, last] = [meterOf(etudes), meterOf(sheets[i]!.etudes)];
          const [back] = again.filter(({ bars }) => sheets[i]!.etudes.every((each) => each.bars !== bars));
          expect(back?.kind).toBe(meter === last ? undefined : 'seal');
        });
        for (const { etudes } of sheets)
          for (const { bars } of etudes)
            expect([meterOf(etudes), printMeter(bars[bars.length - 1]!.meter)]).toEqual([
              printMeter(bars[0]!.meter),
              meterOf(etudes),
            ]);
        if (weeks === 8)
          expect(new Set(sheets.slice(3).map(({ etudes }) => meterOf(etudes)))).toEqual(
            new Set(['4/4', '3/4', '6/8']),
          );
        // No other exercise is one of an earlier week by more than half of its bars: six bends are a new exercise each time.
        const old: string[] = [];
        sheets.forEach(({ etudes }, week) => {
          for (const { kind, bars } of etudes.filter((each) => !isRepetition(each.kind)))
            for (let before = 0; before < week - 1; before++) {
              const heard = sheets[before]!.etudes.filter((each) => each.kind === kind).flatMap((each) =>
                each.bars.map(barAsPlayed),
              );
              const shared = bars.filter((each) => heard.includes(barAsPlayed(each))).length;
              const isBack = sheets[week - 1]!.etudes.some((each) => each.bars === bars);
              if (!isBack && shared > bars.length / 2)
                old.push(`${kind} of week ${before + 1} in week ${week + 1}`);
            }
        });
        expect(old).toEqual([]);
        const ranges = sheets.map(({ etudes }) => meanDifficulty(etudes).rangeSemitones);
        expect(ranges[weeks - 1]!).toBeGreaterThan(ranges[0]!);
      }
    },
  );

  test('for a horn of few keys changes them all the same', () => {
    const horn = HORNS.find(({ id }) => id === 'single-bflat')!;
    const player = { ...DEFAULT_SETTINGS, horn };
    const made = composeCourse({ weeks: 8, low: null, high: null, seed: 3, player });
    if (!made.ok) throw new Error(made.reason);
    const keys = made.sheets.map(({ etudes }) => printKey(etudes[0]!.key));
    expect(new Set(keys).size).toBeGreaterThan(4);
    // The first level has two keys for it, so that two weeks may share one, and never three.
    keys.slice(2).forEach((key, i) => {
      expect([keys[i], keys[i + 1]], keys.join(' ')).not.toEqual([key, key]);
    });
  });

  test.each([0, 1.5, 53])('of %s weeks is refused', (weeks) => {
    expect(() => composeCourse({ weeks, low: null, high: null, seed: 1, player: DEFAULT_SETTINGS })).toThrow(
      /"weeks" must be/,
    );
  });
});
