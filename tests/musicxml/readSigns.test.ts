/** Signs for the hand, fingerings and colours as they are read of notes. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import type { HornPart } from '../../plugin/musicxml/index.ts';
import { noteOf, readSmall, technical } from './smallScore.ts';

const signs = ({ passage }: HornPart) => passage.notes.map(({ sign }) => sign);

describe('signs for the hand', () => {
  it.each([
    ['<stopped/>', 'stopped'],
    ['<stopped smufl="brassMuteClosed"/>', 'stopped'],
    ['<stopped smufl="brassMuteHalfClosed"/>', 'half-stopped'],
    ['<stopped smufl="brassMuteOpen"/>', 'open'],
    ['<stopped smufl="pluckedSnapPizzicatoAbove"/>', null],
    ['<open/>', 'open'],
    ['<open smufl="brassMuteOpen"/>', 'open'],
    ['<open-string/>', 'open'],
    ['<half-muted/>', 'half-stopped'],
    ['<half-muted smufl="brassMuteHalfClosed"/>', 'half-stopped'],
    ['<other-technical smufl="brassMuteClosed"/>', 'stopped'],
    ['<other-technical>+</other-technical>', null],
    ['<harmonic/>', null],
    ['<up-bow/>', null],
  ])('%s is %s', (element, sign) => {
    expect(signs(readSmall([noteOf('C5', 2, technical(element))]))).toEqual([sign]);
  });

  it('takes the playback mute of a note that prints no sign', () => {
    const play = '<play><mute>stop-hand</mute></play>';
    expect(signs(readSmall([noteOf('C5', 2, play) + noteOf('C5', 2, technical('<open/>') + play)]))).toEqual([
      'stopped',
      'open',
    ]);
  });

  it.each([
    ['on the first note', ['<stopped/>', '', ''], ['stopped', 'stopped', 'stopped']],
    ['on a later note', ['', '<stopped/>', ''], ['stopped', 'stopped', 'stopped']],
    ['on two notes, each its own', ['<stopped/>', '<open/>', ''], ['stopped', 'open', null]],
    ['on none', ['', '', ''], [null, null, null]],
  ])('rules a chord when it stands %s', (_case, elements, expected) => {
    const [first, ...rest] = elements.map((element, i) =>
      noteOf(['E4', 'G4', 'C5'][i]!, 2, element === '' ? '' : technical(element), i === 0 ? '' : '<chord/>'),
    );
    expect(signs(readSmall([first + rest.join('')]))).toEqual(expected);
  });
});

describe('fingerings', () => {
  const fingerings = (content: string) =>
    readSmall([noteOf('C5', 2, technical(content))]).passage.notes.map(({ fingering }) => fingering);

  it.each([
    ['<fingering>T12</fingering>', 'T12'],
    ['<stopped/><fingering> 2\n</fingering>', '2'],
    ['<fingering>2</fingering><fingering>13</fingering>', '2'],
    ['<fingering alternate="yes">13</fingering><fingering>2</fingering>', '2'],
    ['<fingering substitution="yes">13</fingering>', null],
    ['<fingering/>', null],
    [`<fingering>${MARK_PREFIX}2</fingering>`, null],
    ['<string>2</string>', null],
  ])('%s is %s', (content, text) => {
    expect(fingerings(content)).toEqual([text]);
  });

  it('stand at one note of a chord', () => {
    const { passage } = readSmall([
      noteOf('E4', 2, technical('<fingering>2</fingering>')) + noteOf('C5', 2, '', '<chord/>'),
    ]);
    expect(passage.notes.map(({ fingering }) => fingering)).toEqual(['2', null]);
  });
});

describe('colours', () => {
  it.each([
    ['<note color="#336699">', true],
    ['<note color="#D55E00">', true],
    ['<note color="#D55F00">', false],
    ['<note color="#ff0073b2">', false],
    ['<note color="#000000">', false],
    ['<note color="#FF000000">', false],
    ['<note>', false],
  ])('%s is the user’s: %s', (tag, expected) => {
    expect(readSmall([noteOf('C5', 2).replace('<note>', tag)]).passage.notes[0]!.userColour).toBe(expected);
  });

  it('takes a coloured notehead for the user’s', () => {
    expect(
      readSmall([noteOf('C5', 2, '<notehead color="#336699">normal</notehead>')]).passage.notes[0]!
        .userColour,
    ).toBe(true);
  });
});
