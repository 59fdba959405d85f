/** Engraves a one-part score, system by system, for a page. */
import {
  ENGLISH_READER,
  type EngravingWords,
  engravingWords,
  MARK_PREFIX,
  type Reader,
} from '../../core/index.ts';
import { compactSvg } from './compactSvg.ts';
import { textsInside } from './textsInside.ts';
import { VERDICT_INKS } from './verdicts.ts';

/** One system, ready for a page. Lengths are in the units of its viewBox. */
export interface EngravedSystem {
  readonly width: number;
  readonly height: number;
  readonly content: string;
  /** The bars in it, by id. */
  readonly bars: ReadonlyMap<string, Box>;
  /** The note heads whose notes have an id, by id: left edge and middle. */
  readonly heads: ReadonlyMap<string, { readonly x: number; readonly y: number }>;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Engraving {
  readonly systems: readonly EngravedSystem[];
  /** Outlines of the glyphs used, by name. */
  readonly glyphs: ReadonlyMap<string, string>;
  readonly fontFace: string | null;
}

export interface EngravingLook {
  /** Width of a system, in tenths of a millimetre at full size. */
  readonly width: number;
  /** True to break lines where the score says so, false to fill them. */
  readonly keepsBreaks: boolean;
  /** True to break lines where they are full as well as where the score says so. */
  readonly fillsLines?: boolean;
  /** True for a list of short pieces: their marks are so short that notes may stand close, and a short last line stays short. */
  readonly isList?: boolean;
}

/** Ids that the page looks for start so; the engraver's own are dropped. */
export const PAGE_ID = 'bh-';

/** Marks are this much smaller than other texts. */
const MARK_SIZE = '72%';

/** A little wider than usual: marks need room side by side. */
const ROOMY = { spacingLinear: 0.32, spacingNonLinear: 0.62 } as const;
/** For wide marks over quick notes, with fewer bars to a system: a choice, from triplets marked `≈T12`. */
const WIDE = { spacingLinear: 0.45, spacingNonLinear: 0.62 } as const;
const CLOSE = { spacingLinear: 0.27, spacingNonLinear: 0.58 } as const;

/** No picture of the music can be had. `message` says why and what to do. */
export class EngravingError extends Error {
  private readonly why: keyof EngravingWords;

  constructor(why: keyof EngravingWords) {
    super(engravingWords(ENGLISH_READER)[why]);
    this.name = 'EngravingError';
    this.why = why;
  }

