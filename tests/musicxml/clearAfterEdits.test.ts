/** Clearing a marked file that somebody went on editing: nothing of ours stays, and nothing of theirs goes. */
import { describe, expect, it } from 'vitest';
import { PAINTED_COLOURS, VERDICT_COLOURS } from '../../core/data/colours.ts';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { clearMarks } from '../../plugin/musicxml/index.ts';
import { annotated, coreMarks } from './marks.ts';
import { noteOf, smallScore } from './smallScore.ts';

const STOPPED = '<notations><technical><stopped/></technical></notations>';
const VOICE = '<voice>1</voice><stem>up</stem>';
/** Two notes that no hand can stop, and a chord of two. */
const MUSIC = [
  noteOf('F2', 2, VOICE + STOPPED) + noteOf('E2', 2, VOICE + STOPPED) + noteOf('C5', 2, VOICE),
  noteOf('D2', 2, VOICE + STOPPED) + noteOf('C2', 2, VOICE + STOPPED, '<chord/>') + noteOf('C5', 4, VOICE),
];
const ORIGINAL = smallScore(MUSIC);
const MARKED = annotated(ORIGINAL, coreMarks);
const OURS = PAINTED_COLOURS.impossible;
const COLOURED = new RegExp(`<note color="${OURS}">`, 'g');

it('starts from a part with four coloured notes', () => {
  expect(MARKED.match(COLOURED)).toHaveLength(4);
  expect(clearMarks(MARKED)).toBe(ORIGINAL);
});

/** The same edit made in the marked text and in the original; what is cleared must be the edited original. */
type Edit = (text: string) => string;

const FIRST = /(<note[^>]*)>(<pitch><step>F<\/step>)/;
const DIRECTION = /<direction (?:(?!<\/direction>).)*<\/direction>/s;

const EDITS: readonly (readonly [string, Edit])[] = [
  ['hidden', (text) => text.replace(FIRST, '$1 print-object="no">$2')],
  ['made a cue', (text) => text.replace(FIRST, '$1><cue/>$2')],
  ['made a grace', (text) => text.replace(FIRST, '$1><grace/>$2').replace('<duration>2</duration>', '')],
  ['made a rest', (text) => text.replace(/<pitch><step>F<\/step><octave>2<\/octave><\/pitch>/, '<rest/>')],
  ['given to another voice', (text) => text.replace('<voice>1</voice><stem', '<voice>2</voice><stem')],
  ['given to another staff', (text) => text.replace('<stem>up</stem>', '<stem>up</stem><staff>2</staff>')],
  ['transposed', (text) => text.replace(/<octave>2</g, '<octave>3<')],
  ['given a headless note', (text) => text.replace('</stem>', '</stem><notehead>none</notehead>')],
  ['made longer', (text) => text.replace('<duration>2<', '<duration>6<')],
  ['put under a new top note', (text) => text.replace(/(<note[^>]*>)(<chord\/>)/, `${chordNote('C3')}$1$2`)],
  [
    'put under another top note, which comes first',
    (text) => text.replace(/(<note[^>]*>)(<pitch><step>D)/, `${noteOf('C4', 2, VOICE)}$1<chord/>$2`),
  ],
  [
    'left alone in its chord',
    (text) => text.replace(/<note[^>]*><pitch><step>D.*?<\/note>/, '').replace('<chord/>', ''),
  ],
  [
    'given another instrument',
    (text) => text.replace('<duration>2</duration>', '<duration>2</duration><instrument id="I2"/>'),
  ],
  ['put behind a new note', (text) => text.replace(FIRST, `${noteOf('E4', 2, VOICE)}$1>$2`)],
];

function chordNote(name: string): string {
  return noteOf(name, 2, VOICE, '<chord/>');
}

const INSTRUMENTS =
  '<score-instrument id="I1"><instrument-name>Horn</instrument-name><instrument-sound>brass.french-horn</instrument-sound></score-instrument>' +
  '<score-instrument id="I2"><instrument-name>Flute</instrument-name><instrument-sound>wind.flutes.flute</instrument-sound></score-instrument>';

