import { describe, expect, it } from 'vitest';
import { engrave } from '../../plugin/pages/engrave.ts';

const HEADED = `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name/></score-part></part-list><part id="P1">
<measure number="1"><attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef></attributes>
<direction placement="above"><direction-type><words font-weight="bold">1   </words></direction-type><direction-type><words>Long tones </words></direction-type></direction>
<note><pitch><step>C</step><octave>5</octave></pitch><duration>4</duration><type>whole</type></note></measure></part></score-partwise>`;

describe('engraved music', () => {
  it('keeps the spaces between runs of words', async () => {
    const { systems } = await engrave(HEADED, { width: 1750, keepsBreaks: false });
    const texts = systems[0]!.content.replace(/<[^>]*>/g, '').replace(/\s*\n\s*/g, '');
    expect(texts).toContain('1\u00a0\u00a0\u00a0Long tones');
  });
});
