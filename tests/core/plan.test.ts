/** Planning: exact against every path tried, stable, and as players finger. Horn in F on a double horn. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { handWay, movesHand } from '../../core/part/handMotion.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../core/part/settings.ts';
import { HORN_IN_F, parsePitch, soundingCents } from '../../core/pitch/pitch.ts';
import { hurryIn, type PlannedNote, pathCost } from '../../core/plan/pathCost.ts';
import { planLine } from '../../core/plan/plan.ts';
import { examine } from '../../core/rules/examine.ts';
import { type Fingering, fingerings, type HandState } from '../../core/stopping/fingering.ts';
import { choiceText } from '../../core/words/fingerings.ts';
import { ENGLISH_READER } from '../../core/words/language.ts';

const NOTES = ['C4', 'C#4', 'D4', 'E4', 'F4', 'G4', 'Ab4', 'A4', 'Bb4', 'B4', 'C5', 'Db5', 'D5', 'E5'];
const STATES: readonly HandState[] = ['open', 'stopped', 'half-stopped', 'echo'];

/** A note with every fingering, or the first few where every path is to be tried. */
function planned(
  written: string,
  state: HandState,
  joined: PlannedNote['joined'],
  hurry: number,
  most = 99,
  player = DEFAULT_SETTINGS,
): PlannedNote {
  const all = fingerings(soundingCents(parsePitch(written), HORN_IN_F), state, player);
  if (all.length <= most) return { options: all, state, joined, hurry };
  const key = `${written} ${state} ${most}`;
  const few = FEW.get(key) ?? all.slice(0, most);
  FEW.set(key, few);
  return { options: few, state, joined, hurry };
}
const FEW = new Map<string, PlannedNote['options']>();

const anyNote = fc.record({
  written: fc.constantFrom(...NOTES),
  state: fc.constantFrom(...STATES),
  seconds: fc.constantFrom<number>(0, 0.1, 0.2, 0.35, 0.6),
  joined: fc.constantFrom(null, null, null, 'glissando' as const),
});
type AnyNote = typeof anyNote extends fc.Arbitrary<infer T> ? T : never;

function lineOf(notes: readonly AnyNote[], most?: number, player?: Settings): PlannedNote[] {
  return notes
    .map(({ written, state, seconds, joined }, i) =>
      planned(written, state, i === 0 ? null : joined, i === 0 ? 0 : hurryIn(seconds), most, player),
    )
    .filter(({ options }) => options.length > 0);
}

const optionsOf = (line: readonly PlannedNote[]): number[] => planLine(line).map(({ option }) => option);

/** Glissandos between an open and a closed note that no one tube holds. */
function brokenJoins(line: readonly PlannedNote[], options: readonly number[]): number {
  return line.filter((note, i) => {
    const before = line[i - 1];
    if (!before || !note.joined || !movesHand(before.state, note.state)) return false;
    return (
      handWay(
        { fingering: before.options[options[i - 1]!]!, state: before.state },
        { fingering: note.options[options[i]!]!, state: note.state },
      ) === null
    );
  }).length;
}

/** Every path, tried. */
function leastCostByTrying(line: readonly PlannedNote[]): number {
  let paths: number[][] = [[]];
  for (const { options } of line)
    paths = paths.flatMap((path) => options.map((_, option) => [...path, option]));
  return Math.min(...paths.map((path) => pathCost(line, path)));
}

/** The fingerings of a part as printed. */
function printed(text: string): string {
  return examine(passageOf(text))
    .notes.map(({ fingering }) => fingering?.printed ?? '-')
    .join(' ');
}

