/** Reads one `note` element at a time: what it prints, and where it stands. */
import { type HandSign, type JoinKind, type Pitch, STEPS, type Step } from '../../../core/index.ts';
import { decimal, ticksOf } from './decimal.ts';
import { handSign, mutedSign } from './handSigns.ts';
import { isOwnNotations, isOwnText } from './ownMarks.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import { spaceBefore } from './whitespace.ts';

/** One end of a slur, glissando or slide, as a note states it. */
export interface JoinEnd {
  readonly kind: JoinKind;
  readonly isStart: boolean;
  /** Tells joins that run at once from one another. */
  readonly label: string;
}

/** Children of a note that mean something here, by what they are read as; the rest is passed over. */
const PARTS = new Map<string, string>([
  ['step', 'step'],
  ['alter', 'alter'],
  ['octave', 'octave'],
  ['duration', 'duration'],
  ['voice', 'voice'],
  ['staff', 'staff'],
  ['chord', 'chord'],
  ['grace', 'grace'],
  ['rest', 'unpitched'],
  ['unpitched', 'unpitched'],
  ['cue', 'cue'],
  ['tie', 'tie'],
  ['tied', 'tie'],
  ['slur', 'slur'],
  ['glissando', 'glissando'],
  ['slide', 'glissando'],
  ['bend', 'bend'],
  ['stopped', 'sign'],
  ['open', 'sign'],
  ['half-muted', 'sign'],
  ['open-string', 'sign'],
  ['other-technical', 'sign'],
  ['other-articulation', 'sign'],
  ['notations', 'notations'],
  ['lyric', 'past notations'],
  ['play', 'past notations'],
  ['listen', 'past notations'],
  ['mute', 'mute'],
  ['fingering', 'fingering'],
  ['notehead', 'notehead'],
  ['instrument', 'instrument'],
]);
const NO_ENDS: readonly JoinEnd[] = [];

/** What the note being read has said so far. Filled afresh for every note. */
export class NoteReader implements ElementReader {
  start = 0;
  notationsAt = 0;
  ticks = 0;
  voice: string | null = null;
  staff: string | null = null;
  isChord = false;
  isGrace = false;
  /** True for a note that is not printed: nobody plays it, but what it says of its chord holds. */
  isHidden = false;
  sign: HandSign | null = null;
  startsTie = false;
  endsTie = false;
  hasBend = false;
  colour: string | null = null;
  noteheadColour: string | null = null;
  instrument: string | null = null;
  joinEnds: JoinEnd[] | readonly JoinEnd[] = NO_ENDS;
  private step = -1;
  private alter = 0;
  private octave = 4;
  private isCue = false;
  /** False for rests and unpitched notes. */
  private isPitched = true;
  private isOwn = false;
  private ownStart = 0;
  private isPastNotations = false;
  private readonly source: Source;
  private readonly pitches = new Map<number, Pitch>();
  /** What the text asked for last is of. */
  private wanted = '';

  constructor(source: Source) {
    this.source = source;
  }

  begin(attributes: Attributes): void {
    this.start = this.source.tagStart();
    this.notationsAt = this.source.offset();
    this.ticks = 0;
    this.voice = null;
    this.staff = null;
    this.isChord = false;
    this.isGrace = false;
    this.isHidden = attributes['print-object'] === 'no';
    this.sign = null;
    this.startsTie = false;
    this.endsTie = false;
    this.hasBend = false;
    this.colour = attributes.color ?? null;
    this.noteheadColour = null;
    this.instrument = null;
    this.joinEnds = NO_ENDS;
    this.step = -1;
    this.alter = 0;
    this.octave = 4;
    this.isCue = false;
    this.isPitched = true;
    this.isOwn = false;
    this.isPastNotations = false;
  }

