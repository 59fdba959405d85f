/** Pages on which marks are hard to set: each is as long as a page, and all of its stopped notes differ from the one before. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { hornScore, open, type Played, rest, stopped } from './music.ts';

const LINE = 'C5 E5 A4 F5 G4 D5 B4 C4 F#4 Eb5 G5 E4'.split(' ');
/** The n-th note of a line that never stays where it is. */
const nth = (n: number) => LINE[n % LINE.length]!;

function barsOf(count: number, make: (bar: number) => readonly Played[]): readonly (readonly Played[])[] {
  return Array.from({ length: count }, (_, bar) => make(bar));
}

/** A bar full of notes of one length. */
function run(
  bar: number,
  quarters: number,
  change: (played: Played, k: number) => Played = (played) => played,
) {
  return Array.from({ length: 4 / quarters }, (_, k) => change(stopped(nth(bar * 5 + k), quarters), k));
}

const quarters = (bar: number) => run(bar, 1);

/** In the second half of a page the hand opens between stopped notes. */
const mixed = (bar: number, length: number) =>
  run(bar, length, (played, k) => (k % 3 === 2 ? open(played.pitch as string, length) : played));

const grace = (pitch: string): Played => ({ pitch, grace: true, quarters: 0.5, sign: 'stopped' });

const TRIPLETS = (bar: number): readonly Played[] =>
  Array.from({ length: 6 }, (_, k) => ({ ...stopped(nth(bar * 7 + k)), triplet: true })).map((played, k) => ({
    ...played,
    ...(k % 3 === 0 ? { slur: '+' as const } : k % 3 === 2 ? { slur: '-' as const } : {}),
  }));

const SLURRED = (bar: number): readonly Played[] => [
  { ...stopped(nth(bar)), slur: '+', ...(bar % 3 === 0 ? { words: 'dolce' } : {}) },
  stopped(nth(bar + 1)),
  stopped(nth(bar + 2)),
  { ...stopped(nth(bar + 3)), slur: '-' },
];

const HALF: readonly (readonly Played[])[] = barsOf(24, (bar) => {
  const word = ['half-stopped', 'echo', 'gestopft', 'offen'][bar % 4]!;
  const length = bar % 3 === 0 ? 0.5 : 1;
  return Array.from({ length: 4 / length }, (_, k) => ({
    ...open(nth(bar * 3 + k), length),
    ...(k === 0 ? { words: word } : {}),
  }));
});

/** A page's name and its score. */
export const MARKED_PAGES: Readonly<Record<string, string>> = {
  sixteenths: hornScore(barsOf(16, (bar) => (bar < 8 ? run(bar, 0.25) : mixed(bar, 0.25)))),
  eighths: hornScore(barsOf(24, (bar) => (bar < 12 ? run(bar, 0.5) : mixed(bar, 0.5)))),
  quarters: hornScore(
    barsOf(28, (bar) => (bar % 4 === 1 ? TRIPLETS(bar) : bar % 4 === 2 ? SLURRED(bar) : quarters(bar))),
  ),
  'two voices': hornScore(
    barsOf(20, (bar) => (bar % 2 === 0 ? quarters(bar) : run(bar, 0.5))),
    {
      second: barsOf(20, (bar) =>
        bar % 3 === 0 ? [stopped('C4', 2), stopped('D4', 2)] : [rest(2), stopped('E4'), stopped('B3')],
      ),
    },
  ),
  'chords and graces': hornScore(
    barsOf(24, (bar) =>
      bar % 3 === 0
        ? [
            { ...stopped('C4', 2), pitch: ['C4', 'G4'] },
            { ...stopped('E4', 2), pitch: ['E4', 'A4', 'D5'] },
          ]
        : bar % 3 === 1
          ? [
              grace('D5'),
              stopped('C5'),
              grace('F4'),
              grace('G4'),
              stopped('A4'),
              stopped('F5'),
              grace('A4'),
              stopped('G4'),
            ]
          : [
              { ...stopped('C4', 0.5), pitch: ['C4', 'G4'] },
              { ...stopped('E4', 0.5), pitch: ['E4', 'B4'] },
              stopped('D5'),
              { ...stopped('F4'), pitch: ['F4', 'C5'] },
              stopped('E5'),
            ],
    ),
  ),
  'half-stopped and echo': hornScore(HALF),
  'ties and rests': hornScore(
    barsOf(28, (bar) =>
      bar % 4 === 0
        ? [
            { ...stopped(nth(bar), 2), tie: '+' },
            { ...stopped(nth(bar), 2), tie: '-' },
          ]
        : bar % 4 === 3
          ? [rest(), stopped(nth(bar), 0.5), rest(0.5), stopped(nth(bar + 1)), rest()]
          : mixed(bar, bar % 4 === 1 ? 1 : 0.5),
    ),
  ),
  cues: withCues(hornScore(barsOf(24, (bar) => run(bar, bar % 2 === 0 ? 0.5 : 1)))),
  'rests of many bars': withMultipleRests(
    hornScore(barsOf(48, (bar) => (bar % 8 > 2 ? [rest(4)] : run(bar, bar % 8 === 1 ? 0.25 : 1)))),
  ),
  'across two staves': acrossStaves(hornScore(barsOf(16, (bar) => run(bar, bar % 2 === 0 ? 1 : 0.5)))),
};

/** The demo part, which has a bit of everything. */
export const DEMO_PAGE = readFileSync(
  fileURLToPath(new URL('../../../plugin/batch/demo/low-water.musicxml', import.meta.url)),
  'utf8',
);

/** Every third bar in the size of cues, which the player plays all the same. */
function withCues(score: string): string {
  return score.replace(/<measure number="(\d+)">.*?<\/measure>/gs, (measure, number: string) =>
    Number(number) % 3 === 0 ? measure.replace(/<type>/g, '<type size="cue">') : measure,
  );
}

function withMultipleRests(score: string): string {
  return score.replace(/<measure number="(\d+)">/g, (measure, number: string) =>
    Number(number) % 8 === 4
      ? `${measure}<attributes><measure-style><multiple-rest>5</multiple-rest></measure-style></attributes>`
      : measure,
  );
}

/** The lower notes on a second staff. */
function acrossStaves(score: string): string {
  return score
    .replace('<clef>', '<staves>2</staves><clef number="1">')
    .replace('</clef>', '</clef><clef number="2"><sign>F</sign><line>4</line></clef>')
    .replace(/<note>.*?<\/note>/gs, (note) => {
      const isLow = Number(/<octave>(\d)/.exec(note)?.[1]) < 5 && /<step>[CDEF]/.test(note);
      return note.replace(/<\/type>/, `</type><staff>${isLow ? 2 : 1}</staff>`);
    });
}
