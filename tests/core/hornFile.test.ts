/** Horns from JSON files: read, played on, and refused with one clear line. */
import { describe, expect, test } from 'vitest';
import { type HornFileError, readHornFile } from '../../core/horn/file/hornFile.ts';
import type { Horn } from '../../core/horn/horn.ts';
import { DOUBLE } from '../../core/horn/horns/double.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { examine } from '../../core/rules/examine.ts';
import { commandLineWords } from '../../core/words/commandLine.ts';
import { ENGLISH_READER, LANGUAGES, readerOf } from '../../core/words/language.ts';

/** A horn like the built-in double, written out. */
const DOUBLE_FILE = {
  label: 'my double horn',
  sides: [
    { name: 'F', fundamental: 'F1' },
    { name: 'Bb', fundamental: 'Bb1', prefix: 'T', openFrom: 'Db4' },
  ],
};

function read(file: unknown): Horn {
  return readHornFile(JSON.stringify(file), 'mine');
}

function played(horn: Horn, text: string): string {
  return examine(passageOf(text), { ...DEFAULT_SETTINGS, horn })
    .notes.map(({ fingering }) => fingering?.printed ?? '-')
    .join(' ');
}

describe('a horn file', () => {
  test('that describes the double horn plays like it', () => {
    const scale = 'C4+ D4+ E4+ F4+ G4+ A4+ B4+ C5+ D5+ E5+ F5+ C4 D4 E4 A4 C5 E5';
    expect(played(read(DOUBLE_FILE), scale)).toBe(played(DOUBLE, scale));
    expect(read(DOUBLE_FILE)).toMatchObject({
      id: 'mine',
      label: 'my double horn',
      sides: [
        { stoppingOrder: 1, openFromCents: 0 },
        { stoppingOrder: 2, openFromCents: 6100 },
      ],
      natural: false,
    });
  });

  test('with a stopping valve lets the written fingering stand', () => {
    const horn = read({ sides: [{ name: 'Bb', fundamental: 'Bb1', stoppingValveCents: 150 }] });
    expect(horn.label).toBe('horn in Bb');
    const same = HORNS.find(({ id }) => id === 'single-bflat-stop-valve')!;
    expect(played(horn, 'F4+ G4+ A4+ C5+')).toBe(played(same, 'F4+ G4+ A4+ C5+'));
  });

  test('may list its own valves', () => {
    const valves = [
      { valves: '0', semitones: 0 },
      { valves: '4', semitones: 1, sharpCents: 2, rarer: true },
    ];
    const horn = read({ sides: [{ name: 'F', fundamental: 'F1', valves }] });
    expect(played(horn, 'E4 D#4')).toBe('0 4');
  });

  test('may be a natural horn in any key', () => {
    const horn = read({ natural: true, sides: [{ name: 'F', fundamental: 'F1' }] });
    const { notes } = examine(passageOf('C5 A4'), { ...DEFAULT_SETTINGS, horn });
    expect(notes.map(({ fingering }) => fingering!.band)).toEqual([null, '½']);
  });

  test('may start with a byte order mark', () => {
    expect(readHornFile(`\ufeff${JSON.stringify(DOUBLE_FILE)}`).id).toBe('custom');
  });

  test('as its documentation shows it can be read', () => {
    const documented = {
      label: 'descant horn in B♭ and high F',
      sides: [
        { name: 'Bb', fundamental: 'Bb1', closureCents: 150, stoppingValveCents: 150 },
        { name: 'high F', prefix: 'T', fundamental: 'F2', stoppable: false, openFrom: 'C5' },
      ],
    };
    expect(read(documented).sides.map(({ stoppable }) => stoppable)).toEqual([true, false]);
    const same = HORNS.find(({ id }) => id === 'descant')!;
    const scale = 'C4 E4 A4 C5 E5 F#5 G5 A5 C6 E4+ A4+ C5+ E5+ G5+';
    expect(played(read(documented), scale)).toBe(played(same, scale));
  });

  test('says by itself which side comes first, in whatever order it lists them', () => {
    const [f, bflat] = DOUBLE_FILE.sides;
    const turned = read({ ...DOUBLE_FILE, sides: [bflat, f] });
    expect(played(turned, 'E4+ A4+ C5+ E5+ C4 A4 C5')).toBe(played(DOUBLE, 'E4+ A4+ C5+ E5+ C4 A4 C5'));
    // A stopping valve is there to be used; unless the file says otherwise.
    const valve = { ...bflat, stoppingValveCents: 150 };
    expect(played(read({ sides: [f, valve] }), 'C5+')).toBe('T0');
    const asked = {
      sides: [
        { ...f, stoppingOrder: 1 },
        { ...valve, stoppingOrder: 2 },
      ],
    };
    expect(played(read(asked), 'C5+')).toBe('2');
  });

  test('may have a third valve that raises by a tone', () => {
    const named = read({ sides: [{ name: 'F', fundamental: 'F1', valves: 'ascending' }] });
    // F3 to G3 with 1, 2 and 0; A♭3 and A3 lie a semitone and a tone above the 3rd harmonic, G3.
    expect(played(named, 'F3 F#3 G3 Ab3 A3')).toBe('1 2 0 23 3');
    // Stopped as fingered a semitone below: B♭4 as A4, the tone above the 6th harmonic.
    expect(played(named, 'A4+ Bb4+')).toBe('23 3');
    const listed = read({
      sides: [
        {
          name: 'F',
          fundamental: 'F1',
          valves: [
            { valves: '3', semitones: -2 },
            { valves: '1', semitones: 2 },
            { valves: '0', semitones: 0 },
          ],
        },
      ],
    });
    expect(played(listed, 'F3 G3 A3')).toBe('1 0 3');
  });
});

