/// <reference lib="dom" />
/** "A note": one written note, every way to play it, and what the closing hand does to it, to see and to hear. */
import { batch, computed, effect, signal } from '@preact/signals';
import {
  alternativeTexts,
  answerText,
  askNote,
  CLOSING_HAND,
  CROOKS,
  crookFromName,
  fingeredPitch,
  fingeringText,
  formatPitch,
  HORN_IN_F,
  keyText,
  nameNear,
  naturalName,
  naturalPitch,
  noteClassName,
  noteName,
  type Pitch,
  parsePitch,
  pitchCents,
  playedTone,
  SAMPLE_RATE,
  signedCents,
  type Transposition,
  toneCurve,
  valvesText,
  verdictText,
} from '../../../core/index.ts';
import { reader, settings, words } from '../choices.ts';
import { HornChoice } from '../fields.tsx';
import { remembered } from '../remembered.ts';
import { type HeldTone, holdTone } from '../sound/heldTone.ts';
import { ladderOf, pitchAt } from './ladder.ts';
import { LadderPicture } from './ladderPicture.tsx';

const LOWEST = pitchCents(parsePitch('F2'));
const HIGHEST = pitchCents(parsePitch('C6'));
const NAMED_FROM = parsePitch('C4');

const noteCents = remembered(
  'note',
  7200,
  (value) => typeof value === 'number' && value >= LOWEST && value <= HIGHEST && value % 100 === 0,
);
const partKey = remembered('key', 'F', (value) => CROOKS.some(({ name }) => name === value));
const closing = remembered('closing', 0, (value) => typeof value === 'number' && value >= 0 && value <= 1);
/** Which of the ways to play the note is shown, from 0. */
const chosenWay = signal(0);
const held = signal<HeldTone | null>(null);
/** Ends a tone that is played by itself. */
const playing = signal<(() => void) | null>(null);

const written = computed<Pitch>(() => nameNear(NAMED_FROM, noteCents.value));
const transposition = computed<Transposition>(() => {
  const crook = crookFromName(`Horn in ${partKey.value}`);
  return crook.ok ? crook.transposition : HORN_IN_F;
});
const answer = computed(() => askNote(written.value, transposition.value, settings.value));
const ways = computed(() => {
  const { fingering, candidates, nearest } = answer.value.stopped;
  const others = candidates.filter((other) => other !== fingering);
  return [...(fingering ? [fingering] : nearest ? [nearest] : []), ...others];
});
const way = computed(() => ways.value[Math.min(chosenWay.value, ways.value.length - 1)] ?? null);
const ladder = computed(() => {
  const { soundingCents } = answer.value.stopped;
  if (!way.value || soundingCents === null) return null;
  return ladderOf(way.value, written.value, soundingCents, noteCents.value);
});

// Another note, horn or way is another tone.
effect(() => {
  ladder.value;
  silence();
});
effect(() => {
  held.value?.close(closing.value);
});

function silence(): void {
  held.peek()?.stop();
  playing.peek()?.();
  batch(() => {
    held.value = null;
    playing.value = null;
  });
}

function choose(cents: number): void {
  if (cents < LOWEST || cents > HIGHEST) return;
  batch(() => {
    noteCents.value = cents;
    chosenWay.value = 0;
  });
}

function hold(): void {
  const shown = ladder.value;
  if (held.value) silence();
  else if (shown) {
    silence();
    held.value = holdTone(toneCurve(shown.tube, shown.pulled.harmonicNumber), closing.value);
  }
}

/** Plays the tone as the core makes it, the slider following. */
function letClose(): void {
  const shown = ladder.value;
  if (playing.value) silence();
  else if (shown) {
    silence();
    const samples = playedTone(toneCurve(shown.tube, shown.pulled.harmonicNumber));
    const context = new AudioContext();
    void context.resume();
    const buffer = context.createBuffer(1, samples.length, SAMPLE_RATE);
    buffer.getChannelData(0).set(samples);
    const source = context.createBufferSource();
    source.buffer = buffer;
    source.connect(context.destination);
    source.start();
    const [, from, to] = CLOSING_HAND;
    const tick = setInterval(() => {
      const share = (context.currentTime - from!.seconds) / (to!.seconds - from!.seconds);
      closing.value = Math.min(1, Math.max(0, share));
    }, 30);
    const end = () => {
      clearInterval(tick);
      void context.close();
    };
    playing.value = end;
    source.onended = () => {
      if (playing.value === end) silence();
    };
  }
}

