/**
 * Reads a horn that a user describes in a JSON file.
 *
 * ```json
 * {
 *   "label": "descant horn in B♭ and high F",
 *   "sides": [
 *     { "name": "Bb", "fundamental": "Bb1", "closureCents": 150, "stoppingValveCents": 150 },
 *     { "name": "high F", "prefix": "T", "fundamental": "F2", "stoppable": false, "openFrom": "C5" }
 *   ]
 * }
 * ```
 *
 * Sides and valves may stand in any order.
 *
 * | field | meaning | when left out |
 * |---|---|---|
 * | `label` | the horn in words | "horn in" and its sides |
 * | `sides[].name` | as results print it | must be given |
 * | `sides[].fundamental` | sounding pitch of the 1st harmonic with no valve down, `F1` for a horn in F | must be given |
 * | `sides[].prefix` | what stands before the valves, such as `T` for the thumb | nothing |
 * | `sides[].valves` | `"compromise"` (third slide long), `"ascending"` (the third valve raises by a tone), `"none"`, or a list of `{ "valves": "12", "semitones": 3, "sharpCents": 8.2, "rarer": false }`, semitones below 0 for valves that raise; the last two may be left out | `"compromise"`; `"none"` on a natural horn |
 * | `sides[].closureCents` | how far above the next lower harmonic a full stop rests, 0–300 | 150 from B♭1 up, else 100 |
 * | `sides[].stoppingValveCents` | what a stopping valve lowers by, 0–300 | 0: no stopping valve |
 * | `sides[].stoppable` | whether players stop on this side | true |
 * | `sides[].stoppingOrder` | 1 for the side the player reaches for first when stopping, 2 for the next; for every side or for none | a side with a stopping valve first, then the longest |
 * | `sides[].openFrom` | sounding pitch from which open notes are taken on this side, until another takes over | the longest side has the notes from the bottom, others only those no side has better |
 * | `natural` | true for a horn without valves | false |
 */

import { ASCENDING_VALVES, COMPROMISE_VALVES, NO_VALVES, type ValveCombination } from '../../data/valves.ts';
import { FROM_THE_BOTTOM, type Horn, type Side } from '../horn.ts';
import {
  BFLAT_CLOSURE_CENTS,
  BFLAT_FLAT_HARMONICS,
  BFLAT_FUNDAMENTAL_CENTS,
  BFLAT_LOW_REGISTER,
  BFLAT_STOPPED_HARMONICS,
  F_CLOSURE_CENTS,
  F_LOW_REGISTER,
  HIGH_F_FUNDAMENTAL_CENTS,
} from '../sides.ts';
import { flag, type JsonRecord, name, number, onlyKnown, record, soundingPitch, whole } from './fields.ts';
import { HornFileError, wrongValue } from './hornFileError.ts';

export { HornFileError } from './hornFileError.ts';

/**
 * Reads the text of a horn file.
 * @param id the horn's name for options and settings, for instance the file's
 * @throws {HornFileError} (a RangeError) with one line that says what is wrong, where in the file, and what to write
 */
export function readHornFile(text: string, id = 'custom'): Horn {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    throw new HornFileError({ is: 'not-json', plain: (error as Error).message });
  }
  const horn = record(json, '', '{ "label": …, "sides": [ … ] }');
  if ('shortSideFrom' in horn) throw new HornFileError({ is: 'short-side-from' });
  onlyKnown(horn, '', ['label', 'sides', 'natural']);
  const natural = flag(horn, 'natural', 'natural', false);
  if (!Array.isArray(horn.sides) || horn.sides.length === 0 || horn.sides.length > 4)
    throw wrongValue('sides', 'sides', horn.sides);
  const sides = inOrder(horn.sides.map((side, i) => readSide(side, `sides[${i}]`, natural)));
  if (natural && sides.length > 1) throw wrongValue('sides', 'one-side', horn.sides);
  if (!sides.some(({ stoppable }) => stoppable)) throw new HornFileError({ is: 'no-side-stoppable' });
  return {
    id,
    label:
      'label' in horn
        ? name(horn, 'label', 'label')
        : `horn in ${sides.map((side) => side.name).join(' and ')}`,
    sides,
    natural,
  };
}

/** A side with what its file leaves out about its place among the others. */
type ReadSide = Omit<Side, 'stoppingOrder'> & { readonly stoppingOrder: number | null };

