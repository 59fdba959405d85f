/** What is answered before a note is written: by published fingerings, and by the rules that check a part. */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { formatPitch, HORN_IN_F, parsePitch, pitchCents } from '../../core/pitch/pitch.ts';
import { askNote } from '../../core/rules/askNote.ts';
import { examine } from '../../core/rules/examine.ts';
import { nameNear } from '../../core/stopping/names.ts';
import { answerText } from '../../core/words/answers.ts';
import { LANGUAGES, readerOf } from '../../core/words/language.ts';

const ask = (name: string) => askNote(parsePitch(name), HORN_IN_F, DEFAULT_SETTINGS);
const names = (reached: readonly { readonly written: Parameters<typeof formatPitch>[0] }[]) =>
  reached.map(({ written }) => formatPitch(written));

describe('a note that is asked about', () => {
  // smalley, stopped fingerings: C5 2, B♭4 12, E♭4 1; the lower harmonic's note a semitone below.
  test.each([
    ['C5', '2', 'C#5'],
    ['Bb4', '12', 'B4'],
    ['Eb4', '1', 'F4'],
  ])('%s stopped is %s', (name, valves) => {
    const { stopped } = ask(name);
    expect([stopped.fingering!.printed, stopped.verdict]).toEqual([valves, 'sure']);
  });

  test('is led down by the closing hand and up by the opening one', () => {
    // smalley: closing the bell brings an open note down to a semitone above the next lower harmonic.
    expect(names(ask('E4').closesTo)).toEqual(['C#4', 'D4']);
    expect(names(ask('C#4').opensTo)).toContain('E4');
    // So low the tone slips up by a semitone. common practice, no source
    expect(names(ask('G3').closesTo)).toEqual(['Ab3']);
  });

  test('names the nearest sure notes where it is none', () => {
    expect(ask('C5').nearestSure).toEqual([]);
    expect(ask('F2').nearestSure.map(formatPitch)).toEqual(['A3']);
  });
});

test('on every horn, whatever is answered holds when it is written', () => {
  for (const horn of HORNS.filter(({ natural }) => !natural)) {
    const settings = { ...DEFAULT_SETTINGS, horn };
    for (let cents = pitchCents(parsePitch('F2')); cents <= pitchCents(parsePitch('C6')); cents += 300) {
      const written = nameNear(parsePitch('F2'), cents);
      const { stopped, closesTo, opensTo, nearestSure } = askNote(written, HORN_IN_F, settings);
      const name = formatPitch(written);
      const check = (text: string) => examine(passageOf(text), settings);
      expect(stopped.verdict).toBe(check(`${name}+/4`).notes[0]!.verdict);
      for (const sure of nearestSure)
        expect(check(`${formatPitch(sure)}+/4`).notes[0]!.verdict, `${horn.id} ${name}`).toBe('sure');
      // Where the tone slips, the low note by itself may want to rise.
      const against = (text: string) => check(text).findings.filter(({ id }) => id !== 'rises-not-bends');
      for (const to of names(closesTo)) expect(against(`${name}o/4~ ${to}+/4`)).toEqual([]);
      for (const to of names(opensTo)) expect(against(`${name}+/4~ ${to}o/4`)).toEqual([]);
    }
  }
});

test.each(LANGUAGES)('an answer is whole in %s', (language) => {
  for (const name of ['C5', 'Ab3', 'F2']) {
    const { heading, lines, slides, verdict } = answerText(ask(name), readerOf(language));
    for (const line of [heading, ...lines, ...slides]) expect(line).toMatch(/^\S.*[^.\s]$/);
    expect(slides).toHaveLength(2);
    expect([heading, verdict, ...lines].join()).not.toMatch(/undefined|null|NaN/);
  }
});
