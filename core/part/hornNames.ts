/** Which parts are horns, by what a score says of them, in the languages parts are printed in. */

import { plainLetters } from './plainLetters.ts';

/** What the part list says of one part. */
export interface PartEvidence {
  /** Part names, full and as displayed. */
  readonly names: readonly string[];
  readonly instrumentNames: readonly string[];
  /** Sound ids such as `brass.french-horn`. */
  readonly sounds: readonly string[];
  /** MIDI programs, from 1. */
  readonly programs: readonly number[];
}

/** @source musicxml40, sounds.xml */
const HORN_SOUND = /^brass\.(?:french-horn|natural-horn|vienna-horn)(?:\.|$)/;
/** General MIDI's French horn, counted from 1 as MusicXML does. */
const HORN_PROGRAM = 61;

/** Whole words, without accents, that name a horn played with the hand in the bell. @source commonPractice */
const HORN_WORD = new RegExp(
  `(?:^|[^a-z])(?:${[
    'horns?|hn|hrn|hr|(?:wald|natur|ventil|inventions|doppel|jagd|wiener)horn|(?:wald)?horner|(?:wald)?hoerner|hornen',
    'cors?|corn[oi]|trompas?',
    'hoorns?|valthorn|valdhorn|(?:lesni )?roh[uy]?|waltornia|waltornie|rog|kurt|kayratorvi',
    'валторн[аыу]?|ホルン|호른|圆号|圓號|法国号|法國號',
  ].join('|')})(?![a-z])`,
);

/** Words that make it another instrument, horn though its name may be. */
const OTHER_INSTRUMENT = new RegExp(
  [
    'engl|anglais|ingles|basset|flugel|fluegel|fiscorn|post ?horn|d[ai] post|de poste|sax|krum+horn|cr[uo]m+horn',
    'alp(?:en)?[ -]?horn|des alpes|nebel|fog ?horn|schofar|shofar|mellophon|wagner|tub[ae]|cornet|kornett|zink|fiddle|pipe',
    '(?:^|[^a-z])alto?[ -]?horn|tenor[ -]?horn|bar[iy]ton',
    'барит|альтгорн|теноргорн|английск',
  ].join('|'),
);
/** The crook B♭ (or C, A) alto, which is no alto horn. */
const ALTO_CROOK = /(?:^|[^a-z])(?:bb|b|b flat|b-flat|si ?b|c|a) \(?alto\)? (horns?)/;

/** Words that name some instrument: a MIDI program alone does not overrule them. */
const NAMED_INSTRUMENT =
  /trump|tromp|tromb|posaun|flut|flot|flaut|picc|obo|hautb|clar|klar|fag|bass|viol|brat|alto|cell|harp|harf|arpa|pian|klav|orgel|organ|tim|pauk|perc|drum|voice|stim|sopr|ten|choir|chor|guit|git/;

/** True when the evidence says horn. The printed name counts most, then the sound, then the instrument's name, then the program. */
export function isHornPart(evidence: PartEvidence): boolean {
  const byName = verdictOf(evidence.names);
  if (byName !== null) return byName;
  if (evidence.sounds.some(isHornSound)) return true;
  if (evidence.sounds.length > 0) return false;
  const byInstrument = verdictOf(evidence.instrumentNames);
  if (byInstrument !== null) return byInstrument;
  if (evidence.programs.indexOf(HORN_PROGRAM) < 0) return false;
  return !evidence.names.some((name) => NAMED_INSTRUMENT.test(plainName(name)));
}

/** True for the sound ids of horns. */
export function isHornSound(sound: string): boolean {
  return HORN_SOUND.test(sound);
}

/** True for a horn's name, false for an instrument that could be taken for one, `null` when names are silent. */
function verdictOf(names: readonly string[]): boolean | null {
  for (const name of names) {
    const plain = plainName(name).replace(ALTO_CROOK, ' $1');
    if (OTHER_INSTRUMENT.test(plain)) return false;
    if (HORN_WORD.test(plain)) return true;
  }
  return null;
}

/** Lower case, without accents, music signs as letters, single spaces. */
export function plainName(name: string): string {
  return plainLetters(name).replace(/♭/g, 'b').replace(/♯/g, '#').replace(/\s+/g, ' ').trim();
}
