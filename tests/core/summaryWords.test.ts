/** What is said of a whole part, in every language: its counts, its bars, what was added, and the report’s own words. */
import { describe, expect, test } from 'vitest';
import { ENGLISH_READER, readerOf } from '../../core/words/language.ts';
import { LANGUAGES, type Language } from '../../core/words/languages.ts';
import { reportWords } from '../../core/words/report.ts';
import { barsText, completionText, countText } from '../../core/words/summary.ts';

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
