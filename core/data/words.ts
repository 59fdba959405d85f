/**
 * Words over the staff that tell the hand or the mute what to do, in the four languages parts are printed in.
 *
 * Patterns are matched against whole words of the text with case, accents and punctuation taken off ("Écho" → `echo`,
 * "gest." → `gest`), longer ones first, so that "nicht gestopft" is read before "gestopft".
 * @source musicxml40 and commonPractice for the usual words; the spellings with sourdine, mettez and ôtez from scores
 *   in print; the rest from memory
 */

/** The language of a word, which is the language a missing cancelling word is added in. */
export type WordLanguage = 'en' | 'de' | 'fr' | 'it';

/** What a word does. Hand and mute are two things: taking a mute out does not open the hand. */
export type WordEffect =
  | 'stopped'
  | 'half-stopped'
  | 'echo'
  | 'open'
  | 'straight-mute'
  | 'stopping-mute'
  | 'mute-out';

/** One way to write an effect. */
export interface HandWord {
  readonly effect: WordEffect;
  /** `null` for a word that all four languages share. */
  readonly language: WordLanguage | null;
  /** A regular expression for whole words; words are apart by one space. */
  readonly pattern: string;
  /**
   * True for a word that also has an everyday meaning ("open", "natural"): it counts only where everything around it
   * is about playing too, so that a tempo such as "Open and spacious" changes no hand.
   */
  readonly everyday: boolean;
}

const DAMPFER = '(?:dampfer[ns]?|daempfern?|dampf|dpfr?|dmpf)';
const SORDINO = '(?:sord|sordin[oaie]|sordine[ns]?)';
const SOURDINE = '(?:la |les |sa |vite |vite la |vite les )*(?:sourdines?|sourd)';
const STOPPED_DE = 'gest(?:opft(?:e[rsn]?)?)?';
const BOUCHE = 'bouch(?:ee?s?)?(?! fermee?s?)';
const CHIUSO = 'chius[oiae]?';

/** In the order in which they are looked for. */
export const HAND_WORDS: readonly HandWord[] = [
  // Stopping mutes, before the words for stopping and for mutes that they are made of.
  word(
    'mute-out',
    'en',
    '(?:(?:remove|without|no) (?:stop|stopping|stopped) mute|(?:stop|stopping) mute (?:off|out))',
  ),
  word('mute-out', 'de', `(?:ohne|o) stopf ?${DAMPFER}|stopf ?${DAMPFER} (?:weg|ab|heraus|aus|fort)`),
  word('mute-out', 'fr', 'sans (?:sourdine|sourd) bouchee?s?'),
  word('stopping-mute', 'en', '(?:(?:with|brass) )*(?:stop|stopping|stopped|transposing) mute(?: on| in)?'),
  word('stopping-mute', 'de', `(?:(?:mit|m) )?stopf ?${DAMPFER}`),
  word('stopping-mute', 'fr', '(?:avec )?(?:sourdine|sourd) bouchee?s?'),
  word('stopping-mute', 'it', `(?:con )?${SORDINO} chius[oaie]`),

  // Mutes out, before mutes in.
  word('mute-out', 'it', `(?:senza|s|via(?: l[ae])?|levare(?: l[ae])?|togliere(?: l[ae])?) ${SORDINO}`),
  word('mute-out', 'de', `(?:ohne|o) (?:${DAMPFER}|${SORDINO})|${DAMPFER} (?:weg|ab|heraus|aus|fort)`),
  word('mute-out', 'fr', `(?:sans|s|otez|oter|enlevez|enlever|retirez|retirer|quittez) ${SOURDINE}`),
  word('mute-out', 'en', '(?:remove|without|no|take off) mutes?|mutes? (?:off|out|away)|unmuted'),
  word('straight-mute', 'it', `(?:(?:con|c)(?: l[ae])? )${SORDINO}`),
  word('straight-mute', 'de', `(?:mit|m) (?:${DAMPFER}|${SORDINO})|${DAMPFER}(?: auf| ein)?|gedampft`),
  word('straight-mute', 'fr', `(?:(?:avec|av|en|mettez|mettre) )?${SOURDINE}`),
  word('straight-mute', 'it', SORDINO),
  word(
    'straight-mute',
    'en',
    '(?:(?:with|put on|add|insert) )?(?:straight )?mutes? (?:on|in)|(?:with|put on|add|insert) (?:straight )?mutes?',
  ),
  everydayWord('straight-mute', 'en', 'muted|(?:straight )?mutes?'),

  // Open by denial, before the words denied.
  word('open', 'de', `(?:nicht|nicht mehr) ${STOPPED_DE}|ungestopft`),
  word('open', 'fr', `(?:non|plus) ${BOUCHE}`),
  word('open', 'it', `non ${CHIUSO}`),
  word('open', 'en', '(?:not|no longer) (?:hand )?stopped|unstopped|hand out'),

  // Half-stopped, before stopped.
  word('half-stopped', 'en', '(?:half|1 2|½) (?:hand )?stop(?:ped)?'),
  word('half-stopped', 'de', `(?:halb|½) ?${STOPPED_DE}`),
  word('half-stopped', 'fr', `(?:mi|demi|a demi|semi|a moitie|½) ${BOUCHE}`),
  word('half-stopped', 'it', `(?:semi|mezz[oiae]|½) ?${CHIUSO}`),

  word('stopped', 'en', '(?:hand )?stopped|handstopped'),
  word('stopped', 'de', STOPPED_DE),
  word('stopped', 'fr', BOUCHE),
  word('stopped', 'it', CHIUSO),
  everydayWord('stopped', 'en', 'stop'),

  word('echo', 'fr', '(?:en|sons? d|cors? d) echo|sons? echo'),
  word('echo', 'de', 'echo(?:horn|ton|tone|horner)'),
  word('echo', 'en', 'echo horns?'),
  everydayWord('echo', null, 'echo'),
  everydayWord('echo', 'it', '(?:in )?eco'),

  everydayWord('open', 'en', 'open|natural'),
  everydayWord('open', 'de', 'offen(?:e[rsn]?)?|naturlich|gewohnlich'),
  everydayWord('open', 'fr', 'ouv(?:erte?s?)?|naturels?'),
  everydayWord('open', 'it', 'apert[oiae]|naturale?|naturali|nat|ord|ordinario'),
];

