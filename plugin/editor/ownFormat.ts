/**
 * Host 3.2–3.4: signs, slurs, ties and glissandi are not in the plugin interface. The host writes the score in its own
 * format, which touches neither the undo history nor the selection; the horns' staves are cut out of that text, and of
 * those only bars that hold a line or a sign are parsed, each once for as long as it stays the same.
 */
import { SaxesParser } from 'saxes';
import type { HandSign } from '../../core/index.ts';
import { EditorFault } from './editorFault.ts';
import { signNamed } from './handSigns.ts';
import { type Host, type HostInterval, type HostPart, type HostScore, TICKS_PER_QUARTER } from './hostApi.ts';
import { noteKey, type OctaveLine, type PartEvidence, placeKey, type Slur } from './partEvidence.ts';
import type { PartWalk, ScoreChord } from './scoreWalk.ts';
import { throughTemporaryFile } from './temporaryFile.ts';

/** A part as the host writes it. */
export interface PartText {
  /** What its instrument adds from written to sounding pitch; `null` where it says nothing. */
  readonly interval: HostInterval | null;
  /** The bars, staff by staff. */
  readonly staves: readonly (readonly string[])[];
}

/** The score as the host itself writes it. Nothing is kept on disk. */
export function writtenScore(host: Host, score: HostScore): string {
  return throughTemporaryFile(host.file, 'mscx', (path) => {
    if (!host.root.writeScore(score, path, 'mscx'))
      throw new EditorFault(({ notExported }) => notExported(path));
  });
}

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

/** Something that stands at, or before, a chord of a bar. */
interface BarEvent {
  readonly kind: 'sign' | 'Slur' | 'Tie' | 'Glissando' | 'Ottava' | 'TextLine';
  readonly voice: number;
  /** Place among the chords and graces of its voice in the bar. */
  readonly chord: number;
  /** Place in the chord as it is written, from the bottom; −1 for what belongs to no note. */
  readonly note: number;
  /** Of a line: whether this is its beginning. */
  readonly isStart: boolean;
  /** Of a sign its glyph, of an octave line its name, of a line of text its words. */
  readonly text: string;
  /** Of a line: how far its other end is, in bars and quarters. */
  readonly bars: number;
  readonly quarters: number;
}

/** Parses bars, and keeps what it found for bars that come again. */
export class BarReader {
  private known = new Map<string, readonly BarEvent[]>();

  eventsIn(bar: string): readonly BarEvent[] {
    if (bar.indexOf('<Spanner') < 0 && bar.indexOf('brassMute') < 0) return [];
    let events = this.known.get(bar);
    if (!events) {
      events = parsed(bar);
      this.known.set(bar, events);
    }
    return events;
  }

  /** Forgets all but the bars of these parts. */
  keepOnly(parts: readonly PartText[]): void {
    const kept = new Map<string, readonly BarEvent[]>();
    for (const { staves } of parts)
      for (const bars of staves)
        for (const bar of bars) {
          const events = this.known.get(bar);
          if (events) kept.set(bar, events);
        }
    this.known = kept;
  }
}

/** Lines whose ends matter. */
const LINES: readonly string[] = ['Slur', 'Tie', 'Glissando', 'Ottava', 'TextLine'];

function parsed(bar: string): readonly BarEvent[] {
  const events: BarEvent[] = [];
  const path: string[] = [];
  const at = { voice: -1, chord: -1, note: -1 };
  let line: { kind: string; text: string; bars: number; quarters: number } | null = null;
  let text = '';
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    path.push(name);
    text = '';
    if (name === 'voice') {
      at.voice += 1;
      at.chord = -1;
    } else if (name === 'Chord') {
      at.chord += 1;
      at.note = -1;
    } else if (name === 'Note') at.note += 1;
    else if (name === 'Spanner')
      line = { kind: String((attributes as { type?: string }).type), text: '', bars: 0, quarters: 0 };
  });
  parser.on('text', (part) => {
    text += part;
  });
  parser.on('closetag', ({ name }) => {
    path.pop();
    const holder = path[path.length - 1];
    const isInNote = path.indexOf('Note') >= 0;
    const note = isInNote ? at.note : -1;
    // What stands outside a chord belongs to the next one.
    const chord = path.indexOf('Chord') >= 0 ? at.chord : at.chord + 1;
    if (name === 'subtype' && holder === 'Articulation')
      events.push({ kind: 'sign', voice: at.voice, chord, note, isStart: true, text, bars: 0, quarters: 0 });
    else if (line && ((name === 'subtype' && holder === 'Ottava') || name === 'beginText')) line.text = text;
    else if (line && name === 'measures') line.bars = Number(text);
    else if (line && name === 'fractions') line.quarters = quartersIn(text);
    else if (line && (name === 'next' || name === 'prev') && LINES.indexOf(line.kind) >= 0) {
      const kind = line.kind as BarEvent['kind'];
      const { bars, quarters } = line;
      events.push({
        kind,
        voice: at.voice,
        chord,
        note,
        isStart: name === 'next',
        text: line.text,
        bars,
        quarters,
      });
    } else if (name === 'Spanner') line = null;
  });
  parser.write(`<Measure${bar}`).close();
  return events;
}

/** A length as the host writes it: a fraction of a whole note. */
function quartersIn(fraction: string): number {
  const [numerator, denominator] = fraction.split('/').map(Number);
  return (4 * (numerator ?? 0)) / (denominator ?? 1);
}

/** The order of writing: graces before their chord, as its list has them. */
function chordsByVoice(walk: PartWalk): Map<string, ScoreChord[]> {
  const voices = new Map<string, ScoreChord[]>();
  for (const chord of walk.chords) {
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
  private readonly signs = new Map<string, HandSign>();
  private readonly glissandi = new Set<string>();
  private readonly tiesFrom = new Set<string>();
  private readonly tiesInto = new Set<string>();
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
    const place = placeKey(chord.tick, chord.track, chord.graceIndex);
    const key = noteKey(place, rankFromBelow(chord, note));
    switch (kind) {
      case 'sign': {
        const sign = signNamed(text);
        if (sign && !this.signs.has(place)) this.signs.set(place, sign);
        break;
      }
      case 'Slur':
        if (isStart) this.slurStarts.push(chord);
        else this.slurEnds.push({ at: chord, bars, quarters });
        break;
      case 'Tie':
        (isStart ? this.tiesFrom : this.tiesInto).add(key);
        break;
      case 'Glissando':
        if (isStart) this.glissandi.add(key);
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
