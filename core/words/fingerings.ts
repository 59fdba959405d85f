/** Fingerings, hands and horns in words. */
import { harmonicDeviationCents } from '../horn/harmonics.ts';
import type { Horn } from '../horn/horn.ts';
import type { ChosenBecause } from '../plan/examinedNote.ts';
import type { Severity } from '../rules/rule.ts';
import type { Fingering, FingeringReason, HandState, Verdict } from '../stopping/fingering.ts';
import type { ClosingBand } from '../stopping/stopping.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornWords } from './areas/horns.ts';
import { fingerings as de, horns as hornsDe } from './de.ts';
import { fingerings as en, horns as hornsEn } from './en.ts';
import { fingerings as es, horns as hornsEs } from './es.ts';
import { fingerings as fr, horns as hornsFr } from './fr.ts';
import { horns as hornsIt, fingerings as it } from './it.ts';
import type { Language, Reader } from './language.ts';
import { listed } from './listed.ts';
import { namedKey, noteName } from './noteNames.ts';

const WORDS: { readonly [language in Language]: FingeringWords } = { en, de, fr, it, es };
const HORN_NAMES: { readonly [language in Language]: HornWords } = {
  en: hornsEn,
  de: hornsDe,
  fr: hornsFr,
  it: hornsIt,
  es: hornsEs,
};

/** What the hand does, as it stands behind the name of a note: `stopped`. */
export function stateText(state: HandState, { language }: Reader): string {
  return WORDS[language].states[state];
}

/** `sure`, `risky`, `impossible`. */
export function verdictText(verdict: Verdict, { language }: Reader): string {
  return WORDS[language].verdicts[verdict];
}

/** `impossible`, `risky`, `advice`. */
export function severityText(severity: Severity, { language }: Reader): string {
  return WORDS[language].severities[severity];
}

/** Why a fingering is not sure. */
export function reasonText(reason: FingeringReason, { language }: Reader): string {
  return WORDS[language].reasons[reason];
}

/** The same in two words. */
export function briefReasonText(reason: FingeringReason, { language }: Reader): string {
  return WORDS[language].briefReasons[reason];
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
    texts.push(WORDS[reader.language].forSharpHand);
  return texts;
}

/** Why a note leaves its standard fingering: `instead of T0: one tube with E4, to which it is joined`. */
export function choiceText({ kind, insteadOf, neighbour }: ChosenBecause, reader: Reader): string {
  return WORDS[reader.language].choices[kind](valvesText(insteadOf, reader), noteName(neighbour, reader));
}

/** The valves as printed, `T12`; on a horn without valves the harmonic. */
export function valvesText({ printed, harmonic }: Fingering, { language }: Reader): string {
  return printed === '' ? WORDS[language].harmonic(harmonic) : printed;
}

/** A deviation in words: `12 cents flat`, `in tune`. */
export function deviationText(deviationCents: number, { language }: Reader): string {
  const { inTune, sharp, flat } = WORDS[language];
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
  const words = WORDS[reader.language];
  const { valves } = tube.combination;
  const key = keyText(tube.side.name, reader);
  if (valves === '') return words.crook(key);
  return valves === '0' ? words.open(key) : words.pressed(key, valves.split('').join('+'));
}

/** The key of a side or a crook: `B♭`, `high F`, `C basso`; a name of the user's own as it is. */
export function keyText(name: string, reader: Reader): string {
  const named = namedKey(name, reader);
  if (!named) return name;
  return named.register === null ? named.key : WORDS[reader.language].keys[named.register](named.key);
}

/** How far the hand closes: `½`, `full`. */
export function closingText(band: ClosingBand, { language }: Reader): string {
  const { closings } = WORDS[language];
  return band === 'open' || band === 'full' ? closings[band] : band;
}

/** A horn without an article: `double horn in F and B♭`, `natural horn with the E♭ crook`; one of the user's own by its label. */
export function hornText(horn: Horn, reader: Reader): string {
  const words = HORN_NAMES[reader.language];
  const isCrook = /^natural(-|$)/.test(horn.id) && !horn.crookFollowsPart;
  if (horn.natural && isCrook) return words.onCrook(keyText(horn.sides[0]!.name, reader));
  return words.names[horn.id] ?? horn.label;
}

/**
 * A number with the language's decimal sign.
 * @param value in whatever unit is named beside it
 * @param digits decimals at most, from 0
 */
export function decimalText(value: number, digits: number, { language }: Reader): string {
  const scale = 10 ** digits;
  return String(Math.round(value * scale) / scale).replace('.', WORDS[language].decimalSign);
}

/** `a`, `a or b`, `a, b or c`. */
export function choicesText(items: readonly string[], { language }: Reader): string {
  return listed(items, WORDS[language].or);
}

/** `a`, `a and b`, `a, b and c`. */
export function listText(items: readonly string[], { language }: Reader): string {
  return listed(items, WORDS[language].and);
}
