/** A passage made from the host's score, and from what is known of its signs and lines. */

import {
  isOurMark,
  type PassageRest,
  type PassageTempo,
  type PassageWord,
  type Pitch,
  type Transposition,
} from '../../core/index.ts';
import { Joins, type OpenNote } from '../musicxml/read/joins.ts';
import type { JoinEnd } from '../musicxml/read/noteReader.ts';
import { addToChord, type ReadNote, settleChord } from '../musicxml/read/readNote.ts';
import type { Host, HostNote } from './hostApi.ts';
import { TICKS_PER_QUARTER } from './hostApi.ts';
import { plainText, userColoured } from './ownMarks.ts';
import {
  type OctaveLine,
  type PartEvidence,
  placeKey,
  type Slur,
  signAt,
  startsGlissando,
  tiesAt,
} from './partEvidence.ts';
import type { ReadPart } from './readPart.ts';
import type { PartWalk, ScoreChord, ScoreMeasure, ScoreRest } from './scoreWalk.ts';
import { clefOf, isIntervalOf, notatedPitch, statedTransposition, transpositionOf } from './spelling.ts';

/** A note from the host has no place in a text. */
const NO_PLACE = {
  start: 0,
  chordStart: 0,
  notationsAt: 0,
  hasColour: false,
  statesVoice: false,
  statesStaff: false,
};

/** The passage of one part, in playing order. */
export function passageFromScore(host: Host, walk: PartWalk, evidence: PartEvidence): ReadPart {
  const numbers = measureNumbers(walk.measures);
  const coloured = userColoured(host, walk);
  const lengthOf = lengthsIn(walk);
  const found = walk.chords.map((chord) => ({ chord, players: withoutCue(chord, evidence) }));
  const kept = found.filter(({ players }) => isPlayers(players));
  const chords = kept.map(({ players }) => players);
  const read = chords.map((chord) => chordOf(host, walk, chord, numbers, lengthOf, evidence, coloured));
  const inOrder = read
    .map((notes, order) => ({ notes, order }))
    .sort((a, b) => a.notes[0]!.note.onsetQuarters - b.notes[0]!.note.onsetQuarters || a.order - b.order);
  const notes: OpenNote[] = [];
  const places: { chord: ScoreChord; note: HostNote }[] = [];
  for (const { notes: members, order } of inOrder) {
    const { chord, players } = kept[order]!;
    const head = members[0]!;
    members.forEach((member, i) => {
      member.note.index = notes.length;
      member.note.chordHead = head.note.index;
      notes.push(member.note);
      places.push({ chord, note: fromBottom(players)[i]! });
    });
  }
  joinNotes(host, chords, read, evidence).resolve(notes);
  return {
    passage: {
      name: partName(walk),
      notes,
      words: wordsOf(host, walk, numbers, evidence),
      tempos: temposOf(host, walk),
      rests: restsOf(walk, lengthOf, evidence),
    },
    walk,
    places,
  };
}

