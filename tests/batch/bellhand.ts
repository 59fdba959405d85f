/** Runs the built command, as a user does or within the tests' own process, and makes the files a user would have. */
import { type ChildProcessWithoutNullStreams, spawn, spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

/** Path of the built command. */
export const COMMAND = fileURLToPath(new URL('../../dist/bellhand.js', import.meta.url));

/** The built command as a function. */
const PROGRAM = new URL('../../dist/bellhand-program.js', import.meta.url).href;

export interface Run {
  readonly exit: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Whoever runs the tests may read any language; what is told is told in English. */
const inEnglish = (): NodeJS.ProcessEnv => ({ ...process.env, LC_ALL: 'C' });

/** Runs `bellhand` with these arguments in a folder, as a process of its own. */
export function bellhand(
  folder: string,
  args: readonly string[],
  input = '',
  env: NodeJS.ProcessEnv = inEnglish(),
): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], {
    cwd: folder,
    input,
    env,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  return { exit: status, stdout, stderr };
}

/**
 * Runs `bellhand` with these arguments in a folder, in this process: the same program, without what a start of Node costs.
 * One run at a time.
 * @param output a file to print into, at its end; none of it is given back then
 */
export async function bellhandHere(
  folder: string,
  args: readonly string[],
  input = '',
  env: NodeJS.ProcessEnv = inEnglish(),
  output: string | null = null,
): Promise<Run> {
  const { runProgram } = (await import(PROGRAM)) as typeof import('../../plugin/batch/program.ts');
  const own = mkdtempSync(join(tmpdir(), 'bellhand-streams-'));
  const [from, out, error] = ['input', 'output', 'error'].map((name) => join(own, name)) as [
    string,
    string,
    string,
  ];
  writeFileSync(from, input);
  writeFileSync(out, '');
  const streams = {
    input: openSync(from, 'r'),
    output: openSync(output === null ? out : resolve(folder, output), 'a'),
    error: openSync(error, 'w'),
  };
  const [home, code] = [process.cwd(), process.exitCode];
  try {
    process.chdir(folder);
    process.exitCode = undefined;
    await runProgram(args, env, streams);
    const exit = Number(process.exitCode ?? 0);
    return { exit, stdout: readFileSync(out, 'utf8'), stderr: readFileSync(error, 'utf8') };
  } finally {
    process.chdir(home);
    process.exitCode = code;
    for (const stream of Object.values(streams)) closeSync(stream);
    rmSync(own, { recursive: true });
  }
}

/** Starts `bellhand` and does not wait for its end. */
export function startBellhand(folder: string, args: readonly string[]): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, [COMMAND, ...args], { cwd: folder, env: inEnglish() });
}

/** A folder of its own with these files, gone when the test ends. */
export function folderWith(files: { readonly [name: string]: string | Uint8Array } = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return folder;
}

export function textOf(folder: string, name: string): string {
  return readFileSync(join(folder, name), 'utf8');
}

export interface PartShape {
  readonly name?: string;
  /** Semitones written to sounding; `null` for none stated. A horn in F by default. */
  readonly transpose?: number | null;
  readonly sound?: string;
}

/**
 * A score of one part in 4/4, all half notes.
 * @param notes  `C5` open, `C5+` stopped; sharps as `C#5`, flats as `Bb4`
 */
export function score(
  notes: readonly string[],
  { name = 'Horn in F', transpose = -7, sound }: PartShape = {},
): string {
  const measures: string[] = [];
  for (let i = 0; i < notes.length; i += 2) {
    const attributes =
      i > 0
        ? ''
        : `<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time>${
            transpose === null ? '' : `<transpose><chromatic>${transpose}</chromatic></transpose>`
          }</attributes>`;
    measures.push(
      `    <measure number="${i / 2 + 1}">${attributes}\n${notes
        .slice(i, i + 2)
        .map((note) => `      ${noteElement(note)}\n`)
        .join('')}    </measure>\n`,
    );
  }
  const instrument = sound
    ? `<score-instrument id="P1-I1"><instrument-name>${name}</instrument-name><instrument-sound>${sound}</instrument-sound></score-instrument>`
    : '';
  return `<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
  <part-list><score-part id="P1"><part-name>${name}</part-name>${instrument}</score-part></part-list>
  <part id="P1">
${measures.join('')}  </part>
</score-partwise>
`;
}

function noteElement(note: string): string {
  const match = /^([A-G])([#b]?)(\d)(\+?)$/.exec(note)!;
  const alter = match[2] === '' ? '' : `<alter>${match[2] === '#' ? 1 : -1}</alter>`;
  const sign = match[4] === '' ? '' : '<notations><technical><stopped/></technical></notations>';
  return `<note><pitch><step>${match[1]}</step>${alter}<octave>${match[3]}</octave></pitch><duration>2</duration><voice>1</voice><type>half</type>${sign}</note>`;
}
