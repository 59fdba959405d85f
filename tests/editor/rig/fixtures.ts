/** Music that both doors, and every way of reading, must read alike. */
import { open, type PartOptions, type Played, rest, stopped } from './music.ts';

export interface PartMusic {
  readonly bars: readonly (readonly Played[])[];
  readonly options?: PartOptions;
}

function part(bars: readonly (readonly Played[])[], options: PartOptions = {}): readonly PartMusic[] {
  return [{ bars, options }];
}

const grace = (pitch: string): Played => ({ pitch, grace: true, quarters: 0.5 });
const triplet = (played: Played): Played => ({ ...played, triplet: true });

/** By what they show. */
export const FIXTURES: readonly (readonly [string, readonly PartMusic[]])[] = [
  ['a plain line', part([[stopped('C5'), open('G4'), stopped('Eb4'), stopped('F#4')]])],
  [
    'low and high, risky and impossible',
    part([
      [stopped('C3'), stopped('F3'), stopped('C4'), stopped('G5')],
      [stopped('C6', 2), stopped('D2', 2)],
    ]),
  ],
  [
    'hand glissandi up and down',
    part([
      [
        { ...open('G4', 2), glissando: '+' },
        { ...stopped('C5', 2), glissando: '-' },
      ],
      [
        { ...open('E4', 2), glissando: '+' },
        { ...stopped('C#4', 2), glissando: '-' },
      ],
      [
        { ...open('E4', 2), glissando: '+' },
        { ...stopped('B3', 2), glissando: '-' },
      ],
    ]),
  ],
  [
    'slurs, ties and words',
    part([
      [{ ...open('C5'), slur: '+' }, stopped('A4'), { ...stopped('F4'), slur: '-' }, rest()],
      [
        { ...stopped('D5', 2), tie: '+' },
        { ...stopped('D5', 2), tie: '-' },
      ],
      [{ ...open('C5'), words: 'gestopft' }, open('D5'), { ...open('E5'), words: 'offen' }, open('F5')],
      [{ ...open('C5', 2), words: 'bouché' }, open('G4', 2)],
    ]),
  ],
  [
    'graces, triplets, dots and short notes',
    part([
      [grace('D5'), stopped('C5'), grace('F4'), grace('G4'), stopped('A4'), stopped('B4', 2)],
      [
        triplet(stopped('C5')),
        triplet(open('D5')),
        triplet(stopped('E5')),
        stopped('F5', 1.5),
        stopped('E5', 0.5),
      ],
      [open('C5', 0.25), stopped('C5', 0.25), open('C5', 0.25), stopped('C5', 0.25), open('G4', 3)],
    ]),
  ],
  [
    'two players in chords',
    part([
      [
        { pitch: ['C4', 'G4'], sign: 'stopped' },
        { pitch: ['E4', 'C5'] },
        { pitch: ['Eb4', 'A4', 'D5'], sign: 'stopped', quarters: 2 },
      ],
    ]),
  ],
  [
    'two players in voices',
    part([[stopped('C5'), open('D5'), stopped('E5'), open('F5')], [stopped('G5', 4)]], {
      second: [
        [rest(2), stopped('C4'), stopped('D4')],
        [{ pitch: ['C4', 'E4'], quarters: 4, sign: 'stopped' }],
      ],
    }),
  ],
  [
    'several horns among other parts',
    [
      { bars: [[open('C5', 4)]], options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] } },
      { bars: [[stopped('C5', 4)]], options: { name: 'Horn in F 1' } },
      { bars: [[stopped('Eb4', 4)]], options: { name: 'Horn in F 2' } },
      {
        bars: [[open('C3', 4)]],
        options: { name: 'Tuba', sound: 'brass.tuba', transpose: [0, 0], clef: 'F' },
      },
    ],
  ],
  [
    'a crook in E♭',
    part([[stopped('C5'), stopped('F4'), stopped('B4'), stopped('D4')]], {
      name: 'Horn in Eb',
      transpose: [-9, -5],
    }),
  ],
  [
    'a crook in B♭ basso',
    part([[stopped('C5'), stopped('F4'), stopped('B4'), stopped('D4')]], {
      name: 'Horn in Bb basso',
      transpose: [-14, -8],
    }),
  ],
  ['the bass clef', part([[stopped('C3'), stopped('G3'), open('C3', 2)]], { clef: 'F' })],
  ['coloured notes', part([[{ ...stopped('C3'), colour: '#00AA00' }, stopped('F3'), open('C5', 2)]])],
];
