/**
 * The words of every language: all there, its own, with every value in them and in the forms of one and of many. What a
 * language shares with English stands in a list with its reason.
 */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import type { HandState } from '../../core/stopping/fingering.ts';
import { FINGERING_REASONS } from '../../core/stopping/player.ts';
import { findingText } from '../../core/words/findings.ts';
import { decimalText, deviationText, hornText } from '../../core/words/fingerings.ts';
import { ENGLISH_READER, languageOf, readerOf } from '../../core/words/language.ts';
import { LANGUAGES, type Language, SAID } from '../../core/words/languages.ts';
import { everyFinding } from './ruleCases.ts';

const FOREIGN = LANGUAGES.filter((language) => language !== 'en');

const FINDINGS = everyFinding();

/** What a language shares with English because it is the language's own word too. */
const SHARED: { readonly [language in Language]?: readonly string[] } = {
  // Crooks keep their Italian names in German and English, and a horn in F is one in both.
  de: [
    'etudes.hornIn',
    'fingerings.keys.alto',
    'fingerings.keys.basso',
    'panel.labels.horn',
    'report.table.hand',
  ],
  fr: [
    'commandLine.table.verdict',
    'panel.labels.etude',
    'report.table.note',
    'report.table.notes',
    'report.table.verdict',
    'stand.silence',
  ],
  it: ['commandLine.told.standardInput'],
  es: ['report.glissando.natural'],
};
/** Names, unit signs and the like, the same in every language. */
const NO_WORDS =
  /^(?:commandLine\.units\.cents|commandLine\.explain\.cents|curves\.cents|fingerings\.decimalSign|stand\.namings\.2|stand\.notRead)$/;

/** Every area of a language. */
function allOf(language: Language): { readonly [area: string]: unknown } {
  const { words, pages, commandLine } = SAID[language];
  const { usualNaming, syllables, ...areas } = words;
  return { ...areas, ...pages, commandLine };
}

/** All texts of a language but its findings, by name, with values that no text can hold by chance. */
function textsOf(words: { readonly [area: string]: unknown }): { readonly [name: string]: string } {
  const texts: { [name: string]: string } = {};
  const walk = (entry: unknown, name: string): void => {
    if (typeof entry === 'string') texts[name] = entry;
    else if (typeof entry === 'function') texts[name] = withValues(entry as (...values: unknown[]) => string);
    else for (const [inner, text] of Object.entries(entry as object)) walk(text, `${name}.${inner}`);
  };
  for (const [area, entry] of Object.entries(words)) if (area !== 'findings') walk(entry, area);
  return texts;
}

/** Values as numbers, as names, or as lists: whatever a text takes. */
const VALUES = [71, 72, 73];
const FORMS: readonly ((value: number) => unknown)[] = [
  (value) => value,
  (value) => String(value),
  (value) => [String(value)],
  (value) => (name: string) => `${name} ${value}`,
];
function withValues(say: (...values: unknown[]) => string): string {
  for (const form of FORMS) {
    try {
      return say(...VALUES.map(form));
    } catch {
      // It takes another form.
    }
  }
  throw new Error(`no form of values fits ${say}`);
}

/** English has no names of horns but their labels. */
const isHorn = (name: string) => name.startsWith('horns.names');

