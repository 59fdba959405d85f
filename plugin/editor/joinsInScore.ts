/** What begins and ends at the notes of a part: slurs, ties and glissandi, in the words the reader of files uses. */
import { Joins } from '../musicxml/read/joins.ts';
import type { JoinEnd } from '../musicxml/read/noteContent.ts';
import type { ReadNote } from '../musicxml/read/readNote.ts';
import type { Host } from './hostApi.ts';
import { type PartEvidence, placeKey, type Slur, startsGlissando, tiesAt } from './partEvidence.ts';
import type { ScoreChord } from './scoreWalk.ts';

/** Says of each chord what begins and ends there, in the words the reader of files uses. */
export function joinNotes(
  host: Host,
  chords: readonly ScoreChord[],
  read: readonly ReadNote[][],
  evidence: PartEvidence,
): Joins {
  const joins = new Joins();
  const glissandi = new Set<string>();
  const slurs = slurEnds(evidence.slurs);
  read.forEach((members, i) => {
    const chord = chords[i]!;
    const slursHere = slurs.get(placeKey(chord.tick, chord.track, chord.graceIndex)) ?? [];
    members.forEach(({ note }, fromBelow) => {
      const rank = members.length - 1 - fromBelow;
      const ends = fromBelow === 0 ? slursHere.slice() : [];
      const label = `${chord.track}/${fromBelow}`;
      if (glissandi.delete(label))
        ends.push({ kind: 'glissando', isStart: false, label: `glissando ${label}` });
      if (startsGlissando(host, chord, rank, evidence)) {
        glissandi.add(label);
        ends.push({ kind: 'glissando', isStart: true, label: `glissando ${label}` });
      }
      const ties = tiesAt(chord, rank, evidence);
      joins.take(note, ends, ties.from, ties.into, false);
    });
  });
  return joins;
}

/** Ends before beginnings, by the place where they are. */
function slurEnds(slurs: readonly Slur[]): Map<string, JoinEnd[]> {
  const ends = new Map<string, JoinEnd[]>();
  const add = (place: string, isStart: boolean, label: string) => {
    const here = ends.get(place);
    if (here) here.push({ kind: 'slur', isStart, label });
    else ends.set(place, [{ kind: 'slur', isStart, label }]);
  };
  slurs.forEach(({ fromTick, fromTrack, fromGrace, toTick, toTrack, toGrace }, i) => {
    add(placeKey(toTick, toTrack, toGrace), false, `slur ${i}`);
    add(placeKey(fromTick, fromTrack, fromGrace), true, `slur ${i}`);
  });
  return ends;
}
