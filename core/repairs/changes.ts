/** The changes that repairs are made of, each with everything that has to change with it. */
import { isHandState } from '../part/handStates.ts';
import {
  HAND_SIGNS,
  type HandSign,
  type JoinKind,
  lineNameOf,
  type Passage,
  type PassageNote,
} from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Fingering, HandState } from '../stopping/fingering.ts';
import { muteWord } from './partWords.ts';
import type { Repair, RepairKind, RepairStep } from './repair.ts';

type Notes = readonly ExaminedNote[];

/** Writes another note, and what is tied to it along with it. */
export function writtenAs(kind: RepairKind, notes: Notes, noteIndex: number, written: Pitch): Repair {
  const steps = tiedTogether(notes, noteIndex).map(
    (index): RepairStep => ({ change: 'note', noteIndex: index, written }),
  );
  return { kind, steps };
}

/** The note an octave higher or lower. */
export function octaveAway(notes: Notes, noteIndex: number, octaves: 1 | -1): Repair {
  const { written } = notes[noteIndex]!.note;
  const moved = { ...written, octave: written.octave + octaves };
  return writtenAs(octaves > 0 ? 'octave-up' : 'octave-down', notes, noteIndex, moved);
}

/** Takes out the lines that lead by some kinds from one note to another. @returns none when there are none */
export function unjoined(notes: Notes, from: number, to: number, kinds: readonly JoinKind[]): Repair[] {
  const steps = notes[from]!.note.joins.filter((join) => join.to === to && kinds.indexOf(join.kind) >= 0).map(
    ({ kind }): RepairStep => ({ change: 'join', noteIndex: from, toIndex: to, kind }),
  );
  return steps.length > 0 ? [{ kind: kinds[0] === 'tie' ? 'tie-broken' : 'line-removed', steps }] : [];
}

/** Takes out the slurs under which both of two neighbours stand. @returns none when there are none */
export function unslurred(notes: Notes, from: number, to: number): Repair[] {
  const { staff, voice } = notes[from]!.note;
  const reach = slurReach(notes);
  const end = notes[to]!.note.chordHead;
  const steps: RepairStep[] = [];
  let first = from + 1;
  while (first > 0 && reach[first - 1]! >= end) first -= 1;
  for (const { note } of notes.slice(first, from + 1)) {
    if (note.staff !== staff || note.voice !== voice) continue;
    for (const join of note.joins)
      if (join.kind === 'slur' && join.to >= end)
        steps.push({ change: 'join', noteIndex: note.index, toIndex: join.to, kind: 'slur' });
  }
  return steps.length > 0 ? [{ kind: 'slur-removed', steps }] : [];
}

/** How far the slurs reach that begin at a note or before it, by note index; a part is asked for each of its findings. */
function slurReach(notes: Notes): readonly number[] {
  const known = SLUR_REACH.get(notes);
  if (known) return known;
  let furthest = -1;
  const reach = notes.map(({ note }) => {
    for (const { kind, to } of note.joins) if (kind === 'slur') furthest = Math.max(furthest, to);
    return furthest;
  });
  SLUR_REACH.set(notes, reach);
  return reach;
}

const SLUR_REACH = new WeakMap<Notes, readonly number[]>();

/** Writes a sign over a note and its chord, in place of the one that is there. */
export function signed(notes: Notes, noteIndexes: readonly number[], sign: HandSign | null): Repair {
  const steps: RepairStep[] = [];
  for (const noteIndex of noteIndexes)
    for (const index of chordOf(notes, noteIndex))
      if (!steps.some((step) => step.noteIndex === index))
        steps.push({ change: 'sign', noteIndex: index, sign });
  return { kind: sign ? 'sign-added' : 'sign-removed', steps };
}

/** Opens a closed note: its sign goes, or the sign for open stands against the word. @returns none when neither does */
export function opened(notes: Notes, noteIndex: number): Repair[] {
  const { note, reading } = notes[noteIndex]!;
  if (!isHandState(reading.state) || reading.mute === 'stopping') return [];
  const isUnderWord = reading.word !== null && isHandState(reading.word.state);
  // A sign that was typed as a word is no sign that could be taken away.
  if (reading.from === 'sign' && !note.sign) return [];
  if (reading.from === 'nothing') return [];
  return [signed(notes, [noteIndex], isUnderWord ? 'open' : null)];
}

