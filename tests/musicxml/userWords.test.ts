/** Words that every object of the language knows by itself are words like any other, wherever a score has them. */
import { describe, expect, it } from 'vitest';
import {
  completionsFor,
  ENGLISH_READER,
  examine,
  findingText,
  marksFor,
  resultOf,
} from '../../core/index.ts';
import { checkTable } from '../../plugin/batch/print/checkTable.ts';
import { completedMarks } from '../../plugin/musicxml/annotate/completedMarks.ts';
import { ScoreError } from '../../plugin/musicxml/bytes/scoreError.ts';
import { clearMarks, readScore, type Score, writeMarks } from '../../plugin/musicxml/index.ts';
import { scoreTitle } from '../../plugin/musicxml/read/scoreTitle.ts';
import { onePartText } from '../../plugin/pages/onePart.ts';

const WORDS = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf', '__defineGetter__'];

/** Something of everything that is read. */
const RICH = `<score-partwise version="4.0"><work><work-title>Low water</work-title></work>
<identification><creator type="composer">Nobody</creator></identification>
<credit><credit-type>title</credit-type><credit-words>Tides</credit-words></credit>
<part-list><part-group number="1" type="start"><group-name>Horns in F</group-name></part-group>
<score-part id="P1"><part-name>1.</part-name><part-name-display><display-text>Horn</display-text></part-name-display>
<score-instrument id="I1"><instrument-name>Horn</instrument-name><instrument-sound>brass.french-horn</instrument-sound></score-instrument>
<score-instrument id="I2"><instrument-name>Tuba</instrument-name><instrument-sound>brass.tuba</instrument-sound></score-instrument>
<midi-instrument id="I1"><midi-program>61</midi-program></midi-instrument></score-part>
<part-group number="1" type="stop"/></part-list>
<part id="P1"><measure number="1" implicit="no"><attributes><divisions>2</divisions><time><beats>4</beats><beat-type>4</beat-type></time>
<clef number="1"><sign>G</sign><line>2</line></clef>
<transpose number="1"><diatonic>-4</diatonic><chromatic>-7</chromatic><octave-change>0</octave-change></transpose></attributes>
<direction placement="above"><direction-type><words>gestopft</words></direction-type><offset>0</offset><voice>1</voice><staff>1</staff><sound tempo="90"><play><mute>stop-hand</mute></play></sound></direction>
<direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>90</per-minute></metronome></direction-type></direction>
<note color="#112233" print-object="yes"><pitch><step>C</step><alter>1</alter><octave>5</octave></pitch><duration>2</duration><tie type="start"/><instrument id="I1"/><voice>1</voice><type>quarter</type><notehead color="#112233">normal</notehead><staff>1</staff>
<notations><tied type="start"/><slur type="start" number="1"/><technical><stopped smufl="brassMuteClosed"/><fingering>2</fingering></technical></notations><play><mute>stop-hand</mute></play></note>
<note><chord/><pitch><step>E</step><octave>5</octave></pitch><duration>2</duration><voice>1</voice></note>
<note><pitch><step>C</step><alter>1</alter><octave>5</octave></pitch><duration>2</duration><tie type="stop"/><voice>1</voice><notations><tied type="stop"/><slur type="stop" number="1"/><glissando type="start" number="1" line-type="solid">gliss.</glissando><technical><other-technical smufl="brassMuteHalfClosed">half</other-technical></technical></notations></note>
<note><pitch><step>F</step><octave>3</octave></pitch><duration>4</duration><voice>1</voice><notations><glissando type="stop" number="1"/><articulations><other-articulation smufl="brassMuteOpen">open</other-articulation></articulations></notations><lyric number="1"><text>la</text></lyric></note>
<backup><duration>8</duration></backup><forward><duration>4</duration><voice>2</voice></forward>
<note><rest/><duration>4</duration><voice>2</voice></note></measure></part></score-partwise>`;

/** The places of all values of attributes and texts of elements. */
const PLACES = [...RICH.matchAll(/(?<== *")[^"]*(?=")|(?<==")[^"]*(?=")|(?<=>)[^<>\s][^<>]*(?=<\/)/g)].map(
  ({ index, 0: value }) => ({ from: index, to: index + value.length }),
);

/** Everything that the doors of this package do with a score. */
function doAll(score: Score): string {
  scoreTitle(score);
  const parts = score.horns.map((horn, i) => {
    const examination = examine(horn.passage);
    resultOf([examination]);
    checkTable(examination, ENGLISH_READER);
    for (const finding of examination.findings) findingText(finding, ENGLISH_READER);
    onePartText(score, horn, `${i}`, [0, 1]);
    return { partId: horn.id, ...completedMarks(marksFor(examination), completionsFor(examination)) };
  });
  return writeMarks(score, parts, { fingerings: true });
}

describe('a word that every object knows', () => {
  it('has many places to stand in', () => {
    expect(PLACES.length).toBeGreaterThan(90);
    expect(doAll(readScore(RICH))).not.toBe(RICH);
  });

  it.each(WORDS)('%s, is a word like any other in each of them', (word) => {
    let read = 0;
    for (const { from, to } of PLACES) {
      const text = RICH.slice(0, from) + word + RICH.slice(to);
      let score: Score;
      try {
        score = readScore(text);
      } catch (error) {
        expect(error).toBeInstanceOf(ScoreError);
        continue;
      }
      read += 1;
      expect(clearMarks(doAll(score)), text.slice(from - 40, from + 40)).toBe(text);
    }
    expect(read).toBeGreaterThan(80);
  });

  it.each(WORDS)('%s, is no entity unless it is declared', (word) => {
    expect(() => readScore(RICH.replace('Low water', `&${word};`))).toThrow(/does not declare/);
    const declared = `<!DOCTYPE score-partwise [<!ENTITY ${word} "Ebb">]>${RICH.replace('Low water', `&${word};`)}`;
    expect(scoreTitle(readScore(declared))).toBe('Ebb');
  });
});
