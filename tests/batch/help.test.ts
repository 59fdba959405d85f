/** Help and version, which are no failure. */
import { describe, expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith } from './bellhand.ts';

describe('help', () => {
  test.each([['--help'], ['help', 'annotate'], ['check', '--help']])('%s ends with 0', async (...args) => {
    const run = await bellhandHere(folderWith(), args);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    expect(run.stdout.length).toBeGreaterThan(4);
  });

  test('--version ends with 0', () => {
    expect(bellhand(folderWith(), ['--version'])).toEqual({
      exit: 0,
      stdout: expect.stringMatching(/^\d+\.\d+\.\d+\n$/),
      stderr: '',
    });
  });
});
