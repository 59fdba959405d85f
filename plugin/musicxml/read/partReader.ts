/** Reads one horn part, element by element, into a passage and the places of its notes. */
import type { Join, PassageRest, PassageWord, Pitch } from '../../../core/index.ts';
import { AttributesReader } from './attributesReader.ts';
import { Clock } from './clock.ts';
import { type ColourClaim, settleClaims, type UnplayedNote } from './colourClaims.ts';
import { decimal, ordinal } from './decimal.ts';
import { DirectionReader } from './directionReader.ts';
import { Joins, type OpenNote } from './joins.ts';
import { MoveReader } from './moveReader.ts';
import type { NoteContent } from './noteContent.ts';
import type { NoteListener } from './noteFeed.ts';
import { NoteReader } from './noteReader.ts';
import { NotesInText } from './notesInText.ts';
import { OpenChord } from './openChord.ts';
import { isPainted } from './ownColours.ts';
import type { PartEntry } from './partList.ts';
import { inPlayingOrder } from './playingOrder.ts';
import { headOf, MeasureNotes, type ReadNote } from './readNote.ts';
import type { HornPart, MeasureSpan } from './score.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import type { TempoMarks } from './tempoMarks.ts';
import { Transpositions } from './transpositions.ts';

const NO_JOINS: readonly Join[] = [];
const BLACK = /^#(?:FF)?000000$/i;

export class PartReader implements NoteListener {
  readonly entry: PartEntry;
  private readonly source: Source;
  private readonly tempos: TempoMarks;
  private readonly clock = new Clock();
  private readonly note: NoteReader;
  private readonly direction: DirectionReader;
  private readonly attributes: AttributesReader;
  private readonly joins = new Joins();
  private readonly transpositions: Transpositions;
  private readonly notes: OpenNote[] = [];
  private readonly notesInText = new NotesInText();
  private words: PassageWord[] = [];
  private rests: PassageRest[] = [];
  private readonly measureNotes = new MeasureNotes();
  private claims: ColourClaim[] = [];
  /** Those of the measure that have a colour. */
  private unplayed: UnplayedNote[] = [];
  /** True where the measure has a note painted as only we do. */
  private hasPainted = false;
  private readonly measures: MeasureSpan[] = [];
  private readonly measure = { start: 0, number: '', implicit: false };
  private readonly chord = new OpenChord();
  private readonly move = new MoveReader();
  private child: ElementReader | null = null;

  constructor(entry: PartEntry, isConcertScore: boolean, source: Source, tempos: TempoMarks) {
    this.entry = entry;
    this.source = source;
    this.tempos = tempos;
    this.note = new NoteReader(source);
    this.direction = new DirectionReader(source);
    this.attributes = new AttributesReader(this.clock);
    this.transpositions = new Transpositions(entry.name, isConcertScore, this.attributes);
  }

