/** Entities, and scores made to choke whoever reads them: read as any other, or refused in a sentence that names the limit. */
import { describe, expect, it } from 'vitest';
import { examine, marksFor } from '../../core/index.ts';
import { readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { noteOf, smallScore } from './smallScore.ts';

const STOPPED = '<notations><technical><stopped/></technical></notations>';

function declaring(entities: string, measure: string, name = 'Horn in F'): string {
  return smallScore([measure], { name }).replace('?>', `?><!DOCTYPE score-partwise [${entities}]>`);
}

const wordsOf = (text: string) => readScore(text).horns[0]!.passage.words.map(({ text: words }) => words);
const direction = (words: string) =>
  `<direction><direction-type><words>${words}</words></direction-type></direction>`;

describe('entities', () => {
  /** @source W3C, XML 1.0 (Fifth Edition), section 4.4 and appendix D */
  it.each([
    ['<!ENTITY e "gestopft">', '&e;', 'gestopft'],
    ['<!ENTITY e "bouch&#233;">', '&e;', 'bouché'],
    ['<!ENTITY e "bouch&#xE9;">', '&e;', 'bouché'],
    ['<!ENTITY e \'a "b"\'>', '&e;', 'a "b"'],
    ['<!ENTITY e "&inner; x"><!ENTITY inner "in">', '&e;', 'in x'],
    ['<!ENTITY e "first"><!ENTITY e "second">', '&e;', 'first'],
    ['<!ENTITY e "x">', '<![CDATA[&e;]]> &e;', '&e; x'],
    ['<!ENTITY e "&#38;#38;">', '&e;', '&'],
    ['<!-- <!ENTITY e "no"> --><!ENTITY e "yes">', '&e;', 'yes'],
    ['<!ENTITY % p "no"><!ENTITY e "&lt;&amp;">', '&e;', '<&'],
  ])('%s %s', (entities, words, meaning) => {
    expect(wordsOf(declaring(entities, direction(words) + noteOf('C5', 2, STOPPED)))).toEqual([meaning]);
  });

  it('stay as they are in what is written', () => {
    const text = declaring('<!ENTITY e "bouch&#233;">', direction('&e;') + noteOf('C5', 2), 'Horn &e; in F');
    const score = readScore(text);
    const marks = marksFor(examine(score.horns[0]!.passage));
    expect(marks).toHaveLength(1);
    const marked = writeMarks(score, [{ partId: 'P1', marks }]);
    expect(marked).toContain('<part-name>Horn &e; in F</part-name>');
    expect(writeMarks(readScore(marked), [])).toBe(text);
  });

  it.each([
    [
      'one that stands for a long text',
      `<!ENTITY e "${'x'.repeat(1001)}">`,
      'the entity "e" stands for more than 1,000 characters',
    ],
    [
      'a declaration as long as a book',
      `<!ENTITY e "${'x'.repeat(107_000)}">`,
      'the document type is longer than 65,536 characters',
    ],
    [
      'one that grows with every use',
      `<!ENTITY a "0123456789">${['ab', 'bc', 'cd', 'de'].map(([from, to]) => `<!ENTITY ${to} "${`&${from};`.repeat(10)}">`).join('')}`,
      'stands for more than 1,000 characters',
    ],
    ['one that stands for itself', '<!ENTITY e "&f;"><!ENTITY f "&e;">', 'stands for itself, or nearly'],
  ])('are refused: %s', (_what, entities, sentence) => {
    expect(() => readScore(declaring(entities, direction('&e;') + noteOf('C5', 2)))).toThrow(sentence);
  });

  it('are refused when all uses come to more than any score holds', () => {
    const text = declaring(
      `<!ENTITY e "${'x'.repeat(1000)}">`,
      direction('&e;'.repeat(1001)) + noteOf('C5', 2),
    );
    expect(() => readScore(text)).toThrow('stand for more than 1,000,000 characters in all');
  });
});

describe('more than any score has', () => {
  const chordOf = (size: number) =>
    noteOf('C5', 2, STOPPED) + noteOf('C5', 2, STOPPED, '<chord/>').repeat(size - 1);

  it('of notes in a chord is refused, and as many as is possible are read', () => {
    const { notes } = readScore(smallScore([chordOf(1000).repeat(20)])).horns[0]!.passage;
    expect(notes).toHaveLength(20_000);
    expect(notes[999]).toMatchObject({ chordHead: 0, chordRank: 999 });
    expect(() => readScore(smallScore([chordOf(1001)]))).toThrow('a chord has more than 1,000 notes');
  });

  it('of notes in the parts to read is refused', () => {
    const score = smallScore([noteOf('C5', 2).repeat(500_001)]);
    expect(() => readScore(score)).toThrow('there are more than 500,000 notes, rests and words');
  });

  it('of characters in a name is told by its beginning', () => {
    const { horns } = readScore(smallScore([noteOf('C5', 2)], { name: `Horn ${'x'.repeat(100_000)}` }));
    expect(horns[0]!.name).toHaveLength(201);
  });

  it('of whatever is no number is no number', () => {
    const lengths = ['1e999', '1e3', 'Infinity', '0x10', 'NaN', '-2', '', '9999999999'].map((duration) => {
      const text = smallScore([noteOf('C5', 2).replace('>2<', `>${duration}<`) + noteOf('D5', 2)]);
      return readScore(text).horns[0]!.passage.notes.map(({ onsetQuarters }) => onsetQuarters);
    });
    for (const onsets of lengths) expect(onsets).toEqual([0, 0]);
  });
});
