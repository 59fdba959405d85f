/** One note or rest of an étude as a MusicXML element. */
import {
  type EtudeNote,
  type HandSign,
  type Meter,
  type Pitch,
  pitchCents,
  signatureAlter,
} from '../../core/index.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** Divisions of a quarter: enough for sixteenths and triplets. */
export const DIVISIONS = 12;

/** A note as it is printed. */
interface Printed {
  readonly quarters: number;
  readonly type: string;
  readonly isDotted: boolean;
  readonly isTriplet: boolean;
}

const PRINTED: readonly Printed[] = [
  { quarters: 4, type: 'whole', isDotted: false, isTriplet: false },
  { quarters: 3, type: 'half', isDotted: true, isTriplet: false },
  { quarters: 2, type: 'half', isDotted: false, isTriplet: false },
  { quarters: 1.5, type: 'quarter', isDotted: true, isTriplet: false },
  { quarters: 1, type: 'quarter', isDotted: false, isTriplet: false },
  { quarters: 0.5, type: 'eighth', isDotted: false, isTriplet: false },
  { quarters: 1 / 3, type: 'eighth', isDotted: false, isTriplet: true },
  { quarters: 0.25, type: '16th', isDotted: false, isTriplet: false },
];

/**
 * The open sign goes in as `open-string`: it prints the same small circle, and of the two it is the one that common
 * editors and engravers draw.
 * @source musicxml40, technical
 */
const SIGN_ELEMENTS: { readonly [sign in HandSign]: string } = {
  stopped: 'stopped',
  open: 'open-string',
  'half-stopped': 'half-muted',
};

const ACCIDENTALS: { readonly [alter: number]: string } = {
  [-2]: 'flat-flat',
  [-1]: 'flat',
  0: 'natural',
  1: 'sharp',
  2: 'double-sharp',
};

/** Remembers which accidentals hold in a bar, so that only those needed are printed. */
export class Accidentals {
  private readonly fifths: number;
  private readonly held = new Map<string, number>();

  constructor(fifths: number) {
    this.fifths = fifths;
  }

  startBar(): void {
    this.held.clear();
  }

  /** The accidental to print at a note, or null. @param isTiedTo true when it is held on from the bar before: its sign is too */
  at({ step, alter, octave }: Pitch, isTiedTo = false): string | null {
    if (isTiedTo) return null;
    const place = `${step}${octave}`;
    const holding = this.held.get(place) ?? signatureAlter(step, this.fifths);
    this.held.set(place, alter);
    return holding === alter ? null : (ACCIDENTALS[alter] ?? null);
  }
}

type Beam = 'begin' | 'continue' | 'end' | 'forward hook' | 'backward hook';

type Side = 'above' | 'below';

/** Where a note stands in its beams, the eighths' first, and in its triplet; and where its slur goes, if that matters. */
interface Grouping {
  readonly beams: readonly Beam[];
  readonly tuplet: 'start' | 'stop' | null;
  readonly slurSide: Side | null;
}

/** The beams and triplets of a bar, by index: short notes of one beat are joined. */
export function groupingsOf(bar: readonly EtudeNote[], meter: Meter): readonly Grouping[] {
  const groups: number[] = [];
  let at = 0;
  for (const { written, quarters } of bar) {
    groups.push(written && quarters < 1 ? Math.floor(at / meter.beatQuarters + 1e-6) : -1);
    at += quarters;
  }
  const sides = slurSidesOf(bar);
  return bar.map(({ quarters }, i) => {
    const isJoined = (j: number) => groups[i]! >= 0 && groups[j] === groups[i];
    const isSixteenth = (j: number) => bar[j] !== undefined && bar[j]!.quarters < 0.3;
    const first = beamOf(isJoined(i - 1), isJoined(i + 1));
    const second = isSixteenth(i)
      ? (beamOf(isJoined(i - 1) && isSixteenth(i - 1), isJoined(i + 1) && isSixteenth(i + 1)) ??
        (isJoined(i - 1) ? 'backward hook' : 'forward hook'))
      : null;
    const isTriplet = isThird(quarters);
    return {
      slurSide: sides[i]!,
      beams: first === null ? [] : second === null ? [first] : [first, second],
      tuplet: isTriplet && !isJoined(i - 1) ? 'start' : isTriplet && !isJoined(i + 1) ? 'stop' : null,
    };
  });
}

function isThird(quarters: number): boolean {
  return Math.abs(quarters - 1 / 3) < 1e-6;
}

/** Written B4, the middle line. */
const MIDDLE_CENTS = 7100;

/**
 * The side of the slur over each note, where triplets lie under it: their brackets take the other. Brackets stay at the
 * stems where all of them may, since some editors put them nowhere else.
 */
