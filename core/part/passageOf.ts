/** A passage from a line of text: for examples, for tests, and for anyone who asks about a few notes. */
import { HORN_IN_F, type Pitch, parsePitch, type Transposition } from '../pitch/pitch.ts';
import { crookFromName } from './crookNames.ts';
import type { HandSign, JoinKind, Passage, PassageNote, PassageWord } from './passage.ts';

/** What the text of a passage leaves unsaid. */
export interface PassageOptions {
  /** The part's name as results print it. Default `Horn in F`. */
  readonly name?: string;
  /** Written to sounding, until the text says another; null for unknown. Default a horn in F. */
  readonly transposition?: Transposition | null;
}

/**
 * Makes a passage from short text. Tokens stand apart by spaces:
 *
 * | token | meaning |
 * |---|---|
 * | `E4` `C#5` `Bb3` | a note as written, a quarter long; octave 4 begins at middle C |
 * | `E4/2` `E4/0.5` `E4/1/3` | its length in quarters: a half, an eighth, an eighth of a triplet |
 * | `g:D5` | a grace note before the next note |
 * | `E4+` `E4o` `E4½` | the sign at the note: stopped, open, half-stopped |
 * | `E4<12>` `E4+<T0>` | a fingering printed at the note |
 * | `E4~` `E4^` `E4_` | a glissando, a bend, a tie to the player's next note; signs, joins and length in any order |
 * | `(E4` … `C4)` | a slur from here to there |
 * | `[E4` … `C4]` | a chord, from the top; each note is a player |
 * | `r` `r/4` | a rest, a quarter or so many quarters long |
 * | `"con sord."` | a word over the staff at what follows |
 * | `@96` | a tempo in quarters a minute |
 * | `\|` | a bar line; without one, bars end when they are full |
 * | `time:3/4` | a time signature; 4/4 until then |
 * | `in:Eb` `in:Bb-basso` `in:C-alto` `in:concert` `in:?` | the key the part stands in, as its name would say it |
 * | `bass:` `treble:` | a clef |
 * | `v2:` `s2:` | another voice or staff from here on, again from the start of the part and in the same bars |
 *
 * @returns the passage, notes in playing order
 * @throws {TypeError} when `text` is not a string
 * @throws {RangeError} when a token cannot be read, a slur or chord stays open or a join leads nowhere; the message names it
 * @example
 * passageOf('C5+ E5 | G4o~ F4+').notes.length // => 4
 * passageOf('C5+ E5 | G4o~ F4+').notes[2].joins // => [{ kind: 'glissando', to: 3 }]
 * passageOf('@60 "gestopft" C5/4').words[0].text // => 'gestopft'
 */
