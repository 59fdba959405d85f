/// <reference lib="dom" />
/** A tone that is held while the hand moves: one oscillator a partial, steered by the tones that the acoustics work out. */
import { PEAK_DECIBELS, type Tone, type ToneCurve } from '../../../core/index.ts';

/** The tone comes and goes softly, and follows the hand as softly, in seconds. */
const SOFT_SECONDS = 0.08;
const FOLLOW_SECONDS = 0.02;

/** A tone that sounds. */
export interface HeldTone {
  /** @param closing 0 open … 1 sealed */
  close(closing: number): void;
  stop(): void;
}

/** Starts a tone; the loudest sample stays at PEAK_DECIBELS below full scale or under it. Only after a gesture of the user's. */
export function holdTone(curve: ToneCurve, closing: number): HeldTone {
  const context = new AudioContext();
  void context.resume();
  const master = context.createGain();
  master.gain.setValueAtTime(0, context.currentTime);
  master.gain.linearRampToValueAtTime(1, context.currentTime + SOFT_SECONDS);
  master.connect(context.destination);
  const level = levelOf(curve);
  const first = between(curve, closing);
  const voices = first.partials.map((amplitude, i) => {
    const oscillator = context.createOscillator();
    const gain = context.createGain();
    oscillator.frequency.value = (i + 1) * first.frequencyHz;
    gain.gain.value = amplitude * level;
    oscillator.connect(gain).connect(master);
    oscillator.start();
    return { oscillator, gain };
  });
  return {
    close(wanted) {
      const tone = between(curve, wanted);
      voices.forEach(({ oscillator, gain }, i) => {
        oscillator.frequency.setTargetAtTime((i + 1) * tone.frequencyHz, context.currentTime, FOLLOW_SECONDS);
        gain.gain.setTargetAtTime((tone.partials[i] ?? 0) * level, context.currentTime, FOLLOW_SECONDS);
      });
    },
    stop() {
      master.gain.setTargetAtTime(0, context.currentTime, SOFT_SECONDS / 3);
      setTimeout(() => void context.close(), 1000 * 3 * SOFT_SECONDS);
    },
  };
}

/** Partials that all stood at their height at once would just reach the peak that is allowed. */
function levelOf({ tones }: ToneCurve): number {
  const highest = Math.max(...tones.map(({ partials }) => partials.reduce((sum, each) => sum + each, 0)));
  return 10 ** (PEAK_DECIBELS / 20) / highest;
}

/** The tone at a degree of closing, between the two nearest that were worked out. */
function between({ tones }: ToneCurve, closing: number): Pick<Tone, 'frequencyHz' | 'partials'> {
  const place = closing * (tones.length - 1);
  const low = Math.min(Math.floor(place), tones.length - 2);
  const [a, b] = [tones[low]!, tones[low + 1]!];
  const share = place - low;
  return {
    frequencyHz: a.frequencyHz * (b.frequencyHz / a.frequencyHz) ** share,
    partials: tones[0]!.partials.map((_, i) => {
      const from = a.partials[i] ?? 0;
      return from + share * ((b.partials[i] ?? 0) - from);
    }),
  };
}
