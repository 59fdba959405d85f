/** Reads one part, element by element, into a passage and the places of its notes. */
import type { Join, PassageNote, PassageRest, PassageWord, Pitch } from '../../../core/index.ts';
import { AttributesReader } from './attributesReader.ts';
import { Clock } from './clock.ts';
import { DirectionReader } from './directionReader.ts';
import { Joins } from './joins.ts';
import { MoveReader } from './moveReader.ts';
import { NotePlaces } from './notePlaces.ts';
import { NoteReader } from './noteReader.ts';
import type { PartEntry } from './partList.ts';
import { inPlayingOrder } from './playingOrder.ts';
import { addToChord, type ColourClaim, headOf, type ReadNote, settleClaims } from './readNote.ts';
import type { HornPart } from './score.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import type { TempoMarks } from './tempoMarks.ts';
import { Transpositions } from './transpositions.ts';

const NO_JOINS: readonly Join[] = [];
const BLACK = /^#(?:FF)?000000$/i;

/** How far a part is read: as a horn, for our own marks in it, or only to know when its tempos come. */
export type Depth = 'horn' | 'marks' | 'tempos';

/** The notes of one staff and voice, as far as they are read. */
interface Line {
  readonly staff: number;
  readonly voice: string;
  last: ReadNote | null;
}

export class PartReader {
  readonly entry: PartEntry;
  private readonly source: Source;
  private readonly tempos: TempoMarks;
  private readonly isFull: boolean;
  private readonly clock = new Clock();
  private readonly note: NoteReader;
  private readonly direction: DirectionReader;
  private readonly attributes: AttributesReader;
  private readonly joins = new Joins();
  private readonly transpositions: Transpositions;
  private notes: PassageNote[] = [];
  private readonly places = new NotePlaces();
  private words: PassageWord[] = [];
  private rests: PassageRest[] = [];
  private measureNotes: ReadNote[] = [];
  private claims: ColourClaim[] = [];
  private readonly lines = new Map<string, Line>();
  private line: Line | null = null;
  private chordHead: ReadNote | null = null;
  private chordOnset = 0;
  private readonly move = new MoveReader();
  private child: ElementReader | null = null;

  constructor(entry: PartEntry, depth: Depth, isConcertScore: boolean, source: Source, tempos: TempoMarks) {
    this.entry = entry;
    this.source = source;
    this.tempos = tempos;
    this.isFull = depth !== 'tempos';
    this.note = new NoteReader(source, this.isFull);
    this.direction = new DirectionReader(source);
    this.attributes = new AttributesReader(this.clock);
    this.transpositions = new Transpositions(entry.name, isConcertScore, this.attributes);
  }

  startMeasure(index: number, measure: string): void {
    this.clock.startMeasure(index, measure);
    this.chordHead = null;
  }

  /** Takes the start of a child of the measure; gives what reads its inside, or `null` when nothing there matters. */
  openChild(name: string, attributes: Attributes): ElementReader | null {
    this.child = null;
    switch (name) {
      case 'note':
        this.note.begin(attributes);
        this.child = this.note;
        break;
      case 'direction':
        this.direction.begin();
        this.child = this.direction;
        break;
      case 'attributes':
        this.child = this.attributes;
        break;
      case 'backup':
        this.move.begin(-1);
        this.child = this.move;
        break;
      case 'forward':
        this.move.begin(1);
        this.child = this.move;
        break;
      case 'sound':
        this.tempos.add(this.clock, 0, Number(attributes.tempo));
    }
    return this.child;
  }

  closeChild(): void {
    if (this.child === this.note) this.finishNote();
    else if (this.child === this.direction) this.finishDirection();
    else if (this.child === this.move) this.clock.move(this.move.ticks);
  }

  endMeasure(): void {
    this.clock.endMeasure();
    const isLinked = this.joins.endMeasure();
    if (this.claims.length > 0) {
      this.source.ownSpans.push(...settleClaims(this.claims, this.measureNotes, this.source.text));
      this.claims = [];
    }
    for (const read of inPlayingOrder(this.measureNotes, ({ note }) => note.onsetQuarters)) {
      read.note.index = this.notes.length;
      this.notes.push(read.note);
      this.places.add(read);
      read.note.chordHead = headOf(read).note.index;
      if (read.head === null) this.extendLine(read, isLinked);
    }
    this.measureNotes = [];
  }

