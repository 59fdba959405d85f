/** Ranges as comments state them: the comment says both ends, both are let in, and the next step beyond is turned away. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as door from '../../core/index.ts';
import { SEAL_REQUEST } from './sealRequest.ts';

const { DEFAULT_SETTINGS, HORNS, closingCurve, examine, passageOf, stop, toneCurve, tubesOf } = door;

const CORE = new URL('../../core/', import.meta.url);

const tube = tubesOf(HORNS[0]!.sides[0]!)[0]!;
const passage = passageOf('C5+');

interface Range {
  /** The function that guards it. */
  readonly of: keyof typeof door;
  /** The file of the comment, and what it says there. */
  readonly file: string;
  readonly says: string;
  readonly ends: readonly [lowest: number, highest: number];
  /** The smallest step that is turned away beyond an end. */
  readonly step: number;
  readonly use: (value: number) => unknown;
}

/** What stands before each function of the core. */
const comments = new Map(
  (readdirSync(CORE, { recursive: true, encoding: 'utf8' }) as string[])
    .filter((name) => name.endsWith('.ts'))
    .flatMap((name) => [
      ...readFileSync(new URL(name, CORE), 'utf8').matchAll(
        /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/)\nexport function (\w+)/g,
      ),
    ])
    .map(([, comment, name]) => [name!, comment!]),
);

const settings = (change: Partial<door.Settings>) => examine(passage, { ...DEFAULT_SETTINGS, ...change });

