/** Reads `attributes` elements: divisions, time, clefs, and what a part adds to its written notes to sound. */
import type { PassageNote, Transposition } from '../../../core/index.ts';
import { Changes } from './changes.ts';
import type { Clock } from './clock.ts';
import { decimal, ordinal } from './decimal.ts';
import type { Attributes, ElementReader } from './source.ts';

const WITH_TEXT = new Set([
  'divisions',
  'beats',
  'beat-type',
  'sign',
  'diatonic',
  'chromatic',
  'octave-change',
]);

/** Keeps what holds at each moment of a part. */
export class AttributesReader implements ElementReader {
  readonly clefs = new Changes<PassageNote['clef']>();
  /** `transpose`: from the notes in the file to what sounds. */
  readonly stated = new Changes<Transposition>();
  /** `part-transpose` of a concert-pitch score: from the horn's own part to what sounds. */
  readonly forPart = new Changes<Transposition>();
  private staff: number | null = null;
  private beats = '4';
  private isSecondTime = false;
  private sign = '';
  private diatonic: number | null = null;
  private chromatic = 0;
  private octaveChange = 0;
  private readonly clock: Clock;

  constructor(clock: Clock) {
    this.clock = clock;
  }

  open(name: string, attributes: Attributes): boolean {
    switch (name) {
      case 'clef':
      case 'transpose':
      case 'for-part':
        this.staff = attributes.number === undefined ? null : ordinal(attributes.number);
        this.diatonic = null;
        this.chromatic = 0;
        this.octaveChange = 0;
        return false;
      case 'interchangeable':
        // A second way to count the same measure; the first one stands.
        this.isSecondTime = true;
        return false;
      case 'time':
        this.isSecondTime = false;
        return false;
      case 'beats':
      case 'beat-type':
        return !this.isSecondTime;
      default:
        return WITH_TEXT.has(name);
    }
  }

  take(name: string, text: string): void {
    switch (name) {
      case 'divisions':
        this.clock.setDivisions(decimal(text) ?? 0);
        return;
      case 'beats':
        this.beats = text;
        return;
      case 'beat-type':
        this.setTime(decimal(text) ?? 0);
        return;
      case 'sign':
        this.sign = text.trim();
        return;
      case 'diatonic':
        this.diatonic = decimal(text) ?? 0;
        return;
      case 'chromatic':
        this.chromatic = decimal(text) ?? 0;
        return;
      case 'octave-change':
        this.octaveChange = decimal(text) ?? 0;
    }
  }

  endChild(name: string): void {
    const onset = this.clock.measureStart + this.clock.cursor;
    switch (name) {
      case 'clef':
        // A clef without a number is the first staff's.
        this.clefs.set(
          this.staff ?? 1,
          onset,
          this.sign === 'G' ? 'treble' : this.sign === 'F' ? 'bass' : 'other',
        );
        return;
      case 'transpose':
        this.stated.set(this.staff, onset, this.transposition());
        return;
      case 'for-part':
        this.forPart.set(this.staff, onset, this.transposition());
    }
  }

  private setTime(beatType: number): void {
    if (!(beatType > 0)) return;
    this.clock.beatType = beatType;
    const beats = this.beats.split('+').reduce((sum, count) => sum + Math.max(0, decimal(count) ?? 0), 0);
    if (beats > 0) this.clock.measureQuarters = (4 * beats) / beatType;
  }

  private transposition(): Transposition {
    const { chromatic, octaveChange } = this;
    return { chromatic, diatonic: this.diatonic ?? Math.round((chromatic * 7) / 12), octaveChange };
  }
}