function chordOf(
  host: Host,
  walk: PartWalk,
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
      ...NO_PLACE,
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
        written: raised(notatedPitch(hostNote, partName(walk), stated), octaves),
        transposition: stated ?? transpositionOf(hostNote, partName(walk)),
        clef: clefOf(hostNote),
        sign,
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

/** The notes of a chord in the order in which a file lists them, and the editor itself. */
function fromBottom({ notes }: ScoreChord): HostNote[] {
  return notes.slice().reverse();
}

/** Says of each chord what begins and ends there, in the words the reader of files uses. */
function joinNotes(
  host: Host,
  chords: readonly ScoreChord[],
  read: readonly ReadNote[][],
  evidence: PartEvidence,
): Joins {
  const joins = new Joins();
  const glissandi = new Set<string>();
  const slurs = slurEnds(evidence.slurs);
  read.forEach((members, i) => {
    const chord = chords[i]!;
    const slursHere = slurs.get(placeKey(chord.tick, chord.track, chord.graceIndex)) ?? [];
    members.forEach(({ note }, fromBelow) => {
      const rank = members.length - 1 - fromBelow;
      const ends = fromBelow === 0 ? slursHere.slice() : [];
      const label = `${chord.track}/${fromBelow}`;
      if (glissandi.delete(label))
        ends.push({ kind: 'glissando', isStart: false, label: `glissando ${label}` });
      if (startsGlissando(host, chord, rank, evidence)) {
        glissandi.add(label);
        ends.push({ kind: 'glissando', isStart: true, label: `glissando ${label}` });
      }
      const ties = tiesAt(chord, rank, evidence);
      joins.take(note, ends, ties.from, ties.into, false);
    });
  });
  return joins;
}

/** Ends before beginnings, by the place where they are. */
function slurEnds(slurs: readonly Slur[]): Map<string, JoinEnd[]> {
  const ends = new Map<string, JoinEnd[]>();
  const add = (place: string, isStart: boolean, label: string) => {
    const here = ends.get(place);
    if (here) here.push({ kind: 'slur', isStart, label });
    else ends.set(place, [{ kind: 'slur', isStart, label }]);
  };
  slurs.forEach(({ fromTick, fromTrack, fromGrace, toTick, toTrack, toGrace }, i) => {
    add(placeKey(toTick, toTrack, toGrace), false, `slur ${i}`);
    add(placeKey(fromTick, fromTrack, fromGrace), true, `slur ${i}`);
  });
  return ends;
}

function wordsOf(
  { root }: Host,
  walk: PartWalk,
  numbers: readonly string[],
  { lineWords }: PartEvidence,
): PassageWord[] {
  const { STAFF_TEXT, SYSTEM_TEXT, EXPRESSION, PLAYTECH_ANNOTATION } = root.Element;
  const kinds = [STAFF_TEXT, SYSTEM_TEXT, EXPRESSION, PLAYTECH_ANNOTATION].filter(
    (kind) => kind !== undefined,
  );
  const words: PassageWord[] = [];
  const add = (printed: string, measureIndex: number, tick: number, track: number) => {
    words.push({
      text: printed.replace(/\s+/g, ' ').trim(),
      measureIndex,
      measure: numbers[measureIndex]!,
      beat: beatAt(walk.measures[measureIndex]!, tick),
      onsetQuarters: tick / TICKS_PER_QUARTER,
      staff: staffOf(walk, track),
      voice: null,
    });
  };
  for (const { element, measureIndex, tick, track } of walk.texts) {
    if (kinds.indexOf(element.type) < 0) continue;
    const text = plainText(element.text);
    if (!isOurMark(text) && text.trim() !== '') add(text, measureIndex, tick, track);
  }
  for (const { text, tick, track } of lineWords) {
    const measureIndex = walk.measures.findIndex(({ endTick }) => tick < endTick);
    if (measureIndex >= 0) add(plainText(text), measureIndex, tick, track);
  }
  return lineWords.length > 0 ? words.sort((a, b) => a.onsetQuarters - b.onsetQuarters) : words;
}

function temposOf({ root }: Host, walk: PartWalk): PassageTempo[] {
  return walk.texts
    .filter(({ element }) => element.type === root.Element.TEMPO_TEXT && Number(element.tempo) > 0)
    .map(({ element, tick }) => ({
      onsetQuarters: tick / TICKS_PER_QUARTER,
      // The host counts quarters a second.
      quartersPerMinute: Math.round(Number(element.tempo) * 60 * 1000) / 1000,
    }));
}

/**
 * Before 3.5 a cue is a small chord that sounds like any other, and whether it has a sign, which says that it is meant
 * for this player, is seen in the score as it is written.
 */
function withoutCue(chord: ScoreChord, evidence: PartEvidence): ScoreChord {
  if (!evidence.ties || !chord.element.small || chord.graceIndex !== null) return chord;
  const isMeant = evidence.signs.has(placeKey(chord.tick, chord.track, null));
  return { ...chord, notes: isMeant ? chord.notes.slice(-1) : [] };
}

function isPlayers({ notes }: ScoreChord): boolean {
  return notes.length > 0;
}

/** Rests, and chords of which nothing is the player's. */
function restsOf(walk: PartWalk, lengthOf: Length, evidence: PartEvidence): PassageRest[] {
  const silent = walk.chords.filter(
    (chord) => !isPlayers(withoutCue(chord, evidence)) && chord.graceIndex === null,
  );
  const rests = (walk.rests as readonly ScoreRest[]).concat(silent);
  if (silent.length > 0) rests.sort((a, b) => a.tick - b.tick || a.track - b.track);
  return rests.map((rest) => ({
    onsetQuarters: rest.tick / TICKS_PER_QUARTER,
    durationQuarters: lengthOf(rest),
    staff: staffOf(walk, rest.track),
    voice: String((rest.track % 4) + 1),
  }));
}

type Length = (place: { measureIndex: number; tick: number; track: number }) => number;

/** In quarters: a chord or rest lasts until the next of its voice, or to the end of the measure, inside tuplets too. */
function lengthsIn(walk: PartWalk): Length {
  const ends = new Map<string, number>();
  const onsets = ([] as { measureIndex: number; tick: number; track: number }[])
    .concat(
      walk.chords.filter(({ graceIndex }) => graceIndex === null),
      walk.rests,
    )
    .sort((a, b) => a.track - b.track || a.tick - b.tick);
  onsets.forEach(({ measureIndex, tick, track }, i) => {
    const next = onsets[i + 1];
    const measureEnd = walk.measures[measureIndex]!.endTick;
    ends.set(`${track}/${tick}`, next?.track === track && next.tick < measureEnd ? next.tick : measureEnd);
  });
  return ({ tick, track }) => (ends.get(`${track}/${tick}`)! - tick) / TICKS_PER_QUARTER;
}

function beatAt({ tick: start, element }: ScoreMeasure, tick: number): number {
  return 1 + ((tick - start) / TICKS_PER_QUARTER) * (element.timesigActual.denominator / 4);
}

function staffOf({ part }: PartWalk, track: number): number {
  return 1 + Math.floor((track - part.startTrack) / 4);
}

function partName({ part }: PartWalk): string {
  return part.partName || part.longName || 'Horn';
}

/** Measure numbers as printed: irregular measures are not counted, a pickup is 0. */
function measureNumbers(measures: readonly ScoreMeasure[]): string[] {
  let number = 0;
  let uncounted = 0;
  return measures.map(({ element }, i) => {
    number += Number(element.noOffset) || 0;
    if (!element.irregular) {
      number += 1;
      return String(number);
    }
    if (i === 0) return '0';
    uncounted += 1;
    return `X${uncounted}`;
  });
}