  open(name: string, attributes: Attributes, isChild: boolean): boolean {
    if (this.isOwn) return false;
    const part = PARTS.get(name);
    if (part === undefined) return false;
    switch (part) {
      case 'step':
      case 'alter':
      case 'octave':
      case 'duration':
      case 'voice':
      case 'staff':
      case 'mute':
        this.wanted = part;
        return true;
      case 'chord':
        this.isChord = true;
        return false;
      case 'grace':
        this.isGrace = true;
        return false;
      case 'cue':
        this.isCue = true;
        return false;
      case 'unpitched':
        this.isPitched = false;
        return false;
      case 'tie':
        if (attributes.type === 'start' || attributes.type === 'continue') this.startsTie = true;
        if (attributes.type === 'stop' || attributes.type === 'continue') this.endsTie = true;
        return false;
      case 'slur':
      case 'glissando':
        this.addJoinEnd(part === 'slur' ? 'slur' : 'glissando', name, attributes);
        return false;
      case 'bend':
        this.hasBend = true;
        return false;
      case 'sign':
        this.sign = this.sign ?? handSign(name, attributes.smufl);
        return false;
      case 'notations':
        if (isOwnNotations(this.source.text, this.source.tagStart())) {
          this.isOwn = true;
          this.ownStart = spaceBefore(this.source.text, this.source.tagStart());
        }
        return false;
      case 'past notations':
        this.isPastNotations = this.isPastNotations || isChild;
        return false;
      case 'fingering':
        this.ownStart = spaceBefore(this.source.text, this.source.tagStart());
        this.wanted = part;
        return true;
      case 'notehead':
        this.noteheadColour = attributes.color ?? null;
        this.wanted = part;
        return true;
      case 'instrument':
        this.instrument = attributes.id ?? null;
        return false;
      default:
        return false;
    }
  }

  take(_name: string, text: string): void {
    switch (this.wanted) {
      case 'step':
        this.step = STEPS.indexOf(text.trim() as Step);
        return;
      case 'alter':
        this.alter = decimal(text) ?? 0;
        return;
      case 'octave':
        this.octave = decimal(text) ?? -1;
        return;
      case 'duration':
        this.ticks = ticksOf(text);
        return;
      case 'voice':
        this.voice = text.trim();
        return;
      case 'staff':
        this.staff = text.trim();
        return;
      case 'mute':
        this.sign = this.sign ?? mutedSign(text.trim());
        return;
      case 'notehead':
        // So hosts write hidden notes.
        if (text.trim() === 'none') this.isHidden = true;
        return;
      case 'fingering':
        if (isOwnText(text)) this.endOwn();
    }
  }

  endChild(): void {
    if (this.isOwn) this.endOwn();
    else if (!this.isPastNotations) this.notationsAt = this.source.offset();
  }

  /** The written pitch, or `null` for what is not the player's: rests, unpitched notes, cues of other players. */
  pitch(): Pitch | null {
    if (!this.isPitched || this.step < 0 || !(this.octave >= 0)) return null;
    // A cue shows another player's notes, unless a sign for the hand says that it is meant for this one.
    if (this.isCue && this.sign === null) return null;
    const { step, alter, octave } = this;
    // One object serves all notes of one pitch: a part has few pitches and many notes.
    const key = 1000 * (7 * octave + step) + alter;
    let pitch = this.pitches.get(key);
    if (!pitch) {
      pitch = { step: STEPS[step]!, alter, octave };
      this.pitches.set(key, pitch);
    }
    return pitch;
  }

  private endOwn(): void {
    this.source.ownSpans.push({ start: this.ownStart, end: this.source.offset() });
    this.isOwn = false;
  }

  private addJoinEnd(kind: JoinKind, name: string, attributes: Attributes): void {
    const { type } = attributes;
    if (type !== 'start' && type !== 'stop') return;
    if (this.joinEnds === NO_ENDS) this.joinEnds = [];
    (this.joinEnds as JoinEnd[]).push({
      kind,
      isStart: type === 'start',
      label: `${name} ${attributes.number ?? '1'}`,
    });
  }
}
