/** Notes while their part is being read: chords, signs that rule a chord, and colours that earlier marks of ours gave. */
import { type HandSign, type PassageNote, pitchCents } from '../../../core/index.ts';
import type { NotePlace } from './notePlaces.ts';
import { ownColours } from './ownColours.ts';
import type { Span } from './score.ts';

/** A note of a part that is still being read. */
export interface ReadNote extends NotePlace {
  readonly note: { -readonly [field in keyof PassageNote]: PassageNote[field] };
  hasColour: boolean;
  /** The first printed note of its chord, or `null` when it is that note itself. */
  head: ReadNote | null;
  /** Of a head: every note of the chord in the order printed, or `null` when single. */
  members: ReadNote[] | null;
  /** Of a head: the next head of its staff and voice. */
  next: ReadNote | null;
  /** The sign printed at this very note. */
  readonly ownSign: HandSign | null;
}

/** The first printed note of a note's chord. */
export function headOf(read: ReadNote): ReadNote {
  return read.head ?? read;
}

/** Adds a note to the chord of `head`: top note first in rank, one sign for all unless several have their own. */
export function addToChord(head: ReadNote, added: ReadNote): void {
  added.head = head;
  if (head.members) head.members.push(added);
  else head.members = [head, added];
  const members = head.members;
  const signed = members.filter(({ ownSign }) => ownSign !== null);
  for (const member of members) {
    const cents = pitchCents(member.note.written);
    let rank = 0;
    for (const other of members) {
      const otherCents = pitchCents(other.note.written);
      if (otherCents > cents || (otherCents === cents && members.indexOf(other) < members.indexOf(member)))
        rank += 1;
    }
    member.note.chordRank = rank;
    member.note.sign = signed.length === 1 ? signed[0]!.ownSign : member.ownSign;
  }
}

/** What a mark of ours says of a colour: the note of this rank, in the first coloured chord after it at its onset, has it from us. */
export interface ColourClaim {
  readonly offset: number;
  readonly staff: number;
  readonly voice: string | null;
  readonly onsetQuarters: number;
  readonly rank: number;
}

/**
 * Settles the claims of one measure: takes our colours off the notes as read.
 * @param claims in the order of the text
 * @param notes the notes of the measure in the order of the text
 * @returns where the colours stand in the text
 */
export function settleClaims(
  claims: readonly ColourClaim[],
  notes: readonly ReadNote[],
  text: string,
): Span[] {
  const spans: Span[] = [];
  let first = 0;
  for (const claim of claims) {
    while (first < notes.length && notes[first]!.start < claim.offset) first += 1;
    for (let i = first; i < notes.length; i++) {
      const read = notes[i]!;
      if (!isClaimed(read, claim, headOf(notes[first]!))) continue;
      const found = ownColours(text, read.start);
      if (found.length === 0) continue;
      spans.push(...found);
      read.hasColour = false;
      read.note.userColour = false;
      break;
    }
  }
  return spans;
}

/** @param next the chord that follows the mark in the text, which is its own wherever no editor came between */
function isClaimed(read: ReadNote, claim: ColourClaim, next: ReadNote): boolean {
  const { note } = read;
  const head = headOf(read);
  return (
    note.userColour &&
    head.start > claim.offset &&
    note.staff === claim.staff &&
    (claim.voice === null || note.voice === claim.voice) &&
    note.chordRank === claim.rank &&
    (head === next || Math.abs(note.onsetQuarters - claim.onsetQuarters) < 1e-6)
  );
}
