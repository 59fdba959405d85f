/** What begins and ends at the notes of a part: slurs, ties and glissandi, in the words the reader of files uses. */
import { Joins, type OpenNote } from '../musicxml/read/joins.ts';
import type { JoinEnd } from '../musicxml/read/noteContent.ts';
import { type PartEvidence, type Slur, startsGlissando, tiesAt } from './partEvidence.ts';
import { type Place, PlaceMap } from './placeMap.ts';
import type { ScoreChord } from './scoreBar.ts';

/** Gathers the joins of a part while its chords are read, in a voice in the order of the music. */
export class JoinsInScore {
  private readonly evidence: PartEvidence;
  private readonly slurs: PlaceMap<JoinEnd[]>;
  private readonly joins = new Joins();
  /** Voices, and places in their chords, from which a glissando leads to the next chord. */
  private readonly glissandi = new Set<string>();

  constructor(evidence: PartEvidence) {
    this.evidence = evidence;
    this.slurs = slurEnds(evidence.slurs);
  }

  /** @param notes of the chord, from the bottom */
  take(chord: ScoreChord, notes: readonly OpenNote[]): void {
    const slursHere = this.slurs.get(chord) ?? NO_ENDS;
    notes.forEach((note, fromBelow) => {
      const rank = notes.length - 1 - fromBelow;
      const slurs = fromBelow === 0 ? slursHere : NO_ENDS;
      const { from, into } = tiesAt(chord, rank, this.evidence);
      this.joins.take(note, this.withGlissandi(slurs, chord, rank, fromBelow), from, into, false);
    });
  }

  /** Writes the joins into the notes. @param notes all notes of the part, in playing order */
  resolve(notes: readonly OpenNote[]): void {
    this.joins.resolve(notes);
  }

  private withGlissandi(
    ends: readonly JoinEnd[],
    chord: ScoreChord,
    rank: number,
    fromBelow: number,
  ): readonly JoinEnd[] {
    const isStart = startsGlissando(chord, rank, this.evidence);
    // Of most parts this is asked note by note, and never true.
    if (!isStart && this.glissandi.size === 0) return ends;
    const place = `${chord.track}/${fromBelow}`;
    const label = `glissando ${place}`;
    const here: JoinEnd[] = [];
    if (this.glissandi.delete(place)) here.push({ kind: 'glissando', isStart: false, label });
    if (isStart) {
      this.glissandi.add(place);
      here.push({ kind: 'glissando', isStart: true, label });
    }
    return ends.concat(here);
  }
}

const NO_ENDS: readonly JoinEnd[] = [];

/** Ends before beginnings, by the place where they are. */
function slurEnds(slurs: readonly Slur[]): PlaceMap<JoinEnd[]> {
  const ends = new PlaceMap<JoinEnd[]>();
  const add = (place: Place, isStart: boolean, label: string) => {
    const here = ends.get(place);
    if (here) here.push({ kind: 'slur', isStart, label });
    else ends.set(place, [{ kind: 'slur', isStart, label }]);
  };
  slurs.forEach(({ fromTick, fromTrack, fromGrace, toTick, toTrack, toGrace }, i) => {
    add({ tick: toTick, track: toTrack, graceIndex: toGrace }, false, `slur ${i}`);
    add({ tick: fromTick, track: fromTrack, graceIndex: fromGrace }, true, `slur ${i}`);
  });
  return ends;
}
