/** Imports run one way through the core, from what knows least to what knows most; nothing runs in a circle. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, test } from 'vitest';

const CORE = new URL('../../core', import.meta.url).pathname;

/** Rooms of the core, each allowed to know those above it. A folder stands for all of its files, which may know one another. */
const ORDER = [
  'data/',
  'pitch',
  'harmonics',
  'horn',
  'stopping',
  'player',
  'attempts',
  'ranking',
  'fingering',
  'reach',
  'names',
  'passage',
  'annotation',
  'lines',
  'steps',
  'tempo',
  'settings',
  'naturalHorn',
  'hornFile',
  'sounding',
  'handWords',
  'handStates',
  'handMotion',
  'pathCost',
  'repeatedFigures',
  'plan',
  'wording',
  'examinedNote',
  'neverOpened',
  'rules/',
  'examine',
  'completions',
  'marks',
  'result',
  'acoustics/',
  'etude/',
  'index',
] as const;

interface Edge {
  readonly from: string;
  readonly to: string;
  readonly isTypeOnly: boolean;
}

const files = (readdirSync(CORE, { recursive: true }) as string[])
  .map((file) => file.split('\\').join('/'))
  .filter((file) => file.endsWith('.ts'));
const edges: Edge[] = files.flatMap((file) => {
  const text = readFileSync(join(CORE, file), 'utf8');
  return [...text.matchAll(/^(?:import|export)( type)? (?:([^;'"=]*?) from )?'([^']+)';/gm)].map((match) => ({
    from: file,
    to: match[3]!.startsWith('.') ? posix.join(posix.dirname(file), match[3]!) : match[3]!,
    isTypeOnly: match[1] !== undefined || isAllTypes(match[2] ?? ''),
  }));
});

function isAllTypes(names: string): boolean {
  const listed = names.replace(/[{}\s]+/g, ' ').trim();
  return (
    listed !== '' && listed.split(',').every((name) => name.trim() === '' || name.trim().startsWith('type '))
  );
}

function roomOf(file: string): number {
  return ORDER.findIndex((room) => (room.endsWith('/') ? file.startsWith(room) : file === `${room}.ts`));
}

describe('the house', () => {
  test('there is something to check', () => {
    expect(files.length).toBeGreaterThan(40);
    expect(edges.length).toBeGreaterThan(100);
  });

  test('every file has its room', () => {
    expect(files.filter((file) => roomOf(file) < 0)).toEqual([]);
  });

  test('the core imports nothing but the core', () => {
    expect(edges.filter(({ to }) => to.startsWith('..') || !files.includes(to))).toEqual([]);
  });

  test('rooms know only those before them; data may know the shapes it fills', () => {
    const against = edges.filter(({ from, to, isTypeOnly }) => {
      const fromRoom = roomOf(from);
      const toRoom = roomOf(to);
      if (ORDER[fromRoom] === 'data/' && isTypeOnly) return false;
      return toRoom > fromRoom || (toRoom === fromRoom && !ORDER[fromRoom]!.endsWith('/'));
    });
    expect(against).toEqual([]);
  });

  test('nothing runs in a circle', () => {
    const targets = new Map<string, string[]>();
    for (const { from, to } of edges) targets.set(from, [...(targets.get(from) ?? []), to]);
    const circles: string[] = [];
    const done = new Set<string>();
    const walk = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file].join(' → '));
      if (done.has(file) || path.includes(file)) return;
      for (const to of targets.get(file) ?? []) walk(to, [...path, file]);
      done.add(file);
    };
    for (const file of files) walk(file, []);
    expect(circles).toEqual([]);
  });
});
