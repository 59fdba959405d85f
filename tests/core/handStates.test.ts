/** Words and signs of real parts: what each text says, and how far it holds. */
import { describe, expect, test } from 'vitest';
import { readHandStates } from '../../core/part/handStates.ts';
import { readHandText } from '../../core/part/handWords.ts';
import { passageOf } from '../../core/part/passageOf.ts';

/** Effects in short: what a text says, in its order; `1:` before the player it names. */
function said(text: string): string {
  const { effects, sign, player } = readHandText(text);
  const what = sign ? `sign ${sign}` : effects.map(({ effect }) => effect).join(', ') || 'nothing';
  return player === null ? what : `${player}: ${what}`;
}

// MusicXML 4.0 and common practice for the words; spellings marked * stand in scores in print.
const TEXTS: readonly (readonly [text: string, says: string])[] = [
  ['stopped', 'stopped'],
  ['hand-stopped', 'stopped'],
  ['Hand stopped', 'stopped'],
  ['stopped (+)', 'stopped'],
  ['gestopft', 'stopped'],
  ['Gestopft!', 'stopped'],
  ['gest.', 'stopped'],
  ['bouché', 'stopped'],
  ['bouchés', 'stopped'],
  ['bouch.', 'stopped'],
  ['sons bouchés', 'stopped'],
  ['bouche\u0301', 'stopped'],
  ['chiuso', 'stopped'],
  ['chiusi', 'stopped'],
  ['sempre chiuso', 'stopped'],
  ['a 2, gest.', 'stopped'],
  ['gestopft, schmetternd', 'stopped'],
  ['bouché cuivré', 'stopped'],
  ['(bouché, très cuivré)', 'stopped'],
  ['half-stopped', 'half-stopped'],
  ['½ gestopft', 'half-stopped'],
  ['halbgestopft', 'half-stopped'],
  ['mi-bouché', 'half-stopped'],
  ['mezzo chiuso', 'half-stopped'],
  ['open', 'open'],
  ['offen', 'open'],
  ['ouvert', 'open'],
  ['ouverts', 'open'],
  ['aperto', 'open'],
  ['naturale', 'open'],
  ['nat.', 'open'],
  ['ord.', 'open'],
  ['nicht gestopft', 'open'],
  ['non bouché', 'open'],
  ['open, warm and singing', 'open'],
  ['écho', 'echo'],
  ['en écho', 'echo'],
  ['Echo', 'echo'],
  ['Echoton', 'echo'],
  ['bouché (écho)', 'stopped'],
  ['con sord.', 'straight-mute'],
  ['con sordini', 'straight-mute'],
  ['c. sord.', 'straight-mute'],
  ['m. Dpf.', 'straight-mute'],
  ['m.Dpf.', 'straight-mute'],
  ['mit Dämpfer', 'straight-mute'],
  ['mit Da\u0308mpfer', 'straight-mute'],
  ['sourd.', 'straight-mute'], // *
  ['mettez la sourdine', 'straight-mute'], // *
  ['Solo  sourdine', 'straight-mute'], // *
  ['muted', 'straight-mute'],
  ['senza sord.', 'mute-out'],
  ['via sord.', 'mute-out'],
  ['o. Dpf.', 'mute-out'],
  ['ohne Dämpfer', 'mute-out'],
  ['Dämpfer weg', 'mute-out'],
  ['sans sourd.', 'mute-out'], // *
  ['sans sourdine', 'mute-out'], // *
  ['ôtez vite la sourdine', 'mute-out'], // *
  ['enlevez la Sourdine', 'mute-out'], // *
  ['mute off', 'mute-out'],
  ['remove mute', 'mute-out'],
  ['stop mute', 'stopping-mute'],
  ['with stopping mute', 'stopping-mute'],
  ['Stopfdämpfer', 'stopping-mute'],
  ['ohne Stopfdämpfer', 'mute-out'],
  ['sourdine bouchée', 'stopping-mute'],
  ['senza sord., chiuso', 'mute-out, stopped'],
  ['gestopft mit Dämpfer', 'stopping-mute'],
  ['con sord. (chiuso)', 'stopping-mute'],
  ['stopped or muted', 'stopped'],
  ['con sord. oder gestopft', 'straight-mute'],
  // One player of several.
  ['1. sourd.', '1: straight-mute'], // *
  ['2. sourdine', '2: straight-mute'], // *
  ['1.  sans sourd.', '1: mute-out'], // *
  ['II. gestopft', '2: stopped'],
  ['2nd: stopped', '2: stopped'],
  ['1., 2. con sord.', 'straight-mute'],
  ['1. u. 3. gest.', 'stopped'],
  // In French print `1 O` is 1°, primo: no sign for an open note.
  ['1 O', '1: nothing'], // *
  ['1 O sourdine', '1: straight-mute'], // *
  ['O', 'nothing'],
  // Signs typed as text.
  ['+', 'sign stopped'],
  ['o', 'sign open'],
  // Brassy is not stopped.
  ['cuivré', 'nothing'],
  ['cuivrez', 'nothing'],
  ['schmetternd', 'nothing'],
  // Whole words only, and everyday words only among words about playing.
  ['openly', 'nothing'],
  ['offenbar', 'nothing'],
  ['Stopftrompete', 'nothing'],
  ['unstoppable', 'nothing'],
  ['naturalmente', 'nothing'],
  ['Open and spacious', 'nothing'],
  ['Langsam, offen', 'nothing'],
  ['Echo Dances', 'nothing'],
  ['wie ein Echo', 'nothing'],
  ['bouche fermée', 'nothing'],
  ['Nat King', 'nothing'],
  ['Allegro ma non troppo', 'nothing'],
  ["[Play lower line unless there's a Tpt 3]", 'nothing'],
  ['', 'nothing'],
];

