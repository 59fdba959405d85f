/** A caller's mistake at a public door: a plain error that names the field, says what is allowed and what was given. */
import { describe, expect, test } from 'vitest';
import {
  closingBand,
  closingCurve,
  composeCourse,
  composeEtude,
  composeLesson,
  curveText,
  DEFAULT_SETTINGS,
  ETUDE_KINDS,
  type EtudeRequest,
  examine,
  fingerings,
  HORNS,
  harmonicCents,
  kindWords,
  marksFor,
  naturalHorn,
  nearestFingering,
  parseKey,
  parsePitch,
  passageOf,
  pitchCents,
  readerOf,
  repairsFor,
  resultOf,
  SHOW_ALL,
  spellCents,
  stop,
  tubesOf,
} from '../../core/index.ts';
import { request as usualRequest } from './etude/composed.ts';

/** As from plain JavaScript, where no compiler has looked. */
// biome-ignore lint/suspicious/noExplicitAny: that is what is tested
type Anything = any;

const passage = passageOf('C5+ E5 | G4o~ F4+');
const tube = tubesOf(HORNS[0]!.sides[0]!)[0]!;

function withNote(index: number, changes: object): Anything {
  return {
    ...passage,
    notes: passage.notes.map((note, i) => (i === index ? { ...note, ...changes } : note)),
  };
}

function withSettings(changes: object): Anything {
  return { ...DEFAULT_SETTINGS, ...changes };
}

function request(changes: object): EtudeRequest {
  return usualRequest(changes as Anything);
}

