/** What an engraver left out: the + under a word that rules, and the word that ends it. */

import { CANCELLING_WORDS, type WordLanguage } from '../data/words.ts';
import { type HandReading, isHandState } from '../part/handStates.ts';
import { readHandText } from '../part/handWords.ts';
import { linesOf } from '../part/lines.ts';
import type { Passage, PassageNote, PassageWord } from '../part/passage.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import { forgottenWordsIn } from '../plan/forgottenWords.ts';
import type { Examination } from '../rules/examine.ts';
import type { Mark } from './annotation.ts';

/** Something to add at a note. */
export interface Completion {
  readonly noteIndex: number;
  /** `sign`: the note's hand sign is missing. `word`: a cancelling word is missing before the note. */
  readonly kind: 'sign' | 'word';
  /** As printed: `+`, `⊕`, or the word in the part's own language. */
  readonly text: string;
}

const SIGNS: { readonly [state: string]: string } = { stopped: '+', 'half-stopped': '⊕' };

/**
 * What is missing in a part, in the order of its notes: a sign on every note (or chord) that only a word closes, and
 * a cancelling word where a word was never cancelled. Notes after such a word get no sign.
 */
export function completionsFor({ passage, notes }: Examination): readonly Completion[] {
  const found: Completion[] = [];
  const forgotten = new Set<number>();
  const cancelled = new Set<string>();
  for (const line of linesOf(passage)) {
    for (const { word, affected } of forgottenWordsIn(line, notes)) {
      const entryIndex = affected[0]!;
      const { staff, onsetQuarters } = notes[entryIndex]!.note;
      for (const index of affected) forgotten.add(index);
      // Two players under one word need it cancelled once.
      const place = `${staff} ${onsetQuarters}`;
      if (cancelled.has(place)) continue;
      cancelled.add(place);
      found.push({ noteIndex: entryIndex, kind: 'word', text: cancellingWord(passage, word.language) });
    }
  }
  const tied = new Set<number>();
  for (const { note } of notes) for (const { kind, to } of note.joins) if (kind === 'tie') tied.add(to);
  for (const { note, reading } of notes) {
    const sign = missingSign(reading);
    if (!sign || note.chordRank > 0 || tied.has(note.index) || forgotten.has(note.index)) continue;
    if (chordOf(notes, note).every((other) => missingSign(other.reading) === sign))
      found.push({ noteIndex: note.index, kind: 'sign', text: sign });
  }
  return found.sort((a, b) => a.noteIndex - b.noteIndex);
}

/**
 * Adds completions to the marks of a part, so that one text carries both: a sign nearest the note, below the rest; a
 * cancelling word on top. What they add goes when the marks are cleared.
 */
export function withCompletions(marks: readonly Mark[], completions: readonly Completion[]): readonly Mark[] {
  const byNote = new Map(marks.map((mark) => [mark.noteIndex, mark]));
  for (const { noteIndex, kind, text } of completions) {
    const mark = byNote.get(noteIndex) ?? { noteIndex, lines: [], valves: null, colour: null };
    byNote.set(noteIndex, {
      ...mark,
      lines: kind === 'sign' ? [...mark.lines, text] : [text, ...mark.lines],
    });
  }
  return Array.from(byNote.values()).sort((a, b) => a.noteIndex - b.noteIndex);
}

/** The passage as it reads once the missing words stand in it. */
export function completedPassage(passage: Passage, completions: readonly Completion[]): Passage {
  const added = completions
    .filter(({ kind }) => kind === 'word')
    .map(({ noteIndex, text }): PassageWord => {
      const { measureIndex, measure, beat, onsetQuarters, staff } = passage.notes[noteIndex]!;
      return { text, measureIndex, measure, beat, onsetQuarters, staff, voice: null };
    });
  if (added.length === 0) return passage;
  const words = [...passage.words, ...added].sort((a, b) => a.onsetQuarters - b.onsetQuarters);
  return { ...passage, words };
}

function missingSign({ from, state }: HandReading): string | null {
  return from === 'word' && isHandState(state) ? (SIGNS[state] ?? null) : null;
}

function chordOf(notes: readonly ExaminedNote[], head: PassageNote): readonly ExaminedNote[] {
  let end = head.index + 1;
  while (end < notes.length && notes[end]!.note.chordHead === head.index) end += 1;
  return notes.slice(head.index, end);
}

/** The word this part itself cancels with, where it does; else the usual one of the language. */
function cancellingWord({ words }: Passage, language: WordLanguage | null): string {
  const own = words.filter(({ text }) => {
    const { effects, player } = readHandText(text);
    return player === null && effects.length === 1 && effects[0]!.effect === 'open';
  })[0];
  if (own) return own.text.trim();
  return CANCELLING_WORDS[language ?? languageOf(words) ?? 'en'];
}

/** The language of the first word for hand or mute that has one. */
function languageOf(words: Passage['words']): WordLanguage | null {
  for (const { text } of words)
    for (const { language } of readHandText(text).effects) if (language) return language;
  return null;
}
