/** A publisher's catalogue: spread over machines by ssh, stopped and started again, and asked which bars are impossible. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { createConnection, createServer } from 'node:net';
import { userInfo } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DuckDBInstance } from '@duckdb/node-api';
import { afterEach, describe, expect, test } from 'vitest';
import { folderWith, score } from './bellhand.ts';

const CATALOGUE = new URL('../../plugin/batch/catalogue/', import.meta.url);
const SCRIPT = fileURLToPath(new URL('catalogue.sh', CATALOGUE));
const QUERY = readFileSync(new URL('impossible-bars.sql', CATALOGUE), 'utf8');
const SSHD = '/usr/sbin/sshd';

const hasParallel = spawnSync('parallel', ['--version']).status === 0;
const hasSsh = existsSync(SSHD) && spawnSync('ssh', ['-V']).status === 0;
if (!hasParallel || !hasSsh)
  console.warn('SKIPPED: spreading a catalogue needs parallel, openssh-server and openssh-client');

const FINE = score(['C5+', 'E5']);
/** F2 lies a fifth below the lowest stopped note a lip can force; common practice, no source. */
const IMPOSSIBLE = score(['C5+', 'E5', 'F2+', 'E5', 'C5', 'E5', 'F2+', 'F2+']);

/** A folder with a blank in its name, of two works in many parts, two of them with impossible bars and one unreadable. */
function publisher(partsOfEach: number): string {
  const folder = join(folderWith(), 'our house');
  for (const work of ['harbour', 'mill']) {
    mkdirSync(join(folder, 'parts', work), { recursive: true });
    for (let i = 1; i <= partsOfEach; i++)
      writeFileSync(join(folder, 'parts', work, `horn ${i}.musicxml`), FINE);
  }
  writeFileSync(join(folder, 'parts/harbour/horn 3.musicxml'), IMPOSSIBLE);
  writeFileSync(join(folder, 'parts/mill/horn 2.musicxml'), score(['F2+', 'E5']));
  writeFileSync(join(folder, 'parts/mill/draft.xml'), 'no score');
  return folder;
}

function catalogue(folder: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync('bash', [SCRIPT, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, NODE: process.execPath },
  });
  return { exit: status, stdout, stderr };
}

function linesIn(folder: string): { file: string; error?: string }[] {
  return readdirSync(join(folder, 'catalogue'))
    .filter((name) => name.endsWith('.jsonl'))
    .flatMap((name) =>
      readFileSync(join(folder, 'catalogue', name), 'utf8')
        .trimEnd()
        .split('\n'),
    )
    .map((line) => JSON.parse(line));
}

async function impossibleBars(folder: string): Promise<unknown[]> {
  const connection = await (await DuckDBInstance.create()).connect();
  await connection.run(`SET VARIABLE lines = '${join(folder, 'catalogue', '*.jsonl')}'`);
  const rows = (await connection.runAndReadAll(QUERY)).getRowObjectsJson();
  connection.closeSync();
  return rows.map(({ work, part, bars, findings }) => [work, part, bars, findings]);
}

const FOUND = [
  ['harbour', 'Horn in F', '2, 4', 3],
  ['mill', 'Horn in F', '1', 1],
];

