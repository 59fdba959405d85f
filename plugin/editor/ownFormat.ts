/**
 * Host 3.2–3.4: signs, slurs, ties and glissandi are not in the plugin interface. They are read from the score in the
 * host's own format, out of which the horns' staves are cut.
 */
import type { HandSign } from '../../core/index.ts';
import { signNamed } from './handSigns.ts';
import { type HostInterval, type HostPart, TICKS_PER_QUARTER } from './hostApi.ts';
import type { OctaveLine, PartEvidence, Slur } from './partEvidence.ts';
import { NoteSet, PlaceMap } from './placeMap.ts';
import type { ScoreChord } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';
import type { BarEvent, BarReader, PartText } from './writtenBars.ts';

/** Cuts the staves of one part out of a written score. */
export function partText(written: string, { startTrack, endTrack }: HostPart): PartText {
  const staves: string[][] = [];
  for (let staff = startTrack / TRACKS_PER_STAFF; staff < endTrack / TRACKS_PER_STAFF; staff++) {
    // By its indentation: definitions of staves and the staves of part scores stand deeper.
    const start = written.indexOf(`\n    <Staff id="${staff + 1}">`);
    const end = written.indexOf('\n      </Staff>', start);
    const bars = written.slice(start, end).split('\n      <Measure').slice(1);
    // Rests over several bars stand beside the bars that they replace on paper.
    staves.push(bars.filter((bar) => bar.indexOf('<multiMeasureRest>') < 0));
  }
  return { interval: intervalIn(written, startTrack), staves };
}

/** The part's instrument stands after its first staff, which is defined deeper than the staff with the music. */
function intervalIn(written: string, startTrack: number): HostInterval | null {
  const start = written.indexOf(`\n      <Staff id="${startTrack / TRACKS_PER_STAFF + 1}">`);
  const definition = start < 0 ? '' : written.slice(start, written.indexOf('</Part>', start));
  const numberIn = (name: string) => Number((definition.match(`<${name}>(-?\\d+)<`) ?? [])[1] ?? 0);
  const interval = { chromatic: numberIn('transposeChromatic'), diatonic: numberIn('transposeDiatonic') };
  return interval.chromatic === 0 && interval.diatonic === 0 ? null : interval;
}

/** What the text of a part tells beyond its notes. @param walk the part as it stood when it was written */
export function evidenceIn({ interval, staves }: PartText, walk: PartWalk, bars: BarReader): PartEvidence {
  const gathered = new Gathered();
  const chords = chordsByVoice(walk);
  staves.forEach((staff, staffIndex) => {
    staff.forEach((bar, measureIndex) => {
      for (const event of bars.eventsIn(bar)) {
        const track = walk.part.startTrack + TRACKS_PER_STAFF * staffIndex + event.voice;
        const inBar = chords.get(`${measureIndex}/${track}`) ?? [];
        gathered.take(event, track, inBar[event.chord], () =>
          nextChord(chords, walk, measureIndex, track, event.chord),
        );
      }
    });
  });
  return { ...gathered.evidence(walk), interval };
}

const TRACKS_PER_STAFF = 4;

/** The order of writing: graces before their chord, as its list has them. */
function chordsByVoice(walk: PartWalk): Map<string, ScoreChord[]> {
  const voices = new Map<string, ScoreChord[]>();
  for (const { chords } of walk.bars)
    for (const chord of chords) {
      const key = `${chord.measureIndex}/${chord.track}`;
      const voice = voices.get(key);
      if (voice) voice.push(chord);
      else voices.set(key, [chord]);
    }
  voices.forEach((voice) => {
    voice.sort((a, b) => a.tick - b.tick || graceOrder(a) - graceOrder(b));
  });
  return voices;
}

function graceOrder({ graceIndex }: ScoreChord): number {
  return graceIndex ?? Number.MAX_SAFE_INTEGER;
}

/** The tick of a chord of a voice, or of the next one in the bars that follow; past the end where there is none. */
function nextChord(
  chords: ReadonlyMap<string, readonly ScoreChord[]>,
  { measures }: PartWalk,
  measureIndex: number,
  track: number,
  index: number,
): number {
  for (let bar = measureIndex, at = index; bar < measures.length; bar++, at = 0) {
    const chord = chords.get(`${bar}/${track}`)?.[at];
    if (chord) return chord.tick;
  }
  return measures.length > 0 ? measures[measures.length - 1]!.endTick : 0;
}

