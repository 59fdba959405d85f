import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hornSections } from '../../../core/acoustics/hornShape.ts';
import {
  type ClosingCurve,
  closingCurve,
  closingForDrop,
  curveText,
  USUAL_BORE,
} from '../../../core/acoustics/index.ts';
import { resonances } from '../../../core/acoustics/resonances.ts';
import { tuneHorn } from '../../../core/acoustics/tuning.ts';
import { CROOKS } from '../../../core/data/crooks.ts';
import { tubesOf } from '../../../core/horn/horn.ts';
import { BFLAT_SIDE, F_SIDE } from '../../../core/horn/sides.ts';
import { frequencyHz } from '../../../core/pitch/pitch.ts';
import { stop } from '../../../core/stopping/stopping.ts';
import { accuracyRows, accuracyTable, median } from './accuracyTable.ts';

const F = closingCurve(F_SIDE);
const BFLAT = closingCurve(BFLAT_SIDE);
const F_ROWS = accuracyRows(F_SIDE, F);
const BFLAT_ROWS = accuracyRows(BFLAT_SIDE, BFLAT);

/** Largest move of a harmonic in one step, in cents. */
function longestStep({ harmonics }: ClosingCurve, harmonicNumber: number): number {
  const { centsFromOpen } = harmonics[harmonicNumber - 1]!;
  return Math.max(...centsFromOpen.slice(1).map((cents, i) => Math.abs(cents - centsFromOpen[i]!)));
}

/** Facts of the trade that the acoustics show on their own: common practice, no source, unless one stands beside it. */
describe('what players find, from the shape of the horn alone', () => {
  test.each([
    ['F', F_ROWS],
    ['B♭', BFLAT_ROWS],
  ])('%s: open notes 3–16 within 25 cents of a harmonic series', (_, rows) => {
    expect(rows).toHaveLength(16);
    for (const { openDeviation } of rows.slice(2)) expect(Math.abs(openDeviation)).toBeLessThan(25);
  });

  test.each([
    ['F', F, F_SIDE, 14],
    ['B♭', BFLAT, BFLAT_SIDE, 11],
  ])(
    '%s: closing lowers every harmonic up to the top of its range, at every step, without a jump',
    (_, curve, side, top) => {
      const finer = closingCurve(side, { steps: 40 });
      const finest = closingCurve(side, { steps: 200 });
      for (let n = 1; n <= top; n++) {
        const { centsFromOpen } = finest.harmonics[n - 1]!;
        for (let step = 1; step <= 200; step++)
          expect(centsFromOpen[step]!, `harmonic ${n}, step ${step}`).toBeLessThan(centsFromOpen[step - 1]!);
        // A curve without a jump moves about half as far in half a step; a jump would move as far as before.
        expect(longestStep(finer, n) / longestStep(curve, n), `harmonic ${n}`).toBeLessThan(0.62);
      }
    },
  );

  /** Smalley, "Starting Stopping": a semitone (F) and about three quarters of a tone (B♭) above the next lower harmonic. */
  test('one hand seals to about a semitone on the F side and three quarters of a tone on the B♭ side', () => {
    const closures = (rows: typeof F_ROWS) => rows.slice(4, 16).map(({ closure }) => closure!);
    expect(median(closures(F_ROWS))).toBeGreaterThan(85);
    expect(median(closures(F_ROWS))).toBeLessThan(120);
    expect(median(closures(BFLAT_ROWS))).toBeGreaterThan(120);
    expect(median(closures(BFLAT_ROWS))).toBeLessThan(165);
    for (let n = 6; n <= 16; n++)
      expect(BFLAT_ROWS[n - 1]!.closure!, `harmonic ${n}`).toBeGreaterThan(F_ROWS[n - 1]!.closure!);
  });

  test('F: from the 16th up closing changes nothing that is heard', () => {
    for (const cents of F.harmonics[15]!.centsFromOpen) expect(Math.abs(cents)).toBeLessThan(15);
  });

  test('F: the 3rd falls too far to be bent, more than 500 cents', () => {
    expect(F_ROWS[2]!.drop).toBeGreaterThan(500);
  });

  /** Ericson (2009): small hands stop sharper. */
  test('a hand that seals badly stops every note 3–16 sharper', () => {
    const leaky = { ...USUAL_BORE, hand: { ...USUAL_BORE.hand, leakRadiusMetres: 0.005 } };
    const rows = accuracyRows(F_SIDE, closingCurve(F_SIDE, { bore: leaky }));
    rows.slice(2).forEach(({ drop }, i) => {
      expect(drop).toBeLessThan(F_ROWS[i + 2]!.drop);
    });
  });
});

/**
 * Grove's Dictionary, 5th ed. (1954), by way of Ericson (2023): lengths of the crooked horn without its mouthpiece, in
 * inches. The tube is worked out here from its pitch
 * alone.
 */
