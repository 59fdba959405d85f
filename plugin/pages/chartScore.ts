/** A fingering chart as MusicXML: a row of stopped notes, each with its fingering over it and the rest below. */
import { marksFor, type Settings, transpositionOf } from '../../core/index.ts';
import { documentText } from '../etude/documentText.ts';
import { pitchElement } from '../etude/scoreNote.ts';
import { element, type XmlElement } from '../etude/xmlTree.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import type { ChartNote } from './chartNotes.ts';
import { centsText, otherWays } from './fingeringTable.ts';

export interface ChartLook {
  readonly title: string;
  /** Notes on one line. */
  readonly notesALine: number;
  readonly clef: 'treble' | 'bass';
  /** True to write drop and other ways below each note. */
  readonly hasDetails: boolean;
}

/** The chart's score without fingerings, one bar a note. */
export function chartScoreText(notes: readonly ChartNote[], player: Settings, look: ChartLook): string {
  return documentText(
    element(
      'score-partwise',
      { version: '4.0' },
      element('work', {}, element('work-title', {}, look.title)),
      element('identification', {}, element('encoding', {}, element('software', {}, 'Bellhand'))),
      partList(),
      element('part', { id: 'P1' }, ...notes.map((note, i) => measure(note, i, player, look))),
    ),
  );
}

/** The chart's score with its fingerings, by the same marks that annotating a part makes. */
export function markedChartText(notes: readonly ChartNote[], player: Settings, look: ChartLook): string {
  const score = readScore(chartScoreText(notes, player, look));
  const marks = notes.flatMap(({ examination }, noteIndex) =>
    marksFor(examination).map((mark) => ({ ...mark, noteIndex })),
  );
  return writeMarks(score, [{ partId: 'P1', marks }]);
}

function partList(): XmlElement {
  return element(
    'part-list',
    {},
    element(
      'score-part',
      { id: 'P1' },
      element('part-name', { 'print-object': 'no' }, 'Horn'),
      element(
        'score-instrument',
        { id: 'P1-I1' },
        element('instrument-name', {}, 'Horn'),
        element('instrument-sound', {}, 'brass.french-horn'),
      ),
    ),
  );
}

function measure(
  { examined }: ChartNote,
  index: number,
  player: Settings,
  { notesALine, clef, hasDetails }: ChartLook,
): XmlElement {
  const { alter } = examined.note.written;
  const isLineStart = index > 0 && index % notesALine === 0;
  return element(
    'measure',
    { number: index + 1 },
    isLineStart ? element('print', { 'new-system': 'yes' }) : null,
    index === 0 ? attributes(player, clef) : null,
    hasDetails ? details(examined) : null,
    element(
      'note',
      {},
      pitchElement(examined.note.written),
      element('duration', {}, 4),
      element('voice', {}, 1),
      element('type', {}, 'whole'),
      alter === 0 ? null : element('accidental', {}, alter > 0 ? 'sharp' : 'flat'),
      element('notations', {}, element('technical', {}, element('stopped'))),
    ),
    element('barline', { location: 'right' }, element('bar-style', {}, 'none')),
  );
}

function attributes(player: Settings, clef: ChartLook['clef']): XmlElement {
  const { chromatic, diatonic } = transpositionOf(player);
  return element(
    'attributes',
    {},
    element('divisions', {}, 1),
    element('key', {}, element('fifths', {}, 0)),
    element('time', { 'print-object': 'no' }, element('beats', {}, 4), element('beat-type', {}, 4)),
    clef === 'treble'
      ? element('clef', {}, element('sign', {}, 'G'), element('line', {}, 2))
      : element('clef', {}, element('sign', {}, 'F'), element('line', {}, 4)),
    element('transpose', {}, element('diatonic', {}, diatonic), element('chromatic', {}, chromatic)),
  );
}

/** The drop, then the other ways a line each, below the staff. */
function details({ namedFrom, fingering, candidates }: ChartNote['examined']): XmlElement | null {
  if (!fingering) return null;
  const others = candidates.filter((other) => other !== fingering);
  const lines = [
    centsText(fingering.dropCents),
    ...(others.length > 0 ? otherWays(namedFrom, others).split(', ') : []),
  ];
  return element(
    'direction',
    { placement: 'below' },
    element(
      'direction-type',
      {},
      element('words', { 'font-size': 7, 'font-style': 'normal' }, lines.join('\n')),
    ),
  );
}
