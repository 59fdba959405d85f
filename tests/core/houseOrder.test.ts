/** Imports run one way through the house, from what knows least to what knows most; nothing runs in a circle. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = new URL('../..', import.meta.url).pathname;

/** The rooms, each allowed to know those above it. The files of a room may know one another. */
const ORDER = [
  ['core/guards', 'core/data', 'core/pitch', 'core/horn', 'core/stopping', 'core/part', 'core/plan'],
  [
    'core/rules',
    'core/repairs',
    'core/words',
    'core/horn/file',
    'core/marks',
    'core/acoustics',
    'core/etude',
    'core/door',
    'core',
  ],
  [
    'plugin/musicxml/bytes',
    'plugin/musicxml/read',
    'plugin/musicxml/write',
    'plugin/musicxml/annotate',
    'plugin/musicxml',
  ],
  ['plugin/etude', 'plugin/pages', 'plugin/stand', 'plugin/editor', 'plugin/batch', 'build'],
].flat();

/** Objects by any text that are only ever asked with a name that stands in the code, an entry for each. */
const ASKED_BY_NAMES_OF_OURS = [
  'core/horn/file/fields.ts',
  'core/rules/unknownKey.ts',
  'core/words/areas/etudes.ts',
  'core/words/languages.ts',
  'plugin/batch/install/pluginFolders.ts',
  'plugin/editor/choice.ts',
  'plugin/editor/choice.ts',
  'plugin/editor/choice.ts',
  'plugin/editor/hostApi.ts',
  'plugin/etude/xmlTree.ts',
  'plugin/musicxml/read/source.ts',
  'plugin/pages/verovio.d.ts',
];

interface Edge {
  readonly from: string;
  readonly to: string;
}

const files = ['core', 'plugin', 'build'].flatMap((room) =>
  (readdirSync(join(ROOT, room), { recursive: true }) as string[])
    .map((file) => `${room}/${file.split('\\').join('/')}`)
    .filter((file) => /\.tsx?$/.test(file)),
);
/** Types count as imports too. */
const edges: readonly Edge[] = files.flatMap((file) => {
  const text = readFileSync(join(ROOT, file), 'utf8');
  return [...text.matchAll(/^(?:import|export)(?: [^;'"=]*? from)? '([^']+)';/gm)].map((match) => ({
    from: file,
    to: match[1]!.startsWith('.') ? posix.join(posix.dirname(file), match[1]!) : match[1]!,
  }));
});

/** The longest name that the file stands below; a room that stands for its loose files takes only those. */
function roomOf(file: string): number {
  const folder = posix.dirname(file);
  const rooms = ORDER.filter(
    (room) => folder === room || (room.includes('/') && folder.startsWith(`${room}/`)),
  );
  return ORDER.indexOf(rooms.sort((a, b) => b.length - a.length)[0] ?? '');
}

const own = edges.filter(({ to }) => files.includes(to));

describe('the house', () => {
  test('there is something to check', () => {
    expect(files.length).toBeGreaterThan(150);
    expect(own.length).toBeGreaterThan(500);
  });

  test('every file has its room', () => {
    expect(files.filter((file) => roomOf(file) < 0)).toEqual([]);
  });

  test('whatever a text of the user\'s is looked up in is a Map: a bare object also knows "constructor"', () => {
    const found = files.flatMap((file) =>
      [...readFileSync(join(ROOT, file), 'utf8').matchAll(/\[\w+: string\]:|\bRecord<string\b/g)].map(
        () => file,
      ),
    );
    expect(found.sort()).toEqual(ASKED_BY_NAMES_OF_OURS);
  });

  test('the core imports nothing but the core', () => {
    expect(edges.filter(({ from, to }) => from.startsWith('core/') && !to.startsWith('core/'))).toEqual([]);
  });

  test('whoever is outside the core comes in by its door, for which the build has guards', () => {
    const behind = edges.filter(
      ({ from, to }) =>
        !from.startsWith('core/') &&
        to.startsWith('core/') &&
        to !== 'core/index.ts' &&
        !(from === 'build/guardedDoor.ts' && to.startsWith('core/door/')),
    );
    expect(behind.map(({ from, to }) => `${from} → ${to}`)).toEqual([]);
  });

  test('what is imported is there', () => {
    expect(
      edges.filter(
        ({ to }) =>
          /^(core|plugin|build)\//.test(to) &&
          /\.tsx?$/.test(to) &&
          !to.endsWith('.d.ts') &&
          !files.includes(to),
      ),
    ).toEqual([]);
  });

  test('rooms know only those before them', () => {
    const against = own.filter(({ from, to }) => roomOf(to) > roomOf(from));
    expect(against.map(({ from, to }) => `${from} → ${to}`)).toEqual([]);
  });

  test('nothing runs in a circle, not even types', () => {
    const targets = new Map<string, string[]>();
    for (const { from, to } of own) targets.set(from, [...(targets.get(from) ?? []), to]);
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
