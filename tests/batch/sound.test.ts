/** The stop made audible: WAV files read as any player reads them, their pitch heard by an estimator that knows no horn. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PitchDetector } from 'pitchy';
import { beforeAll, describe, expect, test } from 'vitest';
import { closingCurve, waveFile } from '../../core/acoustics/index.ts';
import { bellhandHere, folderWith, textOf } from './bellhand.ts';

interface Sound {
  readonly samples: Float32Array;
  readonly rate: number;
}

/** Reads a WAV file chunk by chunk. @source the RIFF WAVE format (from memory) */
function heard(bytes: Uint8Array): Sound {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const name = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
  expect([name(0), name(8)]).toEqual(['RIFF', 'WAVE']);
  expect(view.getUint32(4, true)).toBe(bytes.length - 8);
  const chunks = new Map<string, DataView>();
  for (let at = 12; at < bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    chunks.set(name(at), new DataView(bytes.buffer, bytes.byteOffset + at + 8, length));
    at += 8 + length + (length % 2);
  }
  const format = chunks.get('fmt ')!;
  const [kind, channels, bits] = [0, 2, 14].map((at) => format.getUint16(at, true));
  expect([kind, channels, bits]).toEqual([1, 1, 16]);
  const data = chunks.get('data')!;
  const samples = Float32Array.from(
    { length: data.byteLength / 2 },
    (_, i) => data.getInt16(2 * i, true) / 32768,
  );
  return { samples, rate: format.getUint32(4, true) };
}

const WINDOW = 8192;

function around({ samples, rate }: Sound, seconds: number): Float32Array {
  const middle = Math.round(seconds * rate);
  return samples.subarray(middle - WINDOW / 2, middle + WINDOW / 2);
}

function pitchAt(sound: Sound, seconds: number): number {
  return PitchDetector.forFloat32Array(WINDOW).findPitch(around(sound, seconds), sound.rate)[0];
}

/** The centre of the spectrum up to 10 kHz, by amplitude, with a Hann window. */
function centroidAt(sound: Sound, seconds: number): number {
  const piece = around(sound, seconds).map((sample, i) => sample * Math.sin((Math.PI * i) / WINDOW) ** 2);
  let sum = 0;
  let weighted = 0;
  for (let hz = 50; hz < 10_000; hz += 40) {
    const step = (2 * Math.PI * hz) / sound.rate;
    let re = 0;
    let im = 0;
    piece.forEach((sample, i) => {
      re += sample * Math.cos(step * i);
      im += sample * Math.sin(step * i);
    });
    sum += Math.hypot(re, im);
    weighted += hz * Math.hypot(re, im);
  }
  return weighted / sum;
}

const cents = (a: number, b: number) => 1200 * Math.log2(a / b);

