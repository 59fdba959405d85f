/** Chords of every make keep the law: marks come out without a trace, and no other reader counts anything anew. */
import { DOMParser, type Element } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { formatPitch } from '../../core/pitch/pitch.ts';
import { clearMarks, readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { IN_F, noteOf, smallScore } from './smallScore.ts';

const CHORD = '<chord/>';
const hidden = (note: string) => note.replace('<note>', '<note print-object="no">');
const stopped = '<notations><technical><stopped/></technical></notations>';
const onStaff2 = '<voice>5</voice><staff>2</staff>';
const SOUNDS =
  '<score-instrument id="P1-I1"><instrument-name>Horn</instrument-name><instrument-sound>brass.french-horn</instrument-sound></score-instrument>' +
  '<score-instrument id="P1-I2"><instrument-name>Tuba</instrument-name><instrument-sound>brass.tuba</instrument-sound></score-instrument>';

const upper = (inside = '') => noteOf('E5', 2, inside, CHORD);

/** The chord as the file has it; every case ends with another note, whose onset tells what a reader counts. */
const MAKES: readonly (readonly [string, string])[] = [
  ['a member without a staff under a head on staff 2', noteOf('C5', 2, onStaff2) + upper()],
  [
    'a member on another staff than its head',
    noteOf('C5', 2, '<staff>1</staff>') + upper('<staff>2</staff>'),
  ],
  ['a hidden head', hidden(noteOf('C5', 2, onStaff2)) + upper()],
  ['a head without a notehead', noteOf('C5', 2, '<notehead>none</notehead>') + upper()],
  ['a hidden member', noteOf('C5', 2) + hidden(upper()) + noteOf('G5', 2, '', CHORD)],
  ['a cue as head', noteOf('C5', 2, '', '<cue/>') + upper()],
  ['an unpitched head', `<note><unpitched/><duration>2</duration></note>${upper()}`],
  ['a rest as head', `<note><rest/><duration>2</duration></note>${upper()}`],
  ['a head of another instrument', noteOf('C5', 2, '<instrument id="P1-I2"/>') + upper()],
  [
    'a grace chord with a hidden head',
    hidden(noteOf('C5', 0, '', '<grace/>')) + noteOf('E5', 0, '', `<grace/>${CHORD}`),
  ],
  ['a chord element with nothing before it', upper()],
  ['equal notes', noteOf('C5', 2) + noteOf('C5', 2, '', CHORD) + noteOf('C5', 2, '', CHORD)],
];

const scoreWith = (chord: string, name = 'Horn in F') =>
  smallScore([`${chord}${noteOf('D5', 2)}`, noteOf('F5', 4)], { name, attributes: IN_F, instrument: SOUNDS });

/** Onsets of all notes in divisions, as a plain reader of the format counts them. */
function onsets(text: string): number[] {
  const found: number[] = [];
  let [cursor, chordAt] = [0, 0];
  const walk = (element: Element): void => {
    for (const child of Array.from(element.childNodes).filter(
      ({ nodeType }) => nodeType === 1,
    ) as Element[]) {
      if (child.tagName !== 'note') walk(child);
      else {
        const has = (tag: string) => child.getElementsByTagName(tag).length > 0;
        const previous = child.previousSibling as Element | null;
        // A chord belongs to the note directly before it.
        const isChord = has('chord') && previous?.nodeName === 'note';
        if (!isChord) chordAt = cursor;
        found.push(chordAt);
        if (!isChord && !has('grace'))
          cursor += Number(child.getElementsByTagName('duration')[0]?.textContent);
      }
    }
  };
  walk(new DOMParser().parseFromString(text, 'text/xml').documentElement!);
  return found;
}

describe('a chord with', () => {
  it.each(MAKES)('%s: every note can be marked, and nothing else changes', (_make, chord) => {
    const text = scoreWith(chord);
    const score = readScore(text);
    const { notes } = score.horns[0]!.passage;
    expect(notes.length).toBeGreaterThan(1);
    const marks = notes.map(({ index }) => ({
      noteIndex: index,
      lines: ['o C♯', 'B 2'],
      valves: '2',
      colour: '#D55E00',
    }));
    const completions = notes.flatMap(({ index: noteIndex }) => [
      { kind: 'word' as const, noteIndex, text: 'offen' },
      { kind: 'stopped-sign' as const, noteIndex },
    ]);
    const marked = writeMarks(score, [{ partId: 'P1', marks, completions }], { fingerings: true });
    expect(clearMarks(marked)).toBe(text);
    expect(onsets(marked)).toEqual(onsets(text));
    expect(readScore(marked).horns[0]!.passage).toEqual(score.horns[0]!.passage);
  });
});

describe('what a hidden first note says of its chord', () => {
  const read = (measure: string) => {
    const { notes } = readScore(smallScore([measure])).horns[0]!.passage;
    return notes.map(({ written, sign, joins }) => [
      formatPitch(written),
      sign,
      joins.map(({ kind, to }) => `${kind} ${to}`).join(),
    ]);
  };

  it('its sign rules the chord', () => {
    expect(read(hidden(noteOf('C5', 2, stopped)) + upper() + noteOf('G5', 2, '', CHORD))).toEqual([
      ['E5', 'stopped', ''],
      ['G5', 'stopped', ''],
    ]);
  });

  it('its slur leads to and from the notes that are played', () => {
    const slur = (type: string) => `<notations><slur type="${type}" number="1"/></notations>`;
    expect(
      read(
        hidden(noteOf('C5', 2, slur('start'))) + upper() + hidden(noteOf('C5', 2, slur('stop'))) + upper(),
      ),
    ).toEqual([
      ['E5', null, 'slur 1'],
      ['E5', null, ''],
    ]);
  });

  it('a note without a notehead is as good as hidden: so hosts write hidden notes', () => {
    const noHead = `<notehead>none</notehead>${stopped}`;
    expect(read(noteOf('C5', 2, noHead) + upper())).toEqual([['E5', 'stopped', '']]);
  });

  it('alone it is a rest', () => {
    const { passage } = readScore(smallScore([hidden(noteOf('C5', 2, stopped)) + noteOf('D5', 2)])).horns[0]!;
    expect(passage.notes.map(({ onsetQuarters, sign }) => [onsetQuarters, sign])).toEqual([[1, null]]);
    expect(passage.rests).toHaveLength(1);
  });
});
