/** Music for the stand-in for the editor, made from the same bars as the files. */
import { fifthsOf, type Pitch, parsePitch, pitchCents, soundingPitch } from '../../../core/pitch/pitch.ts';
import type { PartOptions, Played } from './music.ts';

/** Music as the stand-in holds it. Ticks: 480 to a quarter. */
export interface StandInMusic {
  readonly name: string;
  readonly ntracks: number;
  readonly measures: readonly { tick: number; ticks: number; numerator: number; denominator: number }[];
  readonly parts: readonly object[];
  readonly chords: readonly StandInChord[];
  readonly rests: readonly { tick: number; track: number }[];
  readonly texts: readonly object[];
  readonly slurs: readonly object[];
  readonly octaveLines: readonly object[];
  readonly tags: object;
}

interface StandInChord {
  tick: number;
  /** As notated. */
  ticks: number;
  track: number;
  notes: {
    pitch: number;
    tpc1: number;
    tpc2: number;
    line: number;
    color?: string;
    tieForward?: boolean;
    tieBack?: boolean;
    glissando?: boolean;
  }[];
  signs: string[];
  graces: StandInChord[];
  main?: boolean;
  noteType?: string;
}

/** The same bars as `scoreOf` writes, as the editor would hold them. */
export function standInOf(
  parts: readonly { readonly bars: readonly (readonly Played[])[]; readonly options?: PartOptions }[],
): StandInMusic {
  const beats = parts[0]!.options?.beats ?? 4;
  const music = {
    name: 'stand-in',
    ntracks: 4 * parts.length,
    measures: parts[0]!.bars.map((_, i) => ({
      tick: i * beats * 480,
      ticks: beats * 480,
      numerator: beats,
      denominator: 4,
    })),
    parts: parts.map(({ options = {} }, i) => ({
      startTrack: 4 * i,
      endTrack: 4 * i + 4,
      instrumentId: options.sound ?? 'brass.french-horn',
      midiProgram: 60,
      partName: options.name ?? 'Horn in F',
      longName: options.name ?? 'Horn in F',
    })),
    chords: [] as StandInChord[],
    rests: [] as { tick: number; track: number }[],
    texts: [] as object[],
    slurs: [] as object[],
    octaveLines: [] as object[],
    tags: {},
  };
  parts.forEach(({ bars, options = {} }, part) => {
    const voices = [bars, options.second ?? []];
    voices.forEach((voice, v) => {
      addVoice(music, voice, 4 * part + v, beats, options);
    });
  });
  return music;
}

function addVoice(
  music: {
    chords: StandInChord[];
    rests: { tick: number; track: number }[];
    texts: object[];
    slurs: object[];
  },
  bars: readonly (readonly Played[])[],
  track: number,
  beats: number,
  options: PartOptions,
): void {
  let slurFrom = 0;
  let graces: StandInChord[] = [];
  bars.forEach((bar, b) => {
    let tick = b * beats * 480;
    for (const played of bar) {
      const { pitch, quarters = 1, grace, words, slur, triplet } = played;
      if (words)
        music.texts.push({
          kind: 'STAFF_TEXT',
          tick,
          track,
          text: words,
          fontSize: 10,
          fontStyle: 0,
          placement: 0,
        });
      if (slur === '+') slurFrom = tick;
      if (slur === '-') music.slurs.push({ tick: slurFrom, ticks: tick - slurFrom, track, track2: track });
      if (pitch === null) music.rests.push({ tick, track });
      else {
        const chord = chordOf(played, tick, track, options);
        if (grace) graces.push({ ...chord, main: true, noteType: 'ACCIACCATURA' });
        else {
          music.chords.push({ ...chord, graces });
          graces = [];
        }
      }
      if (!grace) tick += Math.round(480 * quarters * (triplet ? 2 / 3 : 1));
    }
  });
}

function chordOf(played: Played, tick: number, track: number, options: PartOptions): StandInChord {
  const { pitch, quarters = 1, sign, glissando, tie, colour } = played;
  const [chromatic, diatonic] = options.transpose ?? [-7, -4];
  const transposition = { chromatic, diatonic, octaveChange: 0 };
  const names = typeof pitch === 'string' ? [pitch] : pitch!;
  return {
    tick,
    ticks: 480 * quarters,
    track,
    signs: sign === 'stopped' ? ['brassMuteClosed'] : sign ? ['brassMuteOpen'] : [],
    graces: [],
    notes: names.map((name, i) => {
      const written = parsePitch(name);
      const sounding = soundingPitch(written, transposition);
      return {
        pitch: Math.round(pitchCents(sounding) / 100),
        tpc1: fifthsOf(sounding) + 14,
        tpc2: fifthsOf(written) + 14,
        line: lineOf(written, options.clef ?? 'G'),
        ...(colour ? { color: colour } : {}),
        tieForward: tie === '+',
        tieBack: tie === '-',
        glissando: i === 0 && glissando === '+',
      };
    }),
  };
}

/** Steps below the top line: F5 in the treble clef, A3 in the bass clef. */
function lineOf({ step, octave }: Pitch, clef: 'G' | 'F'): number {
  const steps = (name: string, at: number) => 'CDEFGAB'.indexOf(name) + 7 * at;
  return (clef === 'G' ? steps('F', 5) : steps('A', 3)) - steps(step, octave);
}
