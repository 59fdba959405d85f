/** A fingering chart as MusicXML: a row of stopped notes, each with its fingering over it and the rest below. */
import { DOMImplementation, type Document, type Element, XMLSerializer } from '@xmldom/xmldom';
import { transpositionOf } from '../../core/etude/compose.ts';
import { marksFor } from '../../core/marks.ts';
import type { Settings } from '../../core/settings.ts';
import { type ElementMaker, elementMaker } from '../etude/scoreElements.ts';
import { readScore } from '../musicxml/readScore.ts';
import { writeMarks } from '../musicxml/writeMarks.ts';
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
  const document: Document = new DOMImplementation().createDocument(null, 'score-partwise', null);
  const make = elementMaker(document);
  const score = document.documentElement!;
  score.setAttribute('version', '4.0');
  for (const child of [
    make('work', {}, make('work-title', {}, look.title)),
    make('identification', {}, make('encoding', {}, make('software', {}, 'Bellhand'))),
    partList(make),
    make('part', { id: 'P1' }, ...notes.map((note, i) => measure(make, note, i, player, look))),
  ])
    score.appendChild(child);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(document)}\n`;
}

/** The chart's score with its fingerings, by the same marks that annotating a part makes. */
export function markedChartText(notes: readonly ChartNote[], player: Settings, look: ChartLook): string {
  const score = readScore(chartScoreText(notes, player, look));
  const marks = notes.flatMap(({ examination }, noteIndex) =>
    marksFor(examination).map((mark) => ({ ...mark, noteIndex })),
  );
  return writeMarks(score, [{ partId: 'P1', marks }]);
}

function partList(make: ElementMaker): Element {
  return make(
    'part-list',
    {},
    make(
      'score-part',
      { id: 'P1' },
      make('part-name', { 'print-object': 'no' }, 'Horn'),
      make(
        'score-instrument',
        { id: 'P1-I1' },
        make('instrument-name', {}, 'Horn'),
        make('instrument-sound', {}, 'brass.french-horn'),
      ),
    ),
  );
}

function measure(
  make: ElementMaker,
  { examined }: ChartNote,
  index: number,
  player: Settings,
  { notesALine, clef, hasDetails }: ChartLook,
): Element {
  const { step, alter, octave } = examined.note.written;
  const isLineStart = index > 0 && index % notesALine === 0;
  return make(
    'measure',
    { number: index + 1 },
    isLineStart ? make('print', { 'new-system': 'yes' }) : null,
    index === 0 ? attributes(make, player, clef) : null,
    hasDetails ? details(make, examined) : null,
    make(
      'note',
      {},
      make(
        'pitch',
        {},
        make('step', {}, step),
        alter === 0 ? null : make('alter', {}, alter),
        make('octave', {}, octave),
      ),
      make('duration', {}, 4),
      make('voice', {}, 1),
      make('type', {}, 'whole'),
      alter === 0 ? null : make('accidental', {}, alter > 0 ? 'sharp' : 'flat'),
      make('notations', {}, make('technical', {}, make('stopped'))),
    ),
    make('barline', { location: 'right' }, make('bar-style', {}, 'none')),
  );
}

function attributes(make: ElementMaker, player: Settings, clef: ChartLook['clef']): Element {
  const { chromatic, diatonic } = transpositionOf(player);
  return make(
    'attributes',
    {},
    make('divisions', {}, 1),
    make('key', {}, make('fifths', {}, 0)),
    make('time', { 'print-object': 'no' }, make('beats', {}, 4), make('beat-type', {}, 4)),
    clef === 'treble'
      ? make('clef', {}, make('sign', {}, 'G'), make('line', {}, 2))
      : make('clef', {}, make('sign', {}, 'F'), make('line', {}, 4)),
    make('transpose', {}, make('diatonic', {}, diatonic), make('chromatic', {}, chromatic)),
  );
}

/** The drop, then the other ways a line each, below the staff. */
function details(
  make: ElementMaker,
  { namedFrom, fingering, candidates }: ChartNote['examined'],
): Element | null {
  if (!fingering) return null;
  const others = candidates.filter((other) => other !== fingering);
  const lines = [
    centsText(fingering.dropCents),
    ...(others.length > 0 ? otherWays(namedFrom, others).split(', ') : []),
  ];
  return make(
    'direction',
    { placement: 'below' },
    make('direction-type', {}, make('words', { 'font-size': 7, 'font-style': 'normal' }, lines.join('\n'))),
  );
}
