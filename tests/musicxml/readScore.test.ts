/** What is read of each thing a horn part prints. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { formatPitch } from '../../core/pitch/pitch.ts';
import { type HornPart, readScore } from '../../plugin/musicxml/index.ts';
import { noteOf, readSmall, smallScore } from './smallScore.ts';

const technical = (content: string) => `<notations><technical>${content}</technical></notations>`;
const words = (text: string, more = '') =>
  `<direction><direction-type><words>${text}</words></direction-type>${more}</direction>`;
const pitches = ({ passage }: HornPart) => passage.notes.map(({ written }) => formatPitch(written));
const signs = ({ passage }: HornPart) => passage.notes.map(({ sign }) => sign);
const joins = ({ passage }: HornPart) =>
  passage.notes.flatMap(({ index, joins }) => joins.map(({ kind, to }) => `${index} ${kind} ${to}`));

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

describe('words', () => {
  it('keeps text, place, staff and voice', () => {
    const { passage } = readSmall([
      noteOf('C5', 4) +
        words('gestopft', '<offset>2</offset><voice>1</voice><staff>2</staff>') +
        noteOf('D5', 4),
    ]);
    expect(passage.words).toEqual([
      { text: 'gestopft', measureIndex: 0, measure: '1', beat: 4, onsetQuarters: 3, staff: 2, voice: '1' },
    ]);
  });

  it.each([
    ['two runs of one direction', '<words>con</words><words font-style="italic">sord.</words>', 'con sord.'],
    ['line ends', '<words>avec\n  sourdine</words>', 'avec sourdine'],
    ['references and CDATA', '<words>bouch&#233; <![CDATA[& ouvert]]></words>', 'bouché & ouvert'],
    [
      'references of every kind',
      '<words>&#x43;&#111;&lt;r&gt;&amp;amp; &quot;s&quot;</words>',
      'Co<r>&amp; "s"',
    ],
    ['carriage returns', '<words>con\r\nsord.\rpp</words>', 'con sord. pp'],
    ['a comment inside', '<words>offen<!-- here --></words>', 'offen'],
  ])('joins %s', (_case, content, text) => {
    const direction = `<direction><direction-type>${content}</direction-type></direction>`;
    expect(readSmall([direction + noteOf('C5', 2)]).passage.words.map((word) => word.text)).toEqual([text]);
  });

  it.each([
    ['stop-hand', 'stopped'],
    ['stop-mute', 'stopping mute'],
    ['echo', 'echo'],
    ['straight', 'muted'],
    ['off', 'open'],
    ['palm', undefined],
  ])('puts the playback mute %s into words where the direction has none', (mute, text) => {
    const sound = `<sound><play><mute>${mute}</mute></play></sound>`;
    const silent = `<direction><direction-type><dynamics><p/></dynamics></direction-type>${sound}</direction>`;
    expect(readSmall([silent + noteOf('C5', 2)]).passage.words[0]?.text).toBe(text);
    expect(readSmall([words('chiuso', sound) + noteOf('C5', 2)]).passage.words[0]?.text).toBe('chiuso');
  });
});

describe('clefs and transposition', () => {
  it('reads clefs per staff and from their place on', () => {
    const clef = (sign: string, number = 1) => `<clef number="${number}"><sign>${sign}</sign></clef>`;
    const change = `<attributes>${clef('G')}</attributes>`;
    const lower = `<backup><duration>8</duration></backup>${noteOf('C4', 8, '<staff>2</staff>')}`;
    const { passage } = readSmall([`${noteOf('C3', 4)}${change}${noteOf('C5', 4)}${lower}`], {
      attributes: clef('F') + clef('C', 2),
    });
    expect(passage.notes.map((note) => note.clef)).toEqual(['bass', 'other', 'treble']);
  });

  it('follows transpositions that change, with octaves, for one staff or all', () => {
    const transpose = (diatonic: number, chromatic: number, more = '', attribute = '') =>
      `<transpose${attribute}><diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic>${more}</transpose>`;
    const change = `<attributes>${transpose(-5, -9, '', ' number="1"')}${transpose(-1, -2, '<octave-change>-1</octave-change>', ' number="2"')}</attributes>`;
    const { passage } = readSmall([
      noteOf('C5', 2) + change + noteOf('C5', 2) + noteOf('C5', 2, '<staff>2</staff>'),
    ]);
    expect(passage.notes.map(({ transposition }) => transposition)).toEqual([
      { diatonic: -4, chromatic: -7, octaveChange: 0 },
      { diatonic: -5, chromatic: -9, octaveChange: 0 },
      { diatonic: -1, chromatic: -2, octaveChange: -1 },
    ]);
  });

  it('keeps an earlier transposition for a voice that goes back before the change', () => {
    const change =
      '<attributes><transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></transpose></attributes>';
    const { passage } = readSmall([
      `${noteOf('C5', 4)}${change}${noteOf('C5', 4)}<backup><duration>8</duration></backup>${noteOf('E4', 8, '<voice>2</voice>')}`,
    ]);
    expect(passage.notes.map(({ transposition }) => transposition!.chromatic)).toEqual([-7, -7, -9]);
  });

  it.each([
    ['Horn in F', '', 'name', -7],
    ['Horn 1', '', 'nowhere', null],
    ['Horn in Es', '<transpose><chromatic>-7</chromatic></transpose>', 'stated', -7],
  ])('%s with "%s": from %s', (name, attributes, from, chromatic) => {
    const part = readSmall([noteOf('C5', 2)], { name, attributes });
    expect(part.transpositionFrom).toBe(from);
    expect(part.passage.notes[0]!.transposition?.chromatic ?? null).toBe(chromatic);
    expect(part.transpositionRemark === null).toBe(from === 'stated');
  });

  it.each([
    [
      'with the transposition of the part to be',
      'Horn',
      '<for-part><part-transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></part-transpose></for-part>',
      'D5',
      -9,
      'stated',
    ],
    [
      'an octave off',
      'Horn in F',
      '<transpose><diatonic>0</diatonic><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>',
      'C4',
      -7,
      'name',
    ],
    ['with a key in its name', 'Horn in F', '', 'C5', -7, 'name'],
    ['with nothing', 'Horn', '', 'F4', 0, 'concert-score'],
  ])(
    'turns a concert-pitch score %s into what the part prints',
    (_case, name, attributes, written, chromatic, from) => {
      const part = readSmall([noteOf('F4', 2)], { name, attributes, defaults: '<concert-score/>' });
      expect(pitches(part)).toEqual([written]);
      expect(part.passage.notes[0]!.transposition!.chromatic).toBe(chromatic);
      expect(part.transpositionFrom).toBe(from);
    },
  );

  it('keeps pitches under an octave line as they are: the file has already moved them', () => {
    const shift =
      '<direction><direction-type><octave-shift type="down" size="8"/></direction-type></direction>';
    expect(pitches(readSmall([shift + noteOf('C6', 2)]))).toEqual(['C6']);
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
