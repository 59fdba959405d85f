/** What joins notes: slurs, ties, glissandos and bends. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import type { HornPart } from '../../plugin/musicxml/index.ts';
import { noteOf, readSmall, technical } from './smallScore.ts';

const joins = ({ passage }: HornPart) =>
  passage.notes.flatMap(({ index, joins }) => joins.map(({ kind, to }) => `${index} ${kind} ${to}`));

describe('joins', () => {
  const slur = (type: string, number = 1) =>
    `<notations><slur type="${type}" number="${number}"/></notations>`;

  it('joins each note under a slur to the next, over the barline', () => {
    const part = readSmall([
      noteOf('C5', 4, slur('start')) + noteOf('D5', 4),
      noteOf('E5', 4, slur('stop')) + noteOf('F5', 4),
    ]);
    expect(joins(part)).toEqual(['0 slur 1', '1 slur 2']);
  });

  it('ends one slur and begins the next on one note, in either order', () => {
    const both = '<notations><slur type="start" number="1"/><slur type="stop" number="1"/></notations>';
    expect(
      joins(
        readSmall([noteOf('C5', 2, slur('start')) + noteOf('D5', 2, both) + noteOf('E5', 2, slur('stop'))]),
      ),
    ).toEqual(['0 slur 1', '1 slur 2']);
  });

  it('joins both players of chords under a slur', () => {
    const chord = (upper: string, lower: string, more: string) =>
      noteOf(lower, 2, more) + noteOf(upper, 2, '', '<chord/>');
    expect(joins(readSmall([chord('G4', 'E4', slur('start')) + chord('A4', 'F4', slur('stop'))]))).toEqual([
      '0 slur 2',
      '1 slur 3',
    ]);
  });

  it('follows a slur into another voice', () => {
    const upper = noteOf('C5', 2, `<voice>1</voice>${slur('start')}`) + noteOf('D5', 2, '<voice>1</voice>');
    const lower = noteOf('E4', 2, '<voice>2</voice>') + noteOf('F4', 2, `<voice>2</voice>${slur('stop')}`);
    // In order: C5, E4, D5, F4.
    expect(joins(readSmall([`${upper}<backup><duration>4</duration></backup>${lower}`]))).toEqual([
      '0 slur 3',
    ]);
  });

  it('drops a slur that never ends', () => {
    expect(joins(readSmall([noteOf('C5', 2, slur('start')) + noteOf('D5', 2)]))).toEqual([]);
  });

  it.each([
    ['<tie type="start"/>', '<tie type="stop"/>', '', ''],
    ['', '', '<notations><tied type="start"/></notations>', '<notations><tied type="stop"/></notations>'],
  ])('joins tied notes (%s)', (soundStart, soundStop, printStart, printStop) => {
    const part = readSmall([
      noteOf('C5', 8, soundStart + printStart),
      noteOf('C5', 4, soundStop + printStop) + noteOf('C5', 4),
    ]);
    expect(joins(part)).toEqual(['0 tie 1']);
  });

  it('ties nothing to a note that comes later', () => {
    const part = readSmall([
      noteOf('C5', 2, '<tie type="start"/>') + noteOf('D5', 2) + noteOf('C5', 2, '<tie type="stop"/>'),
    ]);
    expect(joins(part)).toEqual([]);
  });

  it.each(['glissando', 'slide'])('joins the ends of a %s, note to note in chords', (element) => {
    const end = (type: string) => `<notations><${element} type="${type}" number="1"/></notations>`;
    const part = readSmall([
      noteOf('C4', 2) +
        noteOf('E4', 2, end('start'), '<chord/>') +
        noteOf('C4', 2) +
        noteOf('D4', 2, end('stop'), '<chord/>'),
    ]);
    expect(joins(part)).toEqual(['1 glissando 3']);
  });

  it('joins a bent note to the note that follows at once', () => {
    const bend = technical('<bend><bend-alter>-3</bend-alter><release/></bend>');
    const rest = '<note><rest/><duration>2</duration></note>';
    expect(joins(readSmall([noteOf('E4', 2, bend) + noteOf('C#4', 2)]))).toEqual(['0 bend 1']);
    expect(joins(readSmall([noteOf('E4', 2, bend) + rest + noteOf('C#4', 2)]))).toEqual([]);
  });
});
