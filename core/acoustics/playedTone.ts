/** A tone as samples: the hand moves, and pitch and partials move with it. */
import type { Tone, ToneCurve } from './tone.ts';

/** Where the hand is at a moment of the tone. Between two moments it moves evenly. */
export interface HandMoment {
  /** From the start of the tone; moments in order, the first at 0, the last where the tone ends. */
  readonly seconds: number;
  /** 0 open … 1 sealed. */
  readonly closing: number;
}

/** Samples a second: what every sound device plays. */
export const SAMPLE_RATE = 44_100;

/** The loudest sample, in decibels below full scale: safe for ears. */
export const PEAK_DECIBELS = -12;

/** The tone comes and goes softly, in seconds. */
const ATTACK_SECONDS = 0.08;
const RELEASE_SECONDS = 0.15;

/** Samples between two looks at the hand. */
const BLOCK = 64;

/** Open for a second, closing for a second, stopped for a second and a half. */
export const CLOSING_HAND: readonly HandMoment[] = [
  { seconds: 0, closing: 0 },
  { seconds: 1, closing: 0 },
  { seconds: 2, closing: 1 },
  { seconds: 3.5, closing: 1 },
];

/** The same way back. */
export const OPENING_HAND: readonly HandMoment[] = [
  { seconds: 0, closing: 1 },
  { seconds: 1.5, closing: 1 },
  { seconds: 2.5, closing: 0 },
  { seconds: 3.5, closing: 0 },
];

/**
 * Plays a tone while the hand moves.
 * @param hand at least two moments, in order of time
 * @returns samples between −1 and 1, one channel, SAMPLE_RATE a second; the loudest at PEAK_DECIBELS below full scale
 * @throws {RangeError} when the moments are fewer than two, do not start at 0, go back in time or leave 0–1
 */
export function playedTone({ tones }: ToneCurve, hand: readonly HandMoment[] = CLOSING_HAND): Float32Array {
  checkHand(hand);
  const length = Math.round(hand[hand.length - 1]!.seconds * SAMPLE_RATE);
  const samples = new Float32Array(length);
  const phases = tones[0]!.partials.map(() => 0);
  let before = toneAt(tones, hand, 0);
  for (let start = 0; start < length; start += BLOCK) {
    const size = Math.min(BLOCK, length - start);
    const after = toneAt(tones, hand, (start + size) / SAMPLE_RATE);
    addBlock(samples, start, size, before, after, phases);
    before = after;
  }
  return softened(samples);
}

/** Adds every partial over a few samples, gliding from one tone to the next. */
function addBlock(
  samples: Float32Array,
  start: number,
  size: number,
  before: Tone,
  after: Tone,
  phases: number[],
): void {
  for (let k = 0; k < phases.length; k++) {
    const fromHz = (k + 1) * before.frequencyHz;
    if (fromHz > SAMPLE_RATE / 2) break;
    const slideHz = ((k + 1) * after.frequencyHz - fromHz) / size;
    const from = before.partials[k] ?? 0;
    const growth = ((after.partials[k] ?? 0) - from) / size;
    let phase = phases[k]!;
    for (let i = 0; i < size; i++) {
      samples[start + i]! += (from + i * growth) * Math.sin(phase);
      phase += (2 * Math.PI * (fromHz + i * slideHz)) / SAMPLE_RATE;
    }
    phases[k] = phase % (2 * Math.PI);
  }
}

/** The tone at a moment, between the two worked-out tones nearest in closing. */
function toneAt(tones: readonly Tone[], hand: readonly HandMoment[], seconds: number): Tone {
  const closing = closingAt(hand, seconds);
  const place = closing * (tones.length - 1);
  const low = Math.min(Math.floor(place), tones.length - 2);
  const [a, b] = [tones[low]!, tones[low + 1]!];
  const share = place - low;
  return {
    closing,
    frequencyHz: a.frequencyHz * (b.frequencyHz / a.frequencyHz) ** share,
    partials: tones[0]!.partials.map((_, k) => {
      const from = a.partials[k] ?? 0;
      return from + share * ((b.partials[k] ?? 0) - from);
    }),
  };
}

function closingAt(hand: readonly HandMoment[], seconds: number): number {
  for (let i = 1; i < hand.length; i++) {
    const [a, b] = [hand[i - 1]!, hand[i]!];
    if (seconds <= b.seconds)
      return a.closing + ((b.closing - a.closing) * (seconds - a.seconds)) / (b.seconds - a.seconds || 1);
  }
  return hand[hand.length - 1]!.closing;
}

function softened(samples: Float32Array): Float32Array {
  const attack = ATTACK_SECONDS * SAMPLE_RATE;
  const release = RELEASE_SECONDS * SAMPLE_RATE;
  let loudest = 0;
  for (let i = 0; i < samples.length; i++) {
    const edge = Math.min(1, i / attack, (samples.length - 1 - i) / release);
    samples[i]! *= (1 - Math.cos(Math.PI * edge)) / 2;
    loudest = Math.max(loudest, Math.abs(samples[i]!));
  }
  const gain = 10 ** (PEAK_DECIBELS / 20) / loudest;
  for (let i = 0; i < samples.length; i++) samples[i]! *= gain;
  return samples;
}

function checkHand(hand: readonly HandMoment[]): void {
  if (hand.length < 2 || hand[0]!.seconds !== 0)
    throw new RangeError('"hand" must hold at least two moments, the first at 0 seconds');
  hand.forEach(({ seconds, closing }, i) => {
    if (!(closing >= 0 && closing <= 1))
      throw new RangeError(`"hand": closing must be from 0 to 1, got ${closing}`);
    if (i > 0 && !(seconds > hand[i - 1]!.seconds))
      throw new RangeError(
        `"hand": moments must follow one another, got ${seconds} s after ${hand[i - 1]!.seconds} s`,
      );
  });
}
