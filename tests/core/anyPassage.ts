/** Parts and players made at random, for laws that hold for every one of them. */
import fc from 'fast-check';
import { HORNS } from '../../core/horn/horns.ts';
import type { JoinKind, Passage, PassageNote } from '../../core/part/passage.ts';
import type { Settings } from '../../core/part/settings.ts';
import { HORN_IN_F, type Step, type Transposition } from '../../core/pitch/pitch.ts';

const TEXTS = [
  'gestopft',
  'offen',
  'con sord.',
  'senza sord.',
  'écho',
  'bouché (écho)',
  '2. gest.',
  '+',
  'Allegro',
  'stop mute',
  'nat.',
  'T23',
  'B 2',
];
const KEYS: (Transposition | null)[] = [
  HORN_IN_F,
  HORN_IN_F,
  { chromatic: -9, diatonic: -5, octaveChange: 0 },
  null,
];

const anyNote = fc.record({
  step: fc.constantFrom<Step>('C', 'D', 'E', 'F', 'G', 'A', 'B'),
  alter: fc.constantFrom(-1, 0, 0, 0, 1, 0.5),
  octave: fc.integer({ min: 1, max: 6 }),
  gap: fc.constantFrom(0.25, 0.5, 1, 8),
  grace: fc.boolean(),
  sign: fc.constantFrom(null, null, 'stopped' as const, 'open' as const, 'half-stopped' as const),
  fingering: fc.oneof(
    { weight: 9, arbitrary: fc.constant(null) },
    fc.constantFrom('0', '12', 'T12', '1+3', 'T123', '9'),
  ),
  voice: fc.constantFrom('1', '1', '2'),
  clef: fc.constantFrom('treble' as const, 'treble' as const, 'bass' as const),
  transposition: fc.constantFrom(...KEYS),
  join: fc.constantFrom<JoinKind | null>(null, null, 'tie', 'slur', 'glissando', 'bend'),
  reach: fc.integer({ min: 1, max: 4 }),
  text: fc.constantFrom(null, null, null, ...TEXTS),
  isChord: fc.boolean(),
});

/** Up to 25 notes, in chords and voices, with signs, words and joins as they come. */
export const anyPassage: fc.Arbitrary<Passage> = fc.array(anyNote, { maxLength: 25 }).map((drafts) => {
  let onset = 0;
  const words: Passage['words'][number][] = [];
  const notes = drafts.map((draft, index): PassageNote => {
    const before = drafts[index - 1];
    const isChord = draft.isChord && before !== undefined && before.voice === draft.voice && !before.isChord;
    if (before && !isChord) onset += before.grace ? 0 : before.gap;
    const place = {
      measureIndex: Math.floor(onset / 4),
      measure: String(Math.floor(onset / 4) + 1),
      beat: (onset % 4) + 1,
    };
    if (draft.text) words.push({ ...place, text: draft.text, onsetQuarters: onset, staff: 1, voice: null });
    return {
      ...place,
      index,
      onsetQuarters: onset,
      durationQuarters: draft.grace ? 0 : Math.min(draft.gap, 4),
      grace: draft.grace,
      staff: 1,
      voice: draft.voice,
      chordRank: isChord ? 1 : 0,
      chordHead: isChord ? index - 1 : index,
      written: { step: draft.step, alter: draft.alter, octave: draft.octave },
      transposition: draft.transposition,
      clef: draft.clef,
      sign: draft.sign,
      fingering: draft.fingering,
      joins:
        draft.join && index + draft.reach < drafts.length
          ? [{ kind: draft.join, to: index + draft.reach }]
          : [],
      userColour: index % 7 === 0,
    };
  });
  return { name: 'Horn', notes, words, tempos: [], rests: [] };
});

/** Any horn, ear and hand. */
export const anySettings: fc.Arbitrary<Settings> = fc.record({
  horn: fc.constantFrom(...HORNS),
  toleranceCents: fc.integer({ min: 0, max: 100 }),
  handOffsetCents: fc.integer({ min: -100, max: 100 }),
  handSeconds: fc.constantFrom(0, 0.25, 2),
  names: fc.constantFrom('as-written' as const, 'f-horn' as const),
  bassClef: fc.constantFrom('auto' as const, 'old' as const, 'new' as const),
  assumedQuartersPerMinute: fc.constantFrom(40, 120, 200),
});
