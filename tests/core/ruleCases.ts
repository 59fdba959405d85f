/** Cases for every rule: parts in which it must keep silent, and parts in which it must speak, at which notes. */
import { HORNS } from '../../core/horn/horns.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../core/part/settings.ts';
import { examine } from '../../core/rules/examine.ts';
import type { Finding } from '../../core/rules/rules.ts';

export interface Case {
  readonly part: string;
  /** Places in the part's notes, from 0, at which the rule speaks; none for a clean case. */
  readonly at: readonly number[];
  /** What the first finding's message or remedy must name. */
  readonly names?: readonly string[];
  readonly horn?: string;
  readonly settings?: Partial<Settings>;
}

export const CASES: { readonly [id: string]: readonly Case[] } = {
  'unknown-key': [
    { part: 'E4+ F4+', at: [] },
    { part: 'in:? E4 F4', at: [] },
    { part: 'in:? E4 F4+ G4+', at: [1], names: ['transposes', 'Horn in F'] },
    { part: 'in:? E4+ in:F F4+ G4 in:? A4 B4+ C5+', at: [0, 4] },
  ],
  'which-octave': [
    { part: 'G3 F3 bass: E3 D3 C3 treble: G3', at: [] },
    { part: 'bass: C3 G2 C2', at: [], settings: { bassClef: 'new' } },
    { part: 'bass: C3 G2 C2', at: [], settings: { bassClef: 'old' } },
    {
      part: 'C4 G3 bass: C3 G2 C2 treble: C4',
      at: [2],
      names: ['old notation', 'octave higher', 'below the horn'],
    },
    // Nothing too low, but every change of clef leaps an octave more than it needs to.
    { part: 'E4 C4 bass: C3 E3 treble: G4', at: [2], names: ['old notation', 'leaps'] },
    // One leap speaks for old notation, one against.
    { part: 'G4 bass: G3 E3 treble: G3', at: [1], names: ['as it stands', 'leaps'] },
    // Once for each player, however often the clef changes.
    { part: 'C4 bass: C3 G2 C2 treble: C4 bass: C2', at: [1] },
    { part: '[C4 G3] bass: [C3 G2] [G2 C2]', at: [2, 3] },
  ],
  'below-the-hand': [
    { part: 'C4+ Ab3+ G2 C3', at: [] },
    { part: 'E4+ F2+', at: [1], names: ['F2', 'octave higher'] },
    { part: 'F2+ C4+ G2 E2+', at: [0, 3] },
  ],
  'off-pitch': [
    { part: 'C4+ D4+ E4+ F4+ G4+ A4+ B4+ C5+ D5+ E5+ F5+', at: [] },
    { part: 'E5+ Eb5+ D5+ C5+', at: [], horn: 'single-bflat' },
    // Without a stopping valve the B♭ side misses most of the scale by a quarter tone.
    { part: 'E5+ C4+', at: [1], horn: 'single-bflat', names: ['single horn in B♭', 'stopping valve'] },
    { part: 'F4+ E5+ D4+', at: [0, 2], horn: 'single-bflat' },
    { part: '"stop mute" G4 F2', at: [1], names: ['F2', 'play it open'] },
    { part: 'C5+ C9+', at: [1], names: ['C9', 'beyond the horn'] },
    // A stopping mute bends by as much as the hand does.
    { part: '"stop mute" G4 E5', at: [], horn: 'single-bflat' },
  ],
  'rises-not-bends': [
    { part: 'C#4+ D4+ E4+', at: [] },
    { part: 'Ab3 G3', at: [] },
    { part: 'C4 Ab3+', at: [1], names: ['A♭3', 'slip up', 'F horn 1+3', 'stopping mute'] },
    { part: 'C#3+', at: [0], names: ['C♯3', 'lip'] },
    { part: 'G3+ C4 Ab3+', at: [0, 2] },
    { part: '"stopping mute" Ab3 A3', at: [] },
  ],
  'above-the-hand': [
    { part: 'C5+ E5+ G5', at: [] },
    { part: 'E5+ C6+', at: [1], names: ['C6', 'harmonic 16', 'dims'], horn: 'single-f' },
    { part: 'C6+ B5 C6+', at: [0, 2], horn: 'single-f' },
  ],
  'mute-and-hand': [
    { part: '"con sord." E4 F4 "senza sord." G4+', at: [] },
    { part: '"stop mute" E4+ F4', at: [] },
    { part: '"con sord." E4 F4+', at: [1], names: ['F4', 'mute', 'stopping mute'] },
    { part: '"Dämpfer" E4+ F4 "gestopft" G4', at: [0, 2] },
  ],
  'closes-upward': [
    { part: 'E4~ C#4+', at: [] },
    { part: 'E4~ F4', at: [] },
    { part: 'E4+~ F4+', at: [] },
    // So low, on the 3rd harmonic, the closing hand does let the tone slip up by a semitone; on the 4th it may.
    { part: 'G3~ Ab3+', at: [] },
    { part: 'B3~ C4+', at: [1], names: ['slip up a semitone', 'harmonic 4', 'come down instead, to G3'] },
    // More than a semitone is out of reach down there too.
    { part: 'B3~ C#4+ r/1 G3~ A3+', at: [1, 3], names: ['closing the hand brings a tone down'] },
    {
      part: 'E4~ F4+',
      at: [1],
      names: ['E4 falls to', 'C♯4 (open F horn)', 'D4 (F horn 1+2)', 'Start from G4'],
    },
    { part: 'C5^ D5+ E4 E4~ G4+', at: [1, 4] },
    { part: '"gestopft" E4o~ G4', at: [1] },
    { part: 'E4~ F4½', at: [1] },
  ],
  'opens-downward': [
    { part: 'C#4+~ E4', at: [] },
    { part: 'F4+~ E4+', at: [] },
    { part: 'Ab3+~ G3', at: [] },
    { part: 'C4+~ B3', at: [1], names: ['slip down a semitone', 'harmonic 4', 'go up instead, to E♭4'] },
    { part: 'E4+~ C4', at: [1], names: ['lets a tone rise', 'E4 rises to F♯4 (F horn 2)'] },
    { part: 'F4+^ E4 G4 A4+~ G4', at: [1, 4] },
  ],
  'no-common-tube': [
    { part: 'E4~ C#4+ r/1 E4~ D4+', at: [] },
    { part: 'C#4+~ E4 D4+~ E4', at: [] },
    {
      part: 'E4~ B3+',
      at: [1],
      names: [
        'E4 and B3',
        'C♯4 (open F horn)',
        'End on C♯4 (open F horn), the nearest',
        'start from D4 (F horn 1)',
      ],
    },
    { part: 'G4~ C4+ r/1 C#4+~ A4', at: [1, 3] },
  ],
  'slur-leaps': [
    { part: '(E4 F4 G4) A4+', at: [] },
    { part: '(E4 C#4+)', at: [] },
    { part: '(E4+ F4+ G4+)', at: [] },
    { part: '(E4 D4) E4+', at: [] },
    { part: '(C5 B4 G4 F#4 E4)', at: [], horn: 'natural-f' },
    { part: '(C4 E4 G4+ A4+)', at: [2], names: ['E4 and G4', 'jumps', 'Tongue'] },
    { part: '(C4 E4+ G4 A4)', at: [1, 2] },
    { part: 'E4_ E4+', at: [1], names: ['tied', 'break the tie'] },
    { part: '[(E4 C4] [G4+) F4+]', at: [2, 3] },
  ],
  'hand-too-quick': [
    { part: '@120 E4/0.5 F4/0.5+ E4/0.5', at: [] },
    { part: '@120 E4/0.125 r/0.5 F4/0.25+', at: [] },
    { part: '@240 E4/0.25+ F4/0.25+ G4/0.25+', at: [] },
    { part: '@120 E4/0.25 F4+', at: [1], names: ['0.12 s', 'go in', 'E4 and F4', 'rest'] },
    { part: 'E4/0.25+ F4', at: [1], names: ['come out', '♩ = 120', 'states no tempo'] },
    { part: '@60 E4/0.5 F4/0.5+ @240 E4/0.5 F4+ r/1 g:D5 C5+', at: [3, 5] },
    { part: '@120 E4/0.5 F4/0.5+ E4/0.5', at: [1, 2], settings: { handSeconds: 0.3 } },
    // On a natural horn the hand's own work is no change; what the part asks for is.
    { part: '@120 C5/0.25 B4/0.25 C5/0.25 A4/0.25', at: [], horn: 'natural-f' },
    { part: '@120 E5/0.25 C#5/0.25+', at: [1], horn: 'natural-f' },
    // The mute stays in: no hand moves.
    { part: '@240 "con sord." E4/0.25 F4/0.25', at: [] },
  ],
  'fingering-misses': [
    { part: 'C5+<2> A4<12> A4<T12> Ab3+<13> Ab3+<T123> E4<0> "T12" A4', at: [] },
    // Counts of players and bars, other signs, and valves that the horn has not.
    { part: '"12" C5+ "a 2" D5+ C5+<p> C5+<9> C5+<7>', at: [] },
    { part: 'C5+<T12>', at: [], horn: 'single-f' },
    { part: 'C5+<1>', at: [0], names: ['"1"', 'C5 stopped', 'double horn', 'Finger it 2'] },
    { part: 'C5<0> C5+<0> "T2" A4 [E4+<3> C4+<2>]', at: [1, 2, 3] },
  ],
  'sign-against-word': [
    { part: '"gestopft" E4 F4+ "offen" G4 A4o B4+', at: [] },
    { part: '"con sord." E4 F4o G4', at: [] },
    { part: '"gestopft" E4 F4o G4 A4o', at: [1], names: ['F4', '"gestopft" (bar 1)', 'cancelling word'] },
    { part: '"bouché" E4 F4o "ouvert" G4 A4 "chiuso" A4o B4', at: [1, 4] },
  ],
  'never-opened': [
    { part: '"gestopft" E4 F4 "offen" G4 A4 r/8 E4', at: [] },
    { part: '"gestopft" E4 F4 G4 A4 E4 F4', at: [] },
    { part: '"gestopft" E4 F4 r/2 E4 F4', at: [] },
    { part: '"gestopft" E4 F4 r/8 "con sord." E4 F4', at: [] },
    // The long rest is followed by nothing that only the word closes.
    { part: '"gestopft" E4 F4 r/8 E4+ F4+', at: [] },
    {
      part: '"gestopft" E4 F4 r/6 E4 F4 G4',
      at: [2],
      names: ['"gestopft" (bar 1)', '3 notes', 'cancelling word'],
    },
    { part: '"gest." E4 F4 r/6 E4 F4 "gest." G4 r/7 A4 B4', at: [2, 5] },
    { part: '"con sord." E4 F4 r/8 E4', at: [] },
    {
      part: '"gestopft" E4+ F4+ G4 A4 B4',
      at: [2],
      names: ['signs end before this note', '3 unmarked notes', 'read open'],
    },
    { part: '"gestopft" E4+ F4+ G4 A4 "offen" B4', at: [] },
  ],
  'echo-or-stopped': [
    { part: '"bouché" E4 "ouvert" F4', at: [] },
    { part: '"wie ein Echo" E4 F4', at: [] },
    { part: 'D4 "écho" E4 F4', at: [1], names: ['"écho"', 'stopped', 'whole tone'] },
    { part: '"écho" E4 "ouvert" F4 "bouché_(écho)" G4', at: [0, 2] },
  ],
};

/** What one rule finds in a case. */
export function findingsOf(
  id: string,
  { part: text, horn = 'double', settings = {} }: Case,
): readonly Finding[] {
  const { findings } = examine(passageOf(text), {
    ...DEFAULT_SETTINGS,
    ...settings,
    horn: HORNS.find((known) => known.id === horn)!,
  });
  return findings.filter((finding) => finding.id === id);
}

/** Every finding of every case. */
export function everyFinding(): readonly Finding[] {
  return Object.entries(CASES).flatMap(([id, cases]) => cases.flatMap((example) => findingsOf(id, example)));
}
