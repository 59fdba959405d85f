/** A closing curve as a picture: closing to the right, pitch falling down the page, one line for each harmonic. */
import { checkObject } from '../guards/allowed.ts';
import { escapedText } from '../marks/markup.ts';
import { frequencyHz } from '../pitch/pitch.ts';
import { CLOSING_BANDS } from '../stopping/stopping.ts';
import type { CurveWords } from '../words/areas/curves.ts';
import { curveWords } from '../words/curves.ts';
import { closingText, fixedText, signedCents } from '../words/fingerings.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';
import type { ClosingCurve, HarmonicCurve } from './closingCurve.ts';
import { closingForDrop } from './closingForDrop.ts';

/** How a closing curve is drawn. */
export interface CurveSvgOptions {
  /** Heading, also read out by screen readers. Default names the fundamental in hertz. */
  readonly title?: string;
  /** In whose language it is written; English by default. */
  readonly reader?: Reader;
  /** A pitch to point out: where this harmonic has come down by so many cents. */
  readonly wanted?: { readonly harmonicNumber: number; readonly dropCents: number };
}

/** The picture and the plot in it, in pixels. */
const WIDTH = 720;
const HEIGHT = 480;
const LEFT = 64;
const RIGHT = 600;
const TOP = 56;
const BOTTOM = 424;

/** Least distance between two labels. */
const LABEL_DISTANCE = 15;

/** Colours that stand out by 3 : 1 from the light and the dark panel alike. @source okabeIto */
const LINE_COLOURS = ['#0072B2', '#D55E00', '#009E73', '#CC79A7'] as const;
/** One dash for each round of colours, so that no two of 16 lines look alike. */
const DASHES = ['', '8 4', '2 3', '10 3 2 3'] as const;

const STYLE = `
.cc-panel{fill:#fff}.cc-text{fill:#1a1a1a;font:13px sans-serif}.cc-title{font-size:16px;font-weight:bold}
.cc-grid{stroke:#cfcfcf}.cc-lead{stroke:#8a8a8a}.cc-want{stroke:#1a1a1a;fill:none}.cc-line{fill:none;stroke-width:2}
@media (prefers-color-scheme:dark){.cc-panel{fill:#15171b}.cc-text{fill:#ececec}.cc-grid{stroke:#3c4048}
.cc-want{stroke:#ececec}}`;

/**
 * A picture that stands alone: no script, no font or style from elsewhere, legible in light and in dark surroundings,
 * with a title and a description in words.
 * @returns an SVG element as text, 720 × 480
 * @throws {TypeError} when there is no curve
 */
