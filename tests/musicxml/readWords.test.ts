/** Words over the staff, and what stands for them. Elements and their meaning: MusicXML 4.0, W3C Community Group Final Report. */
import { describe, expect, it } from 'vitest';
import { noteOf, readSmall } from './smallScore.ts';

const words = (text: string, more = '') =>
  `<direction><direction-type><words>${text}</words></direction-type>${more}</direction>`;

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
