/** The laws of études: kept by the composer over many seeds, and broken by a bad example each, which they catch. */
import { describe, expect, test } from 'vitest';
import { asPhrase, type Bar, bar, type EtudeNote, FOUR_FOUR, note, rest } from '../../core/etude/bar.ts';
import { composeEtude } from '../../core/etude/compose.ts';
import { etudePassage } from '../../core/etude/etudePassage.ts';
import { finished } from '../../core/etude/finish.ts';
import { parseKey, printKey } from '../../core/etude/key.ts';
import { ETUDE_KINDS } from '../../core/etude/kinds.ts';
import { brokenLaws, type Case, LAWS } from '../../core/etude/laws.ts';
import { keysOf, LEVEL_PLANS, LEVELS, type Level, planFor } from '../../core/etude/levels.ts';
import { type Fault, type Melody, melodyFaults } from '../../core/etude/melody.ts';
import { bendsBetween } from '../../core/etude/palette.ts';
import { transpositionOf } from '../../core/etude/transposition.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';

type Kind = Case['kind'];

const SEEDS = 200;
const SEEDS_BY_CROOK = 20;
const BARS = [8, 12, 16] as const;
const [seal, match, bend, scale, phrase] = ETUDE_KINDS as readonly [Kind, Kind, Kind, Kind, Kind, Kind];
const C = parseKey('C');

/** The laws on what was composed. */
function caseOf(
  kind: Case['kind'],
  key: Case['key'],
  level: Level,
  bars: readonly Bar[],
  tempo: number,
  player = DEFAULT_SETTINGS,
): Case {
  const isNatural = player.horn.natural;
  const plan = planFor(level, isNatural);
  const transposition = transpositionOf(player);
  return {
    kind,
    key,
    plan,
    bars,
    quarterSeconds: 60 / (tempo * bars[0]!.meter.beatQuarters),
    handSeconds: Math.max(plan.handSeconds, player.handSeconds),
    bends: bendsBetween(plan.low, plan.high, key, player, transposition),
    isScant: false,
    isNatural,
    isDaring: false,
    examination: examine(etudePassage(bars, transposition, tempo), player),
  };
}

/** How hard the études of each kind and level are on the usual horn. */
const scores = new Map<string, number[]>();

describe.each(HORNS.map((horn) => [horn.id, horn] as const))('%s', (_, horn) => {
  const player = { ...DEFAULT_SETTINGS, horn };
  // These make so few notes by hand that they must leap and repeat themselves.
  const isScant = horn.natural || horn.id === 'single-bflat';

  // Crooks differ only in how far the hand takes a harmonic down.
  const seeds = horn.natural && horn.id !== 'natural' ? SEEDS_BY_CROOK : SEEDS;

  test.each(ETUDE_KINDS.map((kind) => [kind.kind, kind] as const))(
    `${seeds} seeds of %s keep every law at every level`,
    (name, kind) => {
      const broken: string[] = [];
      let composed = 0;
      for (const level of LEVELS) {
        const keys = keysOf(level, horn.natural);
        const difficulties: number[] = [];
        for (let seed = 0; seed < seeds; seed++) {
          const key = keys[seed % keys.length]!;
          const bars = BARS[seed % BARS.length]!;
          const made = composeEtude({
            kind: name,
            key,
            level,
            bars,
            tempo: null,
            low: null,
            high: null,
            seed,
            player,
          });
          if (!made.ok) {
            if (!/: choose /.test(made.reason)) broken.push(made.reason);
            continue;
          }
          composed += 1;
          const { etude } = made;
          difficulties.push(etude.difficulty.score);
          const it = caseOf(kind, key, level, etude.bars, etude.tempo, player);
          for (const { id } of brokenLaws({ ...it, isScant }))
            broken.push(`${id}: level ${level}, ${printKey(key)}, ${bars} bars, seed ${seed}`);
        }
        if (horn === DEFAULT_SETTINGS.horn) scores.set(`${name} ${level}`, difficulties);
      }
      expect(broken).toEqual([]);
      // A horn with few tones in tune has no bends, or no tonic in some keys.
      if (!isScant && name !== 'bend') expect(composed).toBe(seeds * LEVELS.length);
      else if (name !== 'bend') expect(composed).toBeGreaterThan(0.5 * seeds * LEVELS.length);
    },
    60_000,
  );
});