const SIDE = { name: 'F', fundamental: 'F1' };

const FAULTS: readonly [file: unknown, message: string][] = [
  [[], 'the file must be { "label"'],
  [{}, 'sides must be a list of one to four sides, each { "name": …, "fundamental": … }, got nothing'],
  [{ sides: [] }, 'sides must be a list'],
  [
    { sides: [SIDE], colour: 'gold' },
    'the file has a field "colour" that means nothing here; write one of label',
  ],
  [{ sides: ['F'] }, 'sides[0] must be { "name": "F", "fundamental": "F1" }, got "F"'],
  [{ sides: [{ name: 'F' }] }, 'sides[0].fundamental must be a sounding note name such as "F1", got nothing'],
  [
    { sides: [{ name: 'F', fundamental: 29 }] },
    'sides[0].fundamental must be a sounding note name such as "F1", got 29',
  ],
  [{ sides: [{ name: 'F', fundamental: 'H1' }] }, 'sides[0].fundamental must be a sounding note name'],
  [{ sides: [{ name: 'F', fundamental: 'F5' }] }, 'from C0 to C3'],
  [{ sides: [{ fundamental: 'F1' }] }, 'sides[0].name must be a text'],
  [{ sides: [{ ...SIDE, name: '<b>' }] }, 'sides[0].name must be a text'],
  [
    { sides: [SIDE, { ...SIDE, closureCents: '100' }] },
    'sides[1].closureCents must be a number from 0 to 300, got "100"',
  ],
  [
    { sides: [{ ...SIDE, closureCents: 900 }] },
    'sides[0].closureCents must be a number from 0 to 300, got 900',
  ],
  [{ sides: [{ ...SIDE, closure: 100 }] }, 'sides[0] has a field "closure"'],
  [
    { sides: [{ ...SIDE, valves: 'rotary' }] },
    'sides[0].valves must be "compromise", "ascending", "none", or a list',
  ],
  [
    { sides: [{ ...SIDE, valves: [{ valves: 'x', semitones: 1 }] }] },
    'sides[0].valves[0].valves must be "0" or the numbers',
  ],
  [
    { sides: [{ ...SIDE, valves: [{ valves: '1' }] }] },
    'sides[0].valves[0].semitones must be a number from -12 to 12, got nothing',
  ],
  [{ sides: [{ ...SIDE, stoppable: false }] }, 'no side can be stopped'],
  [{ sides: [{ ...SIDE, stoppable: 'yes' }] }, 'sides[0].stoppable must be true or false, got "yes"'],
  [{ sides: [SIDE, SIDE], natural: true }, 'sides must be one side, the crook, on a natural horn'],
  [{ sides: [SIDE], shortSideFrom: 'Db4' }, 'write it there as "openFrom": "Db4"'],
  [{ sides: [{ ...SIDE, openFrom: 61 }] }, 'sides[0].openFrom must be a sounding note name'],
  [
    { sides: [{ ...SIDE, stoppingOrder: 1.5 }] },
    'sides[0].stoppingOrder must be a whole number from 1 to 4, got 1.5',
  ],
  [{ sides: [{ ...SIDE, stoppingOrder: 1 }, SIDE] }, 'give it for every side, or for none'],
  [
    {
      sides: [
        { ...SIDE, stoppingOrder: 1 },
        { ...SIDE, stoppingOrder: 1 },
      ],
    },
    'two sides have the same "stoppingOrder"',
  ],
];

describe('a horn file is refused with one line that says what is wrong and what to write', () => {
  test.each(FAULTS)('%j', (file, message) => {
    const error = refusal(file);
    expect(error).toBeInstanceOf(RangeError);
    expect(error.message).toContain(message);
    expect(error.message).not.toContain('\n');
    expect(error.message.length).toBeLessThan(300);
  });

  test('not JSON at all', () => expect(() => readHornFile('{ "sides": ')).toThrow(/^not JSON: /));

  test.each(LANGUAGES.filter((language) => language !== 'en'))(
    'in %s too, with the same names and values',
    (language) => {
      const english = commandLineWords(ENGLISH_READER).hornFile;
      const own = commandLineWords(readerOf(language)).hornFile;
      for (const file of FAULTS.map(([each]) => each)) {
        const error = refusal(file);
        expect(error.in(english)).toBe(error.message);
        expect(error.in(own)).not.toBe(error.message);
        expect(error.in(own)).not.toMatch(/undefined|\n/);
        const { fault } = error;
        const kept =
          fault.is === 'wrong-value'
            ? [fault.at, fault.got]
            : fault.is === 'unknown-field'
              ? fault.known
              : [];
        for (const value of kept) expect(error.in(own)).toContain(value);
      }
    },
  );
});

function refusal(file: unknown): HornFileError {
  try {
    read(file);
  } catch (error) {
    return error as HornFileError;
  }
  throw new Error('it was taken');
}
