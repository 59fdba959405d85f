/**
 * Scripts that the build made quicker for the editor's engines do what they did: as they were written in Node, against what
 * became of them in Node and in the engines of Qt 5.15 and Qt 6.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { parse } from 'acorn';
import { simple } from 'acorn-walk';
import { transformSync } from 'esbuild';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { editorScript } from '../../build/bundle.ts';
import { forEditorEngine } from '../../build/engineScript.ts';
import { quickly } from '../../build/quickScript.ts';
import { asList, gapless } from '../../plugin/editor/engineLists.ts';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { LIST_PROGRAMS } from './rig/listPrograms.ts';
import { skipLoudly } from './rig/programs.ts';
import { smallProgram } from './rig/smallProgram.ts';
import { ENGINES, trialsIn } from './rig/standIn.ts';
import { BUILT_PLUGIN } from './rig/steps.ts';

afterAll(removeFolders);

/** Says what a program comes to, in words that tell holes from what is undefined. Plain script, which needs no rewriting. */
const TOLD = `
function told(value) {
  if (Array.isArray(value)) {
    var parts = [];
    for (var i = 0; i < value.length; i++) parts.push(i in value ? told(value[i]) : 'hole');
    return '[' + parts.join() + ']';
  }
  if (typeof value === 'object' && value !== null)
    return '{' + Object.keys(value).map(function (key) { return key + ':' + told(value[key]); }).join() + '}';
  return typeof value === 'string' ? escape(value) : String(value);
}
function outcome(program) {
  var out = [];
  try { program(out); } catch (fault) { out.push('throws ' + fault.name); }
  return told(out);
}`;

const inNode = (script: string) => runInNewContext(`'use strict'; ${script}`) as string;
const outcomeOf = (program: string) => `${TOLD} outcome((out) => { ${program} });`;
const helped = (script: string) => `${asList} ${gapless} ${script}`;
const asWritten = (program: string) => inNode(outcomeOf(program));
/** What the bundler makes of it for the engines is what is made quicker. */
const quickened = (script: string) => quickly(transformSync(helped(script), { target: 'es2016' }).code);
const rewritten = (program: string) => inNode(quickened(outcomeOf(program)));

/** A script as the build makes it of a module. */
async function built(module: string): Promise<string> {
  const file = join(await temporaryFolder('module'), 'module.js');
  await writeFile(file, module);
  return editorScript(file);
}

/** How many nodes of a kind a script has. */
function countIn(script: string, kind: 'ForOfStatement' | 'SpreadElement'): number {
  let count = 0;
  simple(parse(script, { ecmaVersion: 2018 }), { [kind]: () => count++ });
  return count;
}