/** Closes an open note as another one is closed, by its sign. @returns none where no sign says that */
export function closed(notes: Notes, noteIndex: number, state: HandState): Repair[] {
  const sign = HAND_SIGNS.filter((one) => one === state && one !== 'open')[0];
  return sign && !isHandState(notes[noteIndex]!.reading.state) ? [signed(notes, [noteIndex], sign)] : [];
}

/** Most of other fingerings that are offered. */
const MOST_FINGERINGS = 2;

/** Plays a note on other fingerings that are sure, the player's first choices first, each written over it. */
export function surer(notes: Notes, noteIndex: number): Repair[] {
  const { fingering, candidates } = notes[noteIndex]!;
  return candidates
    .filter((other) => other !== fingering && other.verdict === 'sure')
    .slice(0, MOST_FINGERINGS)
    .map((other) => fingered(notes, noteIndex, other));
}

/** Writes a fingering over a note in place of the one that stands there. */
export function fingered(notes: Notes, noteIndex: number, fingering: Fingering | null): Repair {
  const before = notes[noteIndex]!.own;
  return {
    kind: fingering ? 'fingering-taken' : 'fingering-removed',
    steps: [{ change: 'fingering', noteIndex, fingering, before }],
  };
}

/** Takes away the fingerings that are printed over some notes, each by itself and all together. */
export function unfingered(notes: Notes, noteIndexes: readonly number[]): Repair[] {
  const own = noteIndexes.filter((index) => notes[index]!.own);
  const each = own.map((index) => fingered(notes, index, null));
  if (each.length < 2) return each;
  return each.concat({
    kind: 'fingering-removed',
    steps: ([] as RepairStep[]).concat(...each.map(({ steps }) => steps)),
  });
}

/** Writes one word over a note. */
export function worded(kind: RepairKind, noteIndex: number, text: string): Repair {
  return { kind, steps: [{ change: 'word', noteIndex, text }] };
}

/** Asks for a stopping mute at one note, and for what was there before from the player's next note on. */
export function underStoppingMute(passage: Passage, notes: Notes, noteIndex: number): Repair[] {
  const { note, reading } = notes[noteIndex]!;
  if (reading.state === 'stopping-mute' || reading.mute === 'stopping') return [];
  const steps: RepairStep[] = [{ change: 'word', noteIndex, text: muteWord(passage, 'stopping-mute') }];
  const next = nextOnset(notes, note);
  if (next) {
    const after = muteWord(passage, reading.mute === 'straight' ? 'straight-mute' : 'mute-out');
    // A mute takes the hand out: a word that held has to be said again.
    const held = next.reading.word;
    const text = held && isHandState(held.state) ? `${after}, ${held.text}` : after;
    steps.push({ change: 'word', noteIndex: next.note.index, text });
  }
  return [{ kind: 'stopping-mute', steps }];
}

/** The player's next note, `null` at the end of the line. */
function nextOnset(notes: Notes, before: PassageNote): ExaminedNote | null {
  const line = lineNameOf(before);
  for (let i = before.index + 1; i < notes.length; i++) {
    const { note } = notes[i]!;
    if (note.onsetQuarters > before.onsetQuarters && lineNameOf(note) === line) return notes[i]!;
  }
  return null;
}

/** The note and every note tied to it, before and after. */
function tiedTogether(notes: Notes, noteIndex: number): number[] {
  const line = lineNameOf(notes[noteIndex]!.note);
  const chain = [noteIndex];
  for (let index = noteIndex - 1; index >= 0; index--) {
    const { note } = notes[index]!;
    if (lineNameOf(note) !== line) continue;
    if (!note.joins.some(({ kind, to }) => kind === 'tie' && to === chain[0])) break;
    chain.unshift(index);
  }
  for (let last = noteIndex; ; ) {
    const tie = notes[last]!.note.joins.filter(({ kind, to }) => kind === 'tie' && to > last)[0];
    if (!tie) return chain;
    last = tie.to;
    chain.push(last);
  }
}

function chordOf(notes: Notes, noteIndex: number): number[] {
  const head = notes[noteIndex]!.note.chordHead;
  const chord: number[] = [];
  for (let index = head; index < notes.length && notes[index]!.note.chordHead === head; index++)
    chord.push(index);
  return chord;
}
