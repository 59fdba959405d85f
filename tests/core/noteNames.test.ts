/** Names of notes, keys and horns as each language writes them, and as a reader sets them. */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { parsePitch } from '../../core/pitch/pitch.ts';
import { hornText, keyText } from '../../core/words/fingerings.ts';
import { ENGLISH_READER, readerOf } from '../../core/words/language.ts';
import { noteClassName, noteName } from '../../core/words/noteNames.ts';

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
