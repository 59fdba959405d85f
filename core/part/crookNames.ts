/** The transposition a horn part's name tells: `Horn in F`, `Corno in Mi♭`, `Cor en ut`, `Horn in B basso`. */
import { STEPS, type Step, stepSemitones, type Transposition } from '../pitch/pitch.ts';
import { plainName } from './hornNames.ts';

/** A transposition read from a name, or the reason why there is none: no key in it, or B♭ without alto or basso. */
export type NamedCrook =
  | { readonly ok: true; readonly transposition: Transposition }
  | { readonly ok: false; readonly reason: 'no-key' | 'alto-or-basso' };

const SYLLABLES = new Map<string, string>([
  ['do', 'c'],
  ['ut', 'c'],
  ['re', 'd'],
  ['mi', 'e'],
  ['fa', 'f'],
  ['sol', 'g'],
  ['la', 'a'],
  ['si', 'b'],
]);

const LETTER = '[a-h](?:is|es|s|b|#)?';
const SYLLABLE = '(?:do|ut|re|mi|fa|sol|la|si)(?:b|#)?';
const ACCIDENTAL = '(?:[ -]?(?:flat|sharp|natural|bemolle|bemol|diese|diesis|sostenido|becuadro))?';
const KEY = `(${SYLLABLE}|${LETTER})(${ACCIDENTAL})(?![a-z#])`;
/** After `in`, `en`, `em`, `auf`, or in brackets after the horn; or before the horn: `E♭ Horn`, `F-Horn`, `Bb (alto) Horn`. */
const KEY_AFTER = new RegExp(`(?:^|[^a-z])(?:in|en|em|auf) (?:hoch |tief )?${KEY}|\\(${KEY}\\)`);
const KEY_BEFORE = new RegExp(`(?:^|[^a-z])${KEY}[ -](?:\\(?(?:alto|basso)\\)? )?(?:french )?horn`);

/**
 * The transposition a part's name tells. A horn in any key sounds below its written note, within the octave under
 * C alto; `alto` and `basso` choose where a name allows both.
 * @source crooks in sources: Grove 1879 and tube lengths after Grove 1954; C without a word is C basso (commonPractice)
 * @example
 * crookFromName('Corno in Mi♭').transposition // => { chromatic: -9, diatonic: -5, octaveChange: 0 }
 * crookFromName('Horn in B♭').ok // => false
 */
export function crookFromName(name: string): NamedCrook {
  const plain = plainName(name);
  const match = KEY_AFTER.exec(plain) ?? KEY_BEFORE.exec(plain);
  const written = match ? (match[1] ?? match[3])! : '';
  const key = match ? keyOf(written, (match[2] ?? match[4] ?? '').replace(/[ -]/, '')) : null;
  if (!key) return { ok: false, reason: 'no-key' };
  const alto = /(?:^|[^a-z])(?:alto|hoch|high|aigu|acuto)(?![a-z])/.test(plain);
  const basso = /(?:^|[^a-z])(?:basso|bas|tief|low|grave)(?![a-z])/.test(plain);
  const isBFlat = key.step === 'B' && key.alter === -1;
  if (isBFlat && !alto && !basso) return { ok: false, reason: 'alto-or-basso' };
  const above = stepSemitones(key.step) + key.alter;
  const isC = above === 0;
  let octaveChange = 0;
  if (basso && (isBFlat || above === 9 || above === 11)) octaveChange = -1;
  return {
    ok: true,
    transposition: {
      chromatic: isC && alto ? 0 : isC ? 0 : above - 12,
      diatonic: isC ? 0 : STEPS.indexOf(key.step) - 7,
      octaveChange: isC ? (alto ? 0 : -1) : octaveChange,
    },
  };
}

/** The note that a name alone stands for, without an octave: `Es`, `Si♭`, `F♯`; `null` for none. `B` alone is B♭. */
export function keyNamed(name: string): { step: Step; alter: number } | null {
  const match = NAME.exec(plainName(name));
  return match && keyOf(match[1]!, '');
}

const NAME = new RegExp(`^(${SYLLABLE}|${LETTER})$`);

/** Reads a key as its language spells it: German `b` is B♭ and `h` B natural, `es` and `as` are flats. */
function keyOf(written: string, accidental: string): { step: Step; alter: number } | null {
  const alterBy = /flat|bemol/.test(accidental) ? -1 : /sharp|dies|sostenido/.test(accidental) ? 1 : 0;
  const syllable = /^(do|ut|re|mi|fa|sol|la|si)(b|#)?$/.exec(written);
  if (syllable) {
    return {
      step: SYLLABLES.get(syllable[1]!)!.toUpperCase() as Step,
      alter: alterBy || alterOf(syllable[2]),
    };
  }
  const letter = written[0]!;
  const rest = written.slice(1);
  if (letter === 'h') return rest === '' ? { step: 'B', alter: 0 } : null;
  if (letter === 'b' && rest === '') return { step: 'B', alter: accidental === 'natural' ? 0 : -1 };
  if (rest === 's' && letter !== 'e' && letter !== 'a') return null;
  return { step: letter.toUpperCase() as Step, alter: alterBy || alterOf(rest) };
}

function alterOf(sign: string | undefined): number {
  if (sign === 'b' || sign === 'es' || sign === 's') return -1;
  return sign === '#' || sign === 'is' ? 1 : 0;
}
