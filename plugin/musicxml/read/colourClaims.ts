/** Colours that earlier marks of ours gave, found again whatever an editor did to the notes and marks since. */
import { isPainted, ownColours, stemColours } from './ownColours.ts';
import { headOf, type ReadNote } from './readNote.ts';
import type { Span } from './score.ts';

/** What a mark of ours says of a colour: the note of this rank, in the first coloured chord after it at its onset, has it from us. */
export interface ColourClaim {
  readonly offset: number;
  readonly staff: number;
  readonly voice: string | null;
  readonly onsetQuarters: number;
  readonly rank: number;
}

/** A coloured note that the player does not play: hidden, a cue, a rest or another instrument's since it was marked. */
export interface UnplayedNote {
  /** Its `<` in the text. */
  readonly start: number;
  readonly staff: number;
  readonly onsetQuarters: number;
}

/** A note of the measure that has a colour of ours. */
interface Coloured extends UnplayedNote {
  /** `null` for one that is not played. */
  readonly read: ReadNote | null;
  readonly colours: readonly Span[];
}

/** True when a claim may be for a note. @param next the chord that follows the mark in the text */
type Match = (claim: ColourClaim, coloured: Coloured, next: ReadNote | null) => boolean;

const isAtOnset: Match = (claim, { onsetQuarters }) => Math.abs(onsetQuarters - claim.onsetQuarters) < 1e-6;

const isSamePlace: Match = (claim, { read }) =>
  read !== null &&
  read.note.chordRank === claim.rank &&
  read.note.staff === claim.staff &&
  (claim.voice === null || read.note.voice === claim.voice) &&
  headOf(read).start >= claim.offset;

/**
 * Whose a claim is, the surest first: its own chord's, wherever no editor came between; a note's at the same time; one
 * whose place in its chord, voice or staff changed, or that is no longer played; and one from which the mark was moved.
 */
const MATCHES: readonly Match[] = [
  (claim, coloured, next) =>
    isSamePlace(claim, coloured, next) && next !== null && headOf(coloured.read!) === next,
  (claim, coloured, next) => isSamePlace(claim, coloured, next) && isAtOnset(claim, coloured, next),
  isAtOnset,
  (claim, { staff }) => staff === claim.staff,
];

/**
 * Settles the claims of one measure: takes our colours off the notes as read. Each claim takes one note at most; what
 * only we paint is taken without one.
 * @param claims in the order of the text
 * @param notes the notes of the measure in the order of the text
 * @param unplayed in the order of the text
 * @returns where the colours stand in the text
 */
export function settleClaims(
  claims: readonly ColourClaim[],
  notes: readonly ReadNote[],
  unplayed: readonly UnplayedNote[],
  text: string,
): readonly Span[] {
  const spans = new Map<number, Span>();
  let coloured = colouredOf(notes, unplayed, text);
  let open = claims;
  for (const isMatch of MATCHES) {
    open = open.filter((claim) => {
      const next = notes.filter(({ start }) => start >= claim.offset)[0];
      const found = nearest(
        coloured.filter((one) => isMatch(claim, one, next ? headOf(next) : null)),
        claim,
      );
      if (!found) return true;
      coloured = coloured.filter((one) => one !== found);
      for (const span of takenFrom(found, text)) spans.set(span.start, span);
      return false;
    });
  }
  for (const one of coloured) {
    if (ownColours(text, one.start, isPainted).length === 0) continue;
    for (const span of takenFrom(one, text)) spans.set(span.start, span);
  }
  return Array.from(spans.values());
}

function colouredOf(
  notes: readonly ReadNote[],
  unplayed: readonly UnplayedNote[],
  text: string,
): readonly Coloured[] {
  const played = notes
    .filter(({ note }) => note.userColour)
    .map((read) => ({
      start: read.start,
      staff: read.note.staff,
      onsetQuarters: read.note.onsetQuarters,
      read,
    }));
  return [...played, ...unplayed.map((note) => ({ ...note, read: null }))]
    .map((note) => ({ ...note, colours: ownColours(text, note.start) }))
    .filter(({ colours }) => colours.length > 0)
    .sort((a, b) => a.start - b.start);
}

/** The first of those that are nearest in time. */
function nearest(coloured: readonly Coloured[], { onsetQuarters }: ColourClaim): Coloured | null {
  let best: Coloured | null = null;
  const distance = (one: Coloured) => Math.abs(one.onsetQuarters - onsetQuarters);
  for (const one of coloured) if (!best || distance(one) < distance(best) - 1e-6) best = one;
  return best;
}

/** Takes our colour off a note. @returns where it stands, at the stem of its chord as well */
function takenFrom({ read, start, colours }: Coloured, text: string): readonly Span[] {
  let chord = [start];
  if (read) {
    read.hasColour = false;
    read.note.userColour = false;
    const head = headOf(read);
    chord = (head.members ?? [head]).map((member) => member.start);
  }
  return colours.concat(...chord.map((member) => stemColours(text, member)));
}