describe('the path of least cost', () => {
  test('is as cheap as the cheapest of all paths', () => {
    fc.assert(
      fc.property(fc.array(anyNote, { minLength: 1, maxLength: 5 }), (notes) => {
        // Repeated figures are planned by themselves; their law is below.
        fc.pre(new Set(notes.map(({ written, state }) => written + state)).size === notes.length);
        const line = lineOf(notes, 5);
        expect(pathCost(line, optionsOf(line))).toBe(leastCostByTrying(line));
      }),
      { numRuns: 300 },
    );
  });

  test('is the same every time, and does not hang on what stands before a long rest', () => {
    fc.assert(
      fc.property(
        fc.array(anyNote, { minLength: 1, maxLength: 12 }),
        fc.array(anyNote, { minLength: 1, maxLength: 12 }),
        (before, after) => {
          const alone = lineOf(after);
          fc.pre(alone.length > 0);
          const rested = [{ ...alone[0]!, joined: null, hurry: hurryIn(4) }, ...alone.slice(1)];
          const whole = [...lineOf(before), ...rested];
          expect(optionsOf(whole).slice(-alone.length)).toEqual(optionsOf(alone));
          expect(optionsOf(whole)).toEqual(optionsOf(whole));
        },
      ),
      { numRuns: 300 },
    );
  });

  test('repeats a figure as often as the music does', () => {
    fc.assert(
      fc.property(
        fc.array(anyNote, { minLength: 2, maxLength: 8 }),
        fc.integer({ min: 2, max: 5 }),
        fc.array(anyNote, { maxLength: 3 }),
        (figure, times, lead) => {
          const all = Array.from({ length: times }, () => figure).flat();
          const first = figure[0]!;
          fc.pre(first.seconds > 0 && first.seconds < 0.5 && first.joined === null);
          fc.pre(lineOf(figure).length === figure.length);
          // Before the figure nothing that could be heard as part of it.
          fc.pre(!lead.some(({ written }) => figure.some((note) => note.written === written)));
          const line = lineOf([...lead, ...all]);
          const options = optionsOf(line).slice(line.length - all.length);
          for (let i = figure.length; i < options.length; i++)
            expect(options[i]).toBe(options[i % figure.length]);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('never takes a harmonic that players avoid where they have another and the fingers allow it', () => {
    // Players avoid these as the harmonic that sounds, or, under a full stop, as the one below it. Written out here, so
    // that the law does not hang on how the model says so. Common practice, no source.
    const avoided = [7, 11, 13, 14, 15];
    const carrier = (state: HandState, { tube, harmonic, dropCents }: Fingering) =>
      state === 'stopped' && dropCents >= 15 && tube.side.fingeredNote === 'lower-harmonic'
        ? harmonic - 1
        : harmonic;
    // The B♭ side without a stopping valve stops in tune on its 12th and 8th harmonics. Source: C. Smalley, "Starting Stopping".
    const standsBadly = (state: HandState, fingering: Fingering) =>
      state === 'stopped' && fingering.tube.side.stoppedHarmonics.length > 0
        ? ![12, 8].includes(fingering.harmonic)
        : avoided.includes(carrier(state, fingering));
    let hadChoice = 0;
    fc.assert(
      fc.property(
        fc.array(anyNote, { minLength: 1, maxLength: 8 }),
        fc.constantFrom(...HORNS.filter(({ natural }) => !natural)),
        (notes, horn) => {
          const line = lineOf(notes, 99, { ...DEFAULT_SETTINGS, horn });
          const chosen = optionsOf(line);
          const broken = brokenJoins(line, chosen);
          line.forEach(({ options, state }, i) => {
            if (!standsBadly(state, options[chosen[i]!]!)) return;
            options.forEach((other, option) => {
              if (standsBadly(state, other) || other.verdict === 'impossible') return;
              hadChoice += 1;
              const instead = [...chosen.slice(0, i), option, ...chosen.slice(i + 1)];
              expect(brokenJoins(line, instead)).toBeGreaterThan(broken);
            });
          });
        },
      ),
      { numRuns: 1000 },
    );
    // Some lines take such a harmonic, because a glissando has no other: the law has been put to the test.
    expect(hadChoice).toBeGreaterThan(0);
  });

  test('with time between the notes, every note keeps its standard fingering', () => {
    fc.assert(
      fc.property(fc.array(anyNote, { minLength: 1, maxLength: 20 }), (notes) => {
        const line = lineOf(notes.map((note) => ({ ...note, seconds: 1, joined: null })));
        expect(optionsOf(line)).toEqual(line.map(() => 0));
      }),
    );
  });
});

describe('as players finger', () => {
  test.each([
    // A hand glissando takes one tube, whatever the standard fingering of its ends.
    ['E4~ C#4+', '0 0'],
    ['E4~ D4+', '12 12'],
    ['D4+~ E4', '12 12'],
    ['E4 D4+', '0 12'],
    // Quick changes between open and stopped stay on the side of the stopped notes.
    ['@120 C5/0.25 B4/0.25+ C5/0.25 B4/0.25+', '0 1 0 1'],
    ['@120 C5/1 B4/1+ C5/1 B4/1+', 'T0 1 T0 1'],
    // Quick but open throughout: the usual side, and A4 on T12 as the usual chart of the double horn has it.
    ['@120 C5/0.25 Bb4/0.25 A4/0.25 Bb4/0.25', 'T0 T1 T12 T1'],
    // Echo is fingered a semitone higher, C5 and E5; no hurry sends it to the 11th harmonic.
    ['@300 "echo_horn" B4/0.5 Eb5/0.5 B4/0.5', '0 0 0'],
    // Nor half-stopped notes, although 1 would lie nearer to 0 than T123 does: E♭5 on 1 is the 11th harmonic.
    ['@300 B4/0.5½ Eb5/0.5½ B4/0.5½', '0 T123 0'],
    ['@120 A4+ A4+ A4+', '23 23 23'],
  ])('%s is fingered %s', (text, expected) => expect(printed(text)).toBe(expected));

  test('a note that leaves its standard fingering says why, and over which', () => {
    const because = (text: string) =>
      examine(passageOf(text)).notes.map(
        ({ chosenBecause }) => chosenBecause && choiceText(chosenBecause, ENGLISH_READER),
      );
    expect(because('E4~ D4+')).toEqual(['instead of 0: one tube with D4, to which it is joined', null]);
    expect(because('@120 C5/0.25 B4/0.25+ C5/0.25 B4/0.25+')[0]).toBe(
      'instead of T0: stays on the side of B4, with no time to change sides',
    );
  });

  test('two players of one staff do not hinder one another', () => {
    expect(
      printed('@120 [C5/0.25 E4/0.25+] [D5/0.25 F4/0.25+]')
        .split(' ')
        .filter((_, i) => i % 2 === 0),
    ).toEqual(printed('@120 C5/0.25 D5/0.25').split(' '));
  });
});