  /** One clause without a full stop. */
  in(reader: Reader): string {
    return engravingWords(reader)[this.why];
  }
}

/**
 * Engraves a MusicXML text.
 * @throws {EngravingError} when the engraver cannot read it, or is not installed
 */
export async function engrave(musicXml: string, look: EngravingLook): Promise<Engraving> {
  const toolkit = await loadToolkit();
  // Laid out once, when all is said: to read what the engraver made of the score, nothing need be placed.
  toolkit.setOptions({ ...optionsFor(musicXml, look), breaks: 'none' });
  load(toolkit, withSpacesKept(musicXml));
  const mei = toolkit.getMEI({});
  // No other option again: the seed would start anew, and give new elements the ids of old ones.
  toolkit.setOptions({ breaks: look.keepsBreaks ? (look.fillsLines ? 'smart' : 'line') : 'auto' });
  load(toolkit, prepared(look.keepsBreaks ? lifted(mei) : levelled(mei)));
  const systems: EngravedSystem[] = [];
  const glyphs = new Map<string, string>();
  let fontFace: string | null = null;
  for (let page = 1; page <= toolkit.getPageCount(); page++) {
    const svg = compactSvg(toolkit.renderToSVG(page), (id) => id.startsWith(PAGE_ID));
    // Where a break of the score's falls on one of its own, the engraver leaves a line with nothing on it.
    if (!svg.content.includes('class="measure"')) continue;
    for (const [glyph, outline] of svg.glyphs) glyphs.set(glyph, outline);
    // The font is only needed where a text really uses it.
    if (svg.fontFace && /font-family="Leipzig"/.test(svg.content)) fontFace = svg.fontFace;
    const [x, y] = marginOf(svg.content);
    systems.push({
      width: svg.width,
      height: svg.height,
      content: textsInside(svg.content, x, svg.width),
      bars: barsOf(svg.content, x, y),
      heads: headsOf(svg.content, x, y),
    });
  }
  return { systems, glyphs, fontFace };
}

/** Loads a score, in MusicXML or in the engraver's own format. @throws {EngravingError} when it cannot be read */
function load(toolkit: Toolkit, text: string): void {
  if (!toolkit.loadData(text)) throw new EngravingError('unreadable');
}

/** All but the line breaks. */
function optionsFor(musicXml: string, look: EngravingLook) {
  return {
    pageWidth: look.width,
    // As low as can be: every system becomes a page of its own, so that paper can break between them.
    pageHeight: 100,
    pageMarginTop: 30,
    pageMarginBottom: 30,
    // Bar numbers stand before the first line.
    pageMarginLeft: 40,
    pageMarginRight: 10,
    adjustPageHeight: true,
    // Lines that the score breaks are all as long; the last line of a text that fills them may be short.
    minLastJustification: look.keepsBreaks && !look.isList ? 0 : 0.8,
    // The score's breaks stand, however short the line before them.
    breaksSmartSb: 0,
    header: 'none',
    footer: 'none',
    defaultTopMargin: 1.3,
    defaultBottomMargin: 1.3,
    scale: 100,
    ...(look.isList ? CLOSE : isTight(musicXml) ? WIDE : ROOMY),
    svgViewBox: true,
    svgRemoveXlink: true,
    smuflTextFont: 'embedded',
    // The same score gives the same page.
    xmlIdSeed: 1,
  };
}

/** The engraver trims every run of words, and the next would stand against it. */
function withSpacesKept(musicXml: string): string {
  return musicXml.replace(/ +(?=<\/words>)/g, (spaces) => '\u00a0'.repeat(spaces.length));
}

/** True for a part with marks of one line that are wider than the quick notes under them. */
function isTight(musicXml: string): boolean {
  return new RegExp(`${MARK_PREFIX}\u200b*[^<\\s\u200b]{4,}</`).test(musicXml);
}

/** Keeps the note of a metronome mark off the words before it, and prints our marks small, in the colour of what they say. */
function prepared(mei: string): string {
  const mark = new RegExp(`<rend ([^>]*)>${MARK_PREFIX}(${NO_LINE})?\u200b*(?=([\\s\\S]*?)</rend>)`, 'g');
  const spaced = mei.replace(/(<\/rend>|[^\s>])\s*(<rend [^>]*glyph\.auth=)/g, '$1\u00a0\u00a0$2');
  return spaced.replace(mark, (_, attributes: string, above = '', printed: string) => {
    const says = (verdict: string) =>
      printed.split(/<lb[^>]*>/).some((line) => line.trim().startsWith(verdict));
    const colour = says('×') ? VERDICT_INKS.impossible : says('≈') ? VERDICT_INKS.risky : null;
    return `<rend ${attributes} fontsize="${MARK_SIZE}"${colour ? ` color="${colour}"` : ''}>${above}`;
  });
}

/** Lifts headings, half a staff space a unit: bar numbers stand where they would, and the engraver lets them touch. */
function lifted(mei: string): string {
  return mei.replace(/<tempo /g, '<tempo vo="2vu" ');
}

/** The engraver sets directions of one group on one line within a system. Numbers that no score has. */
const ROWS = { above: 9001, below: 9002 } as const;

/** A line that keeps its height and prints nothing. */
const NO_LINE = '\u00a0<lb/>';

/** Gives the marks of a staff a row of their own. Several at one place, as of a chord, and reasons stand as they did. */
function levelled(mei: string): string {
  const dir = new RegExp(
    `<dir ([^>]*place="(above|below)"[^>]*)>(\\s*<rend [^>]*>${MARK_PREFIX}[\\s\\S]*?)</dir>`,
    'g',
  );
  return mei.replace(/<measure [\s\S]*?<\/measure>/g, (measure) => {
    const placeOf = (attributes: string) => attributes.replace(/xml:id="[^"]*"/, '').trim();
    const count = new Map<string, number>();
    for (const [, attributes] of measure.matchAll(dir))
      count.set(placeOf(attributes!), (count.get(placeOf(attributes!)) ?? 0) + 1);
    return measure.replace(dir, (whole, attributes: string, side: keyof typeof ROWS, text: string) => {
      const lines = text.split('<lb').length;
      if (count.get(placeOf(attributes)) !== 1 || lines > 2) return whole;
      // The lines of a row hang from its top: above the staff a mark of one line has an empty one above.
      const set =
        lines === 1 && side === 'above' ? text.replace(MARK_PREFIX, `${MARK_PREFIX}${NO_LINE}`) : text;
      return `<dir vgrp="${ROWS[side]}" ${attributes}>${set}</dir>`;
    });
  });
}

/** Where the drawing starts inside its frame. */
function marginOf(content: string): readonly [x: number, y: number] {
  const match = /^\s*<g transform="translate\((-?[\d.]+) (-?[\d.]+)\)"/.exec(content);
  return match ? [Number(match[1]), Number(match[2])] : [0, 0];
}

/** A bar begins with the lines of its staff, from the top. */
function barsOf(content: string, x: number, y: number): ReadonlyMap<string, Box> {
  const bars = new Map<string, Box>();
  const bar =
    /<g id="([^"]*)" class="measure">.*?<path d="M(-?\d+) (-?\d+) L(-?\d+) \3"[^>]*>(?:<path d="M-?\d+ (-?\d+) L[^>]*>){0,4}/g;
  for (const [, id, left, top, right, bottom] of content.matchAll(bar)) {
    bars.set(id!, {
      left: x + Number(left),
      right: x + Number(right),
      top: y + Number(top),
      bottom: y + Number(bottom ?? top),
    });
  }
  return bars;
}

function headsOf(content: string, x: number, y: number): ReadonlyMap<string, { x: number; y: number }> {
  const heads = new Map<string, { x: number; y: number }>();
  const head = /<g id="([^"]*)" class="note"[^>]*>.*?<use [^>]*?transform="translate\((-?\d+) (-?\d+)\)/g;
  for (const [, id, left, middle] of content.matchAll(head))
    heads.set(id!, { x: x + Number(left), y: y + Number(middle) });
  return heads;
}

type Toolkit = InstanceType<typeof import('verovio/esm').VerovioToolkit>;

let loaded: Promise<Toolkit> | null = null;

/** The engraver is large, so it is loaded by those who engrave and only once. */
function loadToolkit(): Promise<Toolkit> {
  loaded ??= (async () => {
    const [{ default: createModule }, { enableLog, LOG_OFF, VerovioToolkit }] = await Promise.all([
      import('verovio/wasm'),
      import('verovio/esm'),
    ]).catch((fault: NodeJS.ErrnoException) => {
      throw fault.code === 'ERR_MODULE_NOT_FOUND' ? new EngravingError('noEngraver') : fault;
    });
    const module = await createModule();
    // It comments on every oddity of a score; users would take that for ours.
    enableLog(LOG_OFF, module);
    return new VerovioToolkit(module);
  })();
  return loaded;
}
