/** What marks look like in the text, and how they are known again after an editor has been at the file. */
import { describe, expect, it } from 'vitest';
import { MARK_PREFIX, type Mark, markText } from '../../core/marks/annotation.ts';
import { type Completion, clearMarks, readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { noteOf, smallScore } from './smallScore.ts';

const mark = (noteIndex: number, more: Partial<Mark> = {}): Mark => ({
  noteIndex,
  lines: ['(C♯)', 'B 2'],
  valves: '2',
  colour: null,
  ...more,
});

function marked(text: string, marks: Mark[], completions: Completion[] = [], fingerings = false): string {
  const parts = [{ partId: 'P1', marks, completions }];
  const written = writeMarks(readScore(text), parts, { fingerings });
  expect(clearMarks(written)).toBe(text);
  return written;
}

/** The mark text as it stands in a file. */
const inFile = (lines: string[], rank: number | null = null) => markText(lines, rank);

describe('a mark', () => {
  it('goes directly before its note, laid out like it', () => {
    const text = smallScore([noteOf('C5', 2)]).replace('<note>', '\n\n    <note>');
    expect(marked(text, [mark(0)])).toContain(
      `\n\n    <direction placement="above"><direction-type><words font-size="8" font-style="normal" font-weight="normal">${inFile(['(C♯)', 'B 2'])}</words></direction-type></direction>\n    <note>`,
    );
  });

  it('goes before the first note of its chord, with the voice and staff that the note states', () => {
    const place = '<voice>2</voice><staff>1</staff>';
    const text = smallScore([noteOf('E4', 2, place) + noteOf('C5', 2, place, '<chord/>')]);
    const written = marked(text, [mark(1)]);
    expect(written).toContain(
      '</direction-type><voice>2</voice><staff>1</staff></direction><note><pitch><step>E</step>',
    );
  });

  it('of the lower of two voices on a staff stands below it; of an only voice, whatever its number, above', () => {
    const voice = (n: number) => `<voice>${n}</voice>`;
    const lower = noteOf('C4', 2, voice(2));
    const both = `${noteOf('C5', 2, voice(1))}<backup><duration>2</duration></backup>${lower}`;
    const placements = (text: string, count: number) =>
      [
        ...marked(
          text,
          Array.from({ length: count }, (_, i) => mark(i)),
        ).matchAll(/placement="(\w+)"/g),
      ].map(([, placement]) => placement);
    expect(placements(smallScore([both]), 2)).toEqual(['above', 'below']);
    expect(placements(smallScore([lower]), 1)).toEqual(['above']);
    const signs: Completion[] = [0, 1].map((noteIndex) => ({ kind: 'stopped-sign', noteIndex }));
    const written = marked(smallScore([both]), [mark(0), mark(1)], signs);
    // The fingering is the line next to the note on either side.
    expect(written).toContain(`${inFile(['(C♯)', 'B 2'])}</words>`);
    expect(written).toContain(`${inFile(['B 2', '(C♯)'])}</words>`);
    expect(written.match(/<stopped[^>]*>/g)).toEqual(['<stopped/>', '<stopped placement="below"/>']);
  });

  it('puts the texts of a chord so that the top note’s is printed on top', () => {
    const text = smallScore([noteOf('C5', 2) + noteOf('E4', 2, '', '<chord/>')]);
    const written = marked(text, [mark(0, { lines: ['top'] }), mark(1, { lines: ['low'] })]);
    expect(written.indexOf('low')).toBeLessThan(written.indexOf('top'));
  });

  it('of a main note stands behind its graces, of a grace before it', () => {
    const text = smallScore([noteOf('D5', 0, '', '<grace/>') + noteOf('C5', 2)]);
    const written = marked(text, [mark(0, { lines: ['first'] }), mark(1, { lines: ['second'] })]);
    expect(written).toMatch(/first.*<grace\/>.*second.*<step>C/);
  });

  it('escapes what XML would misread', () => {
    expect(marked(smallScore([noteOf('C5', 2)]), [mark(0, { lines: ['<&>'] })])).toContain(
      '&lt;&amp;&gt;</words>',
    );
  });

  it('carries its colour in the note and claims it in its text', () => {
    const written = marked(smallScore([noteOf('C5', 2)]), [mark(0, { colour: '#D55E00' })]);
    expect(written).toContain('<note color="#D55E00"><pitch>');
    expect(written).toContain(`>${inFile(['(C♯)', 'B 2'], 0)}<`);
  });

  it('prints nothing but colours where it has no lines', () => {
    const written = marked(smallScore([noteOf('C5', 2)]), [mark(0, { lines: [], colour: '#D55E00' })]);
    expect(written).toContain(`>${MARK_PREFIX}\u200b</words>`);
  });

  it('leaves a note alone that has neither lines nor colour', () => {
    const text = smallScore([noteOf('C5', 2)]);
    expect(marked(text, [mark(0, { lines: [] })])).toBe(text);
  });

  it.each(['#336699', '#D55E00', '#000000'])('leaves a note its own colour %s', (colour) => {
    const text = smallScore([noteOf('C5', 2).replace('<note>', `<note color="${colour}">`)]);
    const written = marked(text, [mark(0, { colour: '#0072B2' })]);
    expect(written).toContain(`<note color="${colour}">`);
    expect(written).not.toContain('#0072B2');
    expect(readScore(written).horns[0]!.passage.notes[0]!.userColour).toBe(colour !== '#000000');
  });

  it('can print its valves as a fingering, before the lyrics', () => {
    const text = smallScore([noteOf('C5', 2, '<lyric><text>la</text></lyric>')]);
    expect(marked(text, [mark(0, { valves: 'T12', lines: [] })], [], true)).toContain(
      `</duration><notations><technical><fingering>${MARK_PREFIX}T12</fingering></technical></notations><lyric>`,
    );
  });

  it('takes a prefix where the score has one', () => {
    const text = smallScore([noteOf('C5', 2)])
      .replace(/<(\/?)(?=[a-z])/g, '<$1m:')
      .replace('<m:score-partwise', '<m:score-partwise xmlns:m="urn:x"');
    const written = marked(
      text,
      [mark(0, { colour: '#D55E00' })],
      [{ kind: 'stopped-sign', noteIndex: 0 }],
      true,
    );
    expect(written).toContain('<m:direction placement="above"');
    expect(written).toContain('<m:note color="#D55E00">');
    expect(written).toContain('<m:technical><m:stopped/></m:technical>');
  });

  it.each([-1, 1, 0.5])('refuses a note that is not there: %s', (noteIndex) => {
    expect(() => marked(smallScore([noteOf('C5', 2)]), [mark(noteIndex)])).toThrow(RangeError);
  });

  it('refuses a part that was not read', () => {
    const score = readScore(smallScore([noteOf('C5', 2)]));
    expect(() => writeMarks(score, [{ partId: 'P9', marks: [] }])).toThrow(
      '"partId" must be a part of the score that was read, got "P9"',
    );
  });
});

describe('completions', () => {
  const text = smallScore([noteOf('C5', 2) + noteOf('D5', 2)]);

  it('write a sign or a word that is not read as the author’s', () => {
    const written = marked(
      text,
      [],
      [
        { kind: 'stopped-sign', noteIndex: 0 },
        { kind: 'word', noteIndex: 1, text: 'offen' },
      ],
    );
    expect(written).toContain(
      '<notations><?bellhand sign?><technical><stopped/></technical></notations></note>',
    );
    expect(written).toMatch(/<words>[^<]*offen<\/words><\/direction-type><\/direction><note><pitch><step>D/);
    const { passage } = readScore(written).horns[0]!;
    expect(passage.notes.map(({ sign }) => sign)).toEqual([null, null]);
    expect(passage.words).toEqual([]);
  });
});

describe('what is not ours', () => {
  it.each([
    ['another’s notations of the same shape', '<technical><stopped/></technical>'],
    ['a fingering', '<technical><fingering>2</fingering></technical>'],
    ['another program’s instruction', '<?other sign?><technical><stopped/></technical>'],
    ['an instruction of ours before something else', '<?bellhand sign?><technical><up-bow/></technical>'],
    [
      'a sign beside a fingering of ours',
      `<technical><fingering>${MARK_PREFIX}2</fingering><stopped/></technical>`,
    ],
  ])('stays: %s', (_case, content) => {
    const rest = (text: string) => text.replace(/<fingering>\u2060[^<]*<\/fingering>/, '');
    const text = smallScore([noteOf('C5', 2, `<notations>${content}</notations>`)]);
    expect(clearMarks(text)).toBe(rest(text));
    expect(clearMarks(writeMarks(readScore(text), [{ partId: 'P1', marks: [mark(0)] }]))).toBe(rest(text));
  });
});

describe('a file that went through an editor', () => {
  const words = (text: string, more = '') =>
    `<direction placement="above"><direction-type><words>${text}</words></direction-type>${more}</direction>`;
  const coloured = (name: string, colour: string, before = '') =>
    noteOf(name, before.includes('grace') ? 0 : 2, '', before).replace('<note>', `<note color="${colour}">`);

  it('is cleared by the texts alone', () => {
    const text = smallScore([
      words(inFile(['(C♯)', 'B 2'], 0)) + coloured('C5', '#D55E00') + words('dolce') + noteOf('D5', 2),
    ]);
    expect(clearMarks(text)).toBe(smallScore([noteOf('C5', 2) + words('dolce') + noteOf('D5', 2)]));
  });

  it('is cleared where its texts have become character references', () => {
    const text = smallScore([
      words(`${inFile(['(C♯)'])}`.replace(/[^ -~]/g, (c) => `&#x${c.charCodeAt(0).toString(16)};`)) +
        noteOf('C5', 2),
    ]);
    expect(clearMarks(text)).toBe(smallScore([noteOf('C5', 2)]));
  });

  it('is cleared in the form that it had before: the natural pitch after a small o', () => {
    const text = smallScore([words(inFile(['o C♯', 'B 2'])) + noteOf('C5', 2)]);
    expect(clearMarks(text)).toBe(smallScore([noteOf('C5', 2)]));
  });

  it('is cleared where a mark was split into runs', () => {
    const split = `<direction><direction-type><words>${inFile(['(C♯)'])}\n</words><words>B 2</words></direction-type></direction>`;
    expect(clearMarks(smallScore([split + noteOf('C5', 2)]))).toBe(smallScore([noteOf('C5', 2)]));
  });

  it('keeps what another put into the same direction', () => {
    const both = (own: string) =>
      `<direction>${own}<direction-type><dynamics><p/></dynamics></direction-type></direction>`;
    const own = `<direction-type><words>${inFile(['(C♯)'])}</words></direction-type>`;
    expect(clearMarks(smallScore([both(own) + noteOf('C5', 2)]))).toBe(
      smallScore([both('') + noteOf('C5', 2)]),
    );
  });

  it('gives back the colours of a grace and its main note, whose marks an editor puts side by side', () => {
    const text = smallScore([
      words(inFile(['a'], 0)) +
        words(inFile(['b'], 0)) +
        coloured('D5', '#0072B2', '<grace/>') +
        coloured('C5', '#D55E00'),
    ]);
    expect(clearMarks(text)).toBe(smallScore([noteOf('D5', 0, '', '<grace/>') + noteOf('C5', 2)]));
  });

  it('keeps a colour that the user gave since', () => {
    const text = smallScore([words(inFile(['a'], 0)) + coloured('C5', '#336699')]);
    expect(clearMarks(text)).toBe(smallScore([coloured('C5', '#336699')]));
  });

  it('keeps a colour of the user’s beside ours in a chord', () => {
    const text = smallScore([
      words(inFile(['a'], 1)) + coloured('C5', '#D55E00') + coloured('E4', '#D55E00', '<chord/>'),
    ]);
    expect(clearMarks(text)).toBe(smallScore([coloured('C5', '#D55E00') + noteOf('E4', 2, '', '<chord/>')]));
  });

  it('takes away the notehead that an editor made for the colour, and only the colour of another', () => {
    const head = (attributes: string, value: string) =>
      noteOf('C5', 2, `\n <notehead ${attributes}>${value}</notehead>`);
    const own = words(inFile(['a'], 0));
    expect(clearMarks(smallScore([own + head('color="#D55E00"', 'normal')]))).toBe(
      smallScore([noteOf('C5', 2)]),
    );
    expect(clearMarks(smallScore([own + head('color="#D55E00" filled="no"', 'normal')]))).toBe(
      smallScore([noteOf('C5', 2, '\n <notehead filled="no">normal</notehead>')]),
    );
    expect(clearMarks(smallScore([own + head('color="#336699"', 'normal')]))).toBe(
      smallScore([head('color="#336699"', 'normal')]),
    );
  });

  it('takes its colour off the accidental and the dots of its note, and leaves another there', () => {
    const note = (own: string, dot: string) =>
      noteOf('C#5', 3, `<dot${dot}/><accidental${own}>sharp</accidental>`);
    const painted = note(' color="#D55F00"', ' color="#D55F00"').replace('<note>', '<note color="#D55F00">');
    expect(clearMarks(smallScore([painted]))).toBe(smallScore([note('', '')]));
    const green = note(' color="#009E73"', ' color="#D55F00"').replace('<note>', '<note color="#D55F00">');
    expect(clearMarks(smallScore([green]))).toBe(smallScore([note(' color="#009E73"', '')]));
  });

  it('loses a fingering of ours that an editor put among others', () => {
    const notations = (own: string) => `<notations><technical><stopped/>${own}</technical></notations>`;
    const own = `\n <fingering>${MARK_PREFIX}T12</fingering>`;
    expect(clearMarks(smallScore([noteOf('C5', 2, notations(own))]))).toBe(
      smallScore([noteOf('C5', 2, notations(''))]),
    );
  });

  it('is cleared in parts that are no horns', () => {
    const text = smallScore([words(inFile(['a'], 0)) + coloured('C5', '#D55E00')], { name: 'Flute' });
    expect(clearMarks(text)).toBe(smallScore([noteOf('C5', 2)], { name: 'Flute' }));
  });
});
