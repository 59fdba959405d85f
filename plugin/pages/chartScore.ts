/**
 * A fingering chart as a score. Every note has a bar with its fingering over it; a bar of cue notes behind it holds the
 * other ways to play it, so that nothing stands below a staff and runs into the next.
 */
import {
  chartWords,
  type Fingering,
  hornText,
  marksFor,
  pitchCents,
  type Reader,
  type Settings,
  SHOW_ALL,
} from '../../core/index.ts';
import { pitchElement, signElement } from '../etude/scoreNote.ts';
import { element, type XmlElement } from '../etude/xmlTree.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import {
  chartText,
  clefChange,
  firstAttributes,
  lineBreak,
  measureNumber,
  startsLine,
  unseenRest,
} from './chartFrame.ts';
import { chartLegend } from './chartLegend.ts';
import { type ChartNote, chartNotes, clefOf } from './chartNotes.ts';
import { PAGE_ID } from './engrave.ts';
import { audibleCents, fingeredText } from './fingeringTable.ts';

/** Notes on a line of the score, each with the bar of its other ways; and without, on a horn that has none. */
const NOTES_A_LINE = 4;
const BARE_NOTES_A_LINE = 6;
/** Other ways beyond so many do not fit a bar. */
const MOST_OTHERS = 3;

/** The title of a chart: `Stopped notes: double horn in F and B♭`. */
export function chartTitle({ horn }: Settings, reader: Reader): string {
  const words = chartWords(reader);
  return (horn.natural ? words.notesOn : words.stoppedNotesOn)(hornText(horn, reader));
}

/** Single notes to be drawn one by one, a bar each, with ids to find them by. */
export function singleNotesText(notes: readonly ChartNote[], player: Settings): string {
  return chartText(
    '',
    notes.map((note, i) =>
      element(
        'measure',
        { number: i + 1, id: `${PAGE_ID}chart-${pitchCents(note.examined.note.written)}` },
        i > 0 ? lineBreak() : null,
        i === 0 ? firstAttributes(player, clefOf(note)) : null,
        noteElement(note),
        barline('none'),
      ),
    ),
    1,
    [],
  );
}

/** The chart as a score, with the same marks that annotating a part makes. */
export function chartScoreText(player: Settings, reader: Reader): string {
  const notes = chartNotes(player);
  const hasOthers = notes.some((note) => othersOf(note).length > 0);
  const aLine = hasOthers ? NOTES_A_LINE : BARE_NOTES_A_LINE;
  const legend = [
    ...chartLegend(player, notes, reader),
    ...(hasOthers ? [chartWords(reader).otherWaysReading] : []),
  ];
  const measures: XmlElement[] = [];
  notes.forEach((note, i) => {
    const next = notes[i + 1];
    const others = othersOf(note);
    const change = next && clefOf(next) !== clefOf(note) ? clefChange(clefOf(next)) : [];
    measures.push(
      element(
        'measure',
        measureNumber(measures.length + 1),
        i > 0 && startsLine(i, notes.length, aLine) ? lineBreak() : null,
        i === 0 ? firstAttributes(player, clefOf(note)) : null,
        noteElement(note),
        // Room: of short bars alone an editor leaves the last line short.
        ...(hasOthers ? [] : [unseenRest('half'), ...change]),
        barline(hasOthers ? 'none' : 'light-light'),
      ),
    );
    if (hasOthers) measures.push(othersMeasure(note, others, change, measures.length + 1, reader));
  });
  const systems = Math.ceil(notes.length / aLine);
  const score = readScore(chartText(chartTitle(player, reader), measures, systems, legend));
  const marks = notes.flatMap(({ examination }, noteIndex) =>
    marksFor(examination, SHOW_ALL, reader).map((mark) => ({ ...mark, noteIndex })),
  );
  return writeMarks(score, [{ partId: 'P1', marks }]);
}

function othersOf({ examined: { candidates, fingering } }: ChartNote): readonly Fingering[] {
  return candidates.filter((other) => other !== fingering).slice(0, MOST_OTHERS);
}

function noteElement({ examined: { note } }: ChartNote): XmlElement {
  const { alter } = note.written;
  return element(
    'note',
    {},
    pitchElement(note.written),
    element('duration', {}, 4),
    element('voice', {}, 1),
    element('type', {}, 'whole'),
    accidental(alter),
    signElement(note.sign),
  );
}

/** Cue notes, a half each for the width of their texts, the fingering over each and how far it is off where that is heard. */
function othersMeasure(
  { examined: { note, namedFrom } }: ChartNote,
  others: readonly Fingering[],
  change: readonly XmlElement[],
  number: number,
  reader: Reader,
): XmlElement {
  return element(
    'measure',
    measureNumber(number),
    ...others.flatMap((other) => {
      const lines = [audibleCents(other), fingeredText(namedFrom, other, reader)].filter(
        (line) => line !== '',
      );
      return [
        element(
          'direction',
          { placement: 'above' },
          element(
            'direction-type',
            {},
            element('words', { 'font-size': 7, 'font-style': 'normal' }, lines.join('\n')),
          ),
        ),
        element(
          'note',
          {},
          element('cue'),
          pitchElement(note.written),
          element('duration', {}, 2),
          element('voice', {}, 1),
          element('type', { size: 'cue' }, 'half'),
          accidental(note.written.alter),
        ),
      ];
    }),
    ...Array.from({ length: MOST_OTHERS - others.length }, () => unseenRest('half')),
    ...change,
    barline('light-light'),
  );
}

function accidental(alter: number): XmlElement | null {
  return alter === 0 ? null : element('accidental', {}, alter > 0 ? 'sharp' : 'flat');
}

function barline(style: 'light-light' | 'none'): XmlElement {
  return element('barline', { location: 'right' }, element('bar-style', {}, style));
}
