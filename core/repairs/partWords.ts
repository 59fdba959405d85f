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
function ownWord(passage: Passage, wanted: WordEffect): string | null {
  return usageOf(passage).own[wanted] ?? null;
}

/** The language of the first word for hand or mute that has one. */
function languageOf(passage: Passage): WordLanguage | null {
  return usageOf(passage).language;
}

/** How a part speaks to the hand. */
interface Usage {
  readonly own: { [effect in WordEffect]?: string };
  language: WordLanguage | null;
}

/** Every finding asks, and a part has many words. */
const USAGE = new WeakMap<Passage, Usage>();

function usageOf(passage: Passage): Usage {
  const known = USAGE.get(passage);
  if (known) return known;
  const usage: Usage = { own: {}, language: null };
  for (const { text } of passage.words) {
    const { effects, player, namesEcho } = readHandText(text);
    for (const { effect, language } of effects) {
      usage.language = usage.language ?? language;
      if (effects.length === 1 && player === null && !namesEcho)
        usage.own[effect] = usage.own[effect] ?? text.trim();
    }
  }
  USAGE.set(passage, usage);
  return usage;
}
