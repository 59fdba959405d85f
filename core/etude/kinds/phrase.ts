/** A phrase and its stopped echo: say it, then say it from far away. */

import { pitchCents } from '../../pitch/pitch.ts';
import {
  asPhrase,
  type Bar,
  bar,
  type Dynamic,
  FIVE_FOUR,
  FOUR_FOUR,
  note,
  rest,
  SIX_EIGHT,
  THREE_FOUR,
  withBreath,
  withDynamic,
} from '../bar.ts';
import { neighbourKeys } from '../key.ts';
import type { Level } from '../levels.ts';
import { lineDrawer } from '../line.ts';
import { arched, slurred } from '../marking.ts';
import { type Melody, melodyFaults, repeatsIn } from '../melody.ts';
import { FULL_LINE } from '../pageLines.ts';
import { eventsIn, type PhraseWish, phraseLengths, placesOf, soundingIn, wishFor } from '../period.ts';
import { metersThrough, type Rhythm, type Rhythms } from '../rhythms.ts';
import { isGapped, type Tone } from '../tone.ts';
import { type Draft, hasTimeFor, type Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

/** Drafts of a phrase at most; the first that sings is taken. */
const DRAFTS = 60;
/** So many where the notes at hand lie apart: few sing, and each is soon made. */
const DRAFTS_OF_FEW = 200;
/** In so many of them an answer begins with the very notes of its question. */
const ALIKE_DRAFTS = 20;

/** Wishes for the last phrase at most, until its notes and rests fill the line that ends the page. */
const WISHES = 24;

/** Notes under one slur, at most. */
const MOST_SLURRED: { readonly [level in Level]: number } = { 1: 2, 2: 4, 3: 6 };

/** A phrase as it is to be, and its notes. */
interface Sung {
  readonly wish: PhraseWish;
  readonly line: readonly Tone[];
}

function compose(workshop: Workshop): Draft {
  const { random, key, level, plan, length, meter, tones, wanders } = workshop;
  const choices = metersThrough(random, meter, level, plan.isMixed).map((each) => withTime(each, workshop));
  const lengths = phraseLengths(random, length / 2, level, choices);
  const away = wanders ? neighbourKeys(key) : [];
  const way = Math.floor(random() * 2);
  const bars: Bar[] = [];
  let before: Tone | null = null;
  let question: Sung | null = null;
  lengths.forEach((count, i) => {
    const isAnswer = i % 2 === 1 || i === lengths.length - 1;
    const isLast = i === lengths.length - 1;
    const abroad = !isLast && away.length > 0 ? away[(way + i) % away.length]! : key;
    const draw = () =>
      within(tones, wishFor(random, choices, count, isAnswer, question?.wish ?? null, key, abroad));
    let wish = draw();
    for (let tries = 1; isLast && tries < WISHES && eventsIn(wish) < FULL_LINE; tries++) wish = draw();
    const line = sungLine(workshop, wish, question, before);
    question = isAnswer ? null : { wish, line };
    bars.push(...asPhrase(voiced(workshop, wish, line, 'open', 'mf')));
    bars.push(...asPhrase(voiced(workshop, wish, line, 'closed', isLast ? 'pp' : 'p')));
    before = line[line.length - 1]!;
  });
  return bars;
}

/** Where a horn has none of the notes on which a phrase should rest, a question rests on any but the tonic. */
function within(tones: readonly Tone[], wish: PhraseWish): PhraseWish {
  if (tones.some(({ degree }) => wish.ends.indexOf(degree) >= 0)) return wish;
  return { ...wish, ends: tones.map(({ degree }) => degree).filter((degree) => degree !== 0) };
}

/** Rhythms for the tempo: on a natural horn the hand moves from note to note and needs its time. */
function withTime(rhythms: Rhythms, workshop: Workshop): Rhythms {
  if (!workshop.isNatural) return rhythms;
  const slow = (all: readonly Rhythm[]) => {
    const those = all.filter((rhythm) => rhythm.every((each) => each < 0 || hasTimeFor(each, workshop)));
    return those.length > 0 ? those : all.slice(0, 1);
  };
  return { ...rhythms, moving: slow(rhythms.moving), closing: slow(rhythms.closing) };
}

/** The notes of a phrase: the draft with the fewest faults. An answer begins as its question, where that sings. */
function sungLine(
  { random, tones }: Workshop,
  wish: PhraseWish,
  question: Sung | null,
  before: Tone | null,
): readonly Tone[] {
  const places = placesOf(wish);
  const draw = lineDrawer(tones, places);
  const head = question ? question.line.slice(0, soundingIn(wish.bars[0]!.rhythm)) : [];
  const drawOn = lineDrawer(tones, places.slice(head.length));
  const isGap = isGapped(tones);
  const drafts = isGap ? DRAFTS_OF_FEW : DRAFTS;
  const barLengths = wish.bars.map(({ rhythm }) => soundingIn(rhythm));
  const melodyOf = (notes: readonly Tone[]): Melody => ({
    notes,
    barLengths,
    ends: wish.ends,
    isGapped: isGap,
  });
  let best: readonly Tone[] = [];
  let fewest = Number.POSITIVE_INFINITY;
  for (let draft = 0; draft < drafts && fewest > 0; draft++) {
    const line =
      head.length > 0 && draft < ALIKE_DRAFTS
        ? [...head, ...drawOn(random, head[head.length - 1]!)]
        : draw(random, before);
    // More faults than the best has are not counted.
    const faults = melodyFaults(melodyOf(line), fewest).length;
    // Where none is without a fault, one that says no note twice.
    const lack = faults > 0 ? faults + repeatsIn(line.map(({ written }) => pitchCents(written))) : 0;
    if (lack < fewest) [best, fewest] = [line, lack];
  }
  return best;
}

/** A phrase in one of its voices: louder up to its high point, softer from there, a breath half way. */
function voiced(
  { toneIn, level, isNatural }: Workshop,
  wish: PhraseWish,
  line: readonly Tone[],
  voice: 'open' | 'closed',
  dynamic: Dynamic,
): readonly Bar[] {
  let next = 0;
  const cents = line.map(({ written }) => pitchCents(written));
  const top = cents.indexOf(Math.max(...cents));
  const bars = wish.bars.map(({ rhythm, meter, key }) => {
    const notes = rhythm.map((quarters) => {
      if (quarters < 0) return rest(-quarters);
      const tone = toneIn(line[next++]!, key);
      return note(tone.written, quarters, voice === 'open' && !isNatural ? 'open' : tone.hand);
    });
    return slurred(bar(meter, notes), MOST_SLURRED[level]);
  });
  // Never before the last bar, to which the line leads.
  const half = bars.length > 3 ? Math.ceil(bars.length / 2) - 1 : -1;
  return arched(bars, top).map((each, i) =>
    i === 0 ? withDynamic(each, dynamic) : i === half ? withBreath(each) : each,
  );
}

/** The kind, as the list of kinds has it. */
export const phrase = {
  kind: 'phrase',
  needs: 'notes',
  tempo: { 1: 72, 2: 80, 3: 92 },
  meters: {
    1: [FOUR_FOUR],
    2: [FOUR_FOUR, THREE_FOUR, SIX_EIGHT],
    3: [FOUR_FOUR, THREE_FOUR, SIX_EIGHT, FIVE_FOUR],
  },
  character: 'cantabile',
  compose,
} as const satisfies KindOfEtude;
