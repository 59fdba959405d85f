/** Input that is no score: one clear sentence, with its place. */
import { describe, expect, it } from 'vitest';
import { examine } from '../../core/index.ts';
import { clearMarks, readScore, ScoreError } from '../../plugin/musicxml/index.ts';
import { noteOf, readSmall, smallScore } from './smallScore.ts';

const GOOD = smallScore([noteOf('C5', 2)]).replace(/></g, '>\n<');

function faultOf(text: string): ScoreError {
  try {
    readScore(text);
  } catch (error) {
    if (error instanceof ScoreError) return error;
    throw error;
  }
  throw new Error('nothing was wrong');
}

describe('faults', () => {
  it.each([
    ['nothing', '', /this is not XML/],
    ['plain text', 'dear horn player', /line 1, column 17: this is not XML .*: export the score as MusicXML/],
    ['text before the declaration', `Octave.cc${GOOD}`, /this is not XML/],
    ['a picture', '\x89PNG\r\n\x1a\n\0\0\0\rIHDR', /this is not XML .*: export the score as MusicXML/],
    ['a web page', '<html><body/></html>', /<html> is not a MusicXML score: export the music as MusicXML/],
    ['an opus', '<opus/>', /<opus> is not a MusicXML score/],
    ['a file cut short', GOOD.slice(0, -40), /the file is cut short .*: fetch or export it again/],
    ['a file cut inside a tag', GOOD.slice(0, GOOD.indexOf('</duration') + 6), /the file is cut short/],
    ['crossed tags', GOOD.replace('</pitch>', '</note>'), /line 21, column 8: a closing tag/],
    ['a bare ampersand', GOOD.replace('Horn in F', 'Horn & Co'), /line \d+, column \d+: /],
    [
      'an unknown entity',
      GOOD.replace('Horn in F', 'Horn &flat;'),
      /an entity is used that the file does not declare .*&amp;/,
    ],
    [
      'an attribute without quotes',
      GOOD.replace('id="P1"', 'id=P1'),
      /not well-formed XML \(unquoted attribute value\)/,
    ],
    ['an attribute twice', GOOD.replace('id="P1"', 'id="P1" id="P1"'), /an attribute is given twice/],
    [
      'a control character',
      GOOD.replace('Horn in F', 'Horn \u0001'),
      /a character stands where XML does not allow it/,
    ],
    [
      'two parts of one id in the list',
      GOOD.replace(/<score-part[\s\S]*?<\/score-part>/, '$&$&'),
      /line \d+, column \d+: two parts have the id "P1": give each part an id of its own/,
    ],
    [
      'a part that stands there twice',
      GOOD.replace(/<part id[\s\S]*<\/part>/, '$&$&'),
      /line \d+, column \d+: the part "P1" stands here twice/,
    ],
    ['two scores in a row', GOOD + GOOD.replace(/^<\?.*\?>/, ''), /a second document/],
  ])('%s', (_case, text, message) => {
    const fault = faultOf(text);
    expect(fault.message).toMatch(message);
    expect(fault.message.split('\n')).toHaveLength(1);
    expect(() => clearMarks(text)).toThrow(ScoreError);
  });

  it('tells line and column as numbers, from 1', () => {
    const { line, column } = faultOf(GOOD.replace('</duration>', '</durration>'));
    const lines = GOOD.split('\n');
    expect(lines[line - 1]).toContain('</duration>');
    expect(column).toBeGreaterThan(1);
  });

  it('says which parts there are when one asked for is not', () => {
    expect(() => readScore(GOOD, { parts: ['Tuba'] })).toThrow(
      'there is no part "Tuba": choose one of the parts of this score ("Horn in F")',
    );
  });

  it('reads a score without parts, or without horns, as one that has none', () => {
    expect(readScore('<score-partwise><part-list/></score-partwise>')).toMatchObject({
      parts: [],
      horns: [],
    });
    expect(readScore(GOOD.replace('Horn in F', 'Flute'))).toMatchObject({
      parts: [{ name: 'Flute' }],
      horns: [],
    });
  });

  it.each(['-4', '1e400', '1e30', 'long', ''])('counts a length of "%s" as none, and reads on', (length) => {
    const odd = noteOf('C5', 2).replace('>2<', `>${length}<`);
    const { passage } = readSmall([
      `${odd}${noteOf('D5', 2)}<backup><duration>${length}</duration></backup>`,
    ]);
    const times = passage.notes.map(({ onsetQuarters, durationQuarters }) => [
      onsetQuarters,
      durationQuarters,
    ]);
    expect(times).toEqual([
      [0, 0],
      [0, 1],
    ]);
    expect(examine(passage).notes).toHaveLength(2);
  });
});