/** Gives every side its place: as the file says, or by what a player would do. */
function inOrder(sides: readonly ReadSide[]): readonly Side[] {
  const orders = sides.map(({ stoppingOrder }) => stoppingOrder).filter((order) => order !== null);
  if (orders.length > 0 && orders.length < sides.length) throw new HornFileError({ is: 'order-for-some' });
  if (new Set(orders).size < orders.length) throw new HornFileError({ is: 'order-twice' });
  const longestFirst = sides.slice().sort((a, b) => a.fundamentalCents - b.fundamentalCents);
  const likely = longestFirst
    .filter(({ stoppingValveCents }) => stoppingValveCents > 0)
    .concat(longestFirst.filter(({ stoppingValveCents }) => stoppingValveCents === 0));
  const lowest = sides.some(({ openFromCents }) => openFromCents === null)
    ? longestFirst.filter(({ openFromCents }) => openFromCents === null)[0]!
    : sides.slice().sort((a, b) => a.openFromCents! - b.openFromCents!)[0]!;
  return sides.map((side) => ({
    ...side,
    stoppingOrder: side.stoppingOrder ?? likely.indexOf(side) + 1,
    openFromCents: side === lowest ? FROM_THE_BOTTOM : side.openFromCents,
  }));
}

function readSide(json: unknown, at: string, natural: boolean): ReadSide {
  const side = record(json, at, '{ "name": "F", "fundamental": "F1" }');
  onlyKnown(side, at, [
    'name',
    'fundamental',
    'prefix',
    'valves',
    'closureCents',
    'stoppingValveCents',
    'stoppable',
    'stoppingOrder',
    'openFrom',
  ]);
  const fundamentalCents = soundingPitch(side, 'fundamental', `${at}.fundamental`);
  if (fundamentalCents < 1200 || fundamentalCents > 4800)
    throw wrongValue(`${at}.fundamental`, 'fundamental', side.fundamental);
  // Sides from B♭1 up stop as a B♭ side does, and those below high F stand as one does.
  const isShort = fundamentalCents >= BFLAT_FUNDAMENTAL_CENTS;
  const isLikeBflat = isShort && fundamentalCents < HIGH_F_FUNDAMENTAL_CENTS;
  const closureCents = cents(side, 'closureCents', at, isShort ? BFLAT_CLOSURE_CENTS : F_CLOSURE_CENTS);
  const stoppingValveCents = cents(side, 'stoppingValveCents', at, 0);
  const isInTune = Math.abs((closureCents - stoppingValveCents) % 100) < IN_TUNE_CENTS;
  return {
    name: name(side, 'name', `${at}.name`),
    valvePrefix: 'prefix' in side ? name(side, 'prefix', `${at}.prefix`) : '',
    fundamentalCents,
    valves: readValves(side.valves, `${at}.valves`, natural),
    closureCents,
    stoppingValveCents,
    fingeredNote: isInTune && !natural ? 'lower-harmonic' : 'natural-pitch',
    lowRegister: isShort ? BFLAT_LOW_REGISTER : F_LOW_REGISTER,
    stoppable: flag(side, 'stoppable', `${at}.stoppable`, true),
    stoppedHarmonics: isInTune || natural ? [] : BFLAT_STOPPED_HARMONICS,
    stoppingOrder: 'stoppingOrder' in side ? whole(side, 'stoppingOrder', `${at}.stoppingOrder`, 1, 4) : null,
    openFromCents: 'openFrom' in side ? soundingPitch(side, 'openFrom', `${at}.openFrom`) : null,
    flatHarmonics: isLikeBflat && !natural ? BFLAT_FLAT_HARMONICS : [],
  };
}

/** A closure this near to whole semitones lets the player think of the next lower harmonic. A choice: half of a quarter tone. */
const IN_TUNE_CENTS = 25;

function readValves(json: unknown, at: string, natural: boolean): readonly ValveCombination[] {
  if (json === undefined) return natural ? NO_VALVES : COMPROMISE_VALVES;
  if (json === 'compromise') return COMPROMISE_VALVES;
  if (json === 'ascending') return ASCENDING_VALVES;
  if (json === 'none') return NO_VALVES;
  if (!Array.isArray(json) || json.length === 0 || json.length > 32) throw wrongValue(at, 'valves', json);
  return json.map((entry: unknown, i): ValveCombination => {
    const here = `${at}[${i}]`;
    const combination = record(entry, here, '{ "valves": "12", "semitones": 3 }');
    onlyKnown(combination, here, ['valves', 'semitones', 'sharpCents', 'rarer']);
    if (typeof combination.valves !== 'string' || !/^(?:0|[1-6]{1,6})$/.test(combination.valves))
      throw wrongValue(`${here}.valves`, 'valve-numbers', combination.valves);
    return {
      valves: combination.valves,
      semitones: number(combination, 'semitones', `${here}.semitones`, -12, 12),
      sharpCents:
        'sharpCents' in combination ? number(combination, 'sharpCents', `${here}.sharpCents`, -100, 100) : 0,
      rarer: flag(combination, 'rarer', `${here}.rarer`, false),
    };
  });
}

function cents(json: JsonRecord, field: string, at: string, fallback: number): number {
  return field in json ? number(json, field, `${at}.${field}`, 0, 300) : fallback;
}