  /** The whole part, once the score has been read to its end. */
  finish(): HornPart {
    this.joins.resolve();
    const { id, name, isHorn } = this.entry;
    return {
      id,
      name,
      isHorn,
      transpositionFrom: this.transpositions.origin(),
      transpositionRemark: this.transpositions.remark(),
      passage: {
        name,
        notes: this.notes,
        words: inPlayingOrder(this.words, (word) => word.onsetQuarters),
        tempos: this.tempos.along(this.clock),
        rests: inPlayingOrder(this.rests, (rest) => rest.onsetQuarters),
      },
      places: this.places,
    };
  }

  private finishNote(): void {
    const { note, clock } = this;
    const isChord = note.isChord;
    const onset = isChord ? this.chordOnset : clock.cursor;
    if (!isChord) {
      this.chordOnset = onset;
      this.chordHead = null;
      if (!note.isGrace) clock.move(note.ticks);
    }
    if (!this.isFull) return;
    const isOther = note.instrument !== null && this.entry.hornInstruments?.has(note.instrument) === false;
    const pitch = isOther ? null : note.pitch();
    if (pitch) this.addNote(pitch, onset);
    else if (!isChord && !note.isGrace) this.addRest(onset);
  }

  private addNote(pitch: Pitch, onset: number): void {
    const { note, clock } = this;
    const head = note.isChord ? this.chordHead : null;
    const staff = note.staff === null ? (head?.note.staff ?? 1) : Number(note.staff) || 1;
    const onsetQuarters = clock.measureStart + onset;
    const transposition = this.transpositions.at(staff, onsetQuarters);
    const isColoured = note.colour !== null && !BLACK.test(note.colour);
    const read: ReadNote = {
      note: {
        index: 0,
        measureIndex: clock.measureIndex,
        measure: clock.measure,
        beat: clock.beatAt(onset),
        onsetQuarters,
        durationQuarters: note.isGrace ? 0 : clock.quarters(note.ticks),
        grace: note.isGrace,
        staff,
        voice: note.voice ?? head?.note.voice ?? '1',
        chordRank: 0,
        chordHead: 0,
        written: this.transpositions.written(pitch, transposition, staff, onsetQuarters),
        transposition,
        clef: this.attributes.clefs.at(staff, onsetQuarters) ?? 'treble',
        sign: note.sign,
        joins: NO_JOINS,
        userColour: isColoured || (note.noteheadColour !== null && !BLACK.test(note.noteheadColour)),
      },
      start: note.start,
      notationsAt: note.notationsAt,
      hasColour: note.colour !== null,
      statesVoice: note.voice !== null,
      statesStaff: note.staff !== null,
      head: null,
      members: null,
      next: null,
      ownSign: note.sign,
    };
    this.measureNotes.push(read);
    if (head) addToChord(head, read);
    else this.chordHead = read;
    if (note.startsTie || note.endsTie || note.hasBend || note.joinEnds.length > 0) {
      this.joins.take(read, note.joinEnds, note.startsTie, note.endsTie, note.hasBend);
    }
  }

  private addRest(onset: number): void {
    const { note, clock } = this;
    this.rests.push({
      onsetQuarters: clock.measureStart + onset,
      durationQuarters: clock.quarters(note.ticks),
      staff: Number(note.staff ?? 1) || 1,
      voice: note.voice ?? '1',
    });
  }

  private finishDirection(): void {
    const { direction, clock } = this;
    direction.finish();
    const offset = clock.quarters(direction.offsetTicks);
    if (direction.quartersPerMinute !== null) this.tempos.add(clock, offset, direction.quartersPerMinute);
    if (!this.isFull) return;
    const quarters = Math.max(0, clock.cursor + offset);
    const { staff, voice } = direction;
    const onsetQuarters = clock.measureStart + quarters;
    if (direction.claimedRank !== null) {
      this.claims.push({ offset: direction.start, staff, voice, onsetQuarters, rank: direction.claimedRank });
    }
    if (direction.words !== '') {
      this.words.push({
        text: direction.words,
        measureIndex: clock.measureIndex,
        measure: clock.measure,
        beat: clock.beatAt(quarters),
        onsetQuarters,
        staff,
        voice,
      });
    }
  }

  /** Notes are linked only where a join needs it, so that the others need not be kept. */
  private extendLine(head: ReadNote, isLinked: boolean): void {
    const { staff, voice } = head.note;
    let line = this.line;
    if (line === null || line.staff !== staff || line.voice !== voice) {
      const name = `${staff}/${voice}`;
      line = this.lines.get(name) ?? { staff, voice, last: null };
      this.lines.set(name, line);
      this.line = line;
    }
    if (isLinked && line.last) line.last.next = head;
    line.last = head;
  }
}
