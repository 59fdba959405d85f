/** A passage made from the host's score, and from what is known of its signs and lines. */

import type { Pieces, Pitch, Transposition } from '../../core/index.ts';
import type { OpenNote } from '../musicxml/read/joins.ts';
import { addToChord, type ReadNote, settleChord } from '../musicxml/read/readNote.ts';
import { fingeringOf } from './fingeringsInScore.ts';
import { type Host, type HostNote, TICKS_PER_QUARTER } from './hostApi.ts';
import { joinNotes } from './joinsInScore.ts';
import { userColoured } from './ownMarks.ts';
import { type OctaveLine, type PartEvidence, signAt } from './partEvidence.ts';
import { beatAt, type Length, lengthsIn, measureNumbers, staffOf } from './placesInPart.ts';
import { fromBottom, isPlayers, restsOf, withoutCue } from './playersNotes.ts';
import type { ReadPart } from './readPart.ts';
import type { PartWalk, ScoreChord } from './scoreWalk.ts';
import { clefOf, isIntervalOf, notatedPitch, statedTransposition, transpositionOf } from './spelling.ts';
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
  const numbers = measureNumbers(walk.measures);
  const coloured = userColoured(host, walk);
  const lengthOf = lengthsIn(walk);
  const name = partName(walk);
  const kept: { readonly chord: ScoreChord; readonly players: ScoreChord }[] = [];
  const read: ReadNote[][] = [];
  for (const chord of walk.chords) {
    const players = withoutCue(chord, evidence);
    if (!isPlayers(players)) continue;
    kept.push({ chord, players });
    read.push(chordOf(host, walk, name, players, numbers, lengthOf, evidence, coloured));
    if (read.length % CHORDS_IN_A_PIECE === 0) yield;
  }
  const isLong = read.length > CHORDS_IN_A_PIECE;
  if (isLong) yield;
  const inOrder = read
    .map((notes, order) => ({ notes, order }))
    .sort((a, b) => a.notes[0]!.note.onsetQuarters - b.notes[0]!.note.onsetQuarters || a.order - b.order);
  const notes: OpenNote[] = [];
  const chordNotes: { chord: ScoreChord; note: HostNote }[] = [];
  for (const { notes: members, order } of inOrder) {
    const { chord, players } = kept[order]!;
    const head = members[0]!;
    members.forEach((member, i) => {
      member.note.index = notes.length;
      member.note.chordHead = head.note.index;
      notes.push(member.note);
      chordNotes.push({ chord, note: fromBottom(players)[i]! });
    });
  }
  if (isLong) yield;
  const chords = kept.map(({ players }) => players);
  joinNotes(host, chords, read, evidence).resolve(notes);
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

function chordOf(
  host: Host,
  walk: PartWalk,
  name: string,
  chord: ScoreChord,
  numbers: readonly string[],
  lengthOf: Length,
  evidence: PartEvidence,
  coloured: (note: HostNote) => boolean,
): ReadNote[] {
  const { measureIndex, tick, track, graceIndex } = chord;
  const measure = walk.measures[measureIndex]!;
  const sign = signAt(host, chord, evidence);
  const octaves = octavesAt(evidence.octaveLines, chord);
  const members = fromBottom(chord).map((hostNote): ReadNote => {
    const stated = transpositionStated(host, chord, hostNote, evidence);
    return {
      // A note from the host has no place in a text.
      start: 0,
      chordStart: 0,
      notationsAt: 0,
      hasColour: false,
      statesVoice: false,
      statesStaff: false,
      note: {
        index: 0,
        measureIndex,
        measure: numbers[measureIndex]!,
        beat: beatAt(measure, tick),
        onsetQuarters: tick / TICKS_PER_QUARTER,
        durationQuarters: graceIndex === null ? lengthOf(chord) : 0,
        grace: graceIndex !== null,
        staff: staffOf(walk, track),
        voice: String((track % 4) + 1),
        chordRank: 0,
        chordHead: 0,
        written: raised(notatedPitch(hostNote, name, stated), octaves),
        transposition: stated ?? transpositionOf(hostNote, name),
        clef: clefOf(hostNote),
        sign,
        fingering: fingeringOf(host.root, hostNote),
        joins: [],
        userColour: coloured(hostNote),
      },
      head: null,
      members: null,
      ownSign: sign,
    };
  });
  const head = members[0]!;
  for (const member of members.slice(1)) addToChord(head, member);
  settleChord(head);
  return members;
}

/** Written to sounding, where the host states it with its octave. */
function transpositionStated(
  { root }: Host,
  { tick }: ScoreChord,
  note: HostNote,
  { interval }: PartEvidence,
): Transposition | null {
  const { staff } = note;
  if (staff && root.fractionFromTicks)
    return statedTransposition(staff.transpose(root.fractionFromTicks(tick)));
  // A player may have changed instruments.
  return interval && isIntervalOf(note, interval) ? statedTransposition(interval) : null;
}

function octavesAt(lines: readonly OctaveLine[], { tick, track }: ScoreChord): number {
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