const MISTAKES: readonly (readonly [call: string, run: () => unknown, message: string])[] = [
  [
    'a language',
    () => readerOf('xx' as Anything),
    '"language" must be one of "en", "de", "fr", "it", "es", got "xx"',
  ],
  [
    'names of notes',
    () => readerOf('en', 'french' as Anything),
    '"noteNaming" must be one of "english", "german", "solfege", null, got "french"',
  ],
  [
    'marks of nothing',
    () => marksFor(undefined as Anything),
    '"examination" must be an examination, as examine makes one, got undefined',
  ],
  [
    'a result of one examination',
    () => resultOf(examine(passage) as Anything),
    '"examinations" must be a list of examinations, as examine makes them, got an object',
  ],
  [
    'repairs of no finding',
    () => repairsFor(examine(passage), undefined as Anything),
    '"finding" must be one of its findings, got undefined',
  ],
  [
    'tubes of a name',
    () => tubesOf('F' as Anything),
    '"side" must be a side of a horn, such as HORNS[0].sides[0], got "F"',
  ],
  [
    'a curve of nothing',
    () => closingCurve(null as Anything),
    '"tube" must be a tube, as tubesOf makes them, or { fundamentalCents }, got null',
  ],
  [
    'a curve’s text without a curve',
    () => curveText(undefined as Anything),
    '"curve" must be a curve, as closingCurve makes one, got undefined',
  ],
  [
    'a lesson’s level',
    () => composeLesson({ ...request({}), level: 4 as Anything }),
    '"level" must be one of 1, 2, 3, got 4',
  ],
  [
    'a course without a player',
    () => composeCourse({ weeks: 2, low: null, high: null, seed: 1, player: undefined as Anything }),
    '"settings" must be settings such as { ...DEFAULT_SETTINGS, toleranceCents: 30 }, got undefined',
  ],
  [
    'no passage',
    () => examine(undefined as Anything),
    '"passage" must be a passage, as passageOf makes one, got undefined',
  ],
  [
    'a passage without rests',
    () => examine({ ...passage, rests: undefined } as Anything),
    '"passage.rests" must be a list, if need be an empty one',
  ],
  [
    'a wrong index',
    () => examine(withNote(1, { index: 7 })),
    '"notes[1].index" must be an integer from 1 to 1, got 7',
  ],
  [
    'notes out of order',
    () => examine(withNote(0, { onsetQuarters: 9 })),
    '"notes[1].onsetQuarters" must be 9 or more, got 1',
  ],
  [
    'no onset',
    () => examine(withNote(1, { onsetQuarters: Number.NaN })),
    '"notes[1].onsetQuarters" must be a number, got NaN',
  ],
  [
    'a length below 0',
    () => examine(withNote(1, { durationQuarters: -1 })),
    '"notes[1].durationQuarters" must be 0 or more, got -1',
  ],
  [
    'a chord that begins later',
    () => examine(withNote(1, { chordHead: 2 })),
    '"notes[1].chordHead" must be an integer from 0 to 1, got 2',
  ],
  [
    'a clef',
    () => examine(withNote(1, { clef: 'alto' })),
    '"notes[1].clef" must be one of "treble", "bass", "other", got "alto"',
  ],
  [
    'a sign',
    () => examine(withNote(1, { sign: '+' })),
    '"notes[1].sign" must be one of "stopped", "open", "half-stopped", null, got "+"',
  ],
  [
    'a join to nowhere',
    () => examine(withNote(1, { joins: [{ kind: 'slur', to: 4 }] })),
    '"notes[1].joins to" must be an integer from 0 to 3, got 4',
  ],
  [
    'a kind of join',
    () => examine(withNote(1, { joins: [{ kind: 'smear', to: 2 }] })),
    '"notes[1].joins kind" must be one of "tie", "slur", "glissando", "bend", got "smear"',
  ],
  [
    'a tempo of 0',
    () => examine({ ...passage, tempos: [{ onsetQuarters: 0, quartersPerMinute: 0 }] }),
    '"tempos[0].quartersPerMinute" must be above 0, got 0',
  ],
  [
    'no settings',
    () => examine(passage, null as Anything),
    '"settings" must be settings such as { ...DEFAULT_SETTINGS, toleranceCents: 30 }, got null',
  ],
  [
    'a horn by name',
    () => examine(passage, withSettings({ horn: 'double' })),
    '"horn" must be a horn: one of HORNS, or what readHornFile makes, got "double"',
  ],
  [
    'a tolerance',
    () => examine(passage, withSettings({ toleranceCents: 150 })),
    '"toleranceCents" must be from 0 to 100, got 150',
  ],
  [
    'a hand',
    () => examine(passage, withSettings({ handOffsetCents: '10' })),
    '"handOffsetCents" must be a number, got "10"',
  ],
  [
    'a time for the hand',
    () => examine(passage, withSettings({ handSeconds: -1 })),
    '"handSeconds" must be from 0 to 10, got -1',
  ],
  [
    'names',
    () => examine(passage, withSettings({ names: 'french' })),
    '"names" must be one of "as-written", "f-horn", got "french"',
  ],
  [
    'a bass clef',
    () => examine(passage, withSettings({ bassClef: 'oldest' })),
    '"bassClef" must be one of "auto", "old", "new", got "oldest"',
  ],
  [
    'an assumed tempo',
    () => examine(passage, withSettings({ assumedQuartersPerMinute: 0 })),
    '"assumedQuartersPerMinute" must be from 1 to 1000, got 0',
  ],
  [
    'no pitch',
    () => fingerings(Number.NaN, 'stopped', DEFAULT_SETTINGS),
    '"soundingCents" must be a number, got NaN',
  ],
  [
    'a hand state',
    () => fingerings(6500, 'closed' as Anything, DEFAULT_SETTINGS),
    '"state" must be one of "open", "half-stopped", "stopped", "echo", "stopping-mute", "straight-mute", got "closed"',
  ],
  [
    'no player',
    () => fingerings(6500, 'stopped', undefined as Anything),
    '"player" must be a player such as DEFAULT_SETTINGS, got undefined',
  ],
  [
    'a player’s tolerance',
    () => fingerings(6500, 'stopped', withSettings({ toleranceCents: -5 })),
    '"toleranceCents" must be from 0 to 100, got -5',
  ],
  [
    'a state for the nearest',
    () => nearestFingering(6500, 'shut' as Anything, DEFAULT_SETTINGS),
    '"state" must be one of "open", "half-stopped", "stopped", "echo", "stopping-mute", "straight-mute", got "shut"',
  ],
  [
    'the 1st harmonic stopped',
    () => stop(tube, 1),
    '"harmonicNumber" must be an integer from 2 to 24, got 1',
  ],
  ['half a harmonic', () => stop(tube, 4.5), '"harmonicNumber" must be an integer from 1 to 24, got 4.5'],
  ['a hand a fifth off', () => stop(tube, 4, 700), '"handOffsetCents" must be from -100 to 100, got 700'],
  ['the 25th harmonic', () => harmonicCents(25), '"harmonicNumber" must be an integer from 1 to 24, got 25'],
  ['no degree', () => closingBand(Number.NaN), '"degree" must be a number, got NaN'],
  [
    'a letter',
    () => pitchCents({ step: 'H' as Anything, alter: 0, octave: 4 }),
    '"step" must be one of "C", "D", "E", "F", "G", "A", "B", got "H"',
  ],
  ['cents', () => spellCents(Number.NaN, 'sharp'), '"cents" must be a number, got NaN'],
  [
    'a note name',
    () => parsePitch('H4'),
    '"H4" is not a note name: write a letter A–G, # or b if needed, and the octave, as in C#5 or Bb4',
  ],
  [
    'a crook',
    () => naturalHorn({ id: 'x', name: 'x', semitones: 30 }),
    '"semitones" must be from -24 to 12, got 30',
  ],
  [
    'a tube',
    () => closingCurve({ fundamentalCents: 6000 }),
    '"fundamentalCents" must be from 1500 to 4200, got 6000',
  ],
  ['steps', () => closingCurve(tube, { steps: 0 }), '"steps" must be an integer from 1 to 1000, got 0'],
  [
    'a harmonic of a curve',
    () => closingCurve(tube, { harmonics: [17] }),
    '"harmonics" must be an integer from 1 to 16, got 17',
  ],
  [
    'repeats',
    () => marksFor(examine(passage), { ...SHOW_ALL, repeat: 'never' as Anything }),
    '"repeat" must be one of "all", "changes", got "never"',
  ],
  [
    'the form in quick bars',
    () => marksFor(examine(passage), { ...SHOW_ALL, quick: 'never' as Anything }),
    '"quick" must be one of "full", "valves", got "never"',
  ],
  [
    'no note name',
    () => parsePitch(undefined as Anything),
    '"undefined" is not a note name: write a letter A–G, # or b if needed, and the octave, as in C#5 or Bb4',
  ],
  [
    'no key',
    () => parseKey(5 as Anything),
    '"5" is not a key: write a tonic and, for minor, an m, as in F, Bb, Dm or C# minor',
  ],
  [
    'nothing asked for',
    () => composeEtude(undefined as Anything),
    '"request" must be what is asked for: { kind, key, level, bars, tempo, low, high, seed, player }, got undefined',
  ],
  [
    'words of a kind',
    () => kindWords('march', readerOf('en')),
    `"kind" must be one of ${ETUDE_KINDS.map(({ kind }) => `"${kind}"`).join(', ')}, got "march"`,
  ],
  [
    'an étude kind',
    () => composeEtude(request({ kind: 'march' })),
    `"kind" must be one of ${ETUDE_KINDS.map(({ kind }) => `"${kind}"`).join(', ')}, got "march"`,
  ],
  [
    'a key by name',
    () => composeEtude(request({ key: 'C' })),
    '"key" must be a key, as parseKey reads it, got "C"',
  ],
  ['a level', () => composeEtude(request({ level: 4 })), '"level" must be one of 1, 2, 3, got 4'],
  ['bars', () => composeEtude(request({ bars: 9 })), '"bars" must be a multiple of 4 from 4 to 64, got 9'],
  ['a tempo', () => composeEtude(request({ tempo: 300 })), '"tempo" must be from 40 to 132, got 300'],
  [
    'a seed',
    () => composeEtude(request({ seed: -1 })),
    '"seed" must be an integer from 0 to 4294967295, got -1',
  ],
  [
    'a player of an étude',
    () => composeEtude(request({ player: null })),
    '"settings" must be settings such as { ...DEFAULT_SETTINGS, toleranceCents: 30 }, got null',
  ],
];

describe('turned away', () => {
  test.each(MISTAKES)('%s', (_, run, message) => {
    let caught: unknown = null;
    try {
      run();
    } catch (error) {
      caught = error;
    }
    expect(caught instanceof TypeError || caught instanceof RangeError).toBe(true);
    expect((caught as Error).message).toBe(message);
  });

  test('and what is right is let in', () => {
    expect(fingerings(-5000, 'stopped', DEFAULT_SETTINGS)).toEqual([]);
    expect(fingerings(1e9, 'stopped', DEFAULT_SETTINGS)).toEqual([]);
    expect(examine(passage).notes).toHaveLength(4);
    expect(fingerings(6500, 'stopped', DEFAULT_SETTINGS).length).toBeGreaterThan(0);
    expect(composeEtude(request({})).ok).toBe(true);
  });
});