export function passageOf(text: string, options: PassageOptions = {}): Passage {
  if (typeof text !== 'string') throw new TypeError(`"text" must be a string such as 'C5+ E5', got ${text}`);
  const reader = new PassageReader(options.transposition === undefined ? HORN_IN_F : options.transposition);
  for (const token of text.match(/"[^"]*"|\S+/g) ?? []) reader.take(token);
  return reader.passage(options.name ?? 'Horn in F');
}

const SIGNS = new Map<string, HandSign>([
  ['+', 'stopped'],
  ['o', 'open'],
  ['½', 'half-stopped'],
]);
const JOINS = new Map<string, JoinKind>([
  ['~', 'glissando'],
  ['^', 'bend'],
  ['_', 'tie'],
]);

const LENGTH = '\\/\\d+(?:\\.\\d+|\\/[1-9]\\d*)?';
/** Brackets before, `g:`, the pitch, what is added to it in any order, brackets behind. */
const NOTE = new RegExp(`^([([]*)(g:)?([A-G][#b♯♭x]*-?\\d+)((?:[+o½~^_]|<[^<>]+>|${LENGTH})*)([)\\]]*)$`);
const REST = new RegExp(`^r(${LENGTH})?$`);
const ADDITION = new RegExp(`${LENGTH}|<[^<>]+>|.`, 'g');

type Draft = Omit<PassageNote, 'joins'> & { readonly joins: { kind: JoinKind; to: Draft }[] };

class PassageReader {
  private readonly drafts: Draft[] = [];
  private readonly words: PassageWord[] = [];
  private readonly tempos: { onsetQuarters: number; quartersPerMinute: number }[] = [];
  private readonly rests: Passage['rests'][number][] = [];
  private readonly joins: { kind: JoinKind; from: Draft }[] = [];
  private readonly slurs: Draft[] = [];
  private chord: Draft[] | null = null;
  private voice = '1';
  private staff = 1;
  private clef: PassageNote['clef'] = 'treble';
  private onset = 0;
  private barOnset = 0;
  /** Of every bar so far, in quarters. */
  private readonly barOnsets = [0];
  private barIndex = 0;
  private beats = 4;
  private beatType = 4;

  constructor(private transposition: Transposition | null) {}

  take(token: string): void {
    if (token === '|') this.startBar();
    else if (token[0] === '"') this.takeWord(token);
    else if (token[0] === '@') this.takeTempo(token);
    else if (/^[vs]\d:$/.test(token)) this.startLine(token);
    else if (/^time:\d+\/\d+$/.test(token)) this.takeTime(token);
    else if (/^in:./.test(token)) this.takeKey(token);
    else if (token === 'bass:' || token === 'treble:') this.clef = token === 'bass:' ? 'bass' : 'treble';
    else if (REST.test(token)) this.takeRest(quarters(REST.exec(token)![1] ?? '/1'));
    else this.takeNote(token);
  }

  passage(name: string): Passage {
    if (this.chord) throw new RangeError('a chord is not closed: write ] after its last note');
    if (this.slurs.length > 0) throw new RangeError('a slur is not closed: write ) after its last note');
    const lost = this.joins[0];
    if (lost)
      throw new RangeError(`a ${lost.kind} leads to no note: write the note after it, or leave it out`);
    // Playing order: by onset, then as written.
    const ordered = this.drafts.slice();
    ordered.sort((a, b) => a.onsetQuarters - b.onsetQuarters || a.index - b.index);
    const places = new Map(ordered.map((draft, place): [Draft, number] => [draft, place]));
    const notes = ordered.map((draft, index) => ({
      ...draft,
      index,
      chordHead: index - draft.chordRank,
      joins: draft.joins.map(({ kind, to }) => ({ kind, to: places.get(to)! })),
    }));
    return { name, notes, words: this.words, tempos: this.tempos, rests: this.rests };
  }

  private place() {
    while (this.onset >= this.barEnd() - ROUNDING) this.nextBar(this.barEnd());
    const { barIndex, staff, onset } = this;
    const beat = 1 + ((onset - this.barOnset) * this.beatType) / 4;
    return { measureIndex: barIndex, measure: String(barIndex + 1), beat, onsetQuarters: onset, staff };
  }

  /** Where the next bar begins: as another voice has it already, or when this one is full. */
  private barEnd(): number {
    return this.barOnsets[this.barIndex + 1] ?? this.barOnset + (4 * this.beats) / this.beatType;
  }

  private nextBar(onset: number): void {
    this.barOnset = onset;
    this.barIndex += 1;
    this.barOnsets[this.barIndex] = onset;
  }

  private startBar(): void {
    if (this.place().beat === 1) return;
    if (this.barOnsets[this.barIndex + 1] !== undefined)
      throw new RangeError(
        `bar ${this.barIndex + 1} is shorter in one voice than in another: fill it up with rests`,
      );
    this.nextBar(this.onset);
  }

  private startLine(token: string): void {
    if (token[0] === 'v') this.voice = token[1]!;
    else this.staff = Number(token[1]);
    [this.onset, this.barOnset, this.barIndex] = [0, 0, 0];
  }

  private takeWord(token: string): void {
    if (token.length < 2 || token[token.length - 1] !== '"') throw unread(token);
    this.words.push({ ...this.place(), text: token.slice(1, -1), voice: null });
  }

  private takeTempo(token: string): void {
    const quartersPerMinute = Number(token.slice(1));
    if (!(quartersPerMinute > 0 && quartersPerMinute < 1000)) throw unread(token);
    this.tempos.push({ onsetQuarters: this.onset, quartersPerMinute });
  }

  private takeTime(token: string): void {
    const [beats, beatType] = token.slice(5).split('/').map(Number) as [number, number];
    if (!(beats > 0 && beatType > 0)) throw unread(token);
    this.place();
    [this.beats, this.beatType] = [beats, beatType];
  }

  private takeKey(token: string): void {
    this.transposition = transpositionNamed(token.slice(3));
  }

  private takeRest(durationQuarters: number): void {
    if (this.chord) throw new RangeError('a rest stands in a chord: write ] before it');
    const { onsetQuarters, staff } = this.place();
    this.rests.push({ onsetQuarters, durationQuarters, staff, voice: this.voice });
    this.onset += durationQuarters;
  }

  private takeNote(token: string): void {
    const [, before = '', grace, pitch, additions = '', behind = ''] = NOTE.exec(token) ?? [];
    if (pitch === undefined) throw unread(token);
    if (before.indexOf('[') >= 0) this.chord = [];
    const added = additions.match(ADDITION) ?? [];
    const lengths = added.filter((one) => one[0] === '/');
    const signs = added.filter((one) => SIGNS.has(one));
    const joins = added.filter((one) => JOINS.has(one));
    const fingerings = added.filter((one) => one[0] === '<');
    if (lengths.length > 1 || fingerings.length > 1 || signs.length > 1 || joins.length > 1)
      throw unread(token);
    const draft: Draft = {
      ...this.place(),
      index: this.drafts.length,
      durationQuarters: grace ? 0 : quarters(lengths[0] ?? '/1'),
      grace: grace !== undefined,
      voice: this.voice,
      chordRank: this.chord ? this.chord.length : 0,
      chordHead: 0,
      written: readPitch(pitch, token),
      transposition: this.transposition,
      clef: this.clef,
      sign: signs.length > 0 ? SIGNS.get(signs[0]!)! : null,
      fingering: fingerings.length > 0 ? fingerings[0]!.slice(1, -1) : null,
      joins: [],
      userColour: false,
    };
    this.drafts.push(draft);
    this.join(draft);
    if (joins.length > 0) this.joins.push({ kind: JOINS.get(joins[0]!)!, from: draft });
    for (const bracket of before) if (bracket === '(') this.slurs.push(draft);
    for (const bracket of behind) if (bracket === ')') this.endSlur(draft, token);
    if (this.chord) this.chord.push(draft);
    if (behind.indexOf(']') >= 0) this.chord = null;
    if (!this.chord) this.onset += draft.durationQuarters;
  }

  /** Joins that were begun in the same voice, staff and place of a chord lead to this note. */
  private join(to: Draft): void {
    for (let i = this.joins.length - 1; i >= 0; i--) {
      const { kind, from } = this.joins[i]!;
      if (from.voice !== to.voice || from.staff !== to.staff || from.chordRank !== to.chordRank) continue;
      from.joins.push({ kind, to });
      this.joins.splice(i, 1);
    }
  }

  private endSlur(to: Draft, token: string): void {
    const from = this.slurs.pop();
    if (!from) throw new RangeError(`"${token}" ends a slur that never began: write ( before its first note`);
    from.joins.push({ kind: 'slur', to });
  }
}

/** Thirds of a quarter add up to a bar but for this. */
const ROUNDING = 1e-6;

function quarters(length: string): number {
  const [count, parts = '1'] = length.slice(1).split('/');
  const duration = Number(count) / Number(parts);
  if (duration === 0) throw new RangeError(`"${length}" is no length: write one above 0, such as /2 or /0.5`);
  return duration;
}

function readPitch(name: string, token: string): Pitch {
  try {
    return parsePitch(name);
  } catch (_) {
    throw unread(token);
  }
}

function transpositionNamed(key: string): Transposition | null {
  if (key === '?') return null;
  if (key === 'concert') return { chromatic: 0, diatonic: 0, octaveChange: 0 };
  const crook = crookFromName(`Horn in ${key}`);
  if (!crook.ok)
    throw new RangeError(
      `"in:${key}" is no key: write one such as in:Eb, in:Bb-basso or in:concert, or in:?`,
    );
  return crook.transposition;
}

function unread(token: string): RangeError {
  return new RangeError(
    `cannot read "${token}": write notes such as C5+ or Bb4/2, rests such as r/4, words in quotes`,
  );
}
