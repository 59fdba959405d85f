/** The shape of a horn from the lips to the bell rim, cut into tube sections. */
import type { Section } from './section.ts';

/** The inside of a horn. What the parts here leave of a tube's length is cylinder, between leadpipe and bell. */
export interface HornBore {
  /** Cup, throat and backbore, from the lips on. */
  readonly mouthpiece: readonly Section[];
  readonly leadpipe: Section;
  /** Radius of the cylindrical tubing: valves, slides, crooks. */
  readonly boreRadiusMetres: number;
  readonly bell: Bell;
  readonly hand: Hand;
}

/**
 * A Bessel horn: radius = rim radius · (offset / (offset + distance inside the rim))^flare, with the offset that makes
 * it meet the bore at its narrow end.
 * @source benade, Bessel horns as the shape of brass bells
 */
export interface Bell {
  readonly lengthMetres: number;
  readonly rimRadiusMetres: number;
  /** Above 0. The smaller, the later and the more suddenly the bell opens. */
  readonly flare: number;
}

/** The hand in the bell. Over its length it leaves a round passage of one radius, or the bell where that is narrower. */
export interface Hand {
  /** Where the hand starts and ends, in metres inside the rim; inner is the larger. */
  readonly outerMetres: number;
  readonly innerMetres: number;
  /** Radius of the passage while the hand rests open in the bell. */
  readonly restingRadiusMetres: number;
  /** Radius of the leak past a hand that seals as well as it can; larger for a small hand. */
  readonly leakRadiusMetres: number;
}

/** How many cones stand for the bell. Twice as many move no resonance by more than half a cent (tested). */
export const BELL_SECTIONS = 64;

/**
 * Radius of the passage past the hand. Each equal step of closing narrows it in the same ratio: a choice, since nobody
 * has measured how players divide the way from open to stopped.
 * @param closing 0 resting open … 1 sealed
 */
export function passageRadius(hand: Hand, closing: number): number {
  return hand.restingRadiusMetres * (hand.leakRadiusMetres / hand.restingRadiusMetres) ** closing;
}

/**
 * A whole horn, from the lips to the rim.
 * @param cylinderMetres length of the cylindrical tubing, above 0
 * @param closing 0 hand resting open … 1 sealed
 * @param bellSections how many cones stand for the bell; more is finer
 */
export function hornSections(
  bore: HornBore,
  cylinderMetres: number,
  closing: number,
  bellSections = BELL_SECTIONS,
): readonly Section[] {
  const { mouthpiece, leadpipe, boreRadiusMetres: radius, hand } = bore;
  const cylinder = { lengthMetres: cylinderMetres, nearRadiusMetres: radius, farRadiusMetres: radius };
  const passage = passageRadius(hand, closing);
  const cuts = bellCuts(bore, bellSections);
  const bell = cuts.slice(1).map((far, i): Section => {
    const near = cuts[i]!;
    const widest = near <= hand.innerMetres && far >= hand.outerMetres ? passage : Number.POSITIVE_INFINITY;
    return {
      lengthMetres: near - far,
      nearRadiusMetres: Math.min(bellRadius(bore, near), widest),
      farRadiusMetres: Math.min(bellRadius(bore, far), widest),
    };
  });
  return [...mouthpiece, leadpipe, cylinder, ...bell];
}

/**
 * Lets only a horn pass that can be built and closed.
 * @throws {RangeError} naming the first number that cannot be
 */
export function checkBore({ mouthpiece, leadpipe, boreRadiusMetres, bell, hand }: HornBore): void {
  const rules: readonly (readonly [name: string, value: number, above: number, below: number])[] = [
    ...[...mouthpiece, leadpipe].reduce<(readonly [string, number, number, number])[]>(
      (all, part) =>
        all.concat([
          ['lengthMetres', part.lengthMetres, 0, 10],
          ['nearRadiusMetres', part.nearRadiusMetres, 0, 1],
          ['farRadiusMetres', part.farRadiusMetres, 0, 1],
        ]),
      [],
    ),
    ['boreRadiusMetres', boreRadiusMetres, 0, 1],
    ['bell.lengthMetres', bell.lengthMetres, 0, 10],
    ['bell.rimRadiusMetres', bell.rimRadiusMetres, boreRadiusMetres, 1],
    ['bell.flare', bell.flare, 0, 10],
    ['hand.outerMetres', hand.outerMetres, 0, hand.innerMetres],
    ['hand.innerMetres', hand.innerMetres, hand.outerMetres, bell.lengthMetres],
    ['hand.restingRadiusMetres', hand.restingRadiusMetres, hand.leakRadiusMetres, 1],
    ['hand.leakRadiusMetres', hand.leakRadiusMetres, 0, hand.restingRadiusMetres],
  ];
  for (const [name, value, above, below] of rules)
    if (!(value > above && value < below))
      throw new RangeError(`"bore": ${name} must be above ${above} and below ${below}, got ${value}`);
}

/** Length of everything but the cylinder, in metres. */
export function fixedLength({ mouthpiece, leadpipe, bell }: HornBore): number {
  return mouthpiece.reduce(
    (sum, { lengthMetres }) => sum + lengthMetres,
    leadpipe.lengthMetres + bell.lengthMetres,
  );
}

/** Radius of the bell, in metres, at a distance inside its rim. */
export function bellRadius(bore: HornBore, insideRimMetres: number): number {
  const offset = bellOffset(bore);
  return bore.bell.rimRadiusMetres * (offset / (offset + insideRimMetres)) ** bore.bell.flare;
}

function bellOffset({ bell, boreRadiusMetres }: HornBore): number {
  return bell.lengthMetres / ((bell.rimRadiusMetres / boreRadiusMetres) ** (1 / bell.flare) - 1);
}

/** Where the bell is cut, in metres inside the rim, largest first: at both ends of the hand, and the finer the nearer the rim. */
function bellCuts(bore: HornBore, count: number): readonly number[] {
  const { bell, hand } = bore;
  const offset = bellOffset(bore);
  const edges = [bell.lengthMetres, hand.innerMetres, hand.outerMetres, 0];
  const whole = Math.log((bell.lengthMetres + offset) / offset);
  const cuts: number[] = [];
  for (let part = 0; part < 3; part++) {
    const from = edges[part]! + offset;
    const to = edges[part + 1]! + offset;
    const pieces = Math.max(1, Math.round((count * Math.log(from / to)) / whole));
    // The cut at the edge itself is taken as it stands, so that rounding cannot put it on the wrong side of the hand.
    cuts.push(edges[part]!);
    for (let i = 1; i < pieces; i++) cuts.push(from * (to / from) ** (i / pieces) - offset);
  }
  return [...cuts, 0];
}
