/**
 * The text part of the door must run in the host's script engine, which knows ECMAScript 2016 and no platform around it.
 * What that engine lacks was tried on it; the list is in the test.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import type * as Door from '../../plugin/musicxml/index.ts';
import { generatePart } from './generate.ts';
import { coreMarks } from './marks.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const ENTRY = 'plugin/musicxml/index.ts';

async function bundled(): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: ROOT,
    entryPoints: [ENTRY],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'Door',
    target: 'es2016',
  });
  return outputFiles[0]!.text;
}

describe('the text part', () => {
  it('uses no library newer than ES2016 and none of the platform', () => {
    // The compiler knows only what the engine has.
    const { stdout, status } = spawnSync(
      'npx',
      [
        ...[
          'tsc',
          '--noEmit',
          '--strict',
          '--target',
          'es2016',
          '--lib',
          'es2016',
          '--types',
          '',
          '--module',
          'esnext',
        ],
        ...[
          '--moduleResolution',
          'bundler',
          '--allowImportingTsExtensions',
          '--skipLibCheck',
          '--ignoreConfig',
          ENTRY,
        ],
      ],
      { cwd: ROOT, encoding: 'utf8' },
    );
    expect(stdout).toBe('');
    expect(status).toBe(0);
  });

  it.each([
    ['named groups', /\(\?<[A-Za-z]/],
    ['lookbehind', /\(\?<[=!]/],
    ['the flag s', /\/[a-z]*s[a-z]*\.(?:exec|test)\(/],
    ['a bare catch', /catch\s*\{/],
    ['object spread', /\{\s*\.\.\./],
    ['async functions', /\basync\b/],
  ])('has no %s', async (_case, pattern) => {
    expect(await bundled()).not.toMatch(pattern);
  });

  it('works where there is nothing but the language', async () => {
    const sandbox = { text: generatePart(50), result: null as unknown };
    runInNewContext(`${await bundled()}; result = Door;`, sandbox);
    const door = sandbox.result as typeof Door;
    const score = door.readScore(sandbox.text);
    expect(score.horns[0]!.passage.notes).toHaveLength(50);
    const marked = door.writeMarks(score, coreMarks(score as never));
    expect(marked.length).toBeGreaterThan(sandbox.text.length);
    expect(door.clearMarks(marked)).toBe(sandbox.text);
  });
});