describe.each(FOREIGN)('the words in %s', (language) => {
  const english = textsOf(allOf('en'));
  const own = textsOf(allOf(language));

  test('are all there, and as many as in English', () => {
    expect(Object.keys(own).length).toBeGreaterThan(200);
    const without = (texts: object) => Object.keys(texts).filter((name) => !isHorn(name));
    expect(without(own)).toEqual(without(english));
    for (const [name, text] of Object.entries(own)) expect(text.trim(), name).not.toBe('');
  });

  test('say nothing in English', () => {
    const same = Object.entries(own).filter(([name, text]) => text === english[name] && !NO_WORDS.test(name));
    expect(same.map(([name]) => name).sort()).toEqual([...(SHARED[language] ?? [])].sort());
  });

  test('put every value into their texts', () => {
    for (const [name, text] of Object.entries(own).filter(([name]) => !isHorn(name)))
      for (const value of VALUES)
        expect(text.includes(String(value)), `${name}: ${text}`).toBe(
          (english[name] ?? '').includes(String(value)),
        );
  });

  test('quote as the language does, never with a typewriter’s marks', () => {
    const others = { de: /[«»"]/, fr: /[„“"]/, it: /[„“"]/, es: /[„“"]/ }[language];
    // What is typed in a horn file or as an option keeps its marks.
    const said = Object.entries(own).filter(
      ([name]) => !/^commandLine\.(?:hornFile|options|usage)/.test(name),
    );
    for (const [name, text] of said) expect(text, name).not.toMatch(others);
  });

  test('name every horn, each otherwise', () => {
    const reader = readerOf(language);
    const names = HORNS.map((horn) => hornText(horn, reader));
    expect(new Set(names).size).toBe(HORNS.length);
    for (const [i, horn] of HORNS.entries()) expect(names[i]).not.toBe(horn.label);
  });
});

test('English horns are called as their label says', () => {
  for (const horn of HORNS) expect(hornText(horn, ENGLISH_READER)).toBe(horn.label);
});

test('every reason and every state has its words in every language', () => {
  const states: HandState[] = ['open', 'half-stopped', 'stopped', 'echo', 'stopping-mute', 'straight-mute'];
  for (const words of LANGUAGES.map((language) => SAID[language].words)) {
    for (const reason of FINGERING_REASONS) {
      expect(words.fingerings.reasons[reason]).toMatch(/\p{L}{3}/u);
      expect(words.fingerings.briefReasons[reason].split(' ').length).toBeLessThanOrEqual(4);
    }
    expect(new Set(states.map((state) => words.fingerings.states[state])).size).toBe(6);
  }
});

/** Texts in which a count of one has the form of many: Cent, Zeichen and Wechsel, and an Italian cent or file. */
const ONE_FORM: { readonly [language in Language]?: readonly string[] } = {
  de: [
    'fingerings.sharp 0',
    'fingerings.flat 0',
    'summary.signs 0',
    'etudes.numbers 2',
    'curves.falls 1',
    'curves.rises 1',
    'commandLine.explain.cents 0',
  ],
  fr: [],
  it: [
    'fingerings.sharp 0',
    'fingerings.flat 0',
    'curves.falls 1',
    'curves.rises 1',
    'commandLine.told.files 0',
    'commandLine.explain.cents 0',
  ],
};

/** A text with a count in it, by its name and the count's place: what it says of 1, 2, 5 and 17. */
function countedTexts(words: { readonly [area: string]: unknown }): { readonly [name: string]: string[] } {
  const texts: { [name: string]: string[] } = {};
  const walk = (entry: unknown, name: string): void => {
    if (typeof entry === 'function') {
      const say = entry as (...values: unknown[]) => string;
      for (let place = 0; place < say.length; place++) {
        const told = [1, 2, 5, 17].map((count) => {
          const values: unknown[] = VALUES.slice(0, say.length);
          values[place] = count;
          try {
            return say(...values);
          } catch {
            return '';
          }
        });
        if (told.every((text) => text !== '')) texts[`${name} ${place}`] = told;
      }
    } else if (typeof entry === 'object')
      for (const [inner, text] of Object.entries(entry as object)) walk(text, `${name}.${inner}`);
  };
  for (const [area, entry] of Object.entries(words)) if (area !== 'findings') walk(entry, area);
  return texts;
}

