/** The last look at a composed étude: signs at every change of the hand, slurs that can be played, breath, and nothing said twice. */
import { pitchCents } from '../pitch/pitch.ts';
import { type Bar, type Dynamic, type EtudeNote, withBreath } from './bar.ts';

/**
 * The bars as they are printed.
 * @param quarterSeconds how long a quarter lasts, in seconds
 */
export function finished(bars: readonly Bar[], quarterSeconds: number): readonly Bar[] {
  return withBreaths(withPlainSlurs(withSigns(bars)), quarterSeconds);
}

/**
 * A sign at every full stop, once for what is tied; one where the hand opens, and at the first note; a dynamic that still holds is left out.
 * A natural horn's hand closes part of the way without a sign: a mark says how far.
 */
function withSigns(bars: readonly Bar[]): readonly Bar[] {
  let hand: EtudeNote['hand'] = null;
  let dynamic: Dynamic | null = null;
  let isHeld = false;
  return bars.map((bar) => ({
    ...bar,
    notes: bar.notes.map((each) => {
      if (!each.written) return each;
      const isSigned = !isHeld && (each.hand === 'stopped' || (each.hand === 'open' && hand !== 'open'));
      const sign = isSigned ? each.hand : null;
      const printed = each.dynamic === dynamic ? null : each.dynamic;
      hand = each.hand;
      isHeld = each.ties;
      if (each.dynamic)
        dynamic = each.dynamic === 'fp' ? 'p' : each.dynamic === 'sfz' ? dynamic : each.dynamic;
      if (each.hairpin || each.hairpinEnds) dynamic = null;
      return sign === each.sign && printed === each.dynamic ? each : { ...each, sign, dynamic: printed };
    }),
  }));
}

/**
 * A slur never crosses a change of the hand (part of the way closed is another way at every note), and one between two equal notes would be read as a tie: there the second
 * is touched again, tenuto.
 */
function withPlainSlurs(bars: readonly Bar[]): readonly Bar[] {
  const notes = ([] as EtudeNote[]).concat(...bars.map((bar) => bar.notes));
  const made = notes.slice();
  let from = -1;
  notes.forEach((each, i) => {
    if (each.slur === 'start') from = i;
    if (each.slur !== 'stop') return;
    const under = from >= 0 ? notes.slice(from, i + 1) : [];
    const isPlayable =
      under.length > 1 &&
      under.every((one) => one.written && one.hand === under[0]!.hand && one.hand !== 'half-stopped');
    const isLegible = under.every(
      (one, k) =>
        k === 0 ||
        !one.written ||
        !under[k - 1]!.written ||
        under[k - 1]!.ties ||
        pitchCents(one.written) !== pitchCents(under[k - 1]!.written!),
    );
    if (!isPlayable || !isLegible) {
      if (from >= 0) made[from] = { ...made[from]!, slur: null };
      made[i] = { ...made[i]!, slur: null, attack: isLegible ? made[i]!.attack : 'tenuto' };
    }
    from = -1;
  });
  let next = 0;
  return bars.map((bar) => ({ ...bar, notes: bar.notes.map(() => made[next++]!) }));
}

/**
 * The longest a player is asked to play on without a breath, in seconds. From memory: a comfortable breath at medium
 * loudness lasts longer, but closing the hand takes more air.
 */
const LONGEST_BREATH_SECONDS = 9;

/** Adds a breath at the end of a bar where the next one would make a breath too long; the hand's slides are never cut. */
function withBreaths(bars: readonly Bar[], quarterSeconds: number): readonly Bar[] {
  let played = 0;
  return bars.map((bar, i) => {
    for (const { written, quarters, breath } of bar.notes)
      played = written && !breath ? played + quarters : 0;
    const last = bar.notes[bar.notes.length - 1]!;
    if (!last.written || last.breath || last.slides || last.ties || last.slur === 'start') return bar;
    const next = soundingQuarters(bars, i + 1);
    if ((played + next) * quarterSeconds <= LONGEST_BREATH_SECONDS) return bar;
    played = 0;
    return withBreath(bar);
  });
}

/** From the start of a bar to its first rest or breath, or to its end: further where the last tone is held on. */
function soundingQuarters(bars: readonly Bar[], from: number): number {
  let quarters = 0;
  let isHeld = true;
  for (let i = from; i < bars.length && isHeld; i++)
    for (const { written, quarters: length, breath, ties } of bars[i]!.notes) {
      if (!written) return quarters;
      quarters += length;
      if (breath) return quarters;
      isHeld = ties;
    }
  return quarters;
}
