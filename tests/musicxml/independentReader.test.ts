/** The notes the door reads, against a second reader written otherwise: a whole tree, exact fractions, nothing shared. */
import { DOMParser, type Element, type Node } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { pitchCents } from '../../core/pitch/pitch.ts';
import type { HornPart } from '../../plugin/musicxml/index.ts';
import { corpusText, describeWithCorpus } from './corpus.ts';
import { generatePart } from './generate.ts';
import { readAllParts } from './marks.ts';

/** Files above this many characters are left out: a tree of the largest takes most of a minute. */
const LARGEST = 3_000_000;

const SEMITONES: { readonly [step: string]: number } = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

function childrenOf(parent: Node, name?: string): Element[] {
  const found: Element[] = [];
  for (let child = parent.firstChild; child; child = child.nextSibling) {
    if (child.nodeType === 1 && (name === undefined || (child as Element).localName === name))
      found.push(child as Element);
  }
  return found;
}

function textOf(parent: Element, ...path: string[]): string | null {
  let at: Element | undefined = parent;
  for (const name of path) at = at && childrenOf(at, name)[0];
  return at?.textContent?.trim() ?? null;
}

/** Every measure of every part, whichever way the score is laid out. */
function measuresByPart(root: Element): Map<string, (Element | null)[]> {
  const parts = new Map<string, (Element | null)[]>();
  if (root.localName === 'score-partwise') {
    for (const part of childrenOf(root, 'part'))
      parts.set(part.getAttribute('id') ?? '', childrenOf(part, 'measure'));
    return parts;
  }
  childrenOf(root, 'measure').forEach((measure, index) => {
    for (const part of childrenOf(measure, 'part')) {
      const id = part.getAttribute('id') ?? '';
      const measures = parts.get(id) ?? [];
      while (measures.length < index) measures.push(null);
      measures.push(part);
      parts.set(id, measures);
    }
  });
  return parts;
}

/** `measure, beat, onset: MIDI number` for every note a player plays, in no special order. */
function notesOf(measures: readonly (Element | null)[]): string[] {
  const notes: string[] = [];
  // Time in ticks that every length in the part is a whole number of.
  const quarter = measures
    .flatMap((measure) => (measure ? childrenOf(measure, 'attributes') : []))
    .map((attributes) => Number(textOf(attributes, 'divisions') ?? 1))
    .reduce(leastCommonMultiple, 1);
  let divisions = 1;
  let time = { beats: 4, unit: 4 };
  let start = 0;
  measures.forEach((measure, index) => {
    let now = 0;
    let furthest: number | null = null;
    let chordStart = 0;
    const move = (ticks: number) => {
      now = Math.max(0, now + ticks);
      furthest = Math.max(furthest ?? 0, now);
    };
    for (const element of measure ? childrenOf(measure) : []) {
      const ticks = Number(textOf(element, 'duration') ?? 0) * (quarter / divisions);
      if (element.localName === 'attributes') {
        divisions = Number(textOf(element, 'divisions') ?? divisions);
        const unit = textOf(element, 'time', 'beat-type');
        if (unit !== null) time = { beats: Number(textOf(element, 'time', 'beats')), unit: Number(unit) };
      }
      if (element.localName === 'backup') move(-ticks);
      if (element.localName === 'forward') move(ticks);
      if (element.localName !== 'note') continue;
      const isChord = childrenOf(element, 'chord').length > 0;
      if (!isChord) {
        chordStart = now;
        if (childrenOf(element, 'grace').length === 0) move(ticks);
      }
      const step = textOf(element, 'pitch', 'step');
      const isCue = childrenOf(element, 'cue').length > 0 && !hasSign(element);
      if (step === null || isCue || element.getAttribute('print-object') === 'no') continue;
      const octave = Number(textOf(element, 'pitch', 'octave'));
      const midi = 12 * (octave + 1) + SEMITONES[step]! + Number(textOf(element, 'pitch', 'alter') ?? 0);
      const beat = 1 + (chordStart / quarter) * (time.unit / 4);
      notes.push(`${index}, ${beat.toFixed(3)}, ${((start + chordStart) / quarter).toFixed(3)}: ${midi}`);
    }
    start += furthest ?? (time.beats * 4 * quarter) / time.unit;
  });
  return notes;
}

function leastCommonMultiple(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return (a / x) * b;
}

function hasSign(note: Element): boolean {
  return ['stopped', 'open', 'half-muted', 'open-string'].some(
    (name) => note.getElementsByTagName(name).length > 0,
  );
}

function notesRead({ passage }: HornPart): string[] {
  return passage.notes.map(
    ({ measureIndex, beat, onsetQuarters, written }) =>
      `${measureIndex}, ${beat.toFixed(3)}, ${onsetQuarters.toFixed(3)}: ${pitchCents(written) / 100}`,
  );
}

/** Compares all parts of a score. @returns how many notes agreed */
function compare(text: string): number {
  const root = new DOMParser({ onError: () => {} }).parseFromString(text.replace(/^\ufeff/, ''), 'text/xml')
    .documentElement!;
  const trees = measuresByPart(root);
  let count = 0;
  for (const horn of readAllParts(text).horns) {
    const expected = notesOf(trees.get(horn.id) ?? []);
    expect(notesRead(horn).sort(), horn.name).toEqual(expected.sort());
    count += expected.length;
  }
  return count;
}

describeWithCorpus('real scores', (files) => {
  const texts = files.map((file) => ({ name: file.name, text: corpusText(file) }));

  it.each(texts.filter(({ text }) => text.length < LARGEST))('$name', { timeout: 120_000 }, ({ text }) => {
    compare(text);
  });
});

describe('invented parts', () => {
  it.each([
    { timewise: false, lineEnd: '\n' },
    { timewise: true, lineEnd: '\r\n' },
  ] as const)('$timewise', (options) => {
    expect(compare(generatePart(400, options))).toBe(400);
  });
});
