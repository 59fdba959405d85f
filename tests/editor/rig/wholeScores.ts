/** Scores of the size that composers write: one by others, with signs for the hand put in, and one made here. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openScoreFile } from '../../../plugin/musicxml/bytes/files.ts';

export interface WholeScore {
  readonly name: string;
  /** As MusicXML. */
  readonly text: string;
  /** One of its horn parts alone. */
  readonly part: string;
  /** The staff of the first horn, counted from 0. */
  readonly hornStaff: number;
}

const SYMPHONY = fileURLToPath(
  new URL('../../../../shared/corpus/horn/osorch__Bruckner_WAB.105_4.mxl', import.meta.url),
);

/** The scores that are there: the symphony lies in the collection of real scores. */
export function wholeScores(): readonly WholeScore[] {
  const made = madeScore();
  return existsSync(SYMPHONY) ? [symphony(), made] : [made];
}

/** A symphony's finale of 23 staves and 30,000 notes; every fifth horn note is stopped here. */
function symphony(): WholeScore {
  const { text } = openScoreFile(readFileSync(SYMPHONY));
  const horns = ['P9', 'P10', 'P11', 'P12'];
  let whole = text;
  for (const id of horns) whole = changed(whole, id, withSigns);
  const name = 'a symphony’s finale, 23 staves, 30,000 notes';
  return { name, text: whole, part: alone(whole, horns[0]!), hornStaff: 8 };
}

/** 30 staves of 300 bars in eighths, 72,000 notes; four of the staves are horns, with slurs and every fourth bar stopped. */
function madeScore(): WholeScore {
  const others = (from: number, count: number) =>
    Array.from({ length: count }, (_, i) => ({
      id: `P${from + i}`,
      name: `Violin ${from + i}`,
      isHorn: false,
    }));
  const horns = [9, 10, 11, 12].map((i) => ({ id: `P${i}`, name: `Horn in F ${i - 8}`, isHorn: true }));
  const parts = [...others(1, 8), ...horns, ...others(13, 18)];
  const list = parts.map(
    ({ id, name, isHorn }) =>
      `<score-part id="${id}"><part-name>${name}</part-name><score-instrument id="${id}-I"><instrument-name>${name}</instrument-name><instrument-sound>${isHorn ? 'brass.french-horn' : 'strings.violin'}</instrument-sound></score-instrument></score-part>`,
  );
  const bodies = parts.map(({ id, isHorn }, p) => {
    const bars = Array.from({ length: 300 }, (_, bar) => madeBar(bar, p, isHorn));
    return `<part id="${id}">${bars.join('')}</part>`;
  });
  const text = `<?xml version="1.0" encoding="UTF-8"?><score-partwise version="3.1"><part-list>${list.join('')}</part-list>${bodies.join('')}</score-partwise>`;
  const name = 'a made score, 30 staves, 72,000 notes';
  return { name, text, part: alone(text, 'P9'), hornStaff: 8 };
}

function madeBar(bar: number, part: number, isHorn: boolean): string {
  const transpose = isHorn ? '<transpose><diatonic>-4</diatonic><chromatic>-7</chromatic></transpose>' : '';
  const attributes =
    bar > 0
      ? ''
      : `<attributes><divisions>2</divisions><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef>${transpose}</attributes>`;
  const notes = Array.from({ length: 8 }, (_, k) => {
    const step = 'CDEFGAB'[(3 * k + 5 * bar + part) % 7]!;
    const slur =
      k === 0 ? '<slur type="start" number="1"/>' : k === 3 ? '<slur type="stop" number="1"/>' : '';
    const sign = (bar + part) % 4 === 0 ? '<technical><stopped/></technical>' : '';
    const notations = isHorn && slur + sign ? `<notations>${slur}${sign}</notations>` : '';
    return `<note><pitch><step>${step}</step><octave>${'EFGAB'.includes(step) ? 4 : 5}</octave></pitch><duration>1</duration><voice>1</voice><type>eighth</type>${notations}</note>`;
  });
  return `<measure number="${bar + 1}">${attributes}${notes.join('')}</measure>`;
}

/** Puts a sign for the hand over every fifth note of a part. */
function withSigns(part: string): string {
  let count = 0;
  return part.replace(/<note[ >][\s\S]*?<\/note>/g, (note) => {
    if (/<(rest|chord|grace)\b/.test(note)) return note;
    count += 1;
    if (count % 5 !== 0) return note;
    if (note.includes('</technical>')) return note.replace('</technical>', '<stopped/></technical>');
    const technical = '<technical><stopped/></technical>';
    if (note.includes('</notations>')) return note.replace('</notations>', `${technical}</notations>`);
    return note.replace(/(?=<lyric|<\/note>)/, `<notations>${technical}</notations>`);
  });
}

/** The score with one of its parts changed. */
function changed(text: string, id: string, change: (part: string) => string): string {
  const start = text.indexOf(`<part id="${id}"`);
  const end = text.indexOf('</part>', start);
  return text.slice(0, start) + change(text.slice(start, end)) + text.slice(end);
}

/** The score with only one of its parts. */
function alone(text: string, id: string): string {
  return text
    .replace(/<part-group\b[\s\S]*?<\/part-group>|<part-group\b[^>]*\/>/g, '')
    .replace(/<score-part id="(\w+)"[\s\S]*?<\/score-part>/g, (part, other) => (other === id ? part : ''))
    .replace(/<part id="(\w+)"[\s\S]*?<\/part>/g, (part, other) => (other === id ? part : ''));
}
