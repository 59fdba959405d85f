/** When notes come and how long they last, alone, in chords and side by side. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import { readScore } from '../../plugin/musicxml/index.ts';
import { noteOf, pitches, readSmall, smallScore, technical } from './smallScore.ts';

describe('chords', () => {
  it('ranks players from the top and keeps the printed order', () => {
    const { passage } = readSmall([
      noteOf('E4', 2) + noteOf('C5', 2, '', '<chord/>') + noteOf('G4', 2, '', '<chord/>') + noteOf('D4', 2),
    ]);
    expect(
      passage.notes.map(({ chordRank, chordHead, onsetQuarters }) => [chordRank, chordHead, onsetQuarters]),
    ).toEqual([
      [2, 0, 0],
      [0, 0, 0],
      [1, 0, 0],
      [0, 3, 1],
    ]);
  });

  it('gives a note its voice and staff from its chord where it states none', () => {
    const { passage } = readSmall([
      noteOf('E4', 2, '<voice>2</voice><staff>2</staff>') + noteOf('C5', 2, '', '<chord/>'),
    ]);
    expect(passage.notes.map(({ voice, staff }) => [voice, staff])).toEqual([
      ['2', 2],
      ['2', 2],
    ]);
  });
});

describe('time', () => {
  it('puts voices side by side in order of onset', () => {
    const upper = noteOf('C5', 2, '<voice>1</voice>') + noteOf('D5', 2, '<voice>1</voice>');
    const lower = noteOf('E4', 1, '<voice>2</voice>') + noteOf('F4', 3, '<voice>2</voice>');
    const part = readSmall([`${upper}<backup><duration>4</duration></backup>${lower}`]);
    expect(pitches(part)).toEqual(['C5', 'E4', 'F4', 'D5']);
    expect(part.passage.notes.map(({ beat }) => beat)).toEqual([1, 1, 1.5, 2]);
  });

  it('counts beats by the lower number of the time signature, and measures by their printed numbers', () => {
    const time = '<attributes><time><beats>6</beats><beat-type>8</beat-type></time></attributes>';
    const { passage } = readSmall([noteOf('C5', 8), `${time}${noteOf('D5', 3)}${noteOf('E5', 3)}`]);
    expect(passage.notes.map(({ measure, measureIndex, beat }) => [measure, measureIndex, beat])).toEqual([
      ['1', 0, 1],
      ['2', 1, 1],
      ['2', 1, 4],
    ]);
  });

  it('follows a change of divisions inside a measure', () => {
    const { passage } = readSmall([
      `${noteOf('C5', 2)}<attributes><divisions>6</divisions></attributes>${noteOf('D5', 2)}${noteOf('E5', 2)}`,
    ]);
    expect(passage.notes.map(({ onsetQuarters }) => onsetQuarters)).toEqual([0, 1, expect.closeTo(4 / 3, 9)]);
    expect(passage.notes[1]!.durationQuarters).toBeCloseTo(1 / 3, 9);
  });

  it('gives grace notes no length and the place of their main note', () => {
    const { passage } = readSmall([noteOf('C5', 2) + noteOf('D5', 0, '', '<grace/>') + noteOf('E5', 2)]);
    expect(
      passage.notes.map(({ grace, onsetQuarters, durationQuarters }) => [
        grace,
        onsetQuarters,
        durationQuarters,
      ]),
    ).toEqual([
      [false, 0, 1],
      [true, 1, 0],
      [false, 1, 1],
    ]);
  });

  it('gives an empty measure its length by the time signature', () => {
    const { passage } = readSmall([noteOf('C5', 8), '', noteOf('D5', 8)]);
    expect(passage.notes[1]!.onsetQuarters).toBe(8);
  });

  it('keeps rests, and the time of what another player or nobody plays', () => {
    const rest = '<note><rest/><duration>2</duration><voice>1</voice></note>';
    const part = readSmall([
      rest +
        noteOf('C5', 2, '', '<cue/>') +
        noteOf('D5', 2).replace('<note>', '<note print-object="no">') +
        noteOf('E5', 2),
    ]);
    expect(pitches(part)).toEqual(['E5']);
    expect(
      part.passage.rests.map(({ onsetQuarters, durationQuarters }) => [onsetQuarters, durationQuarters]),
    ).toEqual([
      [0, 1],
      [1, 1],
      [2, 1],
    ]);
  });

  it('reads a cue that carries a sign for the hand', () => {
    expect(pitches(readSmall([noteOf('C5', 2, technical('<stopped/>'), '<cue/>')]))).toEqual(['C5']);
  });

  it('takes tempos from whichever part states them', () => {
    const other = `<part id="P2"><measure number="1">${noteOf('C4', 8)}</measure><measure number="2">${noteOf('C4', 1)}
      <direction><direction-type><metronome><beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>c. 60</per-minute></metronome></direction-type></direction>
      </measure></part>`;
    const text = smallScore([`<sound tempo="72"/>${noteOf('C5', 8)}`, noteOf('D5', 8)])
      .replace('</score-part>', '</score-part><score-part id="P2"><part-name>Flute</part-name></score-part>')
      .replace('</part></score', `</part>${other}</score`);
    expect(readScore(text).horns[0]!.passage.tempos).toEqual([
      { onsetQuarters: 0, quartersPerMinute: 72 },
      // The second part has one division to the quarter: its first note lasts a quarter.
      { onsetQuarters: 5, quartersPerMinute: 90 },
    ]);
  });
});