describe('a note that was marked and then', () => {
  it.each(EDITS)('%s', (_, edit) => {
    const withInstruments = (text: string) => text.replace('</part-name>', `</part-name>${INSTRUMENTS}`);
    const marked = withInstruments(edit(MARKED));
    expect(marked).not.toBe(withInstruments(MARKED));
    expect(clearMarks(marked)).toBe(withInstruments(edit(ORIGINAL)));
  });

  it('deleted while its mark stayed takes no other colour with it', () => {
    const green = noteOf('D5', 2, VOICE).replace('<note>', '<note color="#009E73">');
    const edit: Edit = (text) => text.replace(/<note[^>]*><pitch><step>F.*?<\/note>/, green);
    expect(clearMarks(edit(MARKED))).toBe(edit(ORIGINAL));
  });

  it('left without its mark goes back to its own colour, and one in the published colour does not', () => {
    const theirs = noteOf('D5', 2, VOICE).replace('<note>', `<note color="${VERDICT_COLOURS.impossible}">`);
    const edit: Edit = (text) => text.replace('</measure>', `${theirs}</measure>`);
    const unmarked = MARKED.replace(new RegExp(`\\s*${DIRECTION.source}`, 'gs'), '');
    expect(unmarked.match(COLOURED)).toHaveLength(4);
    expect(clearMarks(edit(unmarked))).toBe(edit(ORIGINAL));
  });

  it('marked by a version that painted the published colour', () => {
    const older = MARKED.replace(COLOURED, `<note color="${VERDICT_COLOURS.impossible}">`);
    expect(older).not.toBe(MARKED);
    expect(clearMarks(older)).toBe(ORIGINAL);
  });

  it('deleted with its mark', () => {
    const edit: Edit = (text) => text.replace(/<note[^>]*><pitch><step>F.*?<\/note>/, '');
    expect(clearMarks(edit(MARKED.replace(DIRECTION, '')))).toBe(edit(ORIGINAL));
  });
});

describe('a mark that was', () => {
  const moved = (before: RegExp) => {
    const [direction] = DIRECTION.exec(MARKED)!;
    return MARKED.replace(direction, '').replace(before, `${direction}$&`);
  };

  it.each([
    ['moved to another note', /<note[^>]*><pitch><step>C/],
    ['moved to the end of its bar', /<\/measure>/],
  ])('%s', (_, before) => {
    expect(clearMarks(moved(before))).toBe(ORIGINAL);
  });

  it('given other text goes all the same', () => {
    expect(clearMarks(MARKED.replace(/(\u200b)[^<\u200b]+</, '$1 half a tone lower?<'))).toBe(ORIGINAL);
  });

  it('written in front of is its writer’s, and the note’s colour goes', () => {
    const cleared = clearMarks(MARKED.replace(MARK_PREFIX, `ask the player ${MARK_PREFIX}`));
    expect(cleared).toContain('ask the player');
    expect(cleared).not.toContain(OURS);
  });
});

it('the stem that an editor coloured with the note is given back', () => {
  const stems = (text: string) => text.replace(/<stem>/g, `<stem color="${OURS}">`);
  const likeAnEditor = MARKED.replace(/<note color=.*?<\/note>/g, stems);
  expect(likeAnEditor.split(`<stem color="${OURS}">`)).toHaveLength(5);
  expect(clearMarks(likeAnEditor)).toBe(ORIGINAL);
  // A stem that belongs to no note of ours is somebody's own.
  const own = ORIGINAL.replace('<stem>', `<stem color="${OURS}">`);
  expect(clearMarks(own)).toBe(own);
});

it('a colour of the user’s beside a moved mark stays, unless it is ours to the last digit', () => {
  const own = (text: string) => text.replace(/<note>(<pitch><step>C)/, '<note color="#CC3300">$1');
  expect(clearMarks(own(MARKED))).toBe(own(ORIGINAL));
});
