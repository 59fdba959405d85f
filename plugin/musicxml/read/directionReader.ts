/** Reads `direction` elements: words, tempos, mutes of the playback, and our own marks. */
import { claimedChordRank, MARK_PREFIX } from '../../../core/index.ts';
import { decimal, ordinal } from './decimal.ts';
import { mutedWords } from './handSigns.ts';
import { isOwnText } from './ownMarks.ts';
import type { Span } from './score.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import { skipSpace } from './whitespace.ts';

/** Quarters in a beat unit. @source musicxml40, note-type-value */
const BEAT_UNITS = new Map([
  ['long', 16],
  ['breve', 8],
  ['whole', 4],
  ['half', 2],
  ['quarter', 1],
  ['eighth', 0.5],
  ['16th', 0.25],
  ['32nd', 0.125],
  ['64th', 0.0625],
]);

const WITH_TEXT = new Set(['words', 'offset', 'voice', 'staff', 'beat-unit', 'per-minute', 'mute']);

/** What the direction being read has said so far. Filled afresh for every direction. */
export class DirectionReader implements ElementReader {
  words = '';
  /** Of the direction against the notes around it, in divisions. */
  offsetTicks = 0;
  voice: string | null = null;
  staff = 1;
  quartersPerMinute: number | null = null;
  /** The chord rank whose colour this mark of ours claims. */
  claimedRank: number | null = null;
  start = 0;
  private beatQuarters = 1;
  private isSoundTempo = false;
  private muted: string | null = null;
  private typeStart = 0;
  private isTypeOwn = false;
  private isFirstWords = true;
  private types = 0;
  private readonly ownTypes: Span[] = [];
  private readonly source: Source;

  constructor(source: Source) {
    this.source = source;
  }

  begin(): void {
    this.words = '';
    this.offsetTicks = 0;
    this.voice = null;
    this.staff = 1;
    this.quartersPerMinute = null;
    this.claimedRank = null;
    this.start = this.source.tagStart();
    this.beatQuarters = 1;
    this.isSoundTempo = false;
    this.muted = null;
    this.types = 0;
    this.ownTypes.length = 0;
  }

  open(name: string, attributes: Attributes): boolean {
    if (name === 'direction-type') {
      this.types += 1;
      this.isTypeOwn = false;
      this.isFirstWords = true;
      this.typeStart = this.source.tagStart();
      return false;
    }
    if (name === 'sound') {
      const tempo = decimal(attributes.tempo ?? '') ?? 0;
      if (tempo > 0) {
        this.quartersPerMinute = tempo;
        this.isSoundTempo = true;
      }
      return false;
    }
    if (name === 'beat-unit-dot') this.beatQuarters *= 1.5;
    return WITH_TEXT.has(name);
  }

  take(name: string, text: string): void {
    switch (name) {
      case 'words':
        this.addWords(text);
        return;
      case 'offset':
        this.offsetTicks = decimal(text) ?? 0;
        return;
      case 'voice':
        this.voice = text.trim();
        return;
      case 'staff':
        this.staff = ordinal(text) ?? 1;
        return;
      case 'beat-unit':
        this.beatQuarters = BEAT_UNITS.get(text.trim()) ?? 1;
        return;
      case 'per-minute': {
        const match = /\d+(?:[.,]\d+)?/.exec(text);
        if (match && !this.isSoundTempo)
          this.quartersPerMinute = (decimal(match[0].replace(',', '.')) ?? 0) * this.beatQuarters;
        return;
      }
      case 'mute':
        this.muted = mutedWords(text.trim());
    }
  }

  endChild(name: string): void {
    if (name === 'direction-type' && this.isTypeOwn) {
      this.ownTypes.push({ start: this.typeStart, end: this.endWithSpace() });
    }
  }

  finish(): void {
    if (this.types > 0 && this.ownTypes.length === this.types) {
      this.source.ownSpans.push({ start: this.start, end: this.endWithSpace() });
    } else if (this.ownTypes.length > 0) {
      this.source.ownSpans.push(...this.ownTypes);
    }
    if (this.words === '' && this.muted !== null && this.ownTypes.length === 0) this.words = this.muted;
  }

  private addWords(text: string): void {
    if (this.isFirstWords && isOwnText(text)) {
      this.isTypeOwn = true;
      this.claimedRank = claimedChordRank(text.trim());
    } else if (text.indexOf(MARK_PREFIX) >= 0) {
      // Somebody wrote before it: the text is theirs now, the note's colour is not.
      this.claimedRank = claimedChordRank(text.slice(text.indexOf(MARK_PREFIX)));
    }
    this.isFirstWords = false;
    if (this.isTypeOwn) return;
    const words = text.replace(/\s+/g, ' ').trim();
    if (words !== '') this.words = this.words === '' ? words : `${this.words} ${words}`;
  }

  private endWithSpace(): number {
    return skipSpace(this.source.text, this.source.offset());
  }
}
