/** The built module turns away whatever makes no sense, at every function and in every place, and says what it wants. */
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { parametersIn } from '../../build/guardedDoor.ts';
import type { Parameter } from '../../core/door/guarded.ts';
import { KINDS } from '../../core/door/kinds.ts';
import type * as Door from '../../core/index.ts';
import { SEAL_REQUEST } from './sealRequest.ts';

const DIST = new URL('../../dist/', import.meta.url);
const door: typeof Door = await import(new URL('core.js', DIST).href);
const functions = [...parametersIn(fileURLToPath(DIST))];

const {
  DEFAULT_SETTINGS,
  HORNS,
  askNote,
  closingCurve,
  completionsFor,
  composeEtude,
  countNotes,
  examine,
  fingerings,
  marksFor,
  naturalPitch,
  parseKey,
  parsePitch,
  passageOf,
  readerOf,
  repairsFor,
  toneCurve,
  tubesOf,
  UNSET,
} = door;

const side = HORNS[0]!.sides[0]!;
const tube = tubesOf(side)[0]!;
const passage = passageOf('E4~ F4+ G4+ | C5');
const examination = examine(passage);
const finding = examination.findings[0]!;
const repair = repairsFor(examination, finding)[0]!;
const reader = readerOf('de');
const key = parseKey('C');
const pitch = parsePitch('C5');
const fingering = fingerings(6500, 'stopped', DEFAULT_SETTINGS)[0]!;
const made = composeEtude(SEAL_REQUEST);
const etude = made.ok ? made.etude : null!;
const tones = toneCurve(tube, 8);
const counts = countNotes([examination]);

/** One of each kind, as the door itself makes it. */
const SAMPLES: ReadonlyMap<string, unknown> = new Map<string, unknown>([
  ['number', 4],
  ['string', 'C5'],
  ['=>', () => true],
  ['ChosenBecause', { kind: 'one-tube', insteadOf: fingering, neighbourIndex: 0, neighbour: pitch }],
  ['ClosingCurve', closingCurve(tube)],
  ['Counts', counts],
  ['CourseRequest', { weeks: 1, low: null, high: null, seed: 1, player: DEFAULT_SETTINGS }],
  ['Crook', door.CROOKS[0]],
  ['Etude', etude],
  ['EtudeRequest', SEAL_REQUEST],
  ['ExaminedNote', examination.notes[0]],
  ['Examination', examination],
  ['Finding', finding],
  ['Fingering', fingering],
  ['HandMoment', door.CLOSING_HAND[0]],
  ['Horn', HORNS[0]],
  ['HornBore', door.USUAL_BORE],
  ['Key', key],
  ['LessonRequest', { ...SEAL_REQUEST, key: null }],
  ['Mark', marksFor(examination)[0]],
  ['MarkSetting', UNSET],
  ['NamedPitch', naturalPitch(pitch, fingering)],
  ['NoteAnswer', askNote(pitch, door.HORN_IN_F, DEFAULT_SETTINGS)],
  ['PartEvidence', { names: ['Horn'], instrumentNames: [], sounds: [], programs: [] }],
  ['Passage', passage],
  ['PassageNote', passage.notes[0]],
  ['Pitch', pitch],
  ['Player', DEFAULT_SETTINGS],
  ['Reader', reader],
  ['Repair', repair],
  ['RepairStep', repair.steps[0]],
  ['Settings', DEFAULT_SETTINGS],
  ['Show', door.SHOW_ALL],
  ['Side', side],
  ['Tone', tones.tones[0]],
  ['ToneCurve', tones],
  ['Transposition', door.HORN_IN_F],
  ['Tube', tube],
  ['VerdictCounts', counts.stopped],
  ['Words', reader.words],
  ['Float32Array', new Float32Array(4)],
  ['{ fundamentalCents }', tube],
  ['{ tonic, mode }', key],
  ['{ bars }', etude],
  ['{ kind }', completionsFor(examination)[0] ?? repair],
  ['options', {}],
]);

/** Texts that are read: any other is no such name. */
const TEXTS: ReadonlyMap<string, string> = new Map([
  ['parseKey', 'C'],
  ['kindWords', 'seal'],
  ['readHornFile', '{ "sides": [{ "name": "F", "fundamental": "F1" }] }'],
]);

/** A hand has a beginning and an end. */
const LISTS: ReadonlyMap<string, unknown> = new Map([['playedTone', door.CLOSING_HAND]]);

function sampleFor(of: string, { kind, isList }: Parameter): unknown {
  const known = KINDS.get(kind)!;
  const one =
    known.is === 'one of'
      ? known.allowed[0]
      : kind === 'string'
        ? (TEXTS.get(of) ?? SAMPLES.get(kind))
        : SAMPLES.get(kind);
  return isList ? (LISTS.get(of) ?? [one]) : one;
}

function outcome(name: string, given: readonly unknown[]): unknown {
  try {
    return {
      result: (door[name as keyof typeof Door] as (...given: readonly unknown[]) => unknown)(...given),
    };
  } catch (error) {
    return error;
  }
}

/** Nothing that a function takes, and what plain JavaScript gives by mistake. */
const MISTAKES: readonly unknown[] = [undefined, null, Symbol('nothing'), true, Number.NaN, {}];

describe('the door of the built module', () => {
  test('has functions, and every kind of argument a sample', () => {
    expect(functions.length).toBeGreaterThan(100);
    const kinds = new Set(functions.flatMap(([, parameters]) => parameters.map(({ kind }) => kind)));
    for (const kind of kinds) expect(KINDS.get(kind)!.is === 'one of' || SAMPLES.has(kind), kind).toBe(true);
    // Nor does the list hold kinds that nobody takes.
    expect([...KINDS.keys()].filter((kind) => !kinds.has(kind))).toEqual([]);
  });

  test.each(functions)('%s lets in what is right', (name, parameters) => {
    const given = parameters.map((parameter) => sampleFor(name, parameter));
    expect(outcome(name, given), name).not.toBeInstanceOf(Error);
  });

  test.each(functions)('%s turns away what is not', (name, parameters) => {
    const right = parameters.map((parameter) => sampleFor(name, parameter));
    parameters.forEach((parameter, i) => {
      for (const mistake of MISTAKES) {
        if ((mistake === undefined && parameter.mayBeLeftOut) || (mistake === null && parameter.mayBeNull))
          continue;
        if (parameter.kind === 'options' && typeof mistake === 'object' && mistake !== null) continue;
        for (const wrong of parameter.isList ? [mistake, [mistake]] : [mistake]) {
          const given = right.map((sample, place) => (place === i ? wrong : sample));
          const error = outcome(name, given) as Error;
          expect(
            error instanceof TypeError || error instanceof RangeError,
            `${name}: ${parameter.name}`,
          ).toBe(true);
          expect(error.message).toMatch(/^"[\w[\]]+" must be /);
          expect(error.message).toContain(`"${parameter.name}`);
        }
      }
    });
  });
});
