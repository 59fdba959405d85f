/**
 * The words of every language: all there, its own, and with every value in them. What a language shares with English
 * stands in a list with its reason.
 */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { type Pitch, parsePitch } from '../../core/pitch/pitch.ts';
import type { Reach } from '../../core/rules/handJoin.ts';
import { RULES } from '../../core/rules/rules.ts';
import type { HandState } from '../../core/stopping/fingering.ts';
import { FINGERING_REASONS } from '../../core/stopping/player.ts';
import { findingText } from '../../core/words/findings.ts';
import { decimalText, deviationText, fingeringText, hornText, keyText } from '../../core/words/fingerings.ts';
import { ENGLISH_READER, languageOf, type Reader, readerOf } from '../../core/words/language.ts';
import { LANGUAGES, type Language, SAID } from '../../core/words/languages.ts';
import { noteClassName, noteName } from '../../core/words/noteNames.ts';
import { reportWords } from '../../core/words/report.ts';
import { barsText, completionText, countText } from '../../core/words/summary.ts';
import { CASES, findingsOf } from './ruleCases.ts';

const FOREIGN = LANGUAGES.filter((language) => language !== 'en');

/** Every finding of every case. */
const FINDINGS = Object.entries(CASES).flatMap(([id, cases]) =>
  cases.flatMap((example) => findingsOf(id, example)),
);

