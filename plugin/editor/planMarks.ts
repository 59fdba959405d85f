/** What has to change in the score for our marks, and nothing else, to stand as they should. */
import { isLowerVoice, type Mark, markText } from '../../core/index.ts';
import type { Host, HostNote } from './hostApi.ts';
import {
  BLACK,
  claimedNotes,
  type MarkedPlace,
  markedPlaces,
  notesAt,
  plainText,
  type RankedNote,
} from './ownMarks.ts';
import { voiceOf } from './place.ts';
import type { ReadPart } from './readPart.ts';
import type { PartWalk } from './scoreWalk.ts';

/** What one place of the score is to look like. */
export interface PlannedPlace {
  readonly place: MarkedPlace;
  /** Texts as they go into the score, the nearest to the staff first. */
  readonly texts: readonly string[];
  /** The colour of each note of `notesAt(place)`; `null` leaves the user's colour, BLACK takes ours off. */
  readonly colours: readonly (string | null)[];
}

/** Where a note may be marked: places that are not in scope keep what they have. */
export type Scope = (note: HostNote) => boolean;

/** What has to change for these marks, and only these, to stand over the notes in scope. Empty when all is as it should be. */
export function planMarks(
  host: Host,
  part: ReadPart,
  marks: readonly Mark[],
  scope: Scope,
): readonly PlannedPlace[] {
  const wanted = new Map<HostNote, Mark>();
  for (const mark of marks) wanted.set(part.chordNotes[mark.noteIndex]!.note, mark);
  return planned(host, part.walk, scope, (note) => wanted.get(note) ?? null);
}

/** What has to change for no mark of ours to stand over the notes in scope. */
export function planClearing(host: Host, walk: PartWalk, scope: Scope): readonly PlannedPlace[] {
  return planned(host, walk, scope, () => null);
}

function planned(
  host: Host,
  walk: PartWalk,
  scope: Scope,
  wanted: (note: HostNote) => Mark | null,
): readonly PlannedPlace[] {
  const plans: PlannedPlace[] = [];
  for (const place of markedPlaces(walk)) {
    const notes = notesAt(place);
    if (!notes.some(({ note }) => scope(note))) continue;
    const marks = notes.map(({ note }) => wanted(note));
    if (place.marks.length === 0 && marks.every((mark) => mark === null)) continue;
    const claimed = claimedNotes(host, place);
    const texts: string[] = [];
    const colours = marks.map((mark, i) => {
      const colour = mark?.colour ?? null;
      const text = mark && markText(mark.lines, colour === null ? null : notes[i]!.rank);
      // The host stacks away from the staff: above it, what is written first comes to stand lowest.
      if (text && isLowerVoice(voiceOf(place.track))) texts.push(text);
      else if (text) texts.unshift(text);
      return colour ?? (claimed[i] ? BLACK : null);
    });
    const plan = { place, texts, colours };
    if (!isDone(host, plan, notes)) plans.push(plan);
  }
  return plans;
}

function isDone(
  { engine }: Host,
  { place, texts, colours }: PlannedPlace,
  notes: readonly RankedNote[],
): boolean {
  return (
    inAnyOrder(place.marks.map(({ element }) => plainText(element.text))) === inAnyOrder(texts) &&
    colours.every((colour, i) => colour === null || engine.colorEqual(notes[i]!.note.color, colour))
  );
}

/** A file lists the marks of a chord in another order than the editor stacks them. */
function inAnyOrder(texts: readonly string[]): string {
  return JSON.stringify(texts.slice().sort());
}
