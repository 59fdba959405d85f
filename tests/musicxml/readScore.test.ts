/** What is read of a score: its parts and names, past all that is no music. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import { readScore } from '../../plugin/musicxml/index.ts';
import { noteOf, pitches, readSmall, smallScore } from './smallScore.ts';

describe('the text around', () => {
  it('passes over vocabularies of others, comments, instructions and entities', () => {
    const text = smallScore(
      [`<?note here?><!-- <note/> --><x:note xmlns:x="urn:x"><pitch/></x:note>${noteOf('C5', 2)}`],
      {
        name: '&horn; in F',
      },
    ).replace('?>', '?><!DOCTYPE score-partwise [<!ENTITY horn "Horn">]>');
    const { horns } = readScore(text);
    expect(horns.map(({ name }) => name)).toEqual(['Horn in F']);
    expect(pitches(horns[0]!)).toEqual(['C5']);
  });

  it('passes over vocabularies of others between measures', () => {
    const text = smallScore([noteOf('C5', 8), noteOf('D5', 8)]).replace(
      '</measure><measure',
      '</measure><x:y xmlns:x="urn:x"><note/></x:y><measure',
    );
    expect(
      readScore(text).horns[0]!.passage.notes.map(({ measureIndex, onsetQuarters }) => [
        measureIndex,
        onsetQuarters,
      ]),
    ).toEqual([
      [0, 0],
      [1, 4],
    ]);
  });

  it('lists every part and reads the horns', () => {
    const flute = '<score-part id="P0"><part-name>Flute</part-name></score-part>';
    const text = smallScore([noteOf('C5', 2)]).replace('<part-list>', `<part-list>${flute}`);
    const score = readScore(text);
    expect(score.parts).toEqual([
      { id: 'P0', name: 'Flute', isHorn: false },
      { id: 'P1', name: 'Horn in F', isHorn: true },
    ]);
    expect(score.horns.map(({ id }) => id)).toEqual(['P1']);
  });

  it.each(['P1', 'p1', 'HORN IN F', '1', 'horn'])('finds a part asked for as %s', (request) => {
    expect(readScore(smallScore([noteOf('C5', 2)]), { parts: [request] }).horns).toHaveLength(1);
  });

  it('takes a name from the group where parts are only numbered', () => {
    const group = '<part-group number="1" type="start"><group-name>Corni in F</group-name></part-group>';
    const end =
      '<part-group number="1" type="stop"/><score-part id="P2"><part-name>3.</part-name></score-part>';
    const text = smallScore([noteOf('C5', 2)], { name: '1.', attributes: '' })
      .replace('<part-list>', `<part-list>${group}`)
      .replace('</part-list>', `${end}</part-list>`);
    const { parts, horns } = readScore(text);
    expect(parts.map(({ name, isHorn }) => [name, isHorn])).toEqual([
      ['Corni in F 1.', true],
      ['3.', false],
    ]);
    expect(horns[0]!.passage.notes[0]!.transposition!.chromatic).toBe(-7);
  });

  it('leaves out the notes of other instruments in a part that changes', () => {
    const instrument = (id: string, sound: string) =>
      `<score-instrument id="${id}"><instrument-name>x</instrument-name><instrument-sound>${sound}</instrument-sound></score-instrument>`;
    const part = readSmall(
      [noteOf('C5', 2, '<instrument id="I1"/>') + noteOf('D5', 2, '<instrument id="I2"/>')],
      {
        instrument: instrument('I1', 'brass.french-horn') + instrument('I2', 'brass.trumpet'),
      },
    );
    expect(pitches(part)).toEqual(['C5']);
  });
});
