/** Input damaged at random: it is either refused in one sentence or read without loss, and nothing else ever happens. */

import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, it } from 'vitest';
import { openScoreFile } from '../../plugin/musicxml/bytes/files.ts';
import { clearMarks, readScore, ScoreError, writeMarks } from '../../plugin/musicxml/index.ts';
import { generatePart } from './generate.ts';
import { madeUpMarks } from './marks.ts';

const TEXT = generatePart(12, { seed: 7 });
const MARKED = writeMarks(readScore(TEXT), madeUpMarks(readScore(TEXT)), { fingerings: true });

/** True when `action` ends well or with a `ScoreError` of one line; anything else it throws gets through. */
function endsWell(action: () => void): boolean {
  try {
    action();
    return true;
  } catch (error) {
    if (!(error instanceof ScoreError)) throw error;
    return !/[\r\n]/.test(error.message) && /: \S/.test(error.message);
  }
}

function isLossless(text: string): boolean {
  const clean = clearMarks(text);
  const score = readScore(clean);
  return clearMarks(writeMarks(score, madeUpMarks(score), { fingerings: true })) === clean;
}

const damages = fc.array(
  fc.record({
    at: fc.nat(),
    remove: fc.nat({ max: 30 }),
    insert: fc.constantFrom(
      '',
      '<',
      '>',
      '"',
      '&',
      '&amp;',
      '/',
      ' ',
      'é',
      '𝄞',
      '<note>',
      '</note>',
      '<chord/>',
      '<!--',
      ']]>',
      '\u200b',
      '9',
      '-',
    ),
  }),
  { minLength: 1, maxLength: 4 },
);

// fast-check prints the seed of a failing run.
describe('damaged text', () => {
  it.each([
    ['a part', TEXT],
    ['a marked part', MARKED],
  ])('%s', (_case, text) => {
    fc.assert(
      fc.property(damages, (all) => {
        let damaged = text;
        for (const { at, remove, insert } of all) {
          const offset = at % damaged.length;
          damaged = damaged.slice(0, offset) + insert + damaged.slice(offset + remove);
        }
        return endsWell(() => {
          if (!isLossless(damaged)) throw new Error('something was lost');
        });
      }),
      { numRuns: 1500 },
    );
  });

  it('elements in any order', () => {
    const lines = TEXT.split('\n');
    fc.assert(
      fc.property(fc.shuffledSubarray(lines.slice(10, -2), { minLength: 0 }), (some) => {
        const shuffled = [...lines.slice(0, 10), ...some, ...lines.slice(-2)].join('\n');
        return endsWell(() => {
          if (!isLossless(shuffled)) throw new Error('something was lost');
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe('damaged files', () => {
  const packed = zipSync({
    'META-INF/container.xml': strToU8(
      '<container><rootfiles><rootfile full-path="a.xml"/></rootfiles></container>',
    ),
    'a.xml': strToU8(TEXT),
  });

  it.each<[string, Uint8Array]>([
    ['a compressed score', packed],
    ['a plain score', strToU8(TEXT)],
  ])('%s', (_case, bytes) => {
    const changes = fc.array(fc.tuple(fc.nat({ max: bytes.length - 1 }), fc.nat({ max: 255 })), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(changes, fc.option(fc.nat({ max: bytes.length })), (all, length) => {
        const damaged = bytes.slice(0, length ?? bytes.length);
        for (const [at, value] of all) if (at < damaged.length) damaged[at] = value;
        return endsWell(() => {
          const file = openScoreFile(damaged);
          file.withText(`${file.text} `);
          readScore(file.text);
        });
      }),
      { numRuns: 2000 },
    );
  });
});