describe('length of the crooks', () => {
  const printed = CROOKS.filter(({ lengthInches }) => lengthInches !== null);

  test('ten lengths are printed', () => {
    expect(printed).toHaveLength(10);
  });

  test.each(printed)('$name, $lengthInches inches: within 2 %', ({ semitones, lengthInches }) => {
    const { lengthMetres } = closingCurve(
      { fundamentalCents: 3600 + 100 * semitones },
      { steps: 1, harmonics: [4] },
    );
    const mouthpiece = USUAL_BORE.mouthpiece.reduce((sum, part) => sum + part.lengthMetres, 0);
    expect((lengthMetres - mouthpiece) / (0.0254 * lengthInches!)).toBeGreaterThan(0.98);
    expect((lengthMetres - mouthpiece) / (0.0254 * lengthInches!)).toBeLessThan(1.02);
  });
});

describe('convergence', () => {
  test.each([0, 0.5, 1])(
    'twice as many cones in the bell move no harmonic by half a cent, closing %d',
    (closing) => {
      const { bore, cylinderMetres, fundamentalHz } = tuneHorn(USUAL_BORE, frequencyHz(2900));
      const peaks = (cones: number) =>
        resonances(hornSections(bore, cylinderMetres, closing, cones), fundamentalHz, 16);
      const [coarse, usual, fine] = [peaks(32), peaks(64), peaks(128)];
      usual.forEach((hz, i) => {
        const error = Math.abs(1200 * Math.log2(hz / fine[i]!));
        expect(error).toBeLessThan(0.5);
        // Second order: halving the cones leaves about a quarter of the error.
        const coarseError = Math.abs(1200 * Math.log2(coarse[i]! / fine[i]!));
        if (coarseError > 0.1) expect(error / coarseError).toBeLessThan(0.45);
      });
    },
  );

  test('the steps in between do not change where a curve comes to', () => {
    const few = closingCurve(F_SIDE, { steps: 5 });
    const many = closingCurve(F_SIDE, { steps: 60 });
    few.harmonics.forEach(({ centsFromOpen }, i) => {
      centsFromOpen.forEach((cents, step) => {
        expect(Math.abs(cents - many.harmonics[i]!.centsFromOpen[12 * step]!)).toBeLessThan(0.02);
      });
    });
  });
});

describe('tubes', () => {
  test('valves are cylinder: every tube of both sides is in tune with itself from the 4th up', () => {
    for (const tube of [...tubesOf(F_SIDE), ...tubesOf(BFLAT_SIDE)]) {
      const { harmonics } = closingCurve(tube, { steps: 1, harmonics: [5, 6, 8, 9, 10, 12] });
      for (const { openDeviationCents } of harmonics) expect(Math.abs(openDeviationCents)).toBeLessThan(25);
    }
  });

  test('harmonics come lowest first, whatever the order asked, and only those asked', () => {
    const { harmonics, closings } = closingCurve(F_SIDE, { steps: 4, harmonics: [8, 3] });
    expect(harmonics.map(({ harmonicNumber }) => harmonicNumber)).toEqual([3, 8]);
    expect(closings).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(harmonics[1]!.frequenciesHz[4]).toBeCloseTo(F.harmonics[7]!.frequenciesHz[20]!, 2);
  });

  test('on a high F side the bell holds no 16th', () => {
    const { harmonics } = closingCurve({ fundamentalCents: 4100 }, { steps: 1 });
    expect(harmonics.length).toBeGreaterThan(10);
    expect(harmonics.length).toBeLessThan(16);
  });

  test.each([
    [{ fundamentalCents: 900 }, {}, /"fundamentalCents" must be from 1500 to 4200, got 900/],
    [{ fundamentalCents: Number.NaN }, {}, /"fundamentalCents"/],
    [F_SIDE, { steps: 0 }, /"steps" must be an integer from 1 to 1000, got 0/],
    [F_SIDE, { steps: 2.5 }, /"steps"/],
    [F_SIDE, { harmonics: [17] }, /"harmonics" must be an integer from 1 to 16, got 17/],
    [
      F_SIDE,
      { bore: { ...USUAL_BORE, hand: { ...USUAL_BORE.hand, leakRadiusMetres: 0.03 } } },
      /"bore": hand.restingRadiusMetres must be above 0.03 and below 1, got 0.021/,
    ],
    [
      F_SIDE,
      { bore: { ...USUAL_BORE, bell: { ...USUAL_BORE.bell, flare: Number.NaN } } },
      /"bore": bell.flare must be above 0 and below 10, got NaN/,
    ],
    [
      { fundamentalCents: 4200 },
      { bore: { ...USUAL_BORE, bell: { ...USUAL_BORE.bell, lengthMetres: 3 } } },
      /no length of cylinder tunes this bore to a fundamental of 92.5 Hz: shorten its bell or leadpipe/,
    ],
  ])('says what is wrong: %j %j', (tube, options, message) => {
    expect(() => closingCurve(tube, options)).toThrow(message);
  });
});