describe('what a text says', () => {
  test.each(TEXTS)('%j says %s', (text, says) => expect(said(text)).toBe(says));
  test('in capitals too', () => {
    for (const [text, says] of TEXTS.slice(0, 60))
      if (!says.startsWith('sign')) expect(said(text.toUpperCase())).toBe(says);
  });
});

/** The states of a part's notes in short. */
function states(text: string): string {
  const short = {
    open: 'o',
    stopped: '+',
    'half-stopped': '½',
    echo: 'e',
    'stopping-mute': 'S',
    'straight-mute': 'm',
  };
  return readHandStates(passageOf(text))
    .map(({ state }) => short[state])
    .join('');
}

describe('how far it holds', () => {
  test.each([
    ['E4 F4+ G4', 'o+o'],
    ['E4 "gestopft" F4 G4 "offen" A4', 'o++o'],
    ['"gestopft" E4 F4o G4', '+o+'],
    ['"gestopft" E4½ F4', '½+'],
    ['E4 "+" F4 G4', 'o+o'],
    ['"gestopft" E4 "con sord." F4 "senza sord." G4', '+mo'],
    ['"con sord." E4 "gestopft" F4 "offen" G4', 'm+o'],
    ['"con sord." E4 F4+ G4 "nat." A4', 'm+mo'],
    // A sign is for the whole tone, be it tied on; the second half may have another.
    ['E4+_ E4_ E4 F4', '+++o'],
    ['E4½_ E4 F4', '½½o'],
    ['E4_ E4+ F4', 'o+o'],
    ['"gestopft" E4o_ E4 F4', 'oo+'],
    ['"gestopft" E4+ F4+_ F4 G4+ A4', '++++o'],
    ['E4+_ "offen" E4 F4', '+oo'],
    // Taking the mute out does not open a hand that a word has closed.
    ['"gestopft" E4 "senza sord." F4', '++'],
    ['"stop mute" E4 F4+ "senza sord." G4', 'SSo'],
    ['"écho" E4 "bouché" F4 "ouvert" G4', 'e+o'],
    ['"half-stopped" E4 F4+ G4 "open" A4', '½+½o'],
    ['"cuivré" E4 F4', 'oo'],
    // Set with its signs and never cancelled, a word lapses with the last sign in a row …
    ['"gestopft" E4+ F4+ G4 A4', '++oo'],
    ['"gestopft" E4+ F4+ G4 A4+ r/9 "gestopft" E4+ F4+ "offen" G4', '++o+++o'],
    ['"con sord." C4 "senza sord." "gest." E4+ F4+ G4 "con sord." A4', 'm++om'],
    // … but not where a word opens the hand later, nor after one sign as a reminder.
    ['"gestopft" E4+ F4+ G4 "offen" A4', '+++o'],
    ['"gestopft" E4+ F4 G4', '+++'],
    // A word over a grace note holds for it; one after the first note of a bar does not reach back.
    ['E4 "gestopft" g:D5 C5', 'o++'],
  ])('%s → %s', (text, expected) => expect(states(text)).toBe(expected));

  test('a word speaks to all of its staff and to no other', () => {
    const passage = passageOf('"gestopft" E4 F4 v2: C4 D4 s2: v1: G4 A4');
    const byStaff = readHandStates(passage).map(({ state }, i) => `${passage.notes[i]!.staff} ${state}`);
    expect(byStaff.filter((entry) => entry.startsWith('1'))).toEqual(Array(4).fill('1 stopped'));
    expect(byStaff.filter((entry) => entry.startsWith('2'))).toEqual(Array(2).fill('2 open'));
  });

  test('a word tied to a voice speaks to that voice, unless nobody plays in it', () => {
    const passage = passageOf('"gestopft" E4 F4 v2: C4 D4');
    const tied = (voice: string) => ({ ...passage, words: [{ ...passage.words[0]!, voice }] });
    const closed = (voice: string) =>
      readHandStates(tied(voice)).flatMap(({ state }, i) =>
        state === 'stopped' ? [passage.notes[i]!.voice] : [],
      );
    expect(closed('2')).toEqual(['2', '2']);
    expect(closed('9')).toEqual(['1', '2', '1', '2']);
  });

  test('a word that names a player speaks to that one of a staff, and to whoever plays where only one does', () => {
    expect(states('"2. gest." [E4 C4] [F4 D4] "offen" [G4 E4]')).toBe('o+o+oo');
    expect(states('"1. gest." [E4 C4] [F4 D4] "2. gest." [G4 E4]')).toBe('+o+o++');
    expect(states('"2. gest." E4 F4')).toBe('++');
  });

  test('what says it, where, and in which language', () => {
    const [first, second] = readHandStates(passageOf('"gest." E4 F4o'));
    expect(first).toEqual({
      state: 'stopped',
      from: 'word',
      word: { wordIndex: 0, text: 'gest.', state: 'stopped', language: 'de' },
      mute: null,
      lapsed: null,
    });
    expect(second).toMatchObject({ state: 'open', from: 'sign', word: { text: 'gest.' } });
  });
});
