/** Both doors agree: the editor's findings and fingerings are those of the file door on the same music. */
import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { examine } from '../../core/examine.ts';
import { type Result, resultOf } from '../../core/result.ts';
import { readScore } from '../../plugin/musicxml/readScore.ts';
import { HOST, type HostRun, inHost, skipLoudly, tidy } from './rig/host.ts';
import { hornScore, open, type Played, rest, scoreOf, stopped } from './rig/music.ts';

const runs: HostRun[] = [];
afterAll(() => tidy(...runs));

/** What the command line's `check` finds in a text. */
function fromFile(text: string): Result {
  return JSON.parse(JSON.stringify(resultOf(readScore(text).horns.map(({ passage }) => examine(passage)))));
}

async function fromHost(score: string): Promise<{ result: Result; exported: string }> {
  const run = await inHost(score, [{ do: 'result' }, { do: 'save', as: 'exported.musicxml' }]);
  runs.push(run);
  return { result: run.results[0] as Result, exported: await run.text('exported.musicxml') };
}

const grace = (pitch: string): Played => ({ pitch, grace: true, quarters: 0.5 });
const triplet = (played: Played): Played => ({ ...played, triplet: true });

const FIXTURES: readonly (readonly [string, string])[] = [
  ['a plain line', hornScore([[stopped('C5'), open('G4'), stopped('Eb4'), stopped('F#4')]])],
  [
    'low and high, risky and impossible',
    hornScore([
      [stopped('C3'), stopped('F3'), stopped('C4'), stopped('G5')],
      [stopped('C6', 2), stopped('D2', 2)],
    ]),
  ],
  [
    'hand glissandi up and down',
    hornScore([
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
    hornScore([
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
    hornScore([
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
    hornScore([
      [
        { pitch: ['C4', 'G4'], sign: 'stopped' },
        { pitch: ['E4', 'C5'] },
        { pitch: ['Eb4', 'A4', 'D5'], sign: 'stopped', quarters: 2 },
      ],
    ]),
  ],
  [
    'two players in voices',
    hornScore([[stopped('C5'), open('D5'), stopped('E5'), open('F5')], [stopped('G5', 4)]], {
      second: [
        [rest(2), stopped('C4'), stopped('D4')],
        [{ pitch: ['C4', 'E4'], quarters: 4, sign: 'stopped' }],
      ],
    }),
  ],
  [
    'several horns among other parts',
    scoreOf([
      { bars: [[open('C5', 4)]], options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] } },
      { bars: [[stopped('C5', 4)]], options: { name: 'Horn in F 1' } },
      { bars: [[stopped('Eb4', 4)]], options: { name: 'Horn in F 2' } },
      {
        bars: [[open('C3', 4)]],
        options: { name: 'Tuba', sound: 'brass.tuba', transpose: [0, 0], clef: 'F' },
      },
    ]),
  ],
  [
    'a crook in E♭',
    hornScore([[stopped('C5'), stopped('F4'), stopped('B4'), stopped('D4')]], {
      name: 'Horn in Eb',
      transpose: [-9, -5],
    }),
  ],
  [
    'a crook in B♭ basso',
    hornScore([[stopped('C5'), stopped('F4'), stopped('B4'), stopped('D4')]], {
      name: 'Horn in Bb basso',
      transpose: [-14, -8],
    }),
  ],
  ['the bass clef', hornScore([[stopped('C3'), stopped('G3'), open('C3', 2)]], { clef: 'F' })],
  ['coloured notes', hornScore([[{ ...stopped('C3'), colour: '#00AA00' }, stopped('F3'), open('C5', 2)]])],
];

describe.skipIf(!HOST)('both doors agree', () => {
  it.each(FIXTURES)('on %s', async (_, score) => {
    const { result, exported } = await fromHost(score);
    expect(result.parts.length).toBeGreaterThan(0);
    expect(result.parts.some(({ notes }) => notes.length > 0)).toBe(true);
    expect(result).toEqual(fromFile(score));
    expect(result).toEqual(fromFile(exported));
  });

  it.each([
    ['up', 'below'],
    ['down', 'above'],
  ])('under an octave line that shifts the notes %s', async (type, placement) => {
    const under = hornScore([[stopped('C5'), stopped('E5'), stopped('F5', 2)], [stopped('C5', 4)]])
      .replace('<note>', `${octaveShift(`type="${type}" size="8"`, placement)}<note>`)
      .replace('</measure>', `${octaveShift('type="stop" size="8"', placement)}</measure>`);
    const { result } = await fromHost(under);
    expect(result).toEqual(fromFile(under));
    expect(result.parts[0]!.notes.map(({ written }) => written)).toEqual(['C5', 'E5', 'F5', 'C5']);
  });
});

function octaveShift(attributes: string, placement: string): string {
  return `<direction placement="${placement}"><direction-type><octave-shift ${attributes} number="1"/></direction-type></direction>`;
}

const CORPUS = fileURLToPath(new URL('../../../shared/corpus/horn/', import.meta.url));
const hasCorpus = existsSync(CORPUS);
if (HOST && !hasCorpus)
  skipLoudly('the editor on scores by others', 'put MusicXML scores with horns into ../shared/corpus/horn');

describe.skipIf(!HOST || !hasCorpus)('scores by others', () => {
  const names = hasCorpus ? readdirSync(CORPUS).filter((name) => /\.(musicxml|mxl|xml)$/.test(name)) : [];
  it.each(names)('%s', async (name) => {
    const { result, exported } = await fromHost(CORPUS + name);
    expect(result).toEqual(fromFile(exported));
  });
});
