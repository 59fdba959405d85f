/** Every law of études is broken by a bad example, which it catches. That all seeds keep them is tried beside this. */
import { describe, expect, test } from 'vitest';
import type { EtudeNote } from '../../core/etude/bar.ts';
import { parseKey } from '../../core/etude/key.ts';
import { ETUDE_KINDS } from '../../core/etude/kinds.ts';
import { brokenLaws, type Case, LAWS } from '../../core/etude/laws.ts';
import { caseOf } from './etude/lawCase.ts';
import { music, phrases, printed, slid, withMarks } from './etude/music.ts';

type Kind = Case['kind'];

const [seal, match, bend, scale, phrase] = ['seal', 'match', 'bend', 'scale', 'phrase'].map(
  (name) => ETUDE_KINDS.find(({ kind }) => kind === name)!,
) as [Kind, Kind, Kind, Kind, Kind];
const C = parseKey('C');

/** Two tones that swell over the bar line, one of them on a long breath. */
const heldTones = (last: Partial<EtudeNote>) =>
  withMarks('s4A4= | s4A4= | s2A4 r2 | s4B4= | s4B4 | s2C5 r2', [
    { hairpin: 'crescendo' },
    {},
    { hairpinEnds: true },
    {},
    {},
    {},
    last,
  ]).map((each, i) => ({ ...each, phraseStarts: i === 0 }));

