/** Fingerings, hands and horns in words. */
import { harmonicDeviationCents } from '../horn/harmonics.ts';
import type { Horn } from '../horn/horn.ts';
import type { ChosenBecause } from '../plan/examinedNote.ts';
import type { Severity } from '../rules/rule.ts';
import type { Fingering, FingeringReason, HandState, Verdict } from '../stopping/fingering.ts';
import type { ClosingBand } from '../stopping/stopping.ts';
import type { Reader } from './language.ts';
import { listed } from './listed.ts';
import { namedKey, noteName } from './noteNames.ts';

/** What the hand does, as it stands behind the name of a note: `stopped`. */
export function stateText(state: HandState, { words }: Reader): string {
  return words.fingerings.states[state];
}

/** `sure`, `risky`, `impossible`. */
export function verdictText(verdict: Verdict, { words }: Reader): string {
  return words.fingerings.verdicts[verdict];
}

/** `impossible`, `risky`, `advice`. */
export function severityText(severity: Severity, { words }: Reader): string {
  return words.fingerings.severities[severity];
}

/** Why a fingering is not sure. */
export function reasonText(reason: FingeringReason, { words }: Reader): string {
  return words.fingerings.reasons[reason];
}

/** The same in two words. */
export function briefReasonText(reason: FingeringReason, { words }: Reader): string {
  return words.fingerings.briefReasons[reason];
}

/** A lower harmonic this much flat brings a sharp-stopping hand back, in cents: the 5th, 7th, 10th, 11th, 14th. A choice. */
const FLAT_CENTS = -10;

/**
 * What is to be said of a fingering beside its numbers: its reasons, and, for an alternative, that the flat harmonic it
 * rests on helps a hand that stops sharp. @source commonPractice
 */
export function alternativeTexts(fingering: Fingering, state: HandState, reader: Reader): readonly string[] {
  const { reasons, harmonic, carrier } = fingering;
  const texts = reasons.map((reason) => reasonText(reason, reader));
  if (state === 'stopped' && carrier < harmonic && harmonicDeviationCents(carrier) < FLAT_CENTS)
    texts.push(reader.words.fingerings.forSharpHand);
  return texts;
}

/** Why a note leaves its standard fingering: `instead of T0: one tube with E4, to which it is joined`. */
export function choiceText({ kind, insteadOf, neighbour }: ChosenBecause, reader: Reader): string {
  return reader.words.fingerings.choices[kind](valvesText(insteadOf, reader), noteName(neighbour, reader));
}

/** The valves as printed, `T12`; on a horn without valves the harmonic. */
export function valvesText({ printed, harmonic }: Fingering, { words }: Reader): string {
  return printed === '' ? words.fingerings.harmonic(harmonic) : printed;
}

/** A deviation in words: `12 cents flat`, `in tune`. */
export function deviationText(deviationCents: number, { words }: Reader): string {
  const { inTune, sharp, flat } = words.fingerings;
  const rounded = Math.round(deviationCents);
  if (rounded === 0) return inTune;
  return rounded > 0 ? sharp(rounded) : flat(-rounded);
}

/** A deviation for a column of numbers, in whole cents with a true minus sign: `+13`, `−5`, `0`. */
export function signedCents(deviationCents: number): string {
  const rounded = Math.round(deviationCents);
  return rounded === 0 ? '0' : rounded > 0 ? `+${rounded}` : `−${-rounded}`;
}

/** A fingering in words: `open F horn`, `B♭ horn 1+2`, `E♭ crook`. */
export function fingeringText({ tube }: Fingering, reader: Reader): string {
  const words = reader.words.fingerings;
  const { valves } = tube.combination;
  const key = keyText(tube.side.name, reader);
  if (valves === '') return words.crook(key);
  return valves === '0' ? words.open(key) : words.pressed(key, valves.split('').join('+'));
}

/** The key of a side or a crook: `B♭`, `high F`, `C basso`; a name of the user's own as it is. */
export function keyText(name: string, reader: Reader): string {
  const named = namedKey(name, reader);
  if (!named) return name;
  return named.register === null ? named.key : reader.words.fingerings.keys[named.register](named.key);
}

/** How far the hand closes: `½`, `full`. */
export function closingText(band: ClosingBand, { words }: Reader): string {
  const { closings } = words.fingerings;
  return band === 'open' || band === 'full' ? closings[band] : band;
}

/** A horn without an article: `double horn in F and B♭`, `natural horn with the E♭ crook`; one of the user's own by its label. */
export function hornText(horn: Horn, reader: Reader): string {
  const words = reader.words.horns;
  const isCrook = /^natural(-|$)/.test(horn.id) && !horn.crookFollowsPart;
  if (horn.natural && isCrook) return words.onCrook(keyText(horn.sides[0]!.name, reader));
  const name = words.names.get(horn.id);
  return name ? name((key) => keyText(key, reader)) : labelText(horn.label, reader);
}

/** A label with the keys in it, such as the `B♭` of `single horn in B♭`, by the reader's names. */
function labelText(label: string, reader: Reader): string {
  if (reader.noteNaming === 'english') return label;
  return label.replace(
    /( (?:high )?)([A-G]♭?)(?=[ ,]|$)/g,
    (_, before: string, key: string) => before + keyText(key.replace('♭', 'b'), reader),
  );
}

/**
 * A number with the language's decimal sign.
 * @param value in whatever unit is named beside it
 * @param digits decimals at most, from 0
 */
export function decimalText(value: number, digits: number, { words }: Reader): string {
  const scale = 10 ** digits;
  return String(Math.round(value * scale) / scale).replace('.', words.fingerings.decimalSign);
}

/**
 * A number with the language's decimal sign and all its decimals, as columns have them: `348.0`.
 * @param value in whatever unit is named beside it
 * @param digits decimals, from 0
 */
export function fixedText(value: number, digits: number, { words }: Reader): string {
  return value.toFixed(digits).replace('.', words.fingerings.decimalSign);
}

/** `a`, `a or b`, `a, b or c`. */
export function choicesText(items: readonly string[], { words }: Reader): string {
  return listed(items, words.fingerings.or);
}

/** `a`, `a and b`, `a, b and c`. */
export function listText(items: readonly string[], { words }: Reader): string {
  return listed(items, words.fingerings.and);
}
