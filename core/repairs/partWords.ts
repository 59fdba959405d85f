/** The words a repair writes: as the part itself says it, else in the language of the part's other words. */
import {
  CANCELLING_WORDS,
  CLOSING_WORDS,
  MUTE_WORDS,
  type WordEffect,
  type WordLanguage,
} from '../data/words.ts';
import { readHandText } from '../part/handWords.ts';
import type { Passage } from '../part/passage.ts';

/** The word that opens the hand. @param language of the word it cancels; `null` for one that several languages share */
export function cancellingWord(passage: Passage, language: WordLanguage | null): string {
  return ownWord(passage, 'open') ?? CANCELLING_WORDS[language ?? languageOf(passage) ?? 'en'];
}

/** The word that closes the hand. */
export function closingWord(passage: Passage): string {
  return ownWord(passage, 'stopped') ?? CLOSING_WORDS[languageOf(passage) ?? 'en'];
}

/** The word for putting a mute in or taking it out. */
export function muteWord(passage: Passage, effect: 'stopping-mute' | 'straight-mute' | 'mute-out'): string {
  return ownWord(passage, effect) ?? MUTE_WORDS[languageOf(passage) ?? 'en'][effect];
}

/** How this part itself says it, where it does so in a word that says nothing else. */
function ownWord({ words }: Passage, wanted: WordEffect): string | null {
  const own = words.filter(({ text }) => {
    const { effects, player, namesEcho } = readHandText(text);
    return player === null && !namesEcho && effects.length === 1 && effects[0]!.effect === wanted;
  })[0];
  return own ? own.text.trim() : null;
}

/** The language of the first word for hand or mute that has one. */
function languageOf({ words }: Passage): WordLanguage | null {
  for (const { text } of words)
    for (const { language } of readHandText(text).effects) if (language) return language;
  return null;
}