describe('a bad example is caught', () => {
  const GOOD = 'o2A4 s2A4 | o2C5 s1C5 r1';
  test('and a good one is not', () => {
    expect(brokenLaws(caseOf(match, C, 1, printed(GOOD), 60))).toEqual([]);
  });

  test('nor are good long tones', () => {
    expect(brokenLaws(caseOf(seal, C, 3, heldTones({ fermata: true }), 60))).toEqual([]);
  });

  const BAD: readonly (readonly [id: string, why: string, it: () => Case])[] = [
    ['bars-are-full', 'three quarters in a bar of four', () => caseOf(match, C, 1, printed('o2A4 s1C5'), 60)],
    [
      'nothing-impossible',
      'a stopped note below the hand',
      () => caseOf(match, C, 1, printed('o2C5 s2C2 | s2C5 r2'), 60),
    ],
    [
      'sure-by-default',
      'a note that slips up',
      () => caseOf(match, C, 1, printed('o2G3 s2G3 | s2C5 r2'), 60),
    ],
    [
      'the-hand-has-its-time',
      'a beginner changes after a quarter',
      () => caseOf(match, C, 1, printed('o1A4 s3A4 | s2C5 r2'), 60),
    ],
    [
      'the-hand-has-its-time',
      'off the beat at level 2',
      () => caseOf(match, C, 2, printed('o1.5A4 s2.5A4 | s2C5 r2'), 60),
    ],
    [
      'the-hand-has-its-time',
      'quicker than any hand',
      () => caseOf(match, C, 3, printed('o.25A4 s3.75A4 | s2C5 r2'), 90),
    ],
    [
      'no-bar-thrice',
      'the same bar three times',
      () => caseOf(match, C, 1, printed('o2C5 s2C5 | o2C5 s2C5 | o2C5 s2C5'), 60),
    ],
    [
      'every-change-is-signed',
      'a stopped note without its sign',
      () => caseOf(match, C, 1, withMarks(GOOD, [{}, { sign: null }]), 60),
    ],
    [
      'room-below-the-staff',
      'a dynamic and a hairpin under a fermata',
      () =>
        caseOf(
          match,
          C,
          1,
          withMarks(GOOD, [{}, { fermata: true, dynamic: 'mf', hairpin: 'diminuendo', hairpinEnds: true }]),
          60,
        ),
    ],
    [
      'ties-hold-one-tone',
      'a tie from one note to another',
      () => caseOf(seal, C, 2, printed('s4A4= | s4B4 | s2C5 r2'), 60),
    ],
    [
      'ties-hold-one-tone',
      'a tie into a rest',
      () => caseOf(seal, C, 2, printed('s4A4= | r4 | s2C5 r2'), 60),
    ],
    [
      'ties-hold-one-tone',
      'a breath within a tone',
      () => caseOf(seal, C, 2, withMarks('s4A4= | s4A4 | s2C5 r2', [{ breath: true }]), 60),
    ],
    [
      'ties-hold-one-tone',
      'a sign at the second half of a tone',
      () => caseOf(seal, C, 2, withMarks('s4A4= | s4A4 | s2C5 r2', [{}, { sign: 'stopped' }]), 60),
    ],
    [
      'long-tones-are-held',
      'tones that end with their bars',
      () => caseOf(seal, C, 2, printed('s3A4 r1 | s3B4 r1 | s3C5 r1'), 60),
    ],
    ['long-tones-are-held', 'no pause at the end', () => caseOf(seal, C, 2, heldTones({}), 60)],
    [
      'long-tones-are-held',
      'a tone without a swell',
      () => caseOf(seal, C, 2, withMarks('s4A4= | s2A4 r2', [{}, { fermata: true }]), 60),
    ],
    [
      'long-tones-are-held',
      'a short breath at the third level',
      () =>
        caseOf(
          seal,
          C,
          3,
          withMarks('s4A4= | s2A4 r2 | s2C5 r2', [{ hairpin: 'crescendo' }, {}, {}, { fermata: true }]),
          60,
        ),
    ],
    [
      'slurs-keep-the-hand-still',
      'a slur from open to stopped',
      () => caseOf(match, C, 1, withMarks(GOOD, [{ slur: 'start' }, { slur: 'stop' }]), 60),
    ],
    [
      'slurs-keep-the-hand-still',
      'a slur between two equal notes',
      () => caseOf(match, C, 1, withMarks('o2A4 o2A4 | s2C5 r2', [{ slur: 'start' }, { slur: 'stop' }]), 60),
    ],
    ['moves-as-a-singer', 'a leap of a tenth', () => caseOf(match, C, 1, printed('o2G4 o2B5 | s2C5 r2'), 60)],
    [
      'comes-home',
      'an end on the second degree',
      () => caseOf(match, C, 1, printed('o2A4 s2A4 | s2D5 r2'), 60),
    ],
    [
      'breathes',
      'sixteen seconds on one breath',
      () => caseOf(seal, C, 1, music('s4A4 | s4B4 | s4A4 | s4C5'), 60),
    ],
    [
      'goes-somewhere',
      'four bars on two notes',
      () => caseOf(match, C, 1, printed('o2C5 s2C5 | o2B4 s2B4 | o2C5 s2C5 | o2C5 s1C5 r1'), 60),
    ],
    [
      'moves-on',
      'a bar that begins where the last one ended',
      () => caseOf(match, C, 1, printed('o2A4 s2A4 | o2A4 s1A4 r1 | o2C5 s1C5 r1'), 60),
    ],
    [
      'moves-on',
      'a scale that says a note twice',
      () => caseOf(scale, C, 2, printed('s1C5 s1D5 s1D5 s1E5 | s2D5 s1C5 r1'), 60),
    ],
    [
      'heard-open-first',
      'a closed note out of the blue',
      () => caseOf(match, C, 1, printed('s2A4 o2A4 | s2C5 r2'), 60),
    ],
    [
      'scales-go-on',
      'two phrases that start alike',
      () =>
        caseOf(
          scale,
          C,
          2,
          phrases('s1C5 s1D5 s1E5 s1F5 | s2E5 s1D5 r1', 's1C5 s1D5 s1E5 s1F5 | s2E5 s1C5 r1'),
          60,
        ),
    ],
    [
      'asks-and-answers',
      'calls of two bars',
      () =>
        caseOf(
          phrase,
          C,
          1,
          phrases('o1G4 o1A4 o2B4 | o3C5 r1', 's1G4 s1A4 s2B4 | s3C5 r1', 'o1G4 o1A4 o2B4 | o3C5 r1'),
          60,
        ),
    ],
    [
      'asks-and-answers',
      'an answer that begins in a rhythm of its own',
      () => {
        const [ask, answer] = ['1G4 1A4 1B4 1C5 | 2B4 2C5 | 3D5', '2G4 2A4 | 2B4 2D5 | 3C5'].map((text) =>
          ['o', 's'].map((hand) => `${text.replace(/\d[A-G]/g, (each) => hand + each)} r1`),
        ) as [string[], string[]];
        return caseOf(phrase, C, 1, phrases(...ask, ...answer), 60);
      },
    ],
    [
      'asks-and-answers',
      'two phrases that both come home',
      () => {
        const [open, closed] = ['o', 's'].map(
          (hand) => `${hand}1G4 ${hand}1A4 ${hand}1B4 ${hand}1C5 | ${hand}2D5 ${hand}2B4 | ${hand}3C5 r1`,
        ) as [string, string];
        return caseOf(phrase, C, 1, phrases(open, closed, open, closed), 60);
      },
    ],
    [
      'ends-on-a-full-line',
      'four bars of long notes',
      () => caseOf(phrase, C, 1, phrases('o2G4 o2A4 | o2C5 o2D5 | o2C5 o2B4 | o3C5 r1'), 60),
    ],
    [
      'sings',
      'a phrase that climbs to its end',
      () => caseOf(phrase, C, 1, phrases('o1G4 o1A4 o2B4 | o2G4 o2A4 | o2B4 o1C5 r1'), 60),
    ],
    [
      'goes-away-and-comes-home',
      'eight bars that never leave the key',
      () => caseOf(scale, C, 3, printed(new Array(8).fill('s1C5 s1B4 s1A4 s1B4').join(' | ')), 60),
    ],
    [
      'goes-away-and-comes-home',
      'or that never come home',
      () => caseOf(scale, C, 3, printed(new Array(8).fill('s1C5 s1B4 s1F#4 s1B4').join(' | ')), 60),
    ],
    [
      'bends-grow',
      'a third before a semitone',
      () => caseOf(bend, C, 3, slid('o2E4 s2C#4 | o2D5 s2C#5'), 60),
    ],
    [
      'bends-try-the-tubes',
      'six times one valve',
      () => caseOf(bend, C, 1, slid(new Array(6).fill('o2D5 s2C#5').join(' | ')), 60),
    ],
  ];
  test.each(BAD)('%s: %s', (id, _, it) => {
    expect(brokenLaws(it()).map((law) => law.id)).toContain(id);
  });

  test('for every law', () => {
    expect(new Set(BAD.map(([id]) => id))).toEqual(new Set(LAWS.map(({ id }) => id)));
  });
});
