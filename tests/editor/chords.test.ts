/** Chords of every make: both doors read the same notes of them, and marks come off without a trace. */
import { afterAll, expect, it } from 'vitest';
import { type Result, resultOf } from '../../core/marks/result.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/read/readScore.ts';
import { IN_F, noteOf, smallScore } from '../musicxml/smallScore.ts';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';

afterAll(removeFolders);

const STOPPED = '<notations><technical><stopped/></technical></notations>';
const CHORD = '<chord/>';
const SLUR = (type: string) => `<notations><slur type="${type}" number="1"/></notations>`;
const hidden = (note: string) => note.replace('<note>', '<note print-object="no">');
const half = (name: string, first = '', after = '') =>
  noteOf(name, 4, `<voice>1</voice><type>half</type>${after}`, first);
const grace = (name: string, first = '', after = '') =>
  noteOf(name, 0, `<voice>1</voice><type>eighth</type>${after}`, `<grace/>${first}`);

/** Bars of two halves. All notes are stopped, so that every one that is read is in the result. */
const BARS: readonly (readonly [make: string, bar: string])[] = [
  ['a chord', half('C5', '', STOPPED) + half('E5', CHORD) + half('D5')],
  ['a hidden lowest note with the sign', hidden(half('C5', '', STOPPED)) + half('E5', CHORD) + half('D5')],
  ['a hidden top note', half('C5', '', STOPPED) + hidden(half('E5', CHORD)) + half('D5')],
  ['a hidden one between', half('C5') + hidden(half('E5', CHORD)) + half('G5', CHORD) + half('D5')],
  ['nothing but hidden notes', hidden(half('C5', '', STOPPED)) + hidden(half('E5', CHORD)) + half('D5')],
  ['a hidden note alone', hidden(half('C5', '', STOPPED)) + half('D5')],
  ['one pitch twice', half('C5', '', STOPPED) + half('C5', CHORD) + half('D5')],
  ['one pitch in two spellings', half('C#5', '', STOPPED) + half('Db5', CHORD) + half('D5')],
  ['a cue', half('C5', '<cue/>') + half('D5')],
  ['a cue with a sign', half('C5', '<cue/>', STOPPED) + half('D5')],
  ['a hidden grace', hidden(grace('C5')) + grace('E5', CHORD, STOPPED) + half('D5') + half('C5')],
  [
    'a slur between hidden notes',
    hidden(half('C5', '', SLUR('start'))) +
      half('E5', CHORD) +
      hidden(half('C5', '', SLUR('stop'))) +
      half('D5', CHORD),
  ],
];

const SCORE = smallScore(
  BARS.map(([, bar], i) => (i === 0 ? `${words('gestopft')}${bar}` : bar)),
  {
    attributes: `<time><beats>4</beats><beat-type>4</beat-type></time>${IN_F}`,
    instrument:
      '<score-instrument id="P1-I1"><instrument-name>Horn in F</instrument-name><instrument-sound>brass.french-horn</instrument-sound></score-instrument>',
  },
);

function words(text: string): string {
  return `<direction placement="above"><direction-type><words>${text}</words></direction-type></direction>`;
}

function fromFile(text: string): Result {
  return JSON.parse(JSON.stringify(resultOf(readScore(text).horns.map(({ passage }) => examine(passage)))));
}

inEveryHost('chords of every make', (host) => {
  it('are the same in both doors, and marked and cleared', async () => {
    const run = await host.run(SCORE, [
      { do: 'save', as: 'before.mscx' },
      { do: 'result' },
      { do: 'save', as: 'exported.musicxml' },
      { do: 'annotate' },
      { do: 'result' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    const result = run.results[1] as Result;
    for (const [i, [make]] of BARS.entries()) {
      const inBar = ({ parts }: Result) => parts[0]!.notes.filter(({ measure }) => measure === `${i + 1}`);
      expect(inBar(result).length, make).toBeGreaterThan(0);
      expect(inBar(result), make).toEqual(inBar(fromFile(SCORE)));
    }
    expect(result).toEqual(fromFile(SCORE));
    expect(result).toEqual(fromFile(await run.text('exported.musicxml')));
    expect(run.results[4]).toEqual(result);
    const saved = async (name: string) =>
      (await run.text(`${name}.mscx`)).replace(/\s*<metaTag[\s\S]*?<\/metaTag>/g, '');
    expect(await saved('annotated')).not.toBe(await saved('before'));
    expect(await saved('cleared')).toBe(await saved('before'));
  });
});