export function NoteSheet() {
  const say = words.value;
  const told = answerText(answer.value, reader.value);
  const picture = ladder.value;
  const notes: number[] = [];
  for (let cents = LOWEST; cents <= HIGHEST; cents += 100) notes.push(cents);
  return (
    <div class="note-sheet">
      <div class="fields">
        <div class="field">
          <label for="written">{say.writtenNote}</label>
          <span class="stepper">
            <button type="button" aria-label={say.lower} onClick={() => choose(noteCents.value - 100)}>
              ▼
            </button>
            <select
              id="written"
              value={String(noteCents.value)}
              onChange={(event) => choose(Number(event.currentTarget.value))}
            >
              {notes.map((cents) => (
                <option key={cents} value={String(cents)}>
                  {noteName(nameNear(NAMED_FROM, cents), reader.value)}
                </option>
              ))}
            </select>
            <button type="button" aria-label={say.higher} onClick={() => choose(noteCents.value + 100)}>
              ▲
            </button>
          </span>
        </div>
        <label>
          {say.partKey}
          <select
            value={partKey.value}
            onChange={(event) => {
              partKey.value = event.currentTarget.value;
            }}
          >
            {CROOKS.map(({ name }) => (
              <option key={name} value={name}>
                {keyText(name, reader.value)}
              </option>
            ))}
          </select>
        </label>
        <HornChoice />
      </div>
      <section aria-labelledby="answer" aria-live="polite">
        <h2 id="answer">
          {told.heading} <span class={`verdict ${answer.value.stopped.verdict}`}>{told.verdict}</span>
        </h2>
        {[...told.lines, ...told.slides].map((line) => (
          <p key={line}>{line}.</p>
        ))}
      </section>
      {picture ? (
        <section aria-labelledby="hand">
          <h2 id="hand">{say.hand}</h2>
          <LadderPicture ladder={picture} closing={closing.value}>
            <input
              type="range"
              min="0"
              max="100"
              value={Math.round(100 * closing.value)}
              aria-label={say.hand}
              aria-valuetext={say.closing(
                Math.round(100 * closing.value),
                Math.max(0, Math.round(picture.pulled.cents - pitchAt(picture, closing.value))),
              )}
              onInput={(event) => {
                closing.value = Number(event.currentTarget.value) / 100;
              }}
            />
          </LadderPicture>
          <p class="quiet" aria-hidden="true">
            {say.closing(
              Math.round(100 * closing.value),
              Math.max(0, Math.round(picture.pulled.cents - pitchAt(picture, closing.value))),
            )}
          </p>
          <p class="buttons">
            <button type="button" id="hold" aria-pressed={held.value !== null} onClick={hold}>
              {held.value ? say.silence : say.hear}
            </button>
            <button type="button" id="let-close" aria-pressed={playing.value !== null} onClick={letClose}>
              {playing.value ? say.silence : say.letClose}
            </button>
          </p>
        </section>
      ) : (
        <p>{say.noPicture}</p>
      )}
      <Ways />
    </div>
  );
}

/** Every way to play the note; the one chosen is drawn and heard. */
function Ways() {
  const { namedFrom } = answer.value.stopped;
  if (ways.value.length === 0) return null;
  return (
    <fieldset class="ways">
      <legend>{words.value.waysToPlay}</legend>
      {ways.value.map((each, i) => {
        const natural = naturalName(naturalPitch(namedFrom, each), reader.value);
        const doubts = alternativeTexts(each, 'stopped', reader.value);
        return (
          <label key={`${each.printed} ${each.harmonic}`}>
            <input
              type="radio"
              name="way"
              value={formatPitch(namedFrom) + i}
              checked={each === way.value}
              onChange={() => {
                chosenWay.value = i;
              }}
            />
            <b>
              {noteClassName(fingeredPitch(namedFrom, each), reader.value)} {valvesText(each, reader.value)}
            </b>{' '}
            ({natural}) {fingeringText(each, reader.value)}, {signedCents(each.deviationCents)} ¢,{' '}
            {verdictText(each.verdict, reader.value)}
            {doubts.length > 0 && <span class="quiet">: {doubts.join('; ')}</span>}
          </label>
        );
      })}
    </fieldset>
  );
}