describe.each(LANGUAGES)('findings in %s', (language) => {
  const reader = readerOf(language);

  test('every rule is spoken of, in two or three words and in sentences', () => {
    expect(new Set(FINDINGS.map(({ id }) => id)).size).toBe(RULES.length);
    for (const finding of FINDINGS) {
      const { brief, message, remedy } = findingText(finding, reader);
      expect(brief.split(' ').length, brief).toBeLessThanOrEqual(3);
      for (const sentence of [message, remedy]) {
        expect(sentence).toMatch(/^(["„«]|[A-ZÄÖÜÀÉ]).*\.$/);
        expect(sentence).not.toMatch(/undefined|NaN|\bnull\b|\.\.|\[object| {2}/);
      }
    }
  });

  test('nothing falls back to English', () => {
    if (language === 'en') return;
    for (const finding of FINDINGS) {
      const own = findingText(finding, reader);
      const english = findingText(finding, readerOf('en', reader.noteNaming));
      expect(own.brief).not.toBe(english.brief);
      expect(own.message).not.toBe(english.message);
      expect(own.remedy).not.toBe(english.remedy);
    }
  });

  test('every note, fingering, word and number of the cause is told', () => {
    for (const finding of FINDINGS) {
      const { message, remedy } = findingText(finding, reader);
      const said = `${message} ${remedy}`;
      for (const value of valuesOf(finding.cause, reader))
        expect(said, `${finding.id}: ${said}`).toContain(value);
    }
  });
});

/** What must be read somewhere: all that has a name or a number. */
function valuesOf(cause: object, reader: Reader): string[] {
  return Object.entries(cause).flatMap(([field, value]: [string, unknown]): string[] => {
    if (isPitch(value)) return [noteName(value, reader)];
    if (Array.isArray(value)) return (value as Reach[]).flatMap((reach) => reachValues(reach, reader));
    if (field === 'nearest' && isReach(value)) return reachValues(value, reader);
    if (field === 'word' || field === 'sinceMeasure') return [value as string];
    if (field === 'affectedCount') return value === 1 ? [] : [String(value)];
    if (field === 'assumedQuartersPerMinute') return value === null ? [] : [String(value)];
    if (field === 'neededSeconds') return [decimalText(value as number, 2, reader)];
    if (field === 'horn') return [];
    return [];
  });
}

function reachValues({ written, fingering }: Reach, reader: Reader): string[] {
  return [noteName(written, reader), fingeringText(fingering, reader)];
}

function isPitch(value: unknown): value is Pitch {
  return typeof value === 'object' && value !== null && 'octave' in value;
}

function isReach(value: unknown): value is Reach {
  return typeof value === 'object' && value !== null && 'written' in value;
}

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

describe('counts', () => {
  const counts = (sure: number, risky: number, impossible: number, open = 0) => ({
    stopped: { sure, risky, impossible },
    open: { sure: 9, risky: open, impossible: 0 },
    impossibleMeasures: [],
  });

  test.each([
    ['en', 'no stopped notes', '1 stopped note: 1 sure', '7 stopped notes: 5 sure, 2 impossible'],
    ['de', 'keine gestopften Töne', '1 gestopfter Ton: 1 sicher', '7 gestopfte Töne: 5 sicher, 2 unspielbar'],
    ['fr', 'aucune note bouchée', '1 note bouchée: 1 sûre', '7 notes bouchées: 5 sûres, 2 injouables'],
    ['it', 'nessuna nota chiusa', '1 nota chiusa: 1 sicura', '7 note chiuse: 5 sicure, 2 ineseguibili'],
    ['es', 'ninguna nota tapada', '1 nota tapada: 1 segura', '7 notas tapadas: 5 seguras, 2 imposibles'],
  ] as const)('%s: none, one and many', (language, none, one, many) => {
    const told = (given: ReturnType<typeof counts>) => countText(given, readerOf(language));
    // French sets a space before the colon.
    const plain = (text: string) => text.replace(' :', ':');
    expect(plain(told(counts(0, 0, 0)))).toBe(none);
    expect(plain(told(counts(1, 0, 0)))).toBe(one);
    expect(plain(told(counts(5, 0, 2)))).toBe(many);
    expect(told(counts(5, 0, 2, 1)).length).toBeGreaterThan(many.length + 5);
  });

  test('bars: one, several, too many', () => {
    const numbers = (count: number) => Array.from({ length: count }, (_, i) => String(i + 1));
    const told = (count: number, language: Language) => barsText(numbers(count), readerOf(language));
    expect(told(1, 'en')).toBe('bar 1');
    expect(told(3, 'en')).toBe('bars 1, 2 and 3');
    expect(told(14, 'en')).toBe('bars 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and 2 more');
    expect(told(1, 'de')).toBe('Takt 1');
    expect(told(2, 'fr')).toBe('mesures 1 et 2');
    expect(told(13, 'de')).toMatch(/^Takte 1, .* 12 und 1 weiterer$/);
  });

  test('what was added', () => {
    const added = (signs: number, words: number, language: Language) =>
      completionText(
        [...Array(signs).fill({ kind: 'sign-added' }), ...Array(words).fill({ kind: 'opening-word' })],
        readerOf(language),
      );
    expect(added(0, 0, 'en')).toBe('no sign or word was missing');
    expect(added(3, 1, 'en')).toBe('added 3 signs and 1 word');
    expect(added(1, 2, 'fr')).toBe('ajouté : 1 signe et 2 mots');
    expect(added(0, 1, 'es')).toBe('añadido: 1 palabra');
  });
});

describe('names of notes', () => {
  test.each([
    ['C5', 'C5', 'c″', 'do5', 'do5'],
    ['C#5', 'C♯5', 'cis″', 'do♯5', 'do♯5'],
    ['B4', 'B4', 'h′', 'si4', 'si4'],
    ['Bb4', 'B♭4', 'b′', 'si♭4', 'si♭4'],
    ['Bbb4', 'B♭♭4', 'heses′', 'si♭♭4', 'si♭♭4'],
    ['Eb4', 'E♭4', 'es′', 'mi♭4', 'mi♭4'],
    ['Ab3', 'A♭3', 'as', 'la♭3', 'la♭3'],
    ['D2', 'D2', 'D', 'ré2', 're2'],
    ['F#1', 'F♯1', 'Fis₁', 'fa♯1', 'fa♯1'],
    ['G6', 'G6', 'g‴', 'sol6', 'sol6'],
  ])('%s is %s, %s, %s, %s', (text, english, german, french, spanish) => {
    const pitch = parsePitch(text);
    expect(noteName(pitch, ENGLISH_READER)).toBe(english);
    expect(noteName(pitch, readerOf('de'))).toBe(german);
    expect(noteName(pitch, readerOf('fr'))).toBe(french);
    expect(noteName(pitch, readerOf('es'))).toBe(spanish);
    expect(noteName(pitch, readerOf('it'))).toBe(spanish);
  });

  test('follow the setting and not the language, where one is set', () => {
    const pitch = parsePitch('Bb4');
    expect(noteClassName(pitch, readerOf('de', 'english'))).toBe('B♭');
    expect(noteClassName(pitch, readerOf('en', 'german'))).toBe('B');
    expect(noteClassName(pitch, readerOf('fr', 'german'))).toBe('B');
  });

  test('names of horns follow the setting too', () => {
    const triple = HORNS.find(({ id }) => id === 'triple-high-f')!;
    expect(hornText(triple, readerOf('de'))).toBe('Tripelhorn in F, B und Hoch-F');
    expect(hornText(triple, readerOf('de', 'english'))).toBe('Tripelhorn in F, B♭ und Hoch-F');
    expect(hornText(triple, readerOf('en', 'german'))).toBe('triple horn in F, B and high F');
    expect(hornText(triple, readerOf('en', 'solfege'))).toBe('triple horn in fa, si♭ and high fa');
    const own = { ...triple, id: 'own', label: 'A horn of mine in B♭' };
    expect(hornText(own, readerOf('en', 'solfege'))).toBe('A horn of mine in si♭');
  });

  test.each([
    ['Bb', 'B♭', 'B', 'si♭'],
    ['high F', 'high F', 'Hoch-F', 'fa aigu'],
    ['C basso', 'C basso', 'C basso', 'do grave'],
    ['Bb alto', 'B♭ alto', 'B alto', 'si♭ aigu'],
    ['my bass side', 'my bass side', 'my bass side', 'my bass side'],
  ])('the key %s is %s, %s, %s', (name, english, german, french) => {
    expect(keyText(name, ENGLISH_READER)).toBe(english);
    expect(keyText(name, readerOf('de'))).toBe(german);
    expect(keyText(name, readerOf('fr'))).toBe(french);
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

describe.each(LANGUAGES)('the report in %s', (language) => {
  const words = reportWords(readerOf(language));
  const counted = [words.cannotBePlayed, words.areRisky, words.elsewhere] as const;

  test('counts are told, one in a form of its own', () => {
    for (const say of counted) {
      expect(say(1)).toContain('1');
      expect(say(17)).toContain('17');
      expect(say(17)).not.toBe(say(1).replace('1', '17'));
      expect(say(17)).toBe(say(5).replace('5', '17'));
    }
    expect(words.bars(1)).not.toBe(words.bars(2));
    expect(new Set([0, 1, 2].map(words.folded)).size).toBe(3);
  });

  test('nothing falls back to English', () => {
    if (language === 'en') return;
    const english = reportWords(ENGLISH_READER);
    expect(words.cannotBePlayed(3)).not.toBe(english.cannotBePlayed(3));
    expect(words.areRisky(3)).not.toBe(english.areRisky(3));
    expect(words.elsewhere(3)).not.toBe(english.elsewhere(3));
    expect(words.findings).not.toBe(english.findings);
    expect(words.canBePlayed).not.toBe(english.canBePlayed);
    expect(words.nothingFound).not.toBe(english.nothingFound);
    expect(words.nothingStopped).not.toBe(english.nothingStopped);
    expect(words.readFor('x')).not.toBe(english.readFor('x'));
    expect(words.stoppedNotesIn('x')).not.toBe(english.stoppedNotesIn('x'));
  });
});