const RANGES: readonly Range[] = [
  {
    of: 'examine',
    file: 'stopping/player',
    says: 'are no fingerings, in cents; 0–100',
    ends: [0, 100],
    step: 0.001,
    use: (toleranceCents) => settings({ toleranceCents }),
  },
  {
    of: 'examine',
    file: 'stopping/player',
    says: 'adds to every closure, in cents, −100 to 100',
    ends: [-100, 100],
    step: 0.001,
    use: (handOffsetCents) => settings({ handOffsetCents }),
  },
  {
    of: 'examine',
    file: 'part/settings',
    says: 'too quick; 0–10',
    ends: [0, 10],
    step: 0.001,
    use: (handSeconds) => settings({ handSeconds }),
  },
  {
    of: 'examine',
    file: 'part/settings',
    says: 'in quarter notes a minute; 1–1000',
    ends: [1, 1000],
    step: 0.001,
    use: (assumedQuartersPerMinute) => settings({ assumedQuartersPerMinute }),
  },
  {
    of: 'stop',
    file: 'stopping/stopping',
    says: '@param harmonicNumber 2 to HIGHEST_HARMONIC',
    ends: [2, door.HIGHEST_HARMONIC],
    step: 1,
    use: (harmonicNumber) => stop(tube, harmonicNumber),
  },
  {
    of: 'stop',
    file: 'stopping/stopping',
    says: 'in cents, −100 to 100',
    ends: [-100, 100],
    step: 0.001,
    use: (handOffsetCents) => stop(tube, 4, handOffsetCents),
  },
  {
    of: 'harmonicCents',
    file: 'horn/harmonics',
    says: 'is not an integer from 1 to HIGHEST_HARMONIC',
    ends: [1, door.HIGHEST_HARMONIC],
    step: 1,
    use: (harmonicNumber) => door.harmonicCents(harmonicNumber),
  },
  {
    of: 'naturalHorn',
    file: 'horn/horns/natural',
    says: 'written to sounding, −24 to 12',
    ends: [-24, 12],
    step: 0.001,
    use: (semitones) => door.naturalHorn({ id: 'x', name: 'x', semitones }),
  },
  {
    of: 'closingCurve',
    file: 'acoustics/closingCurve',
    says: 'above MIDI note 0, 1500–4200',
    ends: [1500, 4200],
    step: 0.001,
    use: (fundamentalCents) => closingCurve({ fundamentalCents }, { steps: 1, harmonics: [4] }),
  },
  {
    of: 'closingCurve',
    file: 'acoustics/closingCurve',
    says: 'Steps from open to sealed, 1–1000',
    ends: [1, 1000],
    step: 1,
    use: (steps) => closingCurve(tube, { steps, harmonics: [4] }),
  },
  {
    of: 'closingCurve',
    file: 'acoustics/closingCurve',
    says: 'Harmonics wanted, each 1–16',
    ends: [1, 16],
    step: 1,
    use: (harmonic) => closingCurve(tube, { steps: 1, harmonics: [harmonic] }),
  },
  {
    of: 'toneCurve',
    file: 'acoustics/tone',
    says: '@param harmonicNumber 1–16',
    ends: [1, 16],
    step: 1,
    use: (harmonicNumber) => toneCurve(tube, harmonicNumber),
  },
  {
    of: 'closingForDrop',
    file: 'acoustics/closingForDrop',
    says: 'natural minus wanted pitch, 0 or more',
    ends: [0, Number.POSITIVE_INFINITY],
    step: 0.001,
    use: (dropCents) => door.closingForDrop(closingCurve(tube, { steps: 1 }), 4, dropCents),
  },
  {
    of: 'playedTone',
    file: 'acoustics/playedTone',
    says: '0 open … 1 sealed',
    ends: [0, 1],
    step: 0.001,
    use: (closing) =>
      door.playedTone(toneCurve(tube, 8), [
        { seconds: 0, closing },
        { seconds: 0.01, closing },
      ]),
  },
  {
    of: 'composeEtude',
    file: 'etude/etude',
    says: 'a multiple of four, SHORTEST_BARS to LONGEST_BARS',
    ends: [door.SHORTEST_BARS, door.LONGEST_BARS],
    step: door.PHRASE_BARS,
    use: (bars) => door.composeEtude({ ...SEAL_REQUEST, bars }),
  },
  {
    of: 'composeEtude',
    file: 'etude/etude',
    says: 'SLOWEST_TEMPO to FASTEST_TEMPO',
    ends: [door.SLOWEST_TEMPO, door.FASTEST_TEMPO],
    step: 0.001,
    use: (tempo) => door.composeEtude({ ...SEAL_REQUEST, tempo }),
  },
  {
    of: 'composeEtude',
    file: 'etude/etude',
    says: 'An integer from 0 to HIGHEST_SEED',
    ends: [0, door.HIGHEST_SEED],
    step: 1,
    use: (seed) => door.composeEtude({ ...SEAL_REQUEST, seed }),
  },
  {
    of: 'composeLesson',
    file: 'etude/lesson',
    says: 'An integer from 0 to HIGHEST_SEED',
    ends: [0, door.HIGHEST_SEED],
    step: 1,
    use: (seed) => door.composeLesson({ ...SEAL_REQUEST, seed }),
  },
  {
    of: 'composeCourse',
    file: 'etude/course',
    says: 'one a week; 1 to MOST_WEEKS',
    ends: [1, door.MOST_WEEKS],
    step: 1,
    use: (weeks) => door.composeCourse({ weeks, low: null, high: null, seed: 1, player: DEFAULT_SETTINGS }),
  },
];

describe('a range that a comment states', () => {
  test.each(RANGES)(
    '$of: $says',
    ({ of, file, says, ends, step, use }) => {
      const text = readFileSync(new URL(`${file}.ts`, CORE), 'utf8');
      expect(text.replace(/\n \* +|\n {3}\* +/g, ' ')).toContain(says);
      expect(comments.get(of)).toContain('@throws');
      const [lowest, highest] = ends;
      for (const end of ends.filter(Number.isFinite)) expect(() => use(end)).not.toThrow();
      expect(() => use(lowest - step)).toThrow(RangeError);
      if (Number.isFinite(highest)) expect(() => use(highest + step)).toThrow(RangeError);
    },
    30_000,
  );

  test('is here, wherever the door guards one', () => {
    const stated = RANGES.map(({ says }) => says).join(' ');
    // Every constant of the door that is a limit.
    const limits = Object.keys(door).filter((name) =>
      /^(?:HIGHEST|LONGEST|SHORTEST|MOST|SLOWEST|FASTEST)_/.test(name),
    );
    for (const limit of limits.filter((name) => name !== 'HIGHEST_CURVE_HARMONIC'))
      expect(stated).toContain(limit);
    expect(door.HIGHEST_CURVE_HARMONIC).toBe(16);
  });
});
