/** Repairs: what is offered for each finding, and the law that whatever is offered helps. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import type { Passage } from '../../core/part/passage.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../core/part/settings.ts';
import { parsePitch } from '../../core/pitch/pitch.ts';
import { REPAIR_KINDS, type Repair } from '../../core/repairs/repair.ts';
import { repaired } from '../../core/repairs/repaired.ts';
import { repairsFor } from '../../core/repairs/repairsFor.ts';
import { type Examination, examine } from '../../core/rules/examine.ts';
import type { Finding } from '../../core/rules/rules.ts';
import { LANGUAGES, readerOf } from '../../core/words/language.ts';
import { repairText } from '../../core/words/repairs.ts';
import { anyPassage, anySettings } from './anyPassage.ts';

const ENGLISH = readerOf('en');

/** For the first finding of a rule in a part, the labels of what is offered. */
const OFFERED: readonly (readonly [Finding['id'], string, readonly string[]])[] = [
  ['below-the-hand', 'E4+ F2+', ['Octave up (F3)', 'Take the sign away']],
  // All that is tied goes along.
  ['below-the-hand', 'E4+ F2+_ F2+', ['Octave up (F3)', 'Take the sign away']],
  [
    'rises-not-bends',
    'C4 Ab3+',
    ['Finger it 13', 'Finger it T123', 'Write “stopping mute”', 'Octave up (A♭4)', 'Take the sign away'],
  ],
  // The part's own fingering is the one that rises.
  [
    'rises-not-bends',
    'C4 Ab3+<0>',
    ['Finger it 13', 'Finger it T123', 'Write “stopping mute”', 'Octave up (A♭4)', 'Take the sign away'],
  ],
  [
    'no-common-tube',
    'E4<12>~ C#4+',
    ['Take the fingering away', 'End on D4', 'Start from E♭4', 'Take the line out'],
  ],
  [
    'slur-leaps',
    '(E4<12> C#4+<0>)',
    ['Take the fingering away', 'Take the slur out', 'Take the sign away', 'Write +'],
  ],
  ['fingering-misses', 'C5+<1>', ['Finger it 2', 'Take the fingering away']],
  ['above-the-hand', 'B5 C6+', ['Octave down (C5)']],
  [
    'mute-and-hand',
    '"con sord." E4 F4+',
    ['Write “senza sord.”', 'Write “sordina chiusa”', 'Take the sign away'],
  ],
  ['closes-upward', 'E4~ F4+', ['Start from G4', 'Start from F♯4', 'Take the line out']],
  ['opens-downward', 'F4+^ E4', ['Start from C♯4', 'Start from D4', 'Take the line out']],
  ['no-common-tube', 'E4~ B3+', ['End on C♯4', 'Start from D4', 'Start from C♯4', 'Take the line out']],
  ['slur-leaps', 'E4_ E4+', ['Break the tie', 'Take the sign away', 'Write +']],
  ['slur-leaps', '(C4 E4 G4+ A4+)', ['Take the slur out']],
  ['hand-too-quick', '@120 E4/0.25 F4+', ['Take the sign away', 'Write +']],
  ['sign-against-word', '"gestopft" E4 F4o G4 A4', ['Write “offen”', 'Take the sign away']],
  ['never-opened', '"gestopft" E4 r/7 G4 A4', ['Write “offen”', 'Write “gestopft”']],
  ['never-opened', '"gestopft" E4+ F4+ G4 A4', ['Write “offen”', 'Write + over 2 notes']],
  ['echo-or-stopped', 'D4 "en écho" E4 F4', ['Write “bouché”']],
  ['unknown-key', 'in:? E4+', []],
];

/** The horn on which high notes do not change, where that is what was found. */
function settingsFor(id: Finding['id']): Settings {
  const horn = id === 'above-the-hand' ? 'single-f' : 'double';
  return { ...DEFAULT_SETTINGS, horn: HORNS.find((known) => known.id === horn)! };
}

function offered(text: string, id: Finding['id']): string[] {
  const examination = examine(passageOf(text), settingsFor(id));
  const finding = examination.findings.find((one) => one.id === id)!;
  return repairsFor(examination, finding).map((repair) => repairText(repair, ENGLISH));
}

describe('what is offered', () => {
  test.each(OFFERED)('%s: %s', (id, text, labels) => {
    expect(offered(text, id)).toEqual(labels);
  });

  test('a note under a word is opened by the sign for open', () => {
    expect(offered('"gestopft" E4 F2 "offen" G4', 'below-the-hand')).toContain('Write o');
  });

  test('a mute for one note leaves the others as they are', () => {
    const passage = passageOf('"con sord." G4 Ab3+ G4');
    const examination = examine(passage);
    const finding = examination.findings.find(({ id }) => id === 'mute-and-hand')!;
    const repair = repairsFor(examination, finding).find(({ kind }) => kind === 'stopping-mute')!;
    const after = examine(repaired(passage, repair.steps));
    expect(after.notes.map(({ reading }) => reading.state)).toEqual([
      'straight-mute',
      'stopping-mute',
      'straight-mute',
    ]);
  });
});