/** What cancels stopped notes, in each language, for parts that forgot to. @source musicxml40; commonPractice */
export const CANCELLING_WORDS: { readonly [language in WordLanguage]: string } = {
  en: 'open',
  de: 'offen',
  fr: 'ouvert',
  it: 'aperto',
};

/** What closes the hand, in each language. @source commonPractice */
export const CLOSING_WORDS: { readonly [language in WordLanguage]: string } = {
  en: 'stopped',
  de: 'gestopft',
  fr: 'bouché',
  it: 'chiuso',
};

/** What puts a mute in and takes it out, in each language, for parts that do not say it. @source commonPractice */
export const MUTE_WORDS: {
  readonly [language in WordLanguage]: {
    readonly [effect in 'stopping-mute' | 'straight-mute' | 'mute-out']: string;
  };
} = {
  en: { 'stopping-mute': 'stopping mute', 'straight-mute': 'with mute', 'mute-out': 'without mute' },
  de: { 'stopping-mute': 'Stopfdämpfer', 'straight-mute': 'mit Dämpfer', 'mute-out': 'ohne Dämpfer' },
  fr: { 'stopping-mute': 'sourdine bouchée', 'straight-mute': 'avec sourdine', 'mute-out': 'sans sourdine' },
  it: { 'stopping-mute': 'sordina chiusa', 'straight-mute': 'con sord.', 'mute-out': 'senza sord.' },
};

/**
 * Words that may stand beside an everyday word without making it mean something else: dynamics, players, manner.
 * Cuivré and its like are here because brassy is not stopped. @source commonPractice
 */
export const COMPANIONS: readonly string[] = (
  'p pp ppp pppp mp mf f ff fff ffff sf sfz sfp fp fz rf rfz cresc crescendo dim diminuendo decresc ' +
  'sempre immer toujours always simile sim ancora again wieder encore subito sub sofort bis jusqu ' +
  'solo soli tutti alle all toutes tous both beide a zu due deux two i ii iii iv ' +
  'horn horns horner hr hrn cor cors corno corni h player players spieler ' +
  'cuivre cuivres cuivrez schmetternd brassy blaring gellend squillante ' +
  'molto sehr tres very poco etwas un peu piu meno mehr plus assai ' +
  'dolce doux espr espressivo weich zart leise soft softly piano pianissimo forte fortissimo loud laut stark ' +
  'marc marcato ten tenuto stacc staccato leg legato cantabile cant ' +
  'und et and e ed o od oder ou or the le les il die den der with mit avec con ' +
  'ton tone tones tono toni son sons suono suoni sound sounds klang note notes noten ' +
  'hand main mano possible quick quickly schnell rasch vite presto play spiel'
).split(' ');

/** Between two of these words a part leaves the choice to the player; the first is taken. */
export const ALTERNATIVES: readonly string[] = ['or', 'oder', 'od', 'ou', 'oppure'];

function word(effect: WordEffect, language: WordLanguage | null, pattern: string): HandWord {
  return { effect, language, pattern, everyday: false };
}

function everydayWord(effect: WordEffect, language: WordLanguage | null, pattern: string): HandWord {
  return { effect, language, pattern, everyday: true };
}