describe('degree of closing', () => {
  test('goes back and forth between a degree and its drop', () => {
    const { centsFromOpen } = F.harmonics[7]!;
    for (const step of [0, 3, 10, 17]) {
      const found = closingForDrop(F, 8, -centsFromOpen[step]!);
      expect(found).toMatchObject({ ok: true });
      expect(found.ok && found.closing).toBeCloseTo(step / 20, 6);
    }
  });

  test('twenty steps are fine enough: against sixty, within a hundredth of the way', () => {
    const fine = closingCurve(F_SIDE, { steps: 60 });
    for (const [n, drop] of [
      [4, 150],
      [6, 90],
      [8, 50],
      [10, 40],
    ] as const) {
      const [coarse, exact] = [closingForDrop(F, n, drop), closingForDrop(fine, n, drop)];
      expect(coarse.ok && exact.ok && Math.abs(coarse.closing - exact.closing)).toBeLessThan(0.01);
    }
  });

  /**
   * C.-M. Widor, Initiation musicale (1923), p. 34: natural horn notes "half closed", as far as the hand reaches them in
   * this model (C♯5, D♯5 and F♯5 lie below what it seals to). A degree is a band: the quarter either side of a half.
   */
  const HALF_CLOSED = [
    { written: 'F♯3', harmonic: 3, dropCents: 102 },
    { written: 'B3', harmonic: 4, dropCents: 100 },
    { written: 'D♯4', harmonic: 5, dropCents: 86 },
    { written: 'F♯4', harmonic: 6, dropCents: 102 },
    { written: 'A4', harmonic: 7, dropCents: 69 },
    { written: 'B4', harmonic: 8, dropCents: 100 },
    { written: 'F5', harmonic: 11, dropCents: 51 },
  ];

  test.each(HALF_CLOSED)('$written is about half closed', ({ harmonic, dropCents }) => {
    const found = closingForDrop(F, harmonic, dropCents);
    expect(found.ok && Math.abs(found.closing - 0.5)).toBeLessThan(0.25);
  });

  test('the curve puts these seven nearer to a half than the even sharing-out of the drop does', () => {
    const tube = tubesOf(F_SIDE)[0]!;
    const off = HALF_CLOSED.map(({ harmonic, dropCents }) => {
      const found = closingForDrop(F, harmonic, dropCents);
      const rule = dropCents / stop(tube, harmonic).dropCents;
      return [found.ok ? Math.abs(found.closing - 0.5) : 1, Math.abs(rule - 0.5)] as const;
    });
    const mean = (which: 0 | 1) => off.reduce((sum, each) => sum + each[which], 0) / off.length;
    expect(mean(0)).toBeLessThan(mean(1));
  });

  test('says why there is none', () => {
    const beyond = closingForDrop(F, 8, 300);
    if (beyond.ok) throw new Error('the hand lowers harmonic 8 by 300 cents');
    expect(beyond.fullDropCents).toBe(Math.max(...F.harmonics[7]!.centsFromOpen.map((cents) => -cents)));
    expect(Math.round(beyond.fullDropCents! / 10)).toBe(11);
    expect(closingForDrop(F, 17, 10)).toEqual({ ok: false, fullDropCents: null });
    expect(() => closingForDrop(F, 8, -1)).toThrow('"dropCents" must be 0 or more, got -1');
  });
});

describe('as text', () => {
  test('many harmonics make a table: one line each, cents at every tenth of the way', () => {
    const lines = curveText(F);
    expect(lines).toHaveLength(18);
    expect(lines[1]).toMatch(/^ n {2}open Hz +0 % +10 % .* 100 %$/);
    F.harmonics.forEach(({ harmonicNumber, frequenciesHz, centsFromOpen }, i) => {
      const cells = lines[i + 2]!.trim().replace(/−/g, '-').split(/\s+/).map(Number);
      expect(cells[0]).toBe(harmonicNumber);
      expect(Math.abs(cells[1]! - frequenciesHz[0]!)).toBeLessThan(0.051);
      cells.slice(2).forEach((cents, tenth) => {
        expect(Math.abs(cents - centsFromOpen[2 * tenth]!)).toBeLessThan(0.51);
      });
    });
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(90);
  });

  test('one harmonic is plotted, lower pitch further to the right', () => {
    const lines = curveText(closingCurve(F_SIDE, { harmonics: [8] }));
    expect(lines).toHaveLength(23);
    const columns = lines.slice(2).map((line) => line.indexOf('*'));
    expect(columns).toEqual(columns.slice().sort((a, b) => a - b));
    expect(new Set(columns).size).toBeGreaterThan(10);
  });
});

describe('the printed table', () => {
  test('has every harmonic from the 2nd to the 16th', () => {
    const numbers = accuracyTable()
      .split('\n')
      .flatMap((line) => /^\| (\d+) \|/.exec(line)?.[1] ?? []);
    expect(numbers.map(Number)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16]);
  });

  const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
  test('stands in the README as it comes out here', () => {
    expect(readme).toContain(accuracyTable());
  });
});
