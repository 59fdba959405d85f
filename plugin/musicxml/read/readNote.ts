/** Notes while their part is being read: chords, and signs that rule a chord. */
import { type HandSign, pitchCents } from '../../../core/index.ts';
import type { OpenNote } from './joins.ts';
import type { NoteInText } from './notesInText.ts';

/** A note of the measure that is being read. */
export interface ReadNote extends Filled<NoteInText> {
  note: OpenNote;
  /** The first printed note of its chord, or `null` when it is that note itself. */
  head: ReadNote | null;
  /** Of a head: every note of the chord, by rank once it is settled, or `null` when single. */
  members: ReadNote[] | null;
  /** The sign printed at this very note. */
  ownSign: HandSign | null;
}

type Filled<T> = { -readonly [field in keyof T]: T[field] };

/** The notes of one measure, whose objects serve the next measure again: a part has many notes, and needs each of them only so long. */
export class MeasureNotes {
  /** In the order of the text. */
  readonly all: ReadNote[] = [];
  private readonly kept: ReadNote[] = [];

  /** Takes a note, all of whose other fields are to be filled. */
  add(note: OpenNote): ReadNote {
    const read = this.kept[this.all.length] ?? emptyNote(note);
    this.kept[this.all.length] = read;
    this.all.push(read);
    read.note = note;
    read.head = null;
    read.members = null;
    return read;
  }

  /** Makes room for the next measure. */
  clear(): void {
    this.all.length = 0;
  }
}

function emptyNote(note: OpenNote): ReadNote {
  return {
    note,
    start: 0,
    chordStart: 0,
    notationsAt: 0,
    hasColour: false,
    statesVoice: false,
    statesStaff: false,
    head: null,
    members: null,
    ownSign: null,
  };
}

/** The first printed note of a note's chord. */
export function headOf(read: ReadNote): ReadNote {
  return read.head ?? read;
}

/** Adds a note to the chord of `head`, which must be settled once it is whole. */
export function addToChord(head: ReadNote, added: ReadNote): void {
  added.head = head;
  if (head.members) head.members.push(added);
  else head.members = [head, added];
}

/**
 * Ranks the notes of a whole chord, the top note first and equal ones as printed. Signs are of single notes when several
 * notes have their own, else one is for all.
 * @param hiddenSign the sign at a note of the chord that is not printed itself
 */
export function settleChord(head: ReadNote, hiddenSign: HandSign | null = null): void {
  const members = head.members ?? [head];
  const signs = members.filter(({ ownSign }) => ownSign !== null).map(({ ownSign }) => ownSign);
  if (hiddenSign !== null) signs.push(hiddenSign);
  for (const member of members) member.note.sign = signs.length === 1 ? signs[0]! : member.ownSign;
  if (!head.members) return;
  head.members = rankedFromTop(members, ({ note }) => note);
}

/** Gives the notes of a chord their ranks. @returns its members in that order, the top note first and equal ones as they came */
export function rankedFromTop<Member>(
  members: readonly Member[],
  noteOf: (member: Member) => OpenNote,
): Member[] {
  return members
    .map((member, order) => ({ member, order, cents: pitchCents(noteOf(member).written) }))
    .sort((a, b) => b.cents - a.cents || a.order - b.order)
    .map(({ member }, rank) => {
      noteOf(member).chordRank = rank;
      return member;
    });
}
