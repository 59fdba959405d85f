/** Notes that were written before are not parsed again: whatever is read must be what parsing them all gives. */
import { describe, expect, it } from 'vitest';
import { clearMarks, readScore, ScoreError, writeMarks } from '../../plugin/musicxml/index.ts';
import { generatePart } from './generate.ts';
import { noteOf, readSmall, smallScore } from './smallScore.ts';

/** The same score with a comment in every note, so that no two are written alike. */
function allDifferent(text: string): string {
  let count = 0;
  return text.replace(/<\/note>/g, () => `<!--${count++}--></note>`);
}

const NOTE = noteOf('C5', 2, '<notations><technical><stopped/></technical></notations>');

describe('notes written alike', () => {
  it.each([1, 2, 3, 4, 5, 6])('are read as if each were the only one: part %i', (seed) => {
    const timewise = seed > 3;
    const text = generatePart(400, { seed, stoppedPercent: 30, timewise, lineEnd: seed % 2 ? '\n' : '\r\n' });
    const other = allDifferent(text);
    const [read, expected] = [readScore(text).horns[0]!, readScore(other).horns[0]!];
    expect(read.passage.notes.length).toBe(400);
    expect(read.passage).toEqual(expected.passage);
    for (const { index } of read.passage.notes) {
      const [place, otherPlace] = [read.notesInText.at(index), expected.notesInText.at(index)];
      expect(text.slice(place.start, place.notationsAt)).toBe(
        other.slice(otherPlace.start, otherPlace.notationsAt).replace(/<!--\d+-->/g, ''),
      );
      expect(text.startsWith('<note', place.start)).toBe(true);
    }
  });

  it('may differ in their start tags: one hidden, one coloured', () => {
    const hidden = NOTE.replace('<note>', '<note print-object="no">');
    const coloured = NOTE.replace('<note>', '<note color="#336699">');
    const { notes } = readSmall([NOTE + hidden + coloured + NOTE]).passage;
    expect(notes.map(({ onsetQuarters, userColour }) => [onsetQuarters, userColour])).toEqual([
      [0, false],
      [2, true],
      [3, false],
    ]);
  });

  it('are not mixed up by a comment that holds an end tag', () => {
    const commented =
      '<note><!-- </note> --><pitch><step>D</step><octave>4</octave></pitch><duration>2</duration></note>';
    const { notes } = readSmall([commented + NOTE + commented + NOTE]).passage;
    expect(notes.map(({ written, onsetQuarters }) => `${written.step} ${onsetQuarters}`)).toEqual([
      'D 0',
      'C 1',
      'D 2',
      'C 3',
    ]);
  });

  it('may close with white space in the tag', () => {
    const spaced = NOTE.replace('</note>', '</note >');
    const { notes } = readSmall([spaced + spaced + NOTE + spaced + NOTE]).passage;
    expect(notes.map(({ onsetQuarters }) => onsetQuarters)).toEqual([0, 1, 2, 3, 4]);
  });

  it('are known from part to part, whichever of the parts are horns', () => {
    const body = `<measure number="1"><attributes><divisions>2</divisions></attributes>${NOTE}${NOTE}</measure>`;
    const part = (id: string) => `<score-part id="${id}"><part-name>${id}</part-name></score-part>`;
    const text = `<score-partwise><part-list>${part('Viola')}${part('Horn in F')}${part('Oboe')}</part-list>
      <part id="Viola">${body}</part><part id="Horn in F">${body}</part><part id="Oboe">${body}</part></score-partwise>`;
    const [horn] = readScore(text).horns;
    expect(horn!.passage.notes.map(({ sign }) => sign)).toEqual(['stopped', 'stopped']);
  });

  it('each lose their own marks', () => {
    const text = smallScore([NOTE + NOTE, NOTE + NOTE]);
    const marks = [0, 1, 2, 3].map((noteIndex) => ({ noteIndex, lines: ['B 2'], valves: '2', colour: null }));
    const marked = writeMarks(readScore(text), [{ partId: 'P1', marks }], { fingerings: true });
    expect(marked.split('<fingering>').length).toBe(5);
    expect(clearMarks(marked)).toBe(text);
  });

  it.each(['default-x="1" default-x="2"', 'default-x=1', 'default-x="<"', 'default-x="&no;"', 'x="1"y="2"'])(
    'do not hide a fault in a start tag: %s',
    (attributes) => {
      const faulty = NOTE.replace('<note>', `<note ${attributes}>`);
      expect(() => readSmall([NOTE + NOTE + faulty + NOTE])).toThrow(ScoreError);
    },
  );

  it('are left where no note can stand: in a comment, and outside of measures', () => {
    const commented = `${NOTE}<!--${NOTE}-->${NOTE}`;
    const { notes } = readSmall([commented, NOTE]).passage;
    expect(notes.map(({ measureIndex, onsetQuarters }) => [measureIndex, onsetQuarters])).toEqual([
      [0, 0],
      [0, 1],
      [1, 2],
    ]);
    const empty = smallScore([NOTE]).replace('</measure>', `</measure><measure number="2"/>${NOTE}`);
    expect(readScore(empty).horns[0]!.passage.notes.length).toBe(1);
  });

  it('do not hide where a fault stands', () => {
    const lines = smallScore([`\n${NOTE}\n${NOTE}\n${NOTE}\n<note></nota>`]).split('\n');
    const column = lines[4]!.indexOf('</nota>') + '</nota>'.length;
    const fault = (() => {
      try {
        return readScore(lines.join('\n'));
      } catch (error) {
        return error;
      }
    })();
    expect(fault).toBeInstanceOf(ScoreError);
    expect(fault).toMatchObject({ line: 5, column: column + 1 });
  });
});
