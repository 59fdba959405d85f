/** The chord being read: its notes that are played, and what it says besides. */
import type { HandSign } from '../../../core/index.ts';
import { ScoreError } from '../bytes/scoreError.ts';
import type { JoinEnd, NoteContent } from './noteContent.ts';
import { addToChord, type ReadNote, settleChord } from './readNote.ts';

/** No player and no keyboard has more notes at once. */
const MOST_NOTES = 1000;

/** Filled afresh for every chord; a single note is a chord of one. */
export class OpenChord {
  /** False between the start of a measure and its first note. */
  isOpen = false;
  /** The `<` of its first note, played or not. */
  start = 0;
  /** In quarters from the start of the measure. */
  onset = 0;
  /** What its first note states, for those that state nothing. */
  voice: string | null = null;
  staff: string | null = null;
  /** Its first note that is played. */
  head: ReadNote | null = null;
  /** The length of its first note, in quarters. */
  quarters = 0;
  isGrace = false;
  private hiddenSign: HandSign | null = null;
  private hiddenSlurs: readonly JoinEnd[] | null = null;
  private size = 0;

  begin(start: number, { voice, staff, isGrace }: NoteContent, onset: number, quarters: number): void {
    this.isOpen = true;
    this.start = start;
    this.onset = onset;
    this.quarters = quarters;
    this.isGrace = isGrace;
    this.voice = voice;
    this.staff = staff;
    this.head = null;
    this.hiddenSign = null;
    this.hiddenSlurs = null;
    this.size = 0;
  }

  add(read: ReadNote): void {
    if (this.head) addToChord(this.head, read);
    else this.head = read;
    this.size += 1;
    if (this.size > MOST_NOTES) throw new ScoreError(({ chordTooLarge }) => chordTooLarge(MOST_NOTES));
  }

  /** Takes what a hidden note says of its whole chord: programs write signs and slurs at the first note, hidden or not. */
  addHidden({ sign, joinEnds }: NoteContent): void {
    this.hiddenSign = this.hiddenSign ?? sign;
    const slurs = joinEnds.filter(({ kind }) => kind === 'slur');
    if (slurs.length > 0) this.hiddenSlurs = (this.hiddenSlurs ?? []).concat(slurs);
  }

  /** The slurs of hidden notes, once: they go to the first note that is played. */
  takeHiddenSlurs(): readonly JoinEnd[] | null {
    const slurs = this.hiddenSlurs;
    this.hiddenSlurs = null;
    return slurs;
  }

  /** @returns true when none of its notes is played: a rest */
  end(): boolean {
    this.isOpen = false;
    if (this.head === null) return !this.isGrace;
    if (this.head.members || this.hiddenSign) settleChord(this.head, this.hiddenSign);
    return false;
  }
}
