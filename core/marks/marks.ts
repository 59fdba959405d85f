/** From an examined passage to what is printed over its notes. */

import { VERDICT_COLOURS } from '../data/colours.ts';
import { checkObject, checkOneOf } from '../guards/allowed.ts';
import { isHandState } from '../part/handStates.ts';
import { lineNameOf, type PassageNote } from '../part/passage.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Examination } from '../rules/examine.ts';
import type { Finding } from '../rules/rules.ts';
import { fingeredPitch, naturalPitch } from '../stopping/names.ts';
import { findingText } from '../words/findings.ts';
import { closingText } from '../words/fingerings.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';
import { naturalName, noteClassName } from '../words/noteNames.ts';
import type { Mark } from './annotation.ts';

/** What to print; everything by default. */
export interface Show {
  /** The fingered note's name, before the valves. */
  readonly fingered: boolean;
  readonly valves: boolean;
  /** The natural pitch, in round brackets. */
  readonly natural: boolean;
  /** ≈ and × with their reason. */
  readonly verdict: boolean;
  readonly colour: boolean;
  /** `changes` leaves a text out where the player's note before already carries the same one; `all` by default. */
  readonly repeat: 'all' | 'changes';
}

const REPEATS: readonly Show['repeat'][] = ['all', 'changes'];

/** Everything is printed, over every stopped note. */
export const SHOW_ALL: Show = {
  fingered: true,
  valves: true,
  natural: true,
  verdict: true,
  colour: true,
  repeat: 'all',
};

/**
 * The marks of a passage, in the order of its notes. Open notes get one only when something is wrong with them, or where
 * a natural horn's hand opens.
 * @param reader in whose language notes and verdicts are named; English by default
 * @throws {TypeError} when there is no examination; {RangeError} when `show.repeat` is neither of its values
 * @example
 * marksFor(examine(passageOf('C5+')))[0].lines // => ['(C♯)', 'B 2']
 */
export function marksFor(
  examination: Examination,
  show: Show = SHOW_ALL,
  reader: Reader = ENGLISH_READER,
): readonly Mark[] {
  checkObject('examination', examination, 'an examination, as examine makes one');
  checkOneOf('repeat', show.repeat, REPEATS);
  const worst = worstFindings(examination.findings);
  const printed = new Map<string, string>();
  const closed = new Set<string>();
  const marks: Mark[] = [];
  for (const examined of examination.notes) {
    const finding = worst.get(examined.note.index);
    const isOpened = opensAgain(examined, closed);
    const isMarked =
      isHandState(examined.reading.state) ||
      finding?.severity === 'impossible' ||
      isOpened ||
      // On a natural horn the open notes are what it gives, in tune or not.
      (examined.player.horn.natural && examined.verdict === 'risky');
    const mark = isMarked ? markFor(examined, finding, isOpened, show, reader) : null;
    const kept =
      mark && show.repeat === 'changes' && isRepeat(printed, examined, mark) ? { ...mark, lines: [] } : mark;
    if (show.repeat === 'changes') printed.set(lineNameOf(examined.note), mark?.lines.join('\n') ?? '');
    if (kept && (kept.lines.length > 0 || kept.colour)) marks.push(kept);
  }
  return setForRoom(marks, examination.passage.notes);
}

/** Marks closer than this would push one another up into a staircase. In quarter notes: eighths have room, sixteenths have not. */
const ROOM_QUARTERS = 0.5;
const ROUNDING_QUARTERS = 1e-4;