export function curveSvg(curve: ClosingCurve, options: CurveSvgOptions = {}): string {
  checkObject('curve', curve, 'a curve, as closingCurve makes one');
  const { reader = ENGLISH_READER } = options;
  const words = curveWords(reader);
  const title = options.title ?? words.pictured(fixedText(frequencyHz(curve.fundamentalCents), 1, reader));
  const id = `closing-${Math.round(curve.fundamentalCents)}-${curve.harmonics.map((h) => h.harmonicNumber).join('-')}`;
  const scale = verticalScale(curve);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${escapedText(title)}</title>`,
    `<desc id="${id}-desc">${escapedText(inWords(curve, words))}</desc>`,
    `<style>${STYLE}</style>`,
    `<rect class="cc-panel" width="${WIDTH}" height="${HEIGHT}"/>`,
    text(LEFT, 30, title, 'start', ' cc-title'),
    ...grid(scale, reader),
    ...curve.harmonics.map((harmonic, i) => line(curve, harmonic, i, scale)),
    ...labels(curve, scale),
    ...wantedPoint(curve, options.wanted, scale),
    '</svg>',
  ].join('\n');
}

/** Cents to height, with the grid line distance that suits the range. */
interface VerticalScale {
  readonly highest: number;
  readonly lowest: number;
  readonly gridCents: number;
  y(cents: number): number;
}

function verticalScale({ harmonics }: ClosingCurve): VerticalScale {
  const all = ([0] as number[]).concat(...harmonics.map(({ centsFromOpen }) => centsFromOpen));
  const range = Math.max(...all) - Math.min(...all);
  const gridCents = range > 700 ? 200 : range > 300 ? 100 : range > 120 ? 50 : range > 40 ? 20 : 5;
  const highest = Math.max(...all);
  const lowest = Math.min(gridCents * Math.floor(Math.min(...all) / gridCents), highest - gridCents);
  return {
    highest,
    lowest,
    gridCents,
    y: (cents) => TOP + ((highest - cents) / (highest - lowest)) * (BOTTOM - TOP),
  };
}

function x(closing: number): number {
  return LEFT + closing * (RIGHT - LEFT);
}

function grid({ highest, lowest, gridCents, y }: VerticalScale, reader: Reader): string[] {
  const { howFar, cents: centsWord, harmonic, sealed } = curveWords(reader);
  const parts: string[] = [];
  for (let cents = gridCents * Math.floor(highest / gridCents); cents >= lowest; cents -= gridCents) {
    parts.push(
      `<path class="cc-grid" d="M${LEFT} ${round(y(cents))}H${RIGHT}"/>`,
      text(LEFT - 8, y(cents) + 4, signedCents(cents), 'end'),
    );
  }
  CLOSING_BANDS.forEach((band, i) => {
    const name = band === 'full' ? sealed : closingText(band, reader);
    const at = round(x(i / 4));
    parts.push(
      `<path class="cc-grid" d="M${at} ${TOP}V${BOTTOM}"/>`,
      text(x(i / 4), BOTTOM + 20, name, 'middle'),
    );
  });
  parts.push(
    text((LEFT + RIGHT) / 2, BOTTOM + 44, howFar, 'middle'),
    text(LEFT - 8, TOP - 10, centsWord, 'end'),
    text(RIGHT + 24, TOP - 10, harmonic, 'start'),
  );
  return parts;
}

function line(
  { closings }: ClosingCurve,
  harmonic: HarmonicCurve,
  order: number,
  { y }: VerticalScale,
): string {
  const points = harmonic.centsFromOpen.map((cents, i) => `${round(x(closings[i]!))} ${round(y(cents))}`);
  const dash = DASHES[Math.floor(order / LINE_COLOURS.length) % DASHES.length];
  return `<path class="cc-line" stroke="${LINE_COLOURS[order % LINE_COLOURS.length]}"${
    dash ? ` stroke-dasharray="${dash}"` : ''
  } d="M${points.join('L')}"/>`;
}

/** The number of each harmonic and its full drop at the end of its line, moved apart where lines end close together. */
function labels({ harmonics }: ClosingCurve, { y }: VerticalScale): string[] {
  const ends = harmonics
    .map(({ harmonicNumber, centsFromOpen }) => {
      const cents = centsFromOpen[centsFromOpen.length - 1]!;
      return { end: y(cents), words: `${harmonicNumber}: ${signedCents(cents)}` };
    })
    .sort((a, b) => a.end - b.end);
  const heights: number[] = [];
  ends.forEach(({ end }, i) => {
    heights.push(i === 0 ? end : Math.max(end, heights[i - 1]! + LABEL_DISTANCE));
  });
  for (let i = ends.length - 1; i >= 0; i--) {
    const lowest = i === ends.length - 1 ? BOTTOM : heights[i + 1]! - LABEL_DISTANCE;
    heights[i] = Math.min(heights[i]!, lowest);
  }
  return ([] as string[]).concat(
    ...ends.map(({ end, words }, i) => [
      `<path class="cc-lead" d="M${RIGHT + 2} ${round(end)}L${RIGHT + 20} ${round(heights[i]!)}"/>`,
      text(RIGHT + 24, heights[i]! + 4, words, 'start'),
    ]),
  );
}

function wantedPoint(curve: ClosingCurve, wanted: CurveSvgOptions['wanted'], { y }: VerticalScale): string[] {
  if (!wanted) return [];
  const found = closingForDrop(curve, wanted.harmonicNumber, wanted.dropCents);
  if (!found.ok) return [];
  const across = round(x(found.closing));
  const down = round(y(-wanted.dropCents));
  return [
    `<path class="cc-want" stroke-dasharray="3 3" d="M${LEFT} ${down}H${across}V${BOTTOM}"/>`,
    `<circle class="cc-want" cx="${across}" cy="${down}" r="5"/>`,
  ];
}

function inWords({ harmonics }: ClosingCurve, words: CurveWords): string {
  if (harmonics.length === 0) return `${words.none}.`;
  const ways = harmonics.map(({ harmonicNumber, centsFromOpen }) => {
    const sealed = Math.round(centsFromOpen[centsFromOpen.length - 1]!);
    if (sealed === 0) return words.stays(harmonicNumber);
    return sealed < 0 ? words.falls(harmonicNumber, -sealed) : words.rises(harmonicNumber, sealed);
  });
  return words.described(ways.join(', '));
}

function text(at: number, baseline: number, words: string, anchor: string, more = ''): string {
  return `<text class="cc-text${more}" x="${round(at)}" y="${round(baseline)}" text-anchor="${anchor}">${escapedText(words)}</text>`;
}

function round(pixels: number): number {
  return Math.round(10 * pixels) / 10;
}