/** The sound that the command writes for a note. */
async function soundOf(args: readonly string[]): Promise<Sound> {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-sound-'));
  try {
    expect(await bellhandHere(folder, ['explain', ...args, '--sound', 'stop.wav'])).toMatchObject({
      exit: 0,
      stderr: '',
    });
    return heard(readFileSync(join(folder, 'stop.wav')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe.each([
  // Fingerings as `explain` gives them: valves and harmonic, and the tube they make, in cents above MIDI note 0.
  { note: 'C5', horn: 'double', fundamentalCents: 2800, harmonic: 9 },
  { note: 'F4', horn: 'double', fundamentalCents: 2900, harmonic: 6 },
  { note: 'E5', horn: 'single-bflat', fundamentalCents: 3400, harmonic: 8 },
])('explain $note --sound on a $horn', ({ note, horn, fundamentalCents, harmonic }) => {
  let sound: Sound;
  beforeAll(async () => {
    sound = await soundOf([note, '--horn', horn]);
  });

  test('is open, then sealed, within 5 cents of the closing curve', () => {
    expect(sound.rate).toBe(44_100);
    const hz = closingCurve({ fundamentalCents }, { harmonics: [harmonic] }).harmonics[0]!.frequenciesHz;
    expect(Math.abs(cents(pitchAt(sound, 0.5), hz[0]!))).toBeLessThan(5);
    expect(Math.abs(cents(pitchAt(sound, 2.7), hz[hz.length - 1]!))).toBeLessThan(5);
    const half = pitchAt(sound, 1.5);
    expect(half).toBeLessThan(hz[0]!);
    expect(half).toBeGreaterThan(hz[hz.length - 1]!);
  });

  test('is brighter sealed than open', () => {
    expect(centroidAt(sound, 2.7)).toBeGreaterThan(1.1 * centroidAt(sound, 0.5));
  });

  test('is safe for ears: softly begun, 12 dB below the loudest at most', () => {
    const loudest = sound.samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
    expect(20 * Math.log10(loudest)).toBeCloseTo(-12, 1);
    const first = sound.samples.subarray(0, 0.005 * sound.rate);
    expect(first.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)).toBeLessThan(0.01);
  });
});

describe('the file of a sound', () => {
  test('is replaced when it is our own, never when somebody changed it, unless asked', async () => {
    const folder = folderWith({ 'mine.wav': 'not yours' });
    const write = async (note: string, file: string, ...more: string[]) =>
      await bellhandHere(folder, ['explain', note, '--sound', file, ...more]);
    const refused = await write('C5', 'mine.wav');
    expect(refused).toMatchObject({ exit: 2, stdout: '' });
    expect(refused.stderr).toMatch(/^bellhand: mine\.wav: this file is there already[^\n]+--force\n$/);
    expect(textOf(folder, 'mine.wav')).toBe('not yours');
    expect((await write('C5', 'mine.wav', '--force')).exit).toBe(0);
    expect((await write('D5', 'mine.wav')).exit).toBe(0);
    const changed = readFileSync(join(folder, 'mine.wav'));
    changed[1000]! ^= 1;
    writeFileSync(join(folder, 'mine.wav'), changed);
    expect((await write('C5', 'mine.wav')).exit).toBe(2);
    expect(readFileSync(join(folder, 'mine.wav'))).toEqual(changed);
  });

  test.each([
    [
      ['B2', '--horn', 'single-bflat', '--sound', 'a.wav'],
      /^bellhand: B2: no fingering, so no closing curve/,
    ],
    [['C5', '--sound', 'none/a.wav'], /its folder does not exist/],
  ])('is refused in one line: %j', async (args, why) => {
    const run = await bellhandHere(folderWith(), ['explain', ...args]);
    expect(run.exit).toBe(2);
    expect(run.stderr).toMatch(why);
    expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
  });

  test('cuts off what is louder than a sample can be', () => {
    const { samples } = heard(waveFile(Float32Array.from([0, 2, -2, 0.5])));
    expect([...samples].map((sample) => Math.round(100 * sample))).toEqual([0, 100, -100, 50]);
  });
});

describe('report --sound', () => {
  test('lets a glissando be heard that the hand cannot make, and nothing else', async () => {
    const folder = folderWith({
      'part.musicxml': textOf(process.cwd(), 'plugin/batch/demo/low-water.musicxml'),
    });
    await bellhandHere(folder, ['report', 'part.musicxml', '--sound']);
    const page = textOf(folder, 'part.report.html');
    const sounds = [
      ...page.matchAll(/<audio[^>]*aria-label="([^"]*)" src="data:audio\/wav;base64,([^"]*)"/g),
    ];
    expect(sounds.map(([, label]) => label)).toEqual(['To be heard: G4 as the hand closes (open F horn)']);
    const sound = heard(Buffer.from(sounds[0]![2]!, 'base64'));
    // Written G4 on the horn in F sounds C4; the hand brings it down by about a tone.
    const fall = cents(pitchAt(sound, 0.5), pitchAt(sound, 2.7));
    expect(Math.abs(cents(pitchAt(sound, 0.5), 261.63))).toBeLessThan(10);
    expect(fall).toBeGreaterThan(150);
    expect(fall).toBeLessThan(250);
    await bellhandHere(folder, ['report', 'part.musicxml']);
    expect(textOf(folder, 'part.report.html')).not.toContain('<audio');
  });
});
