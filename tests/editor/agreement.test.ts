/** Both doors agree: the editor's findings and fingerings are those of the file door on the same music. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { type Result, resultOf } from '../../core/marks/result.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/read/readScore.ts';
import { FIXTURES } from './rig/fixtures.ts';
import { removeFolders } from './rig/folders.ts';
import type { Host } from './rig/host.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, rest, scoreOf, stopped } from './rig/music.ts';
import { skipLoudly } from './rig/programs.ts';

afterAll(removeFolders);

/** What the command line's `check` finds in a text. */
function fromFile(text: string): Result {
  return JSON.parse(JSON.stringify(resultOf(readScore(text).horns.map(({ passage }) => examine(passage)))));
}

/** Version 4 draws the flat of a part's name, where the file spells it. */
function asInFile(result: Result): Result {
  const spelled = (name: string) => name.replace('♭', 'b');
  return {
    parts: result.parts.map((part) => ({ ...part, name: spelled(part.name) })),
    findings: result.findings.map((finding) => ({ ...finding, part: spelled(finding.part) })),
  };
}

async function fromHost(host: Host, score: string): Promise<{ result: Result; exported: string }> {
  const run = await host.run(score, [{ do: 'result' }, { do: 'save', as: 'exported.musicxml' }]);
  return { result: asInFile(run.results[0] as Result), exported: await run.text('exported.musicxml') };
}

inEveryHost('both doors agree', (host) => {
  it.each(FIXTURES)('on %s', async (_, parts) => {
    const score = scoreOf(parts);
    const { result, exported } = await fromHost(host, score);
    expect(result.parts.length).toBeGreaterThan(0);
    expect(result.parts.some(({ notes }) => notes.length > 0)).toBe(true);
    expect(result).toEqual(fromFile(score));
    expect(result).toEqual(fromFile(exported));
  });

  it('on a pickup, repeats and rests drawn as one, and on fingerings of the player’s own', async () => {
    const bars = [
      [stopped('G4')],
      [{ ...stopped('C5', 4), words: 'B 2' }],
      [rest(4)],
      [rest(4)],
      [rest(4)],
      [{ ...stopped('Ab3', 4), fingering: '13' }],
    ];
    const score = hornScore(bars)
      .replace(/<measure number="(\d)">/g, (_, number) =>
        number === '1' ? '<measure number="0" implicit="yes">' : `<measure number="${Number(number) - 1}">`,
      )
      .replace(
        '<measure number="1">',
        '<measure number="1"><barline location="left"><repeat direction="forward"/></barline>',
      )
      .replace(
        /<\/measure><\/part>/,
        '<barline location="right"><repeat direction="backward"/></barline></measure></part>',
      );
    const asOne = score.replace(
      '<measure number="2">',
      '<measure number="2"><attributes><measure-style><multiple-rest>3</multiple-rest></measure-style></attributes>',
    );
    const [{ result }, drawn, ofOne] = await Promise.all([
      fromHost(host, score),
      host.run(asOne, [{ do: 'save', as: 'one.mscx' }]),
      fromHost(host, asOne),
    ]);
    expect(result).toEqual(fromFile(score));
    expect(await drawn.text('one.mscx')).toContain('<createMultiMeasureRests>1</createMultiMeasureRests>');
    expect(ofOne.result).toEqual(result);
    expect(result.parts[0]!.notes.map(({ measure }) => measure)).toEqual(['0', '1', '5']);
    expect(result.parts[0]!.notes.map(({ chosen }) => chosen)).toEqual([null, 'B 2', '13']);
  });

  it.each([
    ['up', 'below'],
    ['down', 'above'],
  ])('under an octave line that shifts the notes %s', async (type, placement) => {
    const under = hornScore([[stopped('C5'), stopped('E5'), stopped('F5', 2)], [stopped('C5', 4)]])
      .replace('<note>', `${octaveShift(`type="${type}" size="8"`, placement)}<note>`)
      .replace('</measure>', `${octaveShift('type="stop" size="8"', placement)}</measure>`);
    const { result } = await fromHost(host, under);
    expect(result).toEqual(fromFile(under));
    expect(result.parts[0]!.notes.map(({ written }) => written)).toEqual(['C5', 'E5', 'F5', 'C5']);
  });

  // Version 3 does not tell by how many octaves a second instrument transposes.
  if (host.major === 4) {
    it('where the player takes a lower instrument in the middle of a bar', async () => {
      const bars = [[1, 2, 3, 4].map(() => stopped('G4')), [stopped('G4', 4)]];
      const change =
        '<attributes><transpose><diatonic>-4</diatonic><chromatic>-7</chromatic><octave-change>-1</octave-change></transpose></attributes>';
      const [before, ...notes] = hornScore(bars).split('<note>');
      const taken = notes.map((note, i) => {
        const instrument = `</duration><instrument id="P1-I${i < 2 ? 1 : 2}"/>`;
        return `${i === 2 ? change : ''}<note>${note.replace('</duration>', instrument)}`;
      });
      const second = '<score-instrument id="P1-I2"><instrument-name>Low</instrument-name></score-instrument>';
      const score = before!.replace('</score-part>', `${second}</score-part>`) + taken.join('');
      const { result } = await fromHost(host, score);
      expect(result).toEqual(fromFile(score));
      const verdicts = result.parts[0]!.notes.map(({ verdict }) => verdict);
      expect(verdicts).toEqual(['sure', 'sure', 'risky', 'risky', 'risky']);
    });
  }
});

function octaveShift(attributes: string, placement: string): string {
  return `<direction placement="${placement}"><direction-type><octave-shift ${attributes} number="1"/></direction-type></direction>`;
}

const CORPUS = fileURLToPath(new URL('../../../shared/corpus/horn/', import.meta.url));
/** Bigger scores take the editor itself many seconds to open. */
const MOST_BYTES = 250_000;
const hasCorpus = existsSync(CORPUS);
if (!hasCorpus)
  skipLoudly('the editor on scores by others', 'put MusicXML scores with horns into ../shared/corpus/horn');

inEveryHost('scores by others', (host) => {
  const names = hasCorpus
    ? readdirSync(CORPUS).filter(
        (name) => /\.(musicxml|mxl|xml)$/.test(name) && statSync(CORPUS + name).size < MOST_BYTES,
      )
    : [];
  it.skipIf(!hasCorpus).each(names)('%s', async (name) => {
    const { result, exported } = await fromHost(host, CORPUS + name);
    expect(result).toEqual(fromFile(exported));
  });
});
