/** Chance with a seed, and the lines that are drawn by it. */
import { describe, expect, test } from 'vitest';
import { parseKey, scaleBetween } from '../../core/etude/key.ts';
import { drawLine } from '../../core/etude/line.ts';
import { pick, pickWeighted, seededRandom } from '../../core/etude/random.ts';
import { parsePitch, pitchCents } from '../../core/pitch/pitch.ts';
import { seeds } from './etude/composed.ts';

describe('chance', () => {
  test('fills the range evenly enough for music', () => {
    const random = seededRandom(5);
    const counts = new Array<number>(10).fill(0);
    for (let i = 0; i < 10000; i++) counts[Math.floor(10 * random())]! += 1;
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });

  test('picks by weight, and nothing where nothing weighs', () => {
    const random = seededRandom(9);
    const counts = [0, 0, 0];
    for (let i = 0; i < 3000; i++) counts[pickWeighted(random, [1, 0, 2])]! += 1;
    expect(counts[1]).toBe(0);
    expect(counts[2]! / counts[0]!).toBeGreaterThan(1.7);
    expect(counts[2]! / counts[0]!).toBeLessThan(2.3);
    expect(pickWeighted(random, [0, 0])).toBe(-1);
    expect(['a', 'b']).toContain(pick(random, ['a', 'b']));
  });
});

describe('a line', () => {
  test('leads the leading note on by steps, wherever it stands', () => {
    // Once it went anywhere at all, however far.
    const scale = scaleBetween(parseKey('Em'), parsePitch('C4'), parsePitch('G5'));
    const leading = scale.filter(({ degree }) => degree === 6)[0]!;
    const anywhere = { chord: [0, 1, 2, 3, 4, 5, 6], firm: false, height: 0.5 };
    for (const seed of seeds(2000)) {
      const [next] = drawLine(seededRandom(seed), scale, [anywhere], leading);
      expect(Math.abs(pitchCents(next!.written) - pitchCents(leading.written))).toBeLessThanOrEqual(700);
    }
  });
});