test('a mute under a word for the hand lets the word hold on after it', () => {
  const passage = passageOf('"gestopft" A3 F#3 G4 A4 "offen" C4');
  const examination = examine(passage);
  const finding = examination.findings.find(({ id }) => id === 'rises-not-bends')!;
  const repair = repairsFor(examination, finding).find(({ kind }) => kind === 'stopping-mute')!;
  const after = repaired(passage, repair.steps);
  expect(after.words.map(({ text }) => text)).toEqual([
    'gestopft',
    'Stopfdämpfer',
    'ohne Dämpfer, gestopft',
    'offen',
  ]);
  expect(examine(after).notes.map(({ reading }) => reading.state)).toEqual([
    'stopped',
    'stopping-mute',
    'stopped',
    'stopped',
    'open',
  ]);
});

/** Every finding's repairs, made, with what is then found. */
function everyRepair(
  passage: Passage,
  settings: Settings,
  look: (before: Examination, finding: Finding, repair: Repair, after: Examination) => void,
): void {
  const before = examine(passage, settings);
  for (const finding of before.findings)
    for (const repair of repairsFor(before, finding))
      look(before, finding, repair, examine(repaired(passage, repair.steps), settings));
}

const GRAVITY = ['advice', 'risky', 'impossible'];
const gravity = ({ severity }: Finding) => GRAVITY.indexOf(severity);

function holdsTheLaw(before: Examination, finding: Finding, after: Examination): void {
  const same = (one: Finding, other: Finding) =>
    one.id === other.id && one.noteIndex === other.noteIndex && one.otherIndex === other.otherIndex;
  expect(after.findings.filter((one) => same(one, finding))).toEqual([]);
  for (const found of after.findings) {
    const known = before.findings.find((one) => same(one, found));
    if (known && gravity(known) >= gravity(found)) continue;
    expect(gravity(found)).toBeLessThan(gravity(finding));
    const here = before.findings.filter(({ noteIndex }) => noteIndex === found.noteIndex);
    expect(gravity(found)).toBeLessThanOrEqual(Math.max(0, Math.max(0, ...here.map(gravity)) - 1));
  }
}

describe('for every passage', () => {
  test('a repair makes its finding go, and nothing as grave comes', () => {
    const kinds = new Set<string>();
    const tryAll = (passage: Passage, settings: Settings) =>
      everyRepair(passage, settings, (before, finding, repair, after) => {
        kinds.add(repair.kind);
        holdsTheLaw(before, finding, after);
      });
    for (const [id, text] of OFFERED) tryAll(passageOf(text), settingsFor(id));
    fc.assert(fc.property(anyPassage, anySettings, tryAll), { numRuns: 500 });
    // The law was tried on every kind there is.
    expect([...kinds].sort()).toEqual([...REPAIR_KINDS].sort());
  });

  test.each([
    ['with signs alone', (token: string) => token],
    [
      'with a mute for a while',
      (token: string, i: number) =>
        i % 40 === 9 ? `"con sord." ${token}` : i % 40 === 21 ? `"senza sord." ${token}` : token,
    ],
    [
      'that changes its clef',
      (token: string, i: number) => (i % 25 === 9 ? `bass: ${token} G2+ treble:` : token),
    ],
  ])('in a long part %s too, where a repair was tried on its surroundings alone', (_, at) => {
    const figure = ['C5+', 'Eb4+', 'E4~', 'F4+', '(E4', 'A4+)', 'G4', 'C3+', 'F2+', 'D5/0.25+', 'E5/0.25'];
    const tokens = Array.from({ length: 132 }, (_, i) => figure[(i * 7 + (i % 5)) % figure.length]!);
    const text = tokens.map((token, i) => at(token.replace(/[()]/g, ''), i)).join(' ');
    let count = 0;
    everyRepair(passageOf(`${text} C4`), DEFAULT_SETTINGS, (before, finding, _, after) => {
      count += 1;
      holdsTheLaw(before, finding, after);
    });
    expect(count).toBeGreaterThan(80);
  });
});

test.each(LANGUAGES)('every kind has its label in %s', (language) => {
  const reader = readerOf(language);
  const labels = REPAIR_KINDS.map((kind) =>
    repairText({ kind, steps: [{ change: 'note', noteIndex: 0, written: parsePitch('C#5') }] }, reader),
  );
  for (const label of labels) expect(label).toMatch(/^\S.*[^.\s]$/);
  expect(new Set(labels).size).toBeGreaterThanOrEqual(8);
});