/** The rank of a note among the player's, 0 at the top, of its place among all notes of its chord from the bottom. */
function rankFromBelow({ notes, others }: ScoreChord, fromBelow: number): number {
  if (others.length === 0) return notes.length - 1 - fromBelow;
  const all = notes.concat(others).sort((a, b) => a.line - b.line || b.pitch - a.pitch);
  return notes.indexOf(all[all.length - 1 - fromBelow]!);
}

/** Puts the ends of lines together. */
class Gathered {
  private readonly signs = new PlaceMap<HandSign>();
  private readonly glissandi = new NoteSet();
  private readonly tiesFrom = new NoteSet();
  private readonly tiesInto = new NoteSet();
  private readonly octaveLines: OctaveLine[] = [];
  private readonly lineWords: { tick: number; track: number; text: string }[] = [];
  private readonly slurStarts: ScoreChord[] = [];
  private readonly slurEnds: { readonly at: ScoreChord; readonly bars: number; readonly quarters: number }[] =
    [];
  /** Octave lines that are open, the oldest first. */
  private readonly openOctaves: { tick: number; track: number; octaves: number }[] = [];

  take(event: BarEvent, track: number, chord: ScoreChord | undefined, tickThere: () => number): void {
    const { kind, isStart, text } = event;
    if (kind === 'Ottava') this.takeOctaves(isStart, text, track, tickThere());
    else if (kind === 'TextLine') {
      if (isStart && text !== '') this.lineWords.push({ tick: tickThere(), track, text });
    } else if (chord) this.takeAtChord(event, chord);
  }

  evidence(walk: PartWalk): Omit<PartEvidence, 'interval'> {
    const { signs, glissandi, octaveLines, lineWords } = this;
    const ties = { from: this.tiesFrom, into: this.tiesInto };
    return { signs, glissandi, ties, slurs: this.slurs(walk), octaveLines, lineWords };
  }

  private takeAtChord({ kind, isStart, text, note, bars, quarters }: BarEvent, chord: ScoreChord): void {
    const rank = rankFromBelow(chord, note);
    switch (kind) {
      case 'sign': {
        const sign = signNamed(text);
        if (sign && !this.signs.has(chord)) this.signs.set(chord, sign);
        break;
      }
      case 'Slur':
        if (isStart) this.slurStarts.push(chord);
        else this.slurEnds.push({ at: chord, bars, quarters });
        break;
      case 'Tie':
        (isStart ? this.tiesFrom : this.tiesInto).add(chord, rank);
        break;
      case 'Glissando':
        if (isStart) this.glissandi.add(chord, rank);
    }
  }

  /** An end says how far back its beginning is; in which voice it does not say. */
  private slurs({ measures }: PartWalk): Slur[] {
    const left = this.slurStarts.slice();
    const slurs: Slur[] = [];
    for (const { at: to, bars, quarters } of this.slurEnds) {
      const from = measures[to.measureIndex + bars];
      if (!from) continue;
      const tick = from.tick + to.tick - measures[to.measureIndex]!.tick + quarters * TICKS_PER_QUARTER;
      const here = left.filter((start) => Math.abs(start.tick - tick) < 2 && start !== to);
      const start = here.filter(({ track }) => track === to.track)[0] ?? here[0];
      if (!start) continue;
      left.splice(left.indexOf(start), 1);
      slurs.push({
        fromTick: start.tick,
        fromTrack: start.track,
        fromGrace: start.graceIndex,
        toTick: to.tick,
        toTrack: to.track,
        toGrace: to.graceIndex,
      });
    }
    return slurs;
  }

  private takeOctaves(isStart: boolean, name: string, track: number, tick: number): void {
    if (isStart) {
      this.openOctaves.push({ tick, track, octaves: OCTAVES.get(name) ?? 0 });
      return;
    }
    const open = this.openOctaves.shift();
    if (open)
      this.octaveLines.push({ fromTick: open.tick, toTick: tick, track: open.track, octaves: open.octaves });
  }
}

/** What octave lines add, by the host's own names. */
const OCTAVES: ReadonlyMap<string, number> = new Map([
  ['8va', 1],
  ['8vb', -1],
  ['15ma', 2],
  ['15mb', -2],
  ['22ma', 3],
  ['22mb', -3],
]);
