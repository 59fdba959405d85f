/** Runs the plugin's QML in a real script engine against a stand-in for the editor. */
import { execFile } from 'node:child_process';
import { appendFile, cp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { temporaryFolder } from './folders.ts';
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

/**
 * Runs a script in a script engine by itself.
 * @param script defines `Bellhand`, with a function `trials` that tells what came out
 * @param timeout in milliseconds
 */
export async function trialsIn(program: string, script: string, timeout = 60_000): Promise<unknown> {
  const folder = await temporaryFolder('trials');
  try {
    await writeFile(join(folder, 'trials.js'), script);
    await writeFile(
      join(folder, 'trials.qml'),
      'import QtQuick 2.9\nimport "trials.js" as T\nItem { Component.onCompleted: { try { console.log("ANSWER " + JSON.stringify(T.Bellhand.trials())); } finally { Qt.quit(); } } }\n',
    );
    const { stdout, stderr } = await run(program, [join(folder, 'trials.qml')], {
      env: engineEnvironment(folder),
      timeout,
      maxBuffer: 1e8,
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