describe('the measure of difficulty', () => {
  test.each(ETUDE_KINDS.map(({ kind }) => [kind]))('rises from level to level in %s', (kind) => {
    const [first, second, third] = LEVELS.map((level) =>
      scores
        .get(`${kind} ${level}`)!
        .slice()
        .sort((a, b) => a - b),
    ) as [number[], number[], number[]];
    expect(third).toHaveLength(SEEDS);
    for (const [lower, higher] of [
      [first, second],
      [second, third],
    ] as const) {
      // Nine of ten are harder than the middle one of the level before, and nine of ten of that are easier than this middle.
      expect(higher[Math.floor(SEEDS / 10)]!).toBeGreaterThan(lower[SEEDS / 2]!);
      expect(lower[Math.floor((9 * SEEDS) / 10)]!).toBeLessThan(higher[SEEDS / 2]!);
    }
  });

  test('levels hold what their table says', () => {
    for (const level of LEVELS)
      for (const key of keysOf(level, false))
        expect(Math.abs(key.fifths)).toBeLessThanOrEqual(LEVEL_PLANS[level].mostSigns);
  });
});

/** A bar as print has it, from words such as `o2C5 s1C5 r1`: hand, quarters, note. */
function music(text: string): readonly Bar[] {
  return text.split(' | ').map((words) =>
    bar(
      FOUR_FOUR,
      words.split(' ').map((word): EtudeNote => {
        const [, hand, quarters, name] = /^([osr])([\d.]+)(.*)$/.exec(word)!;
        if (hand === 'r') return rest(Number(quarters));
        return note(parsePitch(name!), Number(quarters), hand === 'o' ? 'open' : 'stopped');
      }),
    ),
  );
}

const printed = (text: string) => finished(music(text), 1);
/** Every word a phrase of its own. */
const phrases = (...texts: readonly string[]) =>
  finished(
    texts.flatMap((text) => asPhrase(music(text))),
    1,
  );
/** The hand slides to every closed note. */
const slid = (text: string) =>
  printed(text).map((each) => ({
    ...each,
    notes: each.notes.map((one) => ({ ...one, slides: one.hand === 'open' })),
  }));
const withMarks = (text: string, marks: readonly Partial<EtudeNote>[]) => {
  let next = 0;
  return printed(text).map((each) => ({
    ...each,
    notes: each.notes.map((one) => ({ ...one, ...marks[next++] })),
  }));
};

describe('a bad example is caught', () => {
  const GOOD = 'o2A4 s2A4 | o2C5 s1C5 r1';
  test('and a good one is not', () => {
    expect(brokenLaws(caseOf(match, C, 1, printed(GOOD), 60))).toEqual([]);
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
      'two phrases that both come home',
      () => {
        const [open, closed] = ['o', 's'].map(
          (hand) => `${hand}1G4 ${hand}1A4 ${hand}1B4 ${hand}1C5 | ${hand}2D5 ${hand}2B4 | ${hand}3C5 r1`,
        ) as [string, string];
        return caseOf(phrase, C, 1, phrases(open, closed, open, closed), 60);
      },
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

describe('a melody', () => {
  const melody = (names: string, barLengths: readonly number[], degrees: string): Melody => ({
    notes: names.split(' ').map((name, i) => ({ written: parsePitch(name), degree: Number(degrees[i]) })),
    barLengths,
    ends: [0],
  });

  test('that sings has no fault', () => {
    expect(melodyFaults(melody('E4 G4 A4 C5 B4 G4 F4 D4 C4', [3, 3, 3], '245064310'))).toEqual([]);
  });

  test.each<readonly [Fault, Melody]>([
    ['no-high-point', melody('E4 C5 A4 C5 B4 G4 F4 D4 C4', [3, 3, 3], '205064310')],
    ['no-cadence', melody('E4 G4 A4 C5 B4 G4 F4 E4 D4', [3, 3, 3], '245064321')],
    ['stands-still', melody('E4 E4 E4 F4 E4 E4 D4 D4 C4', [3, 3, 3], '222322110')],
    ['stands-still', melody('E4 G4 A4 C5 B4 C5 B4 D4 C4', [3, 3, 3], '245060610')],
    ['jumps-about', melody('C4 G4 E4 B4 C5 G4 A4 D4 C4', [3, 3, 3], '042604510')],
    ['leaps-on', melody('C4 B4 D5 C5 B4 G4 F4 D4 C4', [3, 3, 3], '061064310')],
    ['says-a-bar-again', melody('E4 G4 A4 E4 G4 A4 C5 D4 C4', [3, 3, 3], '245245010')],
  ])('%s is caught', (fault, it) => {
    expect(melodyFaults(it)).toContain(fault);
  });
});
