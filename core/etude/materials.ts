/** What a horn, a range and a key offer an étude: the tones and bends it may use, or what stands in the way. */
import type { Transposition } from '../pitch/pitch.ts';
import type { EtudeObstacle } from '../words/etudes.ts';
import type { EtudeRequest } from './etude.ts';
import { scaleBetween } from './key.ts';
import type { KindOfEtude } from './kinds/kind.ts';
import { type LevelPlan, planFor } from './levels.ts';
import { bendsBetween, tonesOf } from './palette.ts';
import { type Range, rangeOf } from './range.ts';
import { type Bend, isGapped, reachable, type Tone } from './tone.ts';
import { transpositionOf } from './transposition.ts';

/** What is at hand. */
export interface Materials {
  readonly plan: LevelPlan;
  readonly transposition: Transposition;
  /** The least time for a change of the hand, in seconds: of the level, or of a slower player. */
  readonly handSeconds: number;
  /** True where a range was asked for. */
  readonly isAsked: boolean;
  /** The tones that are played without doubt, lowest first; where a range was asked for, all in it. */
  readonly sure: readonly Tone[];
  /** The smallest first; none unless the kind is made of them. */
  readonly bends: readonly Bend[];
  /** How many of what the kind is made of. */
  readonly found: number;
  /** The tones with those that may fail. */
  daring(): readonly Tone[];
}

/** With fewer than these a range is widened where nobody asked for it. */
const ENOUGH = { notes: 5, bends: 6 } as const;
/** With fewer than these there is no étude; the tonic and its fifth tell the key with one note less. */
const FEWEST = { notes: 5, withHome: 4, bends: 3 } as const;

/** What a kind of étude can be made of, as a request asks for it. */
export function materialsFor(
  kind: KindOfEtude,
  request: Pick<EtudeRequest, 'key' | 'level' | 'player' | 'low' | 'high' | 'tempo'>,
):
  | { readonly ok: true; readonly materials: Materials }
  | { readonly ok: false; readonly obstacle: EtudeObstacle } {
  const { key, level, player } = request;
  const plan = planFor(level, player.horn.natural);
  const transposition = transpositionOf(player);
  const isAsked = request.low !== null || request.high !== null;
  const handSeconds = Math.max(plan.handSeconds, player.handSeconds);

  const tonesIn = ({ low, high }: Range, allowsRisky: boolean) => {
    const tones = tonesOf(scaleBetween(key, low, high), player, transposition, allowsRisky);
    return isAsked ? tones : reachable(tones);
  };
  const bendsIn = ({ low, high }: Range) =>
    kind.needs === 'bends' ? bendsBetween(low, high, key, player, transposition) : [];
  const foundIn = (range: Range) =>
    kind.needs === 'bends' ? bendsIn(range).length : practised(kind, tonesIn(range, isAsked)).length;
  const range = rangeOf(
    level,
    request,
    (each) => foundIn(each) >= ENOUGH[kind.needs] && hasHome(kind, tonesIn(each, isAsked)),
  );
  const { low, high } = range;
  const { horn } = player;
  const tempo = request.tempo ?? kind.tempo[level];
  const halfSeconds = (2 * 60) / tempo;
  if (handSeconds > halfSeconds) return { ok: false, obstacle: { is: 'no-time', handSeconds, tempo } };
  const sure = tonesIn(range, isAsked);
  const found = foundIn(range);
  if (found < fewestOf(kind, sure))
    return { ok: false, obstacle: { is: 'too-few', needs: kind.needs, found, low, high, horn } };
  if (!isAsked && !hasHome(kind, sure))
    return { ok: false, obstacle: { is: 'no-home', tonic: key.tonic, low, high, horn } };
  return {
    ok: true,
    materials: {
      plan,
      transposition,
      handSeconds,
      isAsked,
      sure,
      bends: bendsIn(range),
      found,
      daring: () => tonesIn(range, true),
    },
  };
}

/** True when there is a tonic to come home to. */
function hasHome({ needs }: KindOfEtude, tones: readonly Tone[]): boolean {
  return needs === 'bends' || tones.some(({ degree }) => degree === 0);
}

/** The tones that count: of pairs those at which a hand closes. */
function practised({ isByPairs }: KindOfEtude, tones: readonly Tone[]): readonly Tone[] {
  return isByPairs ? tones.filter(({ hand }) => hand !== 'open') : tones;
}

/** How many notes or bends a kind needs at least. */
function fewestOf({ needs, needsSteps }: KindOfEtude, tones: readonly Tone[]): number {
  if (needs === 'bends') return FEWEST.bends;
  if (needsSteps && isGapped(tones)) return Number.POSITIVE_INFINITY;
  const has = (degree: number) => tones.some((tone) => tone.degree === degree);
  return has(0) && has(4) ? FEWEST.withHome : FEWEST.notes;
}