  /** @param implicit true for a measure that is not counted, such as an upbeat */
  startMeasure(index: number, number: string, implicit: boolean): void {
    this.clock.startMeasure(index, number);
    this.measure.start = this.source.tagStart();
    this.measure.number = number;
    this.measure.implicit = implicit;
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
        this.tempos.add(this.clock, 0, decimal(attributes.tempo ?? '') ?? 0);
    }
    return this.child;
  }

  closeChild(): void {
    if (this.child === this.note) {
      this.note.end();
      this.finishNote();
    } else if (this.child === this.direction) this.finishDirection();
    else if (this.child === this.move) this.clock.move(this.move.ticks);
  }

  repeat(content: NoteContent | null, start: number, contentAt: number): boolean {
    if (content === null) return false;
    this.note.repeat(content, start, contentAt);
    this.finishNote();
    return true;
  }

  heard(): NoteContent | undefined {
    return this.note.isRepeatable ? this.note.content : undefined;
  }

  endMeasure(): void {
    this.endChord();
    this.clock.endMeasure();
    const { start, number, implicit } = this.measure;
    this.measures.push({ start, end: this.source.offset(), number, implicit });
    this.joins.endMeasure();
    if (this.claims.length > 0 || this.hasPainted) {
      const { claims, measureNotes, unplayed, source } = this;
      source.ownSpans.push(...settleClaims(claims, measureNotes.all, unplayed, source.text));
      this.claims = [];
      this.hasPainted = false;
    }
    this.unplayed = [];
    for (const read of inPlayingOrder(this.measureNotes.all, onsetOf)) {
      read.note.index = this.notes.length;
      this.notes.push(read.note);
      this.notesInText.add(read);
      read.note.chordHead = headOf(read).note.index;
    }
    this.measureNotes.clear();
  }

  /** The whole part, once the score has been read to its end. */
  finish(): HornPart {
    this.joins.resolve(this.notes);
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
      notesInText: this.notesInText,
      measures: this.measures,
    };
  }

  private finishNote(): void {
    const { note, clock, chord } = this;
    const { content } = note;
    if (!content.isChord || !chord.isOpen) {
      this.endChord();
      chord.begin(note.start, content, clock.cursor, clock.quarters(content.ticks));
    }
    if (!content.isChord && !content.isGrace) clock.move(content.ticks);
    const isOther =
      content.instrument !== null && this.entry.hornInstruments?.has(content.instrument) === false;
    const isPlayers = content.pitch !== null && !isOther;
    if (isPainted(note.colour) || isPainted(content.noteheadColour)) this.hasPainted = true;
    if (isPlayers && !note.isHidden) this.addNote(content, content.pitch!);
    else if (note.colour !== null || content.noteheadColour !== null) {
      this.unplayed.push({ start: note.start, staff: this.staffOf(content), onsetQuarters: this.onset() });
    }
    if (isPlayers && note.isHidden) chord.addHidden(content);
  }

  private addNote(content: NoteContent, pitch: Pitch): void {
    const { note, clock, chord } = this;
    const staff = this.staffOf(content);
    const onsetQuarters = this.onset();
    const transposition = this.transpositions.at(staff, onsetQuarters);
    const isColoured = note.colour !== null && !BLACK.test(note.colour);
    const { noteheadColour, sign, fingering, isGrace, joinEnds } = content;
    const read = this.measureNotes.add({
      index: 0,
      measureIndex: clock.measureIndex,
      measure: clock.measure,
      beat: clock.beatAt(chord.onset),
      onsetQuarters,
      durationQuarters: isGrace ? 0 : clock.quarters(content.ticks),
      grace: isGrace,
      staff,
      voice: content.voice ?? chord.voice ?? '1',
      chordRank: 0,
      chordHead: 0,
      written: this.transpositions.written(pitch, transposition, staff, onsetQuarters),
      transposition,
      clef: this.attributes.clefs.at(staff, onsetQuarters) ?? 'treble',
      sign,
      fingering,
      joins: NO_JOINS,
      userColour: isColoured || (noteheadColour !== null && !BLACK.test(noteheadColour)),
    });
    read.start = note.start;
    read.chordStart = chord.start;
    read.notationsAt = note.notationsAt;
    read.hasColour = note.colour !== null;
    read.statesVoice = content.voice !== null || chord.voice !== null;
    read.statesStaff = content.staff !== null || chord.staff !== null;
    read.ownSign = sign;
    this.source.keep(1);
    chord.add(read);
    const hiddenSlurs = chord.takeHiddenSlurs();
    if (content.startsTie || content.endsTie || content.hasBend || joinEnds.length > 0 || hiddenSlurs) {
      const ends = hiddenSlurs ? hiddenSlurs.concat(joinEnds) : joinEnds;
      this.joins.take(read.note, ends, content.startsTie, content.endsTie, content.hasBend);
    }
  }

  /** Of the chord being read, in quarters from the start of the part. */
  private onset(): number {
    return this.clock.measureStart + this.chord.onset;
  }

  private staffOf({ staff }: NoteContent): number {
    return ordinal(staff ?? this.chord.staff ?? '1') ?? 1;
  }

  private endChord(): void {
    const { chord } = this;
    if (!chord.isOpen || !chord.end()) return;
    this.source.keep(1);
    this.rests.push({
      onsetQuarters: this.onset(),
      durationQuarters: chord.quarters,
      staff: ordinal(chord.staff ?? '1') ?? 1,
      voice: chord.voice ?? '1',
    });
  }

  private finishDirection(): void {
    const { direction, clock } = this;
    direction.finish();
    const offset = clock.quarters(direction.offsetTicks);
    if (direction.quartersPerMinute !== null) this.tempos.add(clock, offset, direction.quartersPerMinute);
    const quarters = Math.max(0, clock.cursor + offset);
    const { staff, voice } = direction;
    const onsetQuarters = clock.measureStart + quarters;
    if (direction.claimedRank !== null) {
      this.claims.push({ offset: direction.start, staff, voice, onsetQuarters, rank: direction.claimedRank });
    }
    if (direction.words !== '') {
      this.source.keep(1);
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
}

function onsetOf({ note }: ReadNote): number {
  return note.onsetQuarters;
}
