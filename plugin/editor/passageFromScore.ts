/** A passage made from the host's score, and from what is known of its signs and lines. */

import type { HandSign, Pieces, Pitch } from '../../core/index.ts';
import type { OpenNote } from '../musicxml/read/joins.ts';
import { rankedFromTop } from '../musicxml/read/readNote.ts';
import { type Host, TICKS_PER_QUARTER } from './hostApi.ts';
import { JoinsInScore } from './joinsInScore.ts';
import { userColoured } from './ownMarks.ts';
import { type OctaveLine, type PartEvidence, signAt } from './partEvidence.ts';
import { beatAt, type Length, lengthsIn, measureNumbers, staffOf } from './placesInPart.ts';
import { fromBottom, isPlayers, restsOf, withoutCue } from './playersNotes.ts';
import type { ChordNote, ReadPart } from './readPart.ts';
import type { ScoreChord, ScoreNote } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';
import { Spelling } from './spelling.ts';
import { temposOf, wordsOf } from './wordsInScore.ts';

/** So many chords are read at a time; a part with fewer is read in one piece. */
const CHORDS_IN_A_PIECE = 40;

/** The passage of one part, in playing order. */
export function passageFromScore(host: Host, walk: PartWalk, evidence: PartEvidence): ReadPart {
  const pieces = passageInPieces(host, walk, evidence);
  for (;;) {
    const { done, value } = pieces.next();
    if (done) return value;
  }
}

/** The same in pieces of a few milliseconds: of copies, which stay as they are meanwhile. */
export function* passageInPieces(host: Host, walk: PartWalk, evidence: PartEvidence): Pieces<ReadPart> {
  const name = partName(walk);
  const numbers = measureNumbers(walk.measures);
  const lengthOf = lengthsIn(walk);
  const reader = new ChordReader(host, walk, evidence, numbers, lengthOf, name);
  const joins = new JoinsInScore(evidence);
  const notes: OpenNote[] = [];
  const chordNotes: ChordNote[] = [];
  let inPiece = 0;
  // Bar by bar: to the editor's engine a list of all that is read is dear, and one that grows dearer still.
  for (const { chords } of walk.bars) {
    for (const { chord, played, players, members } of reader.readBar(chords)) {
      const chordHead = notes.length;
      members.forEach((note, i) => {
        note.index = notes.length;
        note.chordHead = chordHead;
        notes.push(note);
        chordNotes.push({ chord, note: players[i]! });
      });
      joins.take(played, members);
    }
    inPiece += chords.length;
    if (inPiece >= CHORDS_IN_A_PIECE) {
      yield;
      inPiece = 0;
    }
  }
  const isLong = notes.length > CHORDS_IN_A_PIECE;
  joins.resolve(notes);
  if (isLong) yield;
  return {
    passage: {
      name,
      notes,
      words: wordsOf(host, walk, numbers, evidence),
      tempos: temposOf(host, walk),
      rests: restsOf(walk, lengthOf, evidence),
    },
    walk,
    chordNotes,
  };
}

/** A chord with those of its notes that are the player's, from the bottom, and the same as a passage has them. */
interface ReadChord {
  readonly chord: ScoreChord;
  /** The same without cues. */
  readonly played: ScoreChord;
  readonly players: readonly ScoreNote[];
  readonly members: readonly OpenNote[];
}

class ChordReader {
  private readonly walk: PartWalk;
  private readonly evidence: PartEvidence;
  private readonly numbers: readonly string[];
  private readonly lengthOf: Length;
  private readonly spelling: Spelling;
  private readonly isColoured: (note: ScoreNote) => boolean;

  constructor(
    host: Host,
    walk: PartWalk,
    evidence: PartEvidence,
    numbers: readonly string[],
    lengthOf: Length,
    name: string,
  ) {
    this.walk = walk;
    this.evidence = evidence;
    this.numbers = numbers;
    this.lengthOf = lengthOf;
    this.spelling = new Spelling(name, evidence.interval);
    this.isColoured = userColoured(host, walk);
  }

  /** The chords of one bar in playing order. */
  readBar(chords: readonly ScoreChord[]): readonly ReadChord[] {
    const read: ReadChord[] = [];
    for (const chord of chords) {
      const played = withoutCue(chord, this.evidence);
      if (!isPlayers(played)) continue;
      const players = fromBottom(played);
      read.push({ chord, played, players, members: this.membersOf(played, players) });
    }
    return read.sort((a, b) => a.chord.tick - b.chord.tick);
  }

  private membersOf(chord: ScoreChord, players: readonly ScoreNote[]): readonly OpenNote[] {
    const sign = signAt(chord, this.evidence);
    const octaves = octavesAt(this.evidence.octaveLines, chord);
    const notes = players.map((note) => this.noteOf(chord, note, sign, octaves));
    if (notes.length > 1) rankedFromTop(notes, (note) => note);
    return notes;
  }

  private noteOf(chord: ScoreChord, note: ScoreNote, sign: HandSign | null, octaves: number): OpenNote {
    const { walk, numbers } = this;
    const { measureIndex, tick, track, graceIndex } = chord;
    const { written, transposition, clef } = this.spelling.of(note);
    return {
      index: 0,
      measureIndex,
      measure: numbers[measureIndex]!,
      beat: beatAt(walk.measures[measureIndex]!, tick),
      onsetQuarters: tick / TICKS_PER_QUARTER,
      durationQuarters: graceIndex === null ? this.lengthOf(chord) : 0,
      grace: graceIndex !== null,
      staff: staffOf(walk, track),
      voice: String((track % 4) + 1),
      chordRank: 0,
      chordHead: 0,
      written: raised(written, octaves),
      transposition,
      clef,
      sign,
      fingering: note.fingering,
      joins: [],
      userColour: this.isColoured(note),
    };
  }
}

function octavesAt(lines: readonly OctaveLine[], { tick, track }: ScoreChord): number {
  if (lines.length === 0) return 0;
  const staff = Math.floor(track / 4);
  const line = lines.find(
    ({ fromTick, toTick, track: lineTrack }) =>
      fromTick <= tick && tick < toTick && Math.floor(lineTrack / 4) === staff,
  );
  return line ? line.octaves : 0;
}

function raised(pitch: Pitch, octaves: number): Pitch {
  return octaves === 0 ? pitch : { ...pitch, octave: pitch.octave + octaves };
}

function partName({ part }: PartWalk): string {
  return part.partName || part.longName || 'Horn';
}