/** Where the next mark over the same voices is too near, a mark is set as a column of single words, hardly wider than its note. */
function setForRoom(marks: readonly Mark[], notes: readonly PassageNote[]): readonly Mark[] {
  const nextOnset = new Map<string, number>();
  const room: number[] = [];
  for (let i = marks.length - 1; i >= 0; i--) {
    if (marks[i]!.lines.length === 0) continue;
    const { staff, voice, onsetQuarters } = notes[marks[i]!.noteIndex]!;
    const row = `${staff}/${voice}`;
    room[i] = (nextOnset.get(row) ?? Number.POSITIVE_INFINITY) - onsetQuarters;
    // The other notes of a chord stand at the same place and have the same room.
    const before = marks[i - 1] && notes[marks[i - 1]!.noteIndex]!;
    if (!before || before.onsetQuarters < onsetQuarters || `${before.staff}/${before.voice}` !== row)
      nextOnset.set(row, onsetQuarters);
  }
  return marks.map((mark, i) =>
    room[i]! < ROOM_QUARTERS - ROUNDING_QUARTERS
      ? { ...mark, lines: ([] as string[]).concat(...mark.lines.map((line) => line.split(' '))) }
      : mark,
  );
}

/** True when the player's note before carries the same text. */
function isRepeat(printed: ReadonlyMap<string, string>, { note }: ExaminedNote, { lines }: Mark): boolean {
  return printed.get(lineNameOf(note)) === lines.join('\n');
}

/**
 * True where a natural horn's hand opens and the part does not say so: there every change of the hand is marked.
 * @param closed whose hand is in the bell; kept from note to note
 */
function opensAgain({ note, reading, player }: ExaminedNote, closed: Set<string>): boolean {
  const who = lineNameOf(note);
  const wasClosed = closed.has(who);
  if (isHandState(reading.state)) closed.add(who);
  else closed.delete(who);
  return player.horn.natural && wasClosed && reading.state === 'open' && note.sign === null;
}

/** The open hand, as the sign has it. */
const OPEN = 'o';

function markFor(
  examined: ExaminedNote,
  finding: Finding | undefined,
  isOpened: boolean,
  show: Show,
  reader: Reader,
): Mark {
  const isClosed = isHandState(examined.reading.state);
  const lines = isClosed ? fingeringLines(examined, show, reader) : isOpened ? [OPEN] : [];
  if (show.verdict) {
    if (examined.verdict === 'impossible')
      lines.unshift(finding ? `× ${findingText(finding, reader).brief}` : '×');
    else if (examined.verdict === 'risky') lines[0] = `≈ ${lines[0] ?? ''}`.trim();
  }
  return {
    noteIndex: examined.note.index,
    lines,
    valves: examined.fingering?.printed || null,
    colour: show.colour && !examined.note.userColour ? VERDICT_COLOURS[examined.verdict] : null,
  };
}

/**
 * From the top: the natural pitch in brackets (`(C♯)`), then, nearest the note, the fingered note and valves (`B 2`). A horn
 * without valves fingers nothing: there the degree of closing stands alone (`½`, or `+` for a full stop), where the part
 * has no + of its own.
 */
function fingeringLines(
  { note, namedFrom, fingering, player }: ExaminedNote,
  show: Show,
  reader: Reader,
): string[] {
  if (!fingering) return [];
  const fingered = [
    // Beside a part's own + nothing is said of how far: it would say two things at once.
    fingering.band === null || note.sign === 'stopped'
      ? ''
      : fingering.band === 'full'
        ? '+'
        : closingText(fingering.band, reader),
    show.fingered && !player.horn.natural ? noteClassName(fingeredPitch(namedFrom, fingering), reader) : '',
    show.valves ? fingering.printed : '',
  ].filter((part) => part !== '');
  const lines = show.natural ? [`(${naturalName(naturalPitch(namedFrom, fingering), reader)})`] : [];
  if (fingered.length > 0) lines.push(fingered.join(' '));
  return lines;
}

const WEIGHT = { impossible: 2, risky: 1, advice: 0 } as const;

function worstFindings(findings: readonly Finding[]): Map<number, Finding> {
  const worst = new Map<number, Finding>();
  for (const finding of findings) {
    const known = worst.get(finding.noteIndex);
    if (!known || WEIGHT[finding.severity] > WEIGHT[known.severity]) worst.set(finding.noteIndex, finding);
  }
  return worst;
}