function slurSidesOf(bar: readonly EtudeNote[]): readonly (Side | null)[] {
  const sides: (Side | null)[] = bar.map(() => null);
  bar.forEach(({ slur }, from) => {
    if (slur !== 'start') return;
    const stop = bar.findIndex((each, i) => i > from && each.slur === 'stop');
    const to = stop < 0 ? bar.length - 1 : stop;
    const thirds = bar.slice(from, to + 1).filter(({ quarters }) => isThird(quarters));
    const triplets = thirds.map((_, i) => thirds.slice(i, i + 3)).filter((_, i) => i % 3 === 0);
    if (triplets.length > 0) sides.fill(triplets.every(hasStemsUp) ? 'below' : 'above', from, to + 1);
  });
  return sides;
}

/** Notes under one beam have their stems on the side away from the note that lies furthest from the middle line. */
function hasStemsUp(beamed: readonly EtudeNote[]): boolean {
  const fromMiddle = beamed.map(({ written }) => (written ? pitchCents(written) - MIDDLE_CENTS : 0));
  return Math.max(...fromMiddle) < -Math.min(...fromMiddle);
}

function beamOf(before: boolean, after: boolean): Beam | null {
  return before && after ? 'continue' : before ? 'end' : after ? 'begin' : null;
}

/**
 * Builds the `note` element.
 * @param before what sounded or rested before it; null at the beginning
 */
export function noteElement(
  note: EtudeNote,
  before: EtudeNote | null,
  grouping: Grouping,
  accidental: string | null,
): XmlElement {
  const printed = PRINTED.filter(({ quarters }) => Math.abs(quarters - note.quarters) < 1e-6)[0];
  if (!printed) throw new RangeError(`no note is ${note.quarters} quarters long`);
  return element(
    'note',
    {},
    note.written ? pitchElement(note.written) : element('rest'),
    element('duration', {}, Math.round(note.quarters * DIVISIONS)),
    before?.ties ? element('tie', { type: 'stop' }) : null,
    note.ties ? element('tie', { type: 'start' }) : null,
    element('voice', {}, 1),
    element('type', {}, printed.type),
    printed.isDotted ? element('dot') : null,
    accidental ? element('accidental', {}, accidental) : null,
    printed.isTriplet
      ? element('time-modification', {}, element('actual-notes', {}, 3), element('normal-notes', {}, 2))
      : null,
    ...grouping.beams.map((beam, i) => element('beam', { number: i + 1 }, beam)),
    notations(note, before, grouping),
  );
}

function opposite(side: Side): Side {
  return side === 'above' ? 'below' : 'above';
}

/** The `notations` of a note that has a sign for the hand and nothing else; null without one. */
export function signElement(sign: HandSign | null): XmlElement | null {
  return sign && element('notations', {}, technical(sign));
}

function technical(sign: HandSign): XmlElement {
  return element('technical', {}, element(SIGN_ELEMENTS[sign]));
}

/** A `pitch` element. */
export function pitchElement({ step, alter, octave }: Pitch): XmlElement {
  return element(
    'pitch',
    {},
    element('step', {}, step),
    alter === 0 ? null : element('alter', {}, alter),
    element('octave', {}, octave),
  );
}

function notations(
  note: EtudeNote,
  before: EtudeNote | null,
  { tuplet, slurSide }: Grouping,
): XmlElement | null {
  const children: XmlElement[] = [];
  if (before?.ties) children.push(element('tied', { type: 'stop' }));
  if (note.ties) children.push(element('tied', { type: 'start' }));
  const slurred = note.slur === 'start' && slurSide ? { placement: slurSide } : {};
  if (note.slur) children.push(element('slur', { type: note.slur, number: 1, ...slurred }));
  // A bracket tells its number from a fingering above it.
  const bracketed = tuplet === 'start' && slurSide ? { placement: opposite(slurSide) } : {};
  if (tuplet) children.push(element('tuplet', { type: tuplet, bracket: 'yes', ...bracketed }));
  if (before?.slides) children.push(element('slide', { type: 'stop', number: 1, 'line-type': 'solid' }));
  if (note.slides) children.push(element('slide', { type: 'start', number: 1, 'line-type': 'solid' }));
  if (note.sign) children.push(technical(note.sign));
  const articulations = [
    note.attack ? element(note.attack) : null,
    note.breath ? element('breath-mark', {}, 'comma') : null,
  ].filter((each) => each !== null);
  if (articulations.length > 0) children.push(element('articulations', {}, ...articulations));
  // Below: above it would push the fingerings away.
  if (note.fermata) children.push(element('fermata', { type: 'inverted' }));
  return children.length > 0 ? element('notations', {}, ...children) : null;
}
