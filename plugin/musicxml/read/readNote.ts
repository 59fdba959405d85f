/** Notes while their part is being read: chords, signs that rule a chord, and colours that earlier marks of ours gave. */
import { type HandSign, pitchCents } from '../../../core/index.ts';
import type { OpenNote } from './joins.ts';
import type { NoteInText } from './notesInText.ts';
import { ownColours } from './ownColours.ts';
import type { Span } from './score.ts';

/** A note of a part that is still being read. */
export interface ReadNote extends NoteInText {
  readonly note: OpenNote;
  hasColour: boolean;
  /** The first printed note of its chord, or `null` when it is that note itself. */
  head: ReadNote | null;
  /** Of a head: every note of the chord, by rank once it is settled, or `null` when single. */
  members: ReadNote[] | null;
  /** The sign printed at this very note. */
  readonly ownSign: HandSign | null;
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
  head.members = members
    .map((member, order) => ({ member, order, cents: pitchCents(member.note.written) }))
    .sort((a, b) => b.cents - a.cents || a.order - b.order)
    .map(({ member }, rank) => {
      member.note.chordRank = rank;
      return member;
    });
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
    if (first === notes.length) break;
    // The chord that follows the mark in the text, which is its own wherever no editor came between.
    const next = headOf(notes[first]!);
    const own = memberAt(next, claim.rank);
    if (own && isOurs(own, claim, spans, text)) continue;
    for (let i = first; i < notes.length; i++) {
      const isThere = Math.abs(notes[i]!.note.onsetQuarters - claim.onsetQuarters) < 1e-6;
      if (isThere && isOurs(notes[i]!, claim, spans, text)) break;
    }
  }
  return spans;
}

/** Takes our colour off a note if this claim is for it. @returns true when it was */
function isOurs(read: ReadNote, claim: ColourClaim, spans: Span[], text: string): boolean {
  const { note } = read;
  if (
    !note.userColour ||
    note.chordRank !== claim.rank ||
    note.staff !== claim.staff ||
    (claim.voice !== null && note.voice !== claim.voice) ||
    headOf(read).start < claim.offset
  )
    return false;
  const found = ownColours(text, read.start);
  if (found.length === 0) return false;
  spans.push(...found);
  read.hasColour = false;
  note.userColour = false;
  return true;
}

/** The note of a settled chord that has this rank, from 0 at the top. */
function memberAt(head: ReadNote, rank: number): ReadNote | null {
  return head.members ? (head.members[rank] ?? null) : rank === 0 ? head : null;
}
