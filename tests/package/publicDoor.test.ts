/** What programs import: the built module and its types say the same, and everything in it is explained. */
import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as core from '../../core/index.ts';

const DIST = new URL('../../dist/', import.meta.url);

interface Exported {
  readonly file: string;
  readonly name: string;
  readonly isType: boolean;
  /** The comment right before its declaration; empty without one. */
  readonly comment: string;
}

/** Everything that a declaration file exports, its own and what it passes on. */
function exportsOf(file: string): Exported[] {
  const text = readFileSync(new URL(file, DIST), 'utf8');
  const found: Exported[] = [];
  const declared =
    /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export (?:declare )?(const|function|class|interface|type) (\w+)/g;
  for (const [, comment = '', kind, name] of text.matchAll(declared))
    found.push({ file, name: name!, isType: kind === 'interface' || kind === 'type', comment });
  for (const [, names, from] of text.matchAll(/^export (?:type )?(\*|\{[^}]*\}) from '(.*)\.js';$/gm)) {
    const passed = exportsOf(posix.join(posix.dirname(file), `${from}.d.ts`));
    const wanted = names!.match(/\w+(?=[ ,}])/g)?.filter((name) => name !== 'type');
    if (names !== '*') expect(wanted!.filter((name) => !passed.some((one) => one.name === name))).toEqual([]);
    found.push(...passed.filter(({ name }) => names === '*' || wanted!.includes(name)));
  }
  return found;
}

const exported = exportsOf('core.d.ts');

describe('the public door', () => {
  test('holds what README imports', async () => {
    expect(exported.length).toBeGreaterThan(150);
    for (const name of ['examine', 'fingerings', 'stop', 'closingCurve', 'composeEtude', 'passageOf'])
      expect(exported.map((one) => one.name)).toContain(name);
  });

  test('the types, the built module and the source hold the same names', async () => {
    const values = exported.filter(({ isType }) => !isType).map(({ name }) => name);
    const built = await import(new URL('core.js', DIST).href);
    expect(Object.keys(built).sort()).toEqual([...new Set(values)].sort());
    expect(Object.keys(core).sort()).toEqual(Object.keys(built).sort());
  });

  test('the module needs nothing else', () => {
    expect(readFileSync(new URL('core.js', DIST), 'utf8')).not.toMatch(/^import |\brequire\(|\bprocess\./m);
  });

  test('the editor’s script takes through the door only what it uses', () => {
    const script = readFileSync(new URL('bellhand/bellhand.js', DIST), 'utf8');
    expect(script).toContain('handOffsetCents');
    // Of the acoustics, of the maker of passages.
    expect(script).not.toMatch(/restingRadiusMetres|ends a slur that never began/);
  });

  test('every export has a comment of its own', () => {
    const silent = exported.filter(({ comment }) => comment === '');
    expect(silent.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
  });

  test('every number says its unit, in its name or beside it', () => {
    const silent: string[] = [];
    for (const file of new Set(exported.map((one) => one.file))) {
      const text = readFileSync(new URL(file, DIST), 'utf8');
      for (const [, comment = '', name, parameters] of text.matchAll(FUNCTION))
        for (const [, parameter] of parameters!.matchAll(/(\w+)\??: number\b/g))
          if (!UNIT.test(parameter!) && !comment.includes(`@param ${parameter}`))
            silent.push(`${file}: ${name}(${parameter})`);
      for (const [, comment, field] of text.matchAll(FIELD))
        if (!UNIT.test(field!) && !comment) silent.push(`${file}: ${field}`);
    }
    expect(silent).toEqual([]);
  });

  test('every door that turns something away says so', () => {
    const silent = exported.filter(({ name, comment, file }) => {
      const source = readFileSync(new URL(`../${file.replace(/\.d\.ts$/, '.ts')}`, DIST), 'utf8');
      const body = new RegExp(`^export function ${name}\\([\\s\\S]*?^}`, 'm').exec(source)?.[0] ?? '';
      return /\bthrow new|\bcheck[A-Z]\w*\(/.test(body) && !comment.includes('@throws');
    });
    expect(silent.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
  });
});

const UNIT = /(?:cents|hz|quarters|seconds|metres|minute|number|index|semitones|indexes|harmonic)$/i;
const FUNCTION = /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export declare function (\w+)\(([\s\S]*?)\): /g;
/** A field of an interface, with the comment right before it, if there is one. */
const FIELD = /(\*\/\n)?^ +readonly (\w+)\??: number\b/gm;