describe('a script made quicker', () => {
  it.each(LIST_PROGRAMS)('does the same in Node: %s', (_, program) => {
    expect(rewritten(program)).toBe(asWritten(program));
  });

  it('does the same in Node whatever is put together', () => {
    fc.assert(
      fc.property(smallProgram, (program) => {
        const script = quickened(program);
        expect(countIn(script, 'ForOfStatement')).toBe(0);
        expect(countIn(script, 'SpreadElement')).toBe(0);
        expect(rewritten(program)).toBe(asWritten(program));
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    'f().g(...x);',
    'a[0].g(...x);',
    'new X(...a);',
    'const [a = 1] = b;',
    'const [a, ...b] = c;',
    'for (a of b) c;',
    '[a, b] = [b, a];',
    '[, ...a];',
  ])('leaves as it is: %s', (script) => {
    expect(quickly(helped(script))).toBe(helped(script));
  });

  it.each([
    [
      'for (const a of b) c;',
      'for (let $at1 = 0, $list2 = asList(b); $at1 < $list2.length; $at1++) { const a = $list2[$at1]; c; }',
    ],
    ['const [a, , b] = c;', 'const $list1 = asList(c), a = $list1[0], b = $list1[2];'],
    ['a.b.c(...x);', 'a.b.c.apply(a.b, gapless([].concat(asList(x))));'],
    ['this.a(b, ...x);', 'this.a.apply(this, gapless([].concat([b], asList(x))));'],
    ['a(...x);', 'a.apply(void 0, gapless([].concat(asList(x))));'],
    ['[...a, b];', 'gapless([].concat(asList(a), [b]));'],
    [
      'var __spreadValues = (a, b) => { for (var c of d(b)) a[c] = b[c]; return a; };',
      'var __spreadValues = Object.assign;',
    ],
    ['__spreadProps = (a, b) => e(a, b);', '__spreadProps = Object.assign;'],
  ])('has an index in place of an iterator: %s', (script, quick) => {
    expect(quickly(helped(script))).toBe(helped(quick));
  });
});

describe('the build', () => {
  const lists = 'export const trials = (b) => { for (const a of b) c(a); };';

  it('fails in one line where it would call another function than it means', async () => {
    const line = (name: string, has: string) =>
      new RegExp(
        `^the bundled script must have one function "${name}" and nothing else of that name, but has ${has}: [^\\n]*$`,
      );
    expect(() => quickly('for (const a of b) c;')).toThrow(line('asList', 'none'));
    expect(() => quickly(`${asList}`)).toThrow(line('gapless', 'none'));
    expect(() => forEditorEngine('a.sort();')).toThrow(line('stableSort', 'none'));
    await expect(built(`function asList() {} ${lists} export const other = () => asList();`)).rejects.toThrow(
      line('asList', '(asList, asList2|asList2, asList)'),
    );
    await expect(built('export function trials(stableSort) { return stableSort.sort(); }')).rejects.toThrow(
      line('stableSort', 'stableSort2?, stableSort2?'),
    );
    await expect(built('let gapless = 1; export const trials = () => [...[gapless]];')).rejects.toThrow(
      line('gapless', '(gapless2?, )+gapless2?'),
    );
    await expect(built(lists)).resolves.toContain('Bellhand');
  });

  it('fails where an object’s copy would read an accessor once', async () => {
    await expect(built('export const trials = (a) => ({ ...a, get b() { return a.c; } });')).rejects.toThrow(
      /has accessors beside/,
    );
  });
});

const shipped = (await readdir(BUILT_PLUGIN)).filter((name) => name.endsWith('.js'));

describe.each(shipped)('the shipped %s', (name) => {
  const script = readFile(join(BUILT_PLUGIN, name), 'utf8');

  it('goes through no list by an iterator, and copies objects as the engine does', async () => {
    expect(countIn(await script, 'ForOfStatement')).toBe(0);
    // A name for what is left of the bundler's own way of copying, which nothing calls.
    expect(await script).not.toMatch(/for\(var \w+ in \w+\|\|\(\w+=\{\}\)\)/);
  });

  it.each(ENGINES.filter(({ program }) => program))('loads in the engine of $name', async ({ program }) => {
    const names = `${await script}; Bellhand = { trials: (names => () => names)(Object.keys(Bellhand)) };`;
    expect(await trialsIn(program!, names)).toContain('asList');
  });
});

for (const { name, program, install } of ENGINES) {
  if (!program) skipLoudly(`quicker scripts in the engine of ${name}, which is not installed`, install);
}

describe.each(ENGINES.filter(({ program }) => program))('in the engine of $name', ({ program }) => {
  const outcomes = async (programs: readonly string[]) => {
    const all = programs.map((each) => `(out) => { ${each} }`).join(',\n');
    return trialsIn(program!, await built(`${TOLD} export const trials = () => [${all}].map(outcome);`));
  };

  it('does the same as in Node', async () => {
    const told = (await outcomes(LIST_PROGRAMS.map(([, each]) => each))) as string[];
    for (const [i, [what, each]] of LIST_PROGRAMS.entries()) expect(told[i], what).toBe(asWritten(each));
  });

  it('does the same as in Node whatever is put together', async () => {
    const programs = fc.sample(smallProgram, { numRuns: 150, seed: 5 });
    const told = (await outcomes(programs)) as string[];
    for (const [i, each] of programs.entries()) expect(told[i], each).toBe(asWritten(each));
  });
});
