/** What every chart's score has around its notes: title, one horn part, clef and key of the part. */
import { type Settings, transpositionOf } from '../../core/index.ts';
import { documentText } from '../etude/documentText.ts';
import { chartPaper, pageDefaults } from '../etude/pageLayout.ts';
import { foot, heading } from '../etude/scoreHead.ts';
import { element, type XmlElement } from '../etude/xmlTree.ts';

export type ChartClef = 'treble' | 'bass';

/** Room between systems for two lines of fingerings, in tenths. */
const SYSTEM_DISTANCE = 70;

/** What stands over the first staff, as lines below the title are counted. */
const MARK_LINES = 2;

/** Letters on a line below the title, at most. */
const LINE_LETTERS = 130;

/** Sentences as lines of about the same length below a title. */
function asLines(sentences: readonly string[]): readonly string[] {
  const whole = sentences.join(' ');
  const count = Math.ceil(whole.length / LINE_LETTERS);
  const lines: string[] = [];
  for (const word of whole.split(' ')) {
    const last = lines[lines.length - 1];
    if (last === undefined || last.length >= whole.length / count) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

/**
 * The text of a score of one horn part.
 * @param systems lines of music
 * @param sentences what is told below the title
 */
export function chartText(
  title: string,
  measures: readonly XmlElement[],
  systems: number,
  sentences: readonly string[],
): string {
  const lines = asLines(sentences);
  const page = chartPaper(systems);
  return documentText(
    element(
      'score-partwise',
      { version: '4.0' },
      // As the title of a work, a long one makes version 4 set everything under it as large as a title.
      element('movement-title', {}, title),
      element('identification', {}, element('encoding', {}, element('software', {}, 'Bellhand'))),
      pageDefaults(page, SYSTEM_DISTANCE, lines.length + MARK_LINES),
      heading(title, lines, page),
      foot(lines.length + MARK_LINES, page),
      partList(),
      element('part', { id: 'P1' }, ...measures),
    ),
  );
}

/** Bars of a chart are cells of a table: they have a number in the file, as they must, and none in print. */
export function measureNumber(number: number) {
  return { number, implicit: 'yes' };
}

/** What breaks the line before a measure. */
export function lineBreak(): XmlElement {
  return element('print', { 'new-system': 'yes' });
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

/** The attributes of the first measure: four quarters, with no time signature in print. */
export function firstAttributes(player: Settings, clef: ChartClef): XmlElement {
  const { chromatic, diatonic } = transpositionOf(player);
  return element(
    'attributes',
    {},
    element('divisions', {}, 1),
    element('key', {}, element('fifths', {}, 0)),
    element('time', { 'print-object': 'no' }, element('beats', {}, 4), element('beat-type', {}, 4)),
    clefElement(clef),
    element('transpose', {}, element('diatonic', {}, diatonic), element('chromatic', {}, chromatic)),
  );
}

/**
 * A change of clef for the next measure, to stand last in the one before: a rest that nobody sees comes after it, since
 * of the clefs at a barline each version of the editor takes another kind for one behind it.
 */
export function clefChange(clef: ChartClef): readonly XmlElement[] {
  return [element('attributes', {}, clefElement(clef)), unseenRest()];
}

/** Nothing, for so long. */
export function unseenRest(type: 'quarter' | 'half' = 'quarter'): XmlElement {
  return element(
    'note',
    { 'print-object': 'no' },
    element('rest'),
    element('duration', {}, type === 'half' ? 2 : 1),
    element('voice', {}, 1),
    element('type', {}, type),
  );
}

/** True for the first of every line, where so many are shared out to lines of about the same length. */
export function startsLine(index: number, count: number, mostALine: number): boolean {
  const lines = Math.ceil(count / mostALine);
  const lineOf = (i: number) => Math.floor((i * lines) / count);
  return index === 0 || lineOf(index) !== lineOf(index - 1);
}

function clefElement(clef: ChartClef): XmlElement {
  return clef === 'treble'
    ? element('clef', {}, element('sign', {}, 'G'), element('line', {}, 2))
    : element('clef', {}, element('sign', {}, 'F'), element('line', {}, 4));
}
