/** Reads one text over the staff: which words for hand and mute it holds, and for which player. */
import { signTyped } from '../data/signs.ts';
import {
  ALTERNATIVES,
  COMPANIONS,
  HAND_WORDS,
  type HandWord,
  type WordEffect,
  type WordLanguage,
} from '../data/words.ts';
import type { HandSign } from './passage.ts';
import { plainLetters } from './plainLetters.ts';

/** One thing that a text says. */
export interface TextEffect {
  readonly effect: WordEffect;
  /** `null` for a word that several languages share. */
  readonly language: WordLanguage | null;
}

/** What one text says, in the order of the text. */
export interface HandText {
  readonly effects: readonly TextEffect[];
  /** True when it speaks of echo, even beside a word for stopping, which then rules. */
  readonly namesEcho: boolean;
  /** A text that is nothing but + or o is a sign that an engraver typed: it rules the notes it stands over. */
  readonly sign: HandSign | null;
  /** The player it names ("1. sourd."), from 1; null when it speaks to all of its staff. */
  readonly player: number | null;
}

/** Reads a text. Most texts of a part (tempos, dynamics, rehearsal marks) say nothing about the hand: no effects. */
export function readHandText(text: string): HandText {
  const known = READ.get(text);
  if (known) return known;
  const meaning = read(text);
  READ.set(text, meaning);
  return meaning;
}

/** Parts repeat their few words; what a text means never changes. */
const READ = new Map<string, HandText>();

function read(text: string): HandText {
  const sign = signTyped(text.trim());
  if (sign) return { effects: [], namesEcho: false, sign, player: null };
  const { players, rest } = takePlayers(plainWords(text));
  const effects: TextEffect[] = [];
  let onlyAboutPlaying = true;
  for (const clause of clausesOf(rest)) {
    const { found, isOnlyAboutPlaying } = readClause(clause);
    onlyAboutPlaying = onlyAboutPlaying && isOnlyAboutPlaying;
    const meant = found.filter(({ word }) => onlyAboutPlaying || !word.everyday);
    for (const { word } of hasAlternative(clause) ? meant.slice(0, 1) : meant)
      effects.push({ effect: word.effect, language: word.language });
  }
  return {
    effects: together(effects),
    namesEcho: effects.some(({ effect }) => effect === 'echo'),
    sign: null,
    player: players.length === 1 ? players[0]! : null,
  };
}

/** What words mean that stand in one text: echo beside stopped only says how it sounds; stopped with a mute is a stopping mute. */
function together(effects: readonly TextEffect[]): readonly TextEffect[] {
  const says = (wanted: WordEffect): boolean => effects.some(({ effect }) => effect === wanted);
  if (says('stopped') && says('straight-mute'))
    return effects
      .filter(({ effect }) => effect !== 'straight-mute')
      .map((said) => (said.effect === 'stopped' ? { ...said, effect: 'stopping-mute' } : said));
  return says('stopped') || says('half-stopped')
    ? effects.filter(({ effect }) => effect !== 'echo')
    : effects;
}

/** The words of a clause about hand and mute, in their order, and whether it holds anything else. */
function readClause(clause: string): {
  found: { at: number; word: HandWord }[];
  isOnlyAboutPlaying: boolean;
} {
  const found: { at: number; word: HandWord }[] = [];
  let left = clause;
  for (const { word, expression } of EXPRESSIONS) {
    const match = expression.exec(left);
    if (!match) continue;
    const at = match.index + match[1]!.length;
    found.push({ at, word });
    left = left.slice(0, at) + '_'.repeat(match[2]!.length) + left.slice(at + match[2]!.length);
  }
  found.sort((a, b) => a.at - b.at);
  const others = left.split(' ').filter((token) => /[^_]/.test(token));
  return {
    found,
    isOnlyAboutPlaying: others.every((token) => COMPANION_SET.has(token) || /^\d+$/.test(token)),
  };
}

const EXPRESSIONS = HAND_WORDS.map((word) => ({
  word,
  expression: new RegExp(`(^| )(${word.pattern})(?= |$)`),
}));
const COMPANION_SET: ReadonlySet<string> = new Set(COMPANIONS);

function hasAlternative(clause: string): boolean {
  return clause.split(' ').some((token) => ALTERNATIVES.indexOf(token) >= 0);
}

/** Clauses stand between commas, brackets and the like; within them only letters, digits and single spaces are kept. */
function clausesOf(text: string): string[] {
  return text
    .split(/[,;:()[\]{}|\n\u2013\u2014]| - /)
    .map((clause) => clause.replace(/[^a-z0-9½]+/g, ' ').trim())
    .filter((clause) => clause !== '');
}

/**
 * Takes the players named at the front of a text: "1.", "2nd", "I.", "1., 2.", and the French "1 O", which is 1° for
 * primo and no sign for an open note.
 */
function takePlayers(text: string): { players: readonly number[]; rest: string } {
  const players: number[] = [];
  let rest = text.replace(/^\s*(?:(?:horns?|hrn?|cors?|corn[oi]|h)\b\.?\s*)?/, '');
  if (!PLAYER.test(rest)) rest = text;
  for (let match = PLAYER.exec(rest); match; match = PLAYER.exec(rest)) {
    players.push(ROMAN.indexOf(match[1]!) >= 0 ? ROMAN.indexOf(match[1]!) : Number(match[1]));
    rest = rest.slice(match[0].length);
  }
  return { players, rest };
}

const ROMAN = ['', 'i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii'];
const PLAYER =
  /^\s*([1-8](?![0-9/])|(?:i{1,3}|iv|vi{0,3})(?=[.°º]))(?:(?:\s?(?:o|°|º)(?![a-z.])|(?:o|mo|do|ma|da|er|re|e|me|st|nd|rd|th))(?![a-z]))?[.):]?\s*(?:,|&|\+|et|and|und|u\.?|e|\/)?(?![a-z])/;

/** Hyphens inside words become spaces, those that only divide a word go. */
function plainWords(text: string): string {
  return plainLetters(text)
    .replace(/\u00ad/g, '')
    .replace(/(\S)[-\u2010\u2011](\S)/g, '$1 $2');
}
