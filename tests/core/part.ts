/**
 * Short parts for tests, written as a line of text. Tokens, apart by spaces:
 *
 * | token | meaning |
 * |---|---|
 * | `E4` `C#5/0.5` | a note, a quarter long or as many quarters as stated; `g:D5` a grace note |
 * | `E4+` `E4o` `E4½` | with the sign for stopped, open, half-stopped |
 * | `E4~` `E4^` `E4_` | joined to the player's next note by a glissando, a bend, a tie |
 * | `(E4` … `C4)` | a slur from here to there |
 * | `[E4 C4]` | a chord, from the top |
 * | `r/4` | a rest |
 * | `"con_sord."` | a word; `_` stands for a space |
 * | `@96` | a tempo in quarters a minute |
 * | `v2:` `s2:` | from here on voice 2 or staff 2, which begin at the start of the part |
 * | `bass:` `treble:` | a clef |
 * | `in:F` `in:Eb` `in:?` | a transposition: F, Eb, D, Bb (basso), C (alto), or unknown |
 */
import type { HandSign, JoinKind, Passage, PassageNote, PassageWord } from '../../core/part/passage.ts';
import { HORN_IN_F, parsePitch, type Transposition } from '../../core/pitch/pitch.ts';

const KEYS: { readonly [key: string]: Transposition | null } = {
  F: HORN_IN_F,
  Eb: { chromatic: -9, diatonic: -5, octaveChange: 0 },
  D: { chromatic: -10, diatonic: -6, octaveChange: 0 },
  Bb: { chromatic: -2, diatonic: -1, octaveChange: -1 },
  C: { chromatic: 0, diatonic: 0, octaveChange: 0 },
  '?': null,
};
const SIGNS: { readonly [sign: string]: HandSign } = { '+': 'stopped', o: 'open', '½': 'half-stopped' };
const JOINS: { readonly [sign: string]: JoinKind } = { '~': 'glissando', '^': 'bend', _: 'tie' };
const BEATS = 4;

type Draft = { -readonly [key in keyof PassageNote]: PassageNote[key] } & {
  joins: { kind: JoinKind; to: number }[];
};

/** A passage of 4/4 bars from its text; joins and slurs lead to the next note of the same voice, staff and chord rank. */
export function part(text: string): Passage {
  const drafts: Draft[] = [];
  const words: PassageWord[] = [];
  const tempos: { onsetQuarters: number; quartersPerMinute: number }[] = [];
  const rests: Passage['rests'][number][] = [];
  let onset = 0;
  let voice = '1';
  let staff = 1;
  let clef: PassageNote['clef'] = 'treble';
  let transposition: Transposition | null = HORN_IN_F;
  let chord: Draft[] | null = null;
  const open: { kind: JoinKind; from: Draft }[] = [];
  const slurs: Draft[] = [];

  for (const token of text.split(/\s+/).filter((piece) => piece !== '')) {
    const place = {
      measureIndex: Math.floor(onset / BEATS),
      measure: String(Math.floor(onset / BEATS) + 1),
      beat: (onset % BEATS) + 1,
      onsetQuarters: onset,
      staff,
    };
    if (/^v\d:$/.test(token)) [voice, onset] = [token[1]!, 0];
    else if (/^s\d:$/.test(token)) [staff, onset] = [Number(token[1]), 0];
    else if (token === 'bass:' || token === 'treble:') clef = token.slice(0, -1) as 'bass' | 'treble';
    else if (token.startsWith('in:')) transposition = KEYS[token.slice(3)]!;
    else if (token.startsWith('"'))
      words.push({ ...place, text: token.slice(1, -1).replace(/_/g, ' '), voice: null });
    else if (token.startsWith('@'))
      tempos.push({ onsetQuarters: onset, quartersPerMinute: Number(token.slice(1)) });
    else if (token.startsWith('r/')) {
      rests.push({ onsetQuarters: onset, durationQuarters: Number(token.slice(2)), staff, voice });
      onset += Number(token.slice(2));
    } else {
      const match =
        /^(\(*)(\[?)(\(*)(g:)?([A-G][#bx]*-?\d+)([+o½]?)([~^_]?)(?:\/([\d.]+))?([+o½]?)([~^_]?)(\)*)(\]?)(\)*)$/.exec(
          token,
        );
      if (!match) throw new Error(`cannot read the token ${token}`);
      const grace = match[4] !== undefined;
      if (match[2]) chord = [];
      const draft: Draft = {
        ...place,
        index: drafts.length,
        durationQuarters: grace ? 0 : Number(match[8] ?? 1),
        grace,
        voice,
        chordRank: chord ? chord.length : 0,
        chordHead: 0,
        written: parsePitch(match[5]!),
        transposition,
        clef,
        sign: SIGNS[match[6]! || match[9]!] ?? null,
        joins: [],
        userColour: false,
      };
      drafts.push(draft);
      for (let i = open.length - 1; i >= 0; i--) {
        const { kind, from } = open[i]!;
        if (from.voice !== voice || from.staff !== staff || from.chordRank !== draft.chordRank) continue;
        from.joins.push({ kind, to: draft.index });
        open.splice(i, 1);
      }
      const join = JOINS[match[7]! || match[10]!];
      if (join) open.push({ kind: join, from: draft });
      if (match[1] || match[3]) slurs.push(draft);
      if (match[11] || match[13]) slurs.pop()!.joins.push({ kind: 'slur', to: draft.index });
      if (chord) chord.push(draft);
      if (match[12]) chord = null;
      if (!chord) onset += draft.durationQuarters;
    }
  }

  // Playing order: by onset, then as written; joins follow their notes.
  const ordered = drafts.slice().sort((a, b) => a.onsetQuarters - b.onsetQuarters || a.index - b.index);
  const at = new Map(ordered.map((draft, i) => [draft.index, i]));
  return {
    name: 'Horn in F',
    notes: ordered.map((draft, index) => ({
      ...draft,
      index,
      chordHead: index - draft.chordRank,
      joins: draft.joins.map(({ kind, to }) => ({ kind, to: at.get(to)! })),
    })),
    words,
    tempos,
    rests,
  };
}