describe('shares, as a batch scheduler runs them', () => {
  test('every part has one line, and the engine finds the impossible bars', async () => {
    const folder = publisher(60);
    expect(catalogue(folder, '--list', 'parts', 'catalogue')).toEqual({ exit: 0, stdout: '2\n', stderr: '' });
    for (const number of ['2', '1'])
      expect(catalogue(folder, '--share', number, 'catalogue')).toEqual({ exit: 0, stdout: '', stderr: '' });
    const lines = linesIn(folder);
    expect(new Set(lines.map(({ file }) => file)).size).toBe(121);
    expect(lines).toHaveLength(121);
    expect(lines.filter(({ error }) => error).map(({ file }) => file.split('/').pop())).toEqual([
      'draft.xml',
    ]);
    expect(await impossibleBars(folder)).toEqual(FOUND);
  });

  test('a share that was cut short is done again, a whole one is not; new and revised parts are added', async () => {
    const folder = publisher(5);
    catalogue(folder, '--list', 'parts', 'catalogue');
    catalogue(folder, '--share', '1', 'catalogue');
    const share = join(folder, 'catalogue/1.jsonl');
    const whole = readFileSync(share, 'utf8');
    utimesSync(share, 1, 1);
    catalogue(folder, '--share', '1', 'catalogue');
    expect(readFileSync(share, 'utf8')).toBe(whole);
    writeFileSync(share, whole.slice(0, 300));
    catalogue(folder, '--share', '1', 'catalogue');
    expect(readFileSync(share, 'utf8')).toBe(whole);

    utimesSync(join(folder, 'catalogue/parts.txt'), 1_700_000_000, 1_700_000_000);
    for (const { file } of linesIn(folder)) utimesSync(file, 1_600_000_000, 1_600_000_000);
    writeFileSync(join(folder, 'parts/harbour/horn 3.musicxml'), FINE);
    writeFileSync(join(folder, 'parts/mill/horn 9.musicxml'), score(['E5', 'E5', 'F2+', 'E5']));
    utimesSync(join(folder, 'parts/mill/horn 9.musicxml'), 1_600_000_000, 1_600_000_000);
    expect(catalogue(folder, '--list', 'parts', 'catalogue').stdout).toBe('1\n');
    catalogue(folder, '--share', '1', 'catalogue');
    expect(linesIn(folder)).toHaveLength(13);
    expect(await impossibleBars(folder)).toEqual([FOUND[1], ['mill', 'Horn in F', '2', 1]]);
  });

  test('says how it is used, and what is not there', () => {
    const folder = folderWith();
    expect(catalogue(folder)).toMatchObject({ exit: 2, stdout: '' });
    expect(catalogue(folder).stderr).toMatch(/catalogue\.sh PARTS CATALOGUE/);
    expect(catalogue(folder, 'none', 'catalogue')).toMatchObject({
      exit: 2,
      stderr: 'catalogue: none: there is no such folder of parts: check the name\n',
    });
    expect(catalogue(folder, '--share', '1', '.').stderr).toMatch(/^catalogue: \.: no parts are listed here/);
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe.skipIf(!hasParallel || !hasSsh)('spread by ssh', () => {
  let daemon: ChildProcess | null = null;
  afterEach(() => void daemon?.kill());

  /** A daemon on the loopback device with keys of its own; what `parallel --ssh` needs to reach it. */
  async function machine(): Promise<string> {
    const keys = folderWith();
    for (const name of ['host', 'user'])
      spawnSync('ssh-keygen', ['-q', '-t', 'ed25519', '-N', '', '-f', join(keys, name)]);
    const port = await freePort();
    if (process.getuid?.() === 0) mkdirSync('/run/sshd', { recursive: true });
    const options = [
      'ListenAddress=127.0.0.1',
      `Port=${port}`,
      `HostKey=${keys}/host`,
      `AuthorizedKeysFile=${keys}/user.pub`,
      `PidFile=${keys}/pid`,
      'StrictModes=no',
      'UsePAM=no',
      'PasswordAuthentication=no',
      'PermitRootLogin=yes',
    ];
    daemon = spawn(SSHD, ['-D', '-f', '/dev/null', ...options.flatMap((option) => ['-o', option])]);
    for (let tries = 0; tries < 100 && !(await answers(port)); tries++)
      await new Promise((resolve) => setTimeout(resolve, 50));
    return `ssh -p ${port} -i ${keys}/user -o BatchMode=yes -o StrictHostKeyChecking=no -o UserKnownHostsFile=/dev/null -o LogLevel=ERROR -l ${userInfo().username}`;
  }

  test('gives one line a part, and goes on where it was stopped', async () => {
    const folder = publisher(110);
    const ssh = await machine();
    const spread = () => catalogue(folder, 'parts', 'catalogue', '--ssh', ssh, '--sshlogin', '2/127.0.0.1');
    expect(spread()).toEqual({ exit: 0, stdout: '', stderr: '' });
    const log = join(folder, 'catalogue/parallel.log');
    expect(
      readFileSync(log, 'utf8')
        .trim()
        .split('\n')
        .slice(1)
        .map((line) => line.split('\t')[1]),
    ).toEqual(Array(3).fill('127.0.0.1'));
    expect(linesIn(folder)).toHaveLength(221);
    expect(await impossibleBars(folder)).toEqual(FOUND);
    // As if it had been stopped: one share was never begun, and of another only the unfinished file is there.
    const before = readFileSync(join(folder, 'catalogue/2.jsonl'), 'utf8');
    rmSync(join(folder, 'catalogue/1.jsonl'));
    renameSync(join(folder, 'catalogue/2.jsonl'), join(folder, 'catalogue/2.jsonl.abcdef'));
    expect(spread().exit).toBe(0);
    expect(linesIn(folder)).toHaveLength(221);
    expect(readFileSync(join(folder, 'catalogue/2.jsonl'), 'utf8')).toBe(before);
  });
});

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

function answers(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = createConnection(port, '127.0.0.1');
    socket.once('connect', () => resolve(true)).once('error', () => resolve(false));
    socket.once('connect', () => socket.end());
  });
}
