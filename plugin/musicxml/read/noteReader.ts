/** Reads one `note` element at a time: what it prints, and where it stands. */
import { type JoinKind, type Pitch, STEPS, type Step } from '../../../core/index.ts';
import { decimal, ticksOf } from './decimal.ts';
import { handSign, mutedSign } from './handSigns.ts';
import type { JoinEnd, NoteContent } from './noteContent.ts';
import { isOwnNotations, isOwnText } from './ownMarks.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import { spaceBefore } from './whitespace.ts';

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

type Filled<T> = { -readonly [field in keyof T]: T[field] };

/** What the note being read has said so far: of its own by its start tag, and by its content. */
export class NoteReader implements ElementReader {
  start = 0;
  colour: string | null = null;
  content: Filled<NoteContent> = emptyContent();
  /** False once the content is of this place alone: it holds marks of ours. */
  isRepeatable = true;
  private isUnprinted = false;
  private contentAt = 0;
  private step = -1;
  private alter = 0;
  private octave = 4;
  private isCue = false;
  /** False for rests and unpitched notes. */
  private isPitched = true;
  private isOwn = false;
  private ownStart = 0;
  private isPastNotations = false;
  /** True within a fingering that stands beside another one. */
  private isOther = false;
  private readonly source: Source;
  private readonly pitches = new Map<number, Pitch>();
  /** What the text asked for last is of. */
  private wanted = '';

  constructor(source: Source) {
    this.source = source;
  }

  /** Takes the start tag of a note whose content is to be read. */
  begin(attributes: Attributes): void {
    this.start = this.source.tagStart();
    this.contentAt = this.source.offset();
    this.colour = attributes.color ?? null;
    this.isUnprinted = attributes['print-object'] === 'no';
    this.content = emptyContent();
    this.isRepeatable = true;
    this.step = -1;
    this.alter = 0;
    this.octave = 4;
    this.isCue = false;
    this.isPitched = true;
    this.isOwn = false;
    this.isPastNotations = false;
  }

  /** Takes a whole note whose content was read before, and whose start tag says nothing. */
  repeat(content: NoteContent, start: number, contentAt: number): void {
    this.start = start;
    this.contentAt = contentAt;
    this.colour = null;
    this.isUnprinted = false;
    this.content = content;
  }

  /** Takes the end of the note. */
  end(): void {
    this.content.pitch = this.pitch();
  }

  /** True for a note that is not printed: nobody plays it, but what it says of its chord holds. */
  get isHidden(): boolean {
    return this.isUnprinted || this.content.isHeadless;
  }

  /** The offset in the text where another `notations` may go. */
  get notationsAt(): number {
    return this.contentAt + this.content.notationsAt;
  }

  open(name: string, attributes: Attributes, isChild: boolean): boolean {
    if (this.isOwn) return false;
    const { content } = this;
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
        content.isChord = true;
        return false;
      case 'grace':
        content.isGrace = true;
        return false;
      case 'cue':
        this.isCue = true;
        return false;
      case 'unpitched':
        this.isPitched = false;
        return false;
      case 'tie':
        if (attributes.type === 'start' || attributes.type === 'continue') content.startsTie = true;
        if (attributes.type === 'stop' || attributes.type === 'continue') content.endsTie = true;
        return false;
      case 'slur':
      case 'glissando':
        this.addJoinEnd(part === 'slur' ? 'slur' : 'glissando', name, attributes);
        return false;
      case 'bend':
        content.hasBend = true;
        return false;
      case 'sign':
        content.sign = content.sign ?? handSign(name, attributes.smufl);
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
        this.isOther = attributes.alternate === 'yes' || attributes.substitution === 'yes';
        this.wanted = part;
        return true;
      case 'notehead':
        content.noteheadColour = attributes.color ?? null;
        this.wanted = part;
        return true;
      case 'instrument':
        content.instrument = attributes.id ?? null;
        return false;
      default:
        return false;
    }
  }

  take(_name: string, text: string): void {
    const { content } = this;
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
        content.ticks = ticksOf(text);
        return;
      case 'voice':
        content.voice = text.trim();
        return;
      case 'staff':
        content.staff = text.trim();
        return;
      case 'mute':
        content.sign = content.sign ?? mutedSign(text.trim());
        return;
      case 'notehead':
        // So hosts write hidden notes.
        if (text.trim() === 'none') content.isHeadless = true;
        return;
      case 'fingering':
        if (isOwnText(text)) this.endOwn();
        else if (!this.isOther && text.trim() !== '') content.fingering = content.fingering ?? text.trim();
    }
  }

  endChild(): void {
    if (this.isOwn) this.endOwn();
    else if (!this.isPastNotations) this.content.notationsAt = this.source.offset() - this.contentAt;
  }

  private pitch(): Pitch | null {
    if (!this.isPitched || this.step < 0 || !(this.octave >= 0)) return null;
    // A cue shows another player's notes, unless a sign for the hand says that it is meant for this one.
    if (this.isCue && this.content.sign === null) return null;
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
    this.isRepeatable = false;
  }

  private addJoinEnd(kind: JoinKind, name: string, attributes: Attributes): void {
    const { type } = attributes;
    if (type !== 'start' && type !== 'stop') return;
    const label = `${name} ${attributes.number ?? '1'}`;
    this.content.joinEnds = this.content.joinEnds.concat({ kind, isStart: type === 'start', label });
  }
}

function emptyContent(): Filled<NoteContent> {
  return {
    pitch: null,
    ticks: 0,
    voice: null,
    staff: null,
    instrument: null,
    isChord: false,
    isGrace: false,
    isHeadless: false,
    sign: null,
    fingering: null,
    startsTie: false,
    endsTie: false,
    hasBend: false,
    noteheadColour: null,
    joinEnds: NO_ENDS,
    notationsAt: 0,
  };
}
