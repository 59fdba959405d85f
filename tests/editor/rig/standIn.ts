/** Runs the plugin's QML in a real script engine against a stand-in for the editor, with music made from the same bars as the files. */
import { execFile } from 'node:child_process';
import { appendFile, cp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { editorScript } from '../../../build/bundle.ts';
import { fifthsOf, type Pitch, parsePitch, pitchCents, soundingPitch } from '../../../core/pitch/pitch.ts';
import { temporaryFolder } from './folders.ts';
import type { PartOptions, Played } from './music.ts';
import { programNamed } from './programs.ts';
import { BUILT_PLUGIN } from './steps.ts';
import { together } from './together.ts';

const run = promisify(execFile);

/** The script engines that the editor's versions are built on. */
export const ENGINES: readonly {
  readonly name: string;
  readonly program: string | null;
  readonly install: string;
}[] = [
  {
    name: 'Qt 5.15',
    program: programNamed('/usr/lib/qt5/bin/qml'),
    install:
      'apt-get install qml qml-module-qtquick-controls2 qml-module-qtquick-layouts qml-module-qtquick-window2',
  },
  {
    name: 'Qt 6',
    program: programNamed('/usr/lib/qt6/bin/qml'),
    install:
      'apt-get install qml-qt6 qml6-module-qtquick qml6-module-qtquick-controls qml6-module-qtquick-layouts qml6-module-qtquick-window qml6-module-qtquick-templates qml6-module-qtqml qml6-module-qtqml-workerscript',
  },
];

export interface EngineStep {
  readonly take: string;
  readonly [argument: string]: unknown;
}

let prepared: Promise<string> | null = null;

/** The built plugin and the stand-in's modules in one folder. Made once. */
function folderWithPlugin(): Promise<string> {
  prepared ??= (async () => {
    const folder = await temporaryFolder('standin');
    const standIn = fileURLToPath(new URL('../standin/', import.meta.url));
    await cp(BUILT_PLUGIN, join(folder, 'bellhand'), { recursive: true });
    // QML cannot declare members that begin with a capital, so the script is given the stand-in's object for the root item.
    await appendFile(
      join(folder, 'bellhand/bellhand.js'),
      'Bellhand = Object.assign({}, Bellhand, { hostOf: (real => (root, file, engine) => real(root.facade(), file, engine))(Bellhand.hostOf) });\n',
    );
    for (const name of ['MuseScore', 'FileIO', 'host.js'])
      await cp(join(standIn, name), join(folder, 'modules', name), { recursive: true });
    await cp(join(standIn, 'drive.qml'), join(folder, 'drive.qml'));
    return folder;
  })();
  return prepared;
}

/** What each step returned, and what the engine complained of while it ran. */
export interface EngineRun {
  readonly results: readonly unknown[];
  readonly complaints: string;
}

const engines = new Map<string, (steps: readonly EngineStep[]) => Promise<EngineRun>>();

/**
 * Takes steps in a script engine, the first of which opens a score: then nothing is left of what was before, so that
 * everything asked for at the same time is done by one engine.
 * @param locale of the system, such as `de_DE`
 * @throws Error when a step fails
 */
export function inEngine(program: string, steps: readonly EngineStep[], locale = 'C'): Promise<EngineRun> {
  const name = `${program} ${locale}`;
  let engine = engines.get(name);
  if (!engine) {
    engine = together((tasks) => runTasks(program, tasks, locale));
    engines.set(name, engine);
  }
  return engine(steps);
}

async function runTasks(
  program: string,
  tasks: readonly (readonly EngineStep[])[],
  locale: string,
): Promise<Promise<EngineRun>[]> {
  const shared = await folderWithPlugin();
  const folder = await temporaryFolder('engine');
  try {
    await cp(shared, folder, { recursive: true });
    await writeFile(join(folder, 'task.js'), `.pragma library\nvar tasks = ${JSON.stringify(tasks)};\n`);
    const { stdout, stderr } = await run(
      program,
      ['-I', join(folder, 'modules'), join(folder, 'drive.qml')],
      {
        env: { ...engineEnvironment(folder), LC_ALL: `${locale}.UTF-8` },
        timeout: 110_000,
        maxBuffer: 1e8,
      },
    );
    const lines = `${stdout}\n${stderr}`.split('\n');
    const answer = lines.find((line) => line.includes('ANSWER '));
    if (!answer) throw new Error(`the engine gave no answer:\n${lines.join('\n')}`);
    const complaints = lines.filter((line) => line !== answer && line.trim() !== '').join('\n');
    const answers = JSON.parse(answer.slice(answer.indexOf('ANSWER ') + 7)) as readonly {
      results: unknown[];
      error?: string;
    }[];
    return answers.map(async ({ results, error }) => {
      if (error) throw new Error(`step ${results.length + 1} failed in the engine: ${error}`);
      return { results, complaints };
    });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Runs the trials of what the engines get wrong, built as the plugin's own script is. */
export async function trialsIn(program: string): Promise<unknown> {
  const folder = await temporaryFolder('trials');
  try {
    const script = await editorScript(fileURLToPath(new URL('../standin/trials.ts', import.meta.url)));
    await writeFile(join(folder, 'trials.js'), script);
    await writeFile(
      join(folder, 'trials.qml'),
      'import QtQuick 2.9\nimport "trials.js" as T\nItem { Component.onCompleted: { console.log("ANSWER " + JSON.stringify(T.Bellhand.trials())); Qt.quit() } }\n',
    );
    const { stdout, stderr } = await run(program, [join(folder, 'trials.qml')], {
      env: engineEnvironment(folder),
      timeout: 60_000,
    });
    const answer = `${stdout}\n${stderr}`.split('\n').find((line) => line.includes('ANSWER '));
    if (!answer) throw new Error(`the engine gave no answer:\n${stderr}`);
    return JSON.parse(answer.slice(answer.indexOf('ANSWER ') + 7));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function engineEnvironment(folder: string): NodeJS.ProcessEnv {
  return {
    PATH: process.env.PATH,
    HOME: folder,
    XDG_RUNTIME_DIR: folder,
    LC_ALL: 'C.UTF-8',
    QT_QPA_PLATFORM: 'offscreen',
    QT_QUICK_BACKEND: 'software',
  };
}

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
