/** Everything the plugin interface shows of the horn parts without the user's selection, boiled down to a short text. */
import { hornParts } from './hornParts.ts';
import {
  type Host,
  type HostChord,
  type HostNote,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';

/**
 * Two digests of a score are the same as long as its printed notes, ties, signs of chords, glissandi, rests, words, tempos,
 * times and the parts' names are. Slurs and octave lines are not in it.
 */
export function scoreDigest(host: Host, score: HostScore): string {
  const digest = new Digest();
  const parts = hornParts(score);
  for (const { instrumentId, partName, longName } of parts)
    digest.addText(`${instrumentId}/${partName}/${longName}`);
  const { CHORD } = host.root.Element;
  // No cursor: it may be the very place where the user is writing.
  for (let measure = parts.length > 0 ? score.firstMeasure : null; measure; measure = measure.nextMeasure) {
    const { numerator, denominator } = measure.timesigActual;
    digest.add(numerator, denominator, Number(measure.irregular), Number(measure.noOffset) || 0);
    for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
      digest.add(segment.tick);
      const { annotations } = segment;
      for (let i = 0; i < annotations.length; i++) {
        const { type, track, text, tempo } = annotations[i] as HostText;
        digest.add(type, track, Number(tempo) || 0);
        if (typeof text === 'string') digest.addText(text);
      }
      for (const { startTrack, endTrack } of parts) {
        for (let track = startTrack; track < endTrack; track++) {
          const element = segment.elementAt(track);
          if (!element) continue;
          digest.add(track, element.type);
          if (element.type !== CHORD) continue;
          addChord(digest, element as HostChord);
          for (const grace of listOf((element as HostChord).graceNotes)) addChord(digest, grace);
        }
      }
    }
  }
  return digest.text;
}

function addChord(digest: Digest, { notes, articulations }: HostChord): void {
  for (let i = 0; i < notes.length; i++) addNote(digest, notes[i]!);
  for (const { symbol } of listOf(articulations)) digest.addText(String(symbol));
}

function addNote(
  digest: Digest,
  { pitch, tpc1, tpc2, line, visible, play, tieForward, spannerForward }: HostNote,
): void {
  digest.add(pitch, tpc1, tpc2, line, visible ? 1 : 0, play === false ? 1 : 0, tieForward ? 1 : 0);
  for (const { type } of listOf(spannerForward)) digest.add(type);
}

/** Numbers folded into two sums of different kinds, so that one change does not hide another. */
class Digest {
  private count = 0;
  private sum = 0;
  private other = 0;

  add(...values: readonly number[]): void {
    for (const value of values) {
      this.count += 1;
      this.sum = (Math.imul(this.sum, 31) + value * 1000) | 0;
      this.other = (Math.imul(this.other ^ (value * 1000), 16777619) + this.count) | 0;
    }
  }

  addText(text: string): void {
    this.add(text.length);
    for (let i = 0; i < text.length; i++) this.add(text.charCodeAt(i));
  }

  get text(): string {
    return `${this.count}/${this.sum}/${this.other}`;
  }
}
