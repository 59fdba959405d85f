/** Horn parts of any size, invented from a seed, for laws and for the bench. */

type Put = (depth: number, line: string) => void;
type Random = (below: number) => number;

export interface GenerateOptions {
  /** Of the random numbers; the same seed gives the same part. Default 1. */
  readonly seed?: number;
  /** How many notes in a hundred carry `stopped`. Default 30. */
  readonly stoppedPercent?: number;
  readonly lineEnd?: '\n' | '\r\n' | '\r' | '';
  /** Namespace prefix with its colon. Default none. */
  readonly prefix?: string;
  readonly timewise?: boolean;
}

/** Random whole numbers from a seed. @source from memory: Numerical Recipes, quick and dirty generator of period 2^32 */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}

/** A MusicXML score with one horn in F of `noteCount` notes: two voices now and then, chords, graces, slurs, ties, tuplets, words. */
export function generatePart(noteCount: number, options: GenerateOptions = {}): string {
  const { seed = 1, stoppedPercent = 30, lineEnd = '\n', prefix = '', timewise = false } = options;
  const random = randomFrom(seed);
  const lines: string[] = [];
  const put: Put = (depth, line) => lines.push((lineEnd === '' ? '' : '  '.repeat(depth)) + line);
  const root = timewise ? 'score-timewise' : 'score-partwise';
  const binding = prefix === '' ? '' : ` xmlns:${prefix.slice(0, -1)}="urn:example:music"`;
  put(0, '<?xml version="1.0" encoding="UTF-8"?>');
  put(0, `<${root}${binding} version="4.0">`);
  put(1, '<part-list>');
  put(2, '<score-part id="P1">');
  put(3, '<part-name>Horn in F</part-name>');
  put(2, '</score-part>');
  put(1, '</part-list>');
  if (!timewise) put(1, '<part id="P1">');
  let written = 0;
  for (let measure = 1; written < noteCount; measure++) {
    put(timewise ? 1 : 2, `<measure number="${measure}" width="${200 + random(99)}.${10 + random(90)}">`);
    if (timewise) put(2, '<part id="P1">');
    if (measure === 1) {
      put(3, '<attributes>');
      put(4, '<divisions>6</divisions>');
      put(4, '<time><beats>4</beats><beat-type>4</beat-type></time>');
      put(4, '<clef><sign>G</sign><line>2</line></clef>');
      put(4, '<transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>');
      put(3, '</attributes>');
    }
    for (let voice = 1; voice <= 1 + Number(random(8) === 0) && written < noteCount; voice++) {
      if (voice === 2) put(3, '<backup><duration>24</duration></backup>');
      for (let beat = 0; beat < 4 && written < noteCount; beat++) {
        if (random(12) === 0) {
          put(3, `<note><rest/><duration>6</duration><voice>${voice}</voice><type>quarter</type></note>`);
          continue;
        }
        if (random(40) === 0) putDirection(put, '<words>espressivo</words>');
        if (random(20) === 0)
          putDirection(put, '<dynamics default-x="3.25" default-y="-40.00"><mf/></dynamics>');
        const isGrace = random(15) === 0;
        const size = 1 + Number(random(10) === 0);
        if (isGrace)
          written += putNote(put, random, { voice, isGrace: true, isChord: false, stoppedPercent });
        for (let i = 0; i < size && written < noteCount; i++) {
          written += putNote(put, random, { voice, isGrace: false, isChord: i > 0, stoppedPercent });
        }
      }
    }
    if (timewise) put(2, '</part>');
    put(timewise ? 1 : 2, '</measure>');
  }
  if (!timewise) put(1, '</part>');
  put(0, `</${root}>`);
  const text = lines.join(lineEnd);
  return prefix === '' ? text : text.replace(/<(\/?)(?=[a-z])/g, `<$1${prefix}`);
}

function putDirection(put: Put, content: string): void {
  put(3, '<direction placement="below">');
  put(4, '<direction-type>');
  put(5, content);
  put(5, '</direction-type>');
  put(4, '</direction>');
}

interface NoteShape {
  readonly voice: number;
  readonly isGrace: boolean;
  readonly isChord: boolean;
  readonly stoppedPercent: number;
}

/** Puts one note the way exporters lay it out. @returns how many notes were put: 1 */
function putNote(put: Put, random: Random, { voice, isGrace, isChord, stoppedPercent }: NoteShape): number {
  const place = `default-x="${13 + random(400)}.${10 + random(90)}" default-y="-${900 + random(300)}.${10 + random(90)}"`;
  put(3, random(30) === 0 ? `<note ${place} color="#336699">` : `<note ${place}>`);
  if (isGrace) put(4, '<grace/>');
  if (isChord) put(4, '<chord/>');
  const alter = [-1, 0, 0, 1][random(4)];
  put(4, '<pitch>');
  put(5, `<step>${'CDEFGAB'[random(7)]}</step>`);
  if (alter) put(5, `<alter>${alter}</alter>`);
  put(5, `<octave>${3 + random(3)}</octave>`);
  put(5, '</pitch>');
  if (!isGrace) put(4, '<duration>6</duration>');
  put(4, `<voice>${voice}</voice>`);
  put(4, isGrace ? '<type>eighth</type>' : '<type>quarter</type>');
  put(4, voice === 1 ? '<stem>up</stem>' : '<stem>down</stem>');
  putNotations(put, random, isChord, stoppedPercent);
  if (random(20) === 0) put(4, '<lyric><text>ah</text></lyric>');
  put(4, '</note>');
  return 1;
}

function putNotations(put: Put, random: Random, isChord: boolean, stoppedPercent: number): void {
  const slur = random(12);
  const hasSlur = slur < 2 && !isChord;
  const isStopped = random(100) < stoppedPercent;
  if (!hasSlur && !isStopped) return;
  put(4, '<notations>');
  if (hasSlur) put(5, `<slur type="${slur === 0 ? 'start' : 'stop'}" number="1"/>`);
  if (isStopped) {
    put(5, '<technical>');
    put(6, '<stopped/>');
    put(6, '</technical>');
  }
  put(5, '</notations>');
}
