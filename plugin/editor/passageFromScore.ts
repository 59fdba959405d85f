/** A passage made from the host's score itself, where its plugin interface tells enough: 3.5 and later. */

import {
  type HandSign,
  isOurMark,
  type PassageRest,
  type PassageTempo,
  type PassageWord,
  type Pitch,
  type Transposition,
} from '../../core/index.ts';
import { Joins, type OpenNote } from '../musicxml/read/joins.ts';
import { addToChord, type ReadNote, settleChord } from '../musicxml/read/readNote.ts';
import type { Host, HostNote } from './hostApi.ts';
import { TICKS_PER_QUARTER } from './hostApi.ts';
import { plainText, userColoured } from './ownMarks.ts';
import type { ReadPart } from './readPart.ts';
import type { PartWalk, ScoreChord, ScoreMeasure, ScoreRest } from './scoreWalk.ts';
import { clefOf, notatedPitch, transpositionOf } from './spelling.ts';

/** What a version's interface tells of signs and lines, however it tells it. */
export interface Evidence {
  signOf(chord: ScoreChord): HandSign | null;
  /** Written to sounding, where the host states it with its octave. */
  transpositionOf?(chord: ScoreChord, note: HostNote): Transposition | null;
  /** True where a glissando begins that leads to the next note of the voice. */
  startsGlissando(chord: ScoreChord, note: HostNote): boolean;
  readonly slurs: readonly Slur[];
  readonly octaveLines: readonly OctaveLine[];
}

/** A line over a staff under which notes sound octaves from where they are printed; `toTick` is excluded. */
export interface OctaveLine {
  readonly fromTick: number;
  readonly toTick: number;
  readonly track: number;
  /** 1 for 8va, −1 for 8vb, … */
  readonly octaves: number;
}

/** From the chord at one place to the chord at another. */
export interface Slur {
  readonly fromTick: number;
  readonly fromTrack: number;
  readonly toTick: number;
  readonly toTrack: number;
}

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
export function passageFromScore(host: Host, walk: PartWalk, evidence: Evidence): ReadPart {
  const numbers = measureNumbers(walk.measures);
  const coloured = userColoured(host, walk);
  const lengthOf = lengthsIn(walk);
  const chords = walk.chords.filter(isPlayers);
  const read = chords.map((chord) => chordOf(walk, chord, numbers, lengthOf, evidence, coloured));
  const inOrder = read
    .map((notes, order) => ({ notes, order }))
    .sort((a, b) => a.notes[0]!.note.onsetQuarters - b.notes[0]!.note.onsetQuarters || a.order - b.order);
  const notes: OpenNote[] = [];
  const places: { chord: ScoreChord; note: HostNote }[] = [];
  for (const { notes: members, order } of inOrder) {
    const chord = chords[order]!;
    const head = members[0]!;
    members.forEach((member, i) => {
      member.note.index = notes.length;
      member.note.chordHead = head.note.index;
      notes.push(member.note);
      places.push({ chord, note: fromBottom(chord)[i]! });
    });
  }
  joinNotes(chords, read, evidence).resolve(notes);
  return {
    passage: {
      name: partName(walk),
      notes,
      words: wordsOf(host, walk, numbers),
      tempos: temposOf(host, walk),
      rests: restsOf(walk, lengthOf),
    },
    walk,
    places,
  };
}

function chordOf(
  walk: PartWalk,
  chord: ScoreChord,
  numbers: readonly string[],
  lengthOf: Length,
  evidence: Evidence,
  coloured: (note: HostNote) => boolean,
): ReadNote[] {
  const { measureIndex, tick, track, graceIndex } = chord;
  const measure = walk.measures[measureIndex]!;
  const sign = evidence.signOf(chord);
  const octaves = octavesAt(evidence.octaveLines, chord);
  const members = fromBottom(chord).map((hostNote): ReadNote => {
    const stated = evidence.transpositionOf?.(chord, hostNote) ?? null;
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
function joinNotes(chords: readonly ScoreChord[], read: readonly ReadNote[][], evidence: Evidence): Joins {
  const joins = new Joins();
  const glissandi = new Set<string>();
  read.forEach((members, i) => {
    const chord = chords[i]!;
    const voice = `${chord.track}`;
    const slurEnds = chord.graceIndex === null ? slurEndsAt(evidence.slurs, chord) : [];
    members.forEach((member, rank) => {
      const hostNote = fromBottom(chord)[rank]!;
      const ends = rank === 0 ? slurEnds.slice() : [];
      const label = `${voice}/${rank}`;
      if (glissandi.delete(label))
        ends.push({ kind: 'glissando' as const, isStart: false, label: `glissando ${label}` });
      if (evidence.startsGlissando(chord, hostNote)) {
        glissandi.add(label);
        ends.push({ kind: 'glissando', isStart: true, label: `glissando ${label}` });
      }
      const isTied = Boolean(hostNote.tieForward);
      joins.take(member.note, ends, isTied, isTiedInto(hostNote), false);
    });
  });
  return joins;
}

function slurEndsAt(slurs: readonly Slur[], { tick, track }: ScoreChord) {
  const ends: { kind: 'slur' | 'glissando'; isStart: boolean; label: string }[] = [];
  slurs.forEach(({ fromTick, fromTrack, toTick, toTrack }, i) => {
    if (toTick === tick && toTrack === track) ends.push({ kind: 'slur', isStart: false, label: `slur ${i}` });
    if (fromTick === tick && fromTrack === track)
      ends.push({ kind: 'slur', isStart: true, label: `slur ${i}` });
  });
  return ends;
}

function isTiedInto(note: HostNote): boolean {
  return Boolean(note.tieBack);
}

function wordsOf({ root }: Host, walk: PartWalk, numbers: readonly string[]): PassageWord[] {
  const { STAFF_TEXT, SYSTEM_TEXT, EXPRESSION, PLAYTECH_ANNOTATION } = root.Element;
  const kinds = [STAFF_TEXT, SYSTEM_TEXT, EXPRESSION, PLAYTECH_ANNOTATION].filter(
    (kind) => kind !== undefined,
  );
  const words: PassageWord[] = [];
  for (const { element, measureIndex, tick, track } of walk.texts) {
    if (kinds.indexOf(element.type) < 0) continue;
    const text = plainText(element.text);
    if (isOurMark(text) || text.trim() === '') continue;
    words.push({
      text: text.replace(/\s+/g, ' ').trim(),
      measureIndex,
      measure: numbers[measureIndex]!,
      beat: beatAt(walk.measures[measureIndex]!, tick),
      onsetQuarters: tick / TICKS_PER_QUARTER,
      staff: staffOf(walk, track),
      voice: null,
    });
  }
  return words;
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

function isPlayers({ notes }: ScoreChord): boolean {
  return notes.length > 0;
}

/** Rests, and chords of which nothing is the player's. */
function restsOf(walk: PartWalk, lengthOf: Length): PassageRest[] {
  const silent = walk.chords.filter((chord) => !isPlayers(chord) && chord.graceIndex === null);
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
