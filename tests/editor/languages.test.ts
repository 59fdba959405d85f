/** The table of words: complete, filled in alike, and found by locale. */
import { describe, expect, it } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { filled, hornName, LANGUAGES, wordsFor } from '../../plugin/editor/languages.ts';

const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).sort();

describe.each(Object.entries(LANGUAGES))('the words in %s', (language, words) => {
  it('are all there, with the same places to fill in', () => {
    for (const [name, english] of Object.entries(LANGUAGES.en!)) {
      const word = words[name as keyof typeof words];
      expect(word.trim(), name).not.toBe('');
      expect(places(word), name).toEqual(places(english));
    }
    expect(Object.keys(words).sort()).toEqual(Object.keys(LANGUAGES.en!).sort());
  });

  it('are its own: hardly a word is that of another language', () => {
    if (language === 'en') return;
    const same = Object.entries(words).filter(
      ([name, word]) => word === LANGUAGES.en![name as keyof typeof words],
    );
    // Horn is Horn in German, and an étude French.
    expect(same.map(([name]) => name).filter((name) => name !== 'horn' && name !== 'etude')).toEqual([]);
  });

  it('name every horn, each differently', () => {
    const names = HORNS.map((horn) => hornName(words, horn));
    expect(new Set(names).size).toBe(HORNS.length);
    for (const [i, name] of names.entries())
      expect(name === HORNS[i]!.label && language !== 'en').toBe(false);
  });
});

describe('finding the language', () => {
  it.each([
    ['de_AT', 'Bezeichnen'],
    ['fr', 'Annoter'],
    ['it_IT', 'Annotare'],
    ['en_GB', 'Annotate'],
    ['C', 'Annotate'],
    ['ja_JP', 'Annotate'],
  ])('%s says %s', (locale, annotate) => {
    expect(wordsFor(locale).annotate).toBe(annotate);
  });

  it('fills sentences in, and leaves what it does not know', () => {
    expect(filled('{count} of {total}: {what}', { count: 2, total: 3 })).toBe('2 of 3: {what}');
  });
});
