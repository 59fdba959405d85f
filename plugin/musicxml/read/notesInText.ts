/** Where a note stands in the text, in UTF-16 code units from the start. */
export interface NoteInText {
  /** The `<` of its own element. */
  readonly start: number;
  /** The `<` of the first note of its chord, played or not: whatever goes before the note goes there. */
  readonly chordStart: number;
  /** Directly after the last child that comes before lyrics, where another `notations` may go. */
  readonly notationsAt: number;
  /** True when the element has a `color` attribute that is not ours. */
  readonly hasColour: boolean;
  /** True when the note or its chord states its voice, and its staff. */
  readonly statesVoice: boolean;
  readonly statesStaff: boolean;
}

const HAS_COLOUR = 1;
const STATES_VOICE = 2;
const STATES_STAFF = 4;

/** A part’s notes where they stand in the text, by note index. Kept as bare numbers: a part has many notes, and few get a mark. */
export class NotesInText {
  private readonly starts: number[] = [];
  private readonly chordStarts: number[] = [];
  private readonly notationsAts: number[] = [];
  private readonly flags: number[] = [];

  get length(): number {
    return this.starts.length;
  }

  add(note: NoteInText): void {
    this.starts.push(note.start);
    this.chordStarts.push(note.chordStart);
    this.notationsAts.push(note.notationsAt);
    this.flags.push(
      (note.hasColour ? HAS_COLOUR : 0) |
        (note.statesVoice ? STATES_VOICE : 0) |
        (note.statesStaff ? STATES_STAFF : 0),
    );
  }

  /** @throws {RangeError} when the part has no note of this index */
  at(noteIndex: number): NoteInText {
    const start = this.starts[noteIndex];
    const flags = this.flags[noteIndex];
    if (start === undefined || flags === undefined) {
      throw new RangeError(`"noteIndex" must be an integer 0–${this.length - 1}, got ${noteIndex}`);
    }
    return {
      start,
      chordStart: this.chordStarts[noteIndex]!,
      notationsAt: this.notationsAts[noteIndex]!,
      hasColour: (flags & HAS_COLOUR) !== 0,
      statesVoice: (flags & STATES_VOICE) !== 0,
      statesStaff: (flags & STATES_STAFF) !== 0,
    };
  }
}
