/** What an engraver left out, and marks that are not repeated. Horn in F on a double horn. */
import { describe, expect, test } from 'vitest';
import { SIGN_TEXTS } from '../../core/data/signs.ts';
import { withRepairs } from '../../core/marks/markedRepairs.ts';
import { marksFor, SHOW_ALL } from '../../core/marks/marks.ts';
import type { Passage } from '../../core/part/passage.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { completionsFor } from '../../core/repairs/completions.ts';
import { repaired } from '../../core/repairs/repaired.ts';
import { examine } from '../../core/rules/examine.ts';

/** Completions in short: `2+` a sign at note 2, `3:offen` a word before note 3. */
function missing(passage: Passage): string {
  return completionsFor(examine(passage))
    .map(({ steps: [step] }) => {
      if (step?.change === 'word') return `${step.noteIndex}:${step.text}`;
      return step?.change === 'sign' ? `${step.noteIndex}${step.sign && SIGN_TEXTS[step.sign]}` : '?';
    })
    .join(' ');
}

describe('what is missing', () => {
  test.each([
    // Signs under a word, and only there.
    ['E4 F4+ G4', ''],
    ['"gestopft" E4 F4+ G4 "offen" A4', '0+ 2+'],
    ['"half-stopped" E4 F4', '0⊕ 1⊕'],
    ['"gestopft" E4 F4o G4 "offen" A4', '0+ 2+'],
    ['"écho" E4 F4 "con sord." G4', ''],
    // A note tied to a signed one sounds on, a chord needs one sign.
    ['"gestopft" E4_ E4 F4 "offen" G4', '0+ 2+'],
    ['"gestopft" [E4 C4] [F4 D4] "offen" G4', '0+ 2+'],
    ['"1. gestopft" [E4 C4] "offen" [F4 D4]', ''],
    // The cancelling word, in the language of the word that stands.
    ['"gestopft" E4 r/7 G4 A4', '0+ 1:offen'],
    ['"bouché" E4 r/7 G4', '0+ 1:ouvert'],
    ['"chiuso" E4 r/7 G4', '0+ 1:aperto'],
    ['"stopped" E4 r/7 G4', '0+ 1:open'],
    ['"écho" E4 r/7 G4', '1:open'],
    ['"sourdine" C4 "sans sourd." D4 "écho" E4 r/7 G4', '3:ouvert'],
    // A part that has a way of saying it keeps to it.
    ['"gestopft" E4 "nat." F4 "gestopft" E4 r/7 G4', '0+ 2+ 3:nat.'],
    ['"gestopft" E4+ F4+ G4 A4', '2:offen'],
    // Two players under one word: it is cancelled once.
    ['"gestopft" [E4 C4] r/7 [G4 E4]', '0+ 2:offen'],
  ])('%s → %s', (text, expected) => expect(missing(passageOf(text))).toBe(expected));
});

test('completions join the marks: the sign nearest the note, the word on top', () => {
  const examination = examine(passageOf('"gestopft" E4 r/7 G4'));
  const marks = withRepairs(marksFor(examination), completionsFor(examination));
  expect(marks.map(({ noteIndex, lines }) => [noteIndex, ...lines])).toEqual([
    [0, '(F♯)', 'E♭ 2', '+'],
    [1, 'offen', '(A)', 'F♯ 2'],
  ]);
});

test('a completed part, read again, lacks nothing more', () => {
  const passage = passageOf('"gestopft" E4 F4 r/6 G4 A4');
  const added = completionsFor(examine(passage));
  expect(added).toHaveLength(3);
  const completed = repaired(
    passage,
    added.flatMap(({ steps }) => steps),
  );
  expect(completed.words.map(({ text, onsetQuarters }) => [text, onsetQuarters])).toEqual([
    ['gestopft', 0],
    ['offen', 8],
  ]);
  expect(completionsFor(examine(completed))).toEqual([]);
});

describe('marks that change only', () => {
  const texts = (text: string, repeat: 'all' | 'changes') =>
    marksFor(examine(passageOf(text)), { ...SHOW_ALL, repeat }).map(
      ({ noteIndex, lines }) => `${noteIndex} ${lines.join('/')}`,
    );

  test('are printed once while the player stays on the note', () => {
    expect(texts('E4+ E4+ F4+ E4+', 'all')).toHaveLength(4);
    expect(texts('E4+ E4+ F4+ E4+', 'changes')).toEqual(['0 (F♯)/E♭ 2', '2 (G)/E 0', '3 (F♯)/E♭ 2']);
  });
  test('come back after an open note', () => {
    expect(texts('E4+ E4 E4+', 'changes')).toHaveLength(2);
  });
  test('are counted for each player alone', () => {
    expect(texts('[G4+ E4+] [G4+ F4+]', 'changes').map((text) => text[0])).toEqual(['0', '1', '3']);
  });
  test('keep their colour where the text is left out', () => {
    const marks = marksFor(examine(passageOf('C#3+/2 C#3+/2')), { ...SHOW_ALL, repeat: 'changes' });
    expect(marks.map(({ lines, colour }) => [lines.length > 0, colour])).toEqual([
      [true, '#0073B2'],
      [false, '#0073B2'],
    ]);
  });
});
