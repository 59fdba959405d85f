/** The notes around a place, as a passage of their own: what a change there can be tried on without the whole part. */
import type { Passage, PassageNote, PassageRest } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import { soundingCents } from '../pitch/pitch.ts';
import { type Examination, examine } from '../rules/examine.ts';

/** So many notes on either side: further off, one note's fingering does not reach another's. A choice. */
const NOTES_AROUND = 16;

/** So many where words rule, which hold on until others come: minutes of music. A choice. */
const NOTES_UNDER_WORDS = 250;

/** A stretch of a part, examined by itself. */
export interface Stretch {
  readonly examination: Examination;
  /** The first note's place in the whole part. */
  readonly firstIndex: number;
  /** True where only a few notes on either side belong to it. */
  readonly isNear: boolean;
}

/** What surrounds the notes that one finding's repairs touch. */
export interface Surroundings {
  /** A few notes on either side; `null` where a word holds among them, or where that is the whole part. */
  near(noteIndexes: readonly number[]): Stretch | null;
  /** So many on either side that a change of words can do nothing beyond; all of a short part. */
  far(noteIndexes: readonly number[]): Stretch;
}

/** The surroundings in a part. Each stretch is examined once: the repairs of a finding mostly touch the same notes. */
export function surroundingsIn(whole: Examination): Surroundings {
  const { notes, passage } = whole;
  const known = new Map<number, Stretch>();

  /** Whole chords. @returns the first, and the place past the last */
  const around = (noteIndexes: readonly number[], count: number): readonly [number, number] => {
    const first = Math.max(0, Math.min(...noteIndexes) - count);
    let to = Math.min(notes.length, Math.max(...noteIndexes) + count + 1);
    while (to < notes.length && notes[to]!.note.chordHead < to) to += 1;
    return [notes[first]!.note.chordHead, to];
  };

  const examined = (from: number, to: number, isNear: boolean): Stretch => {
    const key = from * notes.length + to;
    const stretch = known.get(key) ?? {
      examination: examine(cut(passage, from, to, isNear), settingsIn(whole, from, to)),
      firstIndex: from,
      isNear,
    };
    known.set(key, stretch);
    return stretch;
  };

  return {
    near(noteIndexes) {
      const [from, to] = around(noteIndexes, NOTES_AROUND);
      if (to - from === notes.length) return null;
      for (let i = from; i < to; i++) {
        const { note, reading, own } = notes[i]!;
        const isTypedSign = reading.from === 'sign' && !note.sign;
        if (own?.isWord || reading.word || reading.lapsed || isTypedSign) return null;
      }
      return examined(from, to, true);
    },
    far(noteIndexes) {
      const [from, to] = around(noteIndexes, NOTES_UNDER_WORDS);
      return to - from === notes.length
        ? { examination: whole, firstIndex: 0, isNear: false }
        : examined(from, to, false);
    },
  };
}

/** Notes in the bass clef are meant as they are in the whole part. */
function settingsIn({ notes, settings }: Examination, from: number, to: number): Settings {
  for (let i = from; i < to && settings.bassClef === 'auto'; i++) {
    const { note, soundingCents: cents } = notes[i]!;
    if (note.clef !== 'bass' || !note.transposition) continue;
    const isOld = cents !== soundingCents(note.written, note.transposition);
    return { ...settings, bassClef: isOld ? 'old' : 'new' };
  }
  return settings;
}

/** The stretch as a passage. Of the words those before it stay too: they may hold on into it. */
function cut(passage: Passage, from: number, to: number, isNear: boolean): Passage {
  const start = passage.notes[from]!.onsetQuarters;
  const end = passage.notes[to - 1]!.onsetQuarters;
  const rests = restsInOrder(passage);
  return {
    ...passage,
    notes: passage.notes.slice(from, to).map(
      (note): PassageNote => ({
        ...note,
        index: note.index - from,
        chordHead: note.chordHead - from,
        joins: note.joins.filter((join) => join.to < to).map((join) => ({ ...join, to: join.to - from })),
      }),
    ),
    words: isNear ? [] : passage.words.filter(({ onsetQuarters }) => onsetQuarters <= end),
    rests: rests.slice(
      firstWhere(rests, ({ onsetQuarters }) => onsetQuarters >= start),
      firstWhere(rests, ({ onsetQuarters }) => onsetQuarters > end),
    ),
  };
}

/** The rests of a whole part by onset, which a passage need not have them in; a part is cut for each of its findings. */
function restsInOrder(passage: Passage): readonly PassageRest[] {
  const known = RESTS.get(passage);
  if (known) return known;
  const rests = passage.rests.slice().sort((a, b) => a.onsetQuarters - b.onsetQuarters);
  RESTS.set(passage, rests);
  return rests;
}

const RESTS = new WeakMap<Passage, readonly PassageRest[]>();

/** The place of the first item that is past some point, in a list where all behind it are too. */
function firstWhere<T>(items: readonly T[], isPast: (item: T) => boolean): number {
  let [from, to] = [0, items.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (isPast(items[middle]!)) to = middle;
    else from = middle + 1;
  }
  return from;
}
