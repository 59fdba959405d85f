/** The last look at a composed étude: what the page says twice goes, what the player's breath needs comes. */
import { type EtudeNote, withBreath } from './bar.ts';
import type { Draft } from './workshop.ts';

type Bars = Draft['bars'];

/**
 * The bars as they are printed.
 * @param quarterSeconds how long a quarter lasts, in seconds
 */
export function finished(bars: Bars, quarterSeconds: number): Bars {
  return withBreaths(withoutRepeats(bars), quarterSeconds);
}

/** Leaves out what the page says already: a dynamic that still holds, the open sign of a hand that is open. */
function withoutRepeats(bars: Bars): Bars {
  let dynamic: EtudeNote['dynamic'] = null;
  let isOpen = false;
  return bars.map((bar) =>
    bar.map((each) => {
      if (!each.written) return each;
      const sign = each.sign === 'open' && isOpen ? null : each.sign;
      const printed = each.dynamic === dynamic ? null : each.dynamic;
      isOpen = each.sign !== 'stopped';
      dynamic = each.dynamic ?? dynamic;
      return { ...each, sign, dynamic: printed };
    }),
  );
}

/**
 * The longest a player is asked to play on without a breath, in seconds. From memory: a comfortable breath at medium
 * loudness lasts longer, but closing the hand takes more air.
 */
const LONGEST_BREATH_SECONDS = 9;

/** Adds a breath at the end of a bar where the next one would make a breath too long; the hand's slides are never cut. */
function withBreaths(bars: Bars, quarterSeconds: number): Bars {
  let played = 0;
  return bars.map((bar, i) => {
    for (const { written, quarters, breath } of bar) played = written && !breath ? played + quarters : 0;
    const last = bar[bar.length - 1]!;
    const next = soundingQuarters(bars[i + 1] ?? []);
    if (!last.written || last.breath || last.slides || last.slur === 'start') return bar;
    if ((played + next) * quarterSeconds <= LONGEST_BREATH_SECONDS) return bar;
    played = 0;
    return withBreath(bar);
  });
}

/** From the start of a bar to its first rest or breath. */
function soundingQuarters(bar: Bars[number]): number {
  let quarters = 0;
  for (const each of bar) {
    if (!each.written) return quarters;
    quarters += each.quarters;
    if (each.breath) return quarters;
  }
  return quarters;
}
