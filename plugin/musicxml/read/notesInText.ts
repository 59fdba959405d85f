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

/** Numbers of one note. */
const WIDTH = 4;

/** A part’s notes where they stand in the text, by note index. Kept as bare numbers: a part has many notes, and few get a mark. */
export class NotesInText {
  private count = 0;
  /** Of each note its start, its chord's, where notations go, and what is true of it. */
  private numbers = new Int32Array(64 * WIDTH);

  get length(): number {
    return this.count;
  }

  add(note: NoteInText): void {
    const at = this.count * WIDTH;
    if (at === this.numbers.length) this.grow();
    this.numbers[at] = note.start;
    this.numbers[at + 1] = note.chordStart;
    this.numbers[at + 2] = note.notationsAt;
    this.numbers[at + 3] =
      (note.hasColour ? HAS_COLOUR : 0) |
      (note.statesVoice ? STATES_VOICE : 0) |
      (note.statesStaff ? STATES_STAFF : 0);
    this.count += 1;
  }

  /** @throws {RangeError} when the part has no note of this index */
  at(noteIndex: number): NoteInText {
    const { numbers } = this;
    const at = noteIndex * WIDTH;
    if (!(noteIndex >= 0 && noteIndex < this.length && noteIndex % 1 === 0)) {
      throw new RangeError(`"noteIndex" must be an integer 0–${this.length - 1}, got ${noteIndex}`);
    }
    const flags = numbers[at + 3]!;
    return {
      start: numbers[at]!,
      chordStart: numbers[at + 1]!,
      notationsAt: numbers[at + 2]!,
      hasColour: (flags & HAS_COLOUR) !== 0,
      statesVoice: (flags & STATES_VOICE) !== 0,
      statesStaff: (flags & STATES_STAFF) !== 0,
    };
  }

  private grow(): void {
    const more = new Int32Array(2 * this.numbers.length);
    more.set(this.numbers);
    this.numbers = more;
  }
}