describe.each(LANGUAGES)('counts in %s', (language) => {
  const english = countedTexts(allOf('en'));
  const own = countedTexts(allOf(language));
  const hasOneForm = ([one, two]: readonly string[]) => one!.replace(/\b1\b/, '2') === two;

  test('2, 5 and 17 are told alike', () => {
    for (const [name, [, two, five, many]] of Object.entries(own)) {
      expect(five!.replace(/\b5\b/, '2'), name).toBe(two);
      expect(many!.replace(/\b17\b/, '2'), name).toBe(two);
    }
  });

  test('1 has a form of its own where it has one in English', () => {
    const plain = Object.keys(english).filter(
      (name) => !hasOneForm(english[name]!) && hasOneForm(own[name]!),
    );
    expect(Object.values(own).some((told) => !hasOneForm(told))).toBe(true);
    expect(plain).toEqual(ONE_FORM[language] ?? []);
  });

  test('numbers have the decimal sign of the language, everywhere', () => {
    const reader = readerOf(language);
    expect(decimalText(0.25, 2, reader)).toBe(language === 'en' ? '0.25' : '0,25');
    const sentences = FINDINGS.flatMap((finding) => Object.values(findingText(finding, reader) as object));
    const right = language === 'en' ? /\d\.\d/ : /\d,\d/;
    const wrong = language === 'en' ? /\d,\d/ : /\d\.\d/;
    expect(sentences.some((sentence) => right.test(sentence))).toBe(true);
    expect(sentences.filter((sentence) => wrong.test(sentence))).toEqual([]);
  });
});

describe('plurals', () => {
  /** The words of one rule with a count in it. */
  const spoken = (language: Language, affectedCount: number) => {
    const finding = FINDINGS.find(({ id }) => id === 'never-opened')!;
    const counted = { ...finding, cause: { ...finding.cause, affectedCount } } as typeof finding;
    return findingText(counted, readerOf(language)).message;
  };

  test.each([
    ['en', 'this note is read', 'the 2 notes from this entry on are read'],
    ['de', 'wird auch dieser Ton als gestopft gelesen', 'werden auch die 2 Töne ab diesem Einsatz'],
    ['fr', 'cette note aussi est lue', 'les 2 notes à partir de cette entrée aussi sont lues'],
    ['it', 'anche questa nota è letta', 'anche le 2 note da questa entrata in poi sono lette'],
    ['es', 'también esta nota se lee', 'también las 2 notas desde esta entrada se leen'],
  ] as const)('%s: one note and two', (language, one, two) => {
    expect(spoken(language, 1)).toContain(one);
    expect(spoken(language, 2)).toContain(two);
    expect(spoken(language, 5)).toContain(two.replace('2', '5'));
  });

  test('cents: 0 stands for itself, 1, 2 and 5 have their forms', () => {
    const forms = (language: Language) =>
      [0, 1, 2, 5, -1, -5].map((cents) => deviationText(cents, readerOf(language)));
    expect(forms('en')).toEqual([
      'in tune',
      '1 cent sharp',
      '2 cents sharp',
      '5 cents sharp',
      '1 cent flat',
      '5 cents flat',
    ]);
    expect(forms('de')[1]).toBe('1 Cent zu hoch');
    expect(forms('de')[5]).toBe('5 Cent zu tief');
    expect(forms('fr').slice(1, 3)).toEqual(['trop haut de 1 cent', 'trop haut de 2 cents']);
    expect(forms('it').slice(1, 3)).toEqual(['crescente di 1 cent', 'crescente di 2 cent']);
    expect(forms('es').slice(1, 3)).toEqual(['1 cent alto', '2 cents alto']);
  });
});

test.each([
  ['de_AT.UTF-8', 'de'],
  ['fr-CA', 'fr'],
  ['it', 'it'],
  ['es_MX', 'es'],
  ['en_GB', 'en'],
  ['C', null],
  ['POSIX', null],
  ['ja_JP', null],
  ['est_EE', null],
  ['', null],
] as const)('the locale %s is read as %s', (locale, language) => {
  expect(languageOf(locale)).toBe(language);
});
