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
import { formsOf, type MarkForm } from './room.ts';

/** What to print. */
export interface Show {
  /** The fingered note's name, before the valves. */
  readonly fingered: boolean;
  readonly valves: boolean;
  /** The natural pitch, in round brackets. */
  readonly natural: boolean;
  /** ≈ and × with their reason. */
  readonly verdict: boolean;
  readonly colour: boolean;
  /** `changes` leaves a text out where the player's note before in the same bar carries the same one. A tied note never has it twice. */
  readonly repeat: 'all' | 'changes';
  /**
   * `valves` prints no more than has room: in bars whose marks stand closer than a quarter the valves alone, as players
   * write them by hand; over a chord one line for each note, the fingered note and valves.
   */
  readonly quick: 'full' | 'valves';
}

const REPEATS: readonly Show['repeat'][] = ['all', 'changes'];
const QUICKS: readonly Show['quick'][] = ['full', 'valves'];

/** Everything is printed, over every stopped note. */
export const SHOW_ALL: Show = {
  fingered: true,
  valves: true,
  natural: true,
  verdict: true,
  colour: true,
  repeat: 'all',
  quick: 'full',
};

/** What parts are marked with unless somebody wishes otherwise: all that is needed once, and no more than has room. */
export const SHOW_USUAL: Show = { ...SHOW_ALL, repeat: 'changes', quick: 'valves' };

/**
 * The marks of a passage, in the order of its notes. Open notes get one only when something is wrong with them, or where
 * a natural horn's hand opens.
 * @param reader in whose language notes and verdicts are named; English by default
 * @throws {TypeError} when there is no examination; {RangeError} when `show.repeat` or `show.quick` is neither of its values
 * @example
 * marksFor(examine(passageOf('C5+')))[0].lines // => ['(C♯)', 'B 2']
 */
export function marksFor(
  examination: Examination,
  show: Show = SHOW_USUAL,
  reader: Reader = ENGLISH_READER,
): readonly Mark[] {
  checkObject('examination', examination, 'an examination, as examine makes one');
  checkOneOf('repeat', show.repeat, REPEATS);
  checkOneOf('quick', show.quick, QUICKS);
  const worst = worstFindings(examination.findings);
  const printed = new Map<string, PrintedText>();
  const closed = new Set<string>();
  const places: MarkedNote[] = [];
  for (const examined of examination.notes) {
    const { note } = examined;
    const finding = worst.get(note.index);
    const isOpened = opensAgain(examined, closed);
    const isMarked =
      isHandState(examined.reading.state) ||
      finding?.severity === 'impossible' ||
      isOpened ||
      // On a natural horn the open notes are what it gives, in tune or not.
      (examined.player.horn.natural && examined.verdict === 'risky');
    const line = lineNameOf(note);
    if (!isMarked) {
      printed.delete(line);
      continue;
    }
    const mark = markFor(examined, finding, isOpened, show, reader);
    const before = printed.get(line);
    const text = mark.lines.join('\n');
    printed.set(line, { text, note });
    const isSaid = before?.text === text && isHeld(before.note, note, show);
    const kept = isSaid ? { ...mark, lines: [] } : mark;
    if (kept.lines.length > 0 || kept.colour) places.push({ mark: kept, examined, finding, isOpened });
  }
  if (show.quick === 'full') return places.map(({ mark }) => mark);
  const formOf = formsOf(
    places.filter(({ mark }) => mark.lines.length > 0).map(({ examined }) => examined.note),
  );
  return places
    .map((place) => inForm(formOf(place.examined.note), place, show, reader))
    .filter(({ lines, colour }) => lines.length > 0 || colour !== null);
}

interface PrintedText {
  readonly text: string;
  readonly note: PassageNote;
}

interface MarkedNote {
  readonly mark: Mark;
  readonly examined: ExaminedNote;
  readonly finding: Finding | undefined;
  readonly isOpened: boolean;
}

/** True where what was printed before still holds: over a tie, and within a bar unless every note is to have it. */
function isHeld(before: PassageNote, note: PassageNote, { repeat }: Show): boolean {
  if (before.joins.some(({ kind, to }) => kind === 'tie' && to === note.index)) return true;
  return repeat === 'changes' && before.measureIndex === note.measureIndex;
}

/** A mark in the form that has room, or whole where nothing else would be left of it. */
function inForm(
  form: MarkForm,
  { mark, examined, finding, isOpened }: MarkedNote,
  show: Show,
  reader: Reader,
): Mark {
  if (mark.lines.length === 0 || form === 'whole') return mark;
  const isShort = form === 'valves' && show.valves;
  const short = { ...show, natural: false, fingered: show.fingered && !isShort };
  const { lines } = markFor(examined, finding, isOpened, short, reader);
  const isEmpty = lines.every((line) => line === '≈');
  return isEmpty && !printsOwn(examined)
    ? mark
    : { ...mark, lines: lines.map((line) => line.replace(/^≈ /, form === 'valves' ? '≈' : '≈ ')) };
}

/**
 * True where a natural horn's hand opens and the part does not say so: there every change of the hand is marked.
 * @param closed whose hand is in the bell; kept from note to note
 */
function opensAgain({ note, reading, player }: ExaminedNote, closed: Set<string>): boolean {
  if (!player.horn.natural) return false;
  const who = lineNameOf(note);
  const wasClosed = closed.has(who);
  if (isHandState(reading.state)) closed.add(who);
  else closed.delete(who);
  return wasClosed && reading.state === 'open' && note.sign === null;
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
    valves: printsOwn(examined) ? null : examined.fingering?.printed || null,
    colour: show.colour && !examined.note.userColour ? VERDICT_COLOURS[examined.verdict] : null,
  };
}

/**
 * From the top: the natural pitch in brackets (`(C♯)`), then, nearest the note, the fingered note and valves (`B 2`). A horn
 * without valves fingers nothing: there the degree of closing stands alone (`½`, or `+` for a full stop), where the part
 * has no + of its own.
 */
function fingeringLines(examined: ExaminedNote, show: Show, reader: Reader): string[] {
  const { note, namedFrom, fingering, player } = examined;
  if (!fingering) return [];
  const fingered = [
    // Beside a part's own + nothing is said of how far: it would say two things at once.
    fingering.band === null || note.sign === 'stopped'
      ? ''
      : fingering.band === 'full'
        ? '+'
        : closingText(fingering.band, reader),
    show.fingered && !player.horn.natural ? noteClassName(fingeredPitch(namedFrom, fingering), reader) : '',
    show.valves && !printsOwn(examined) ? fingering.printed : '',
  ].filter((part) => part !== '');
  const lines = show.natural ? [`(${naturalName(naturalPitch(namedFrom, fingering), reader)})`] : [];
  if (fingered.length > 0) lines.push(fingered.join(' '));
  return lines;
}

/** True where the part prints the valves itself: nothing is said twice. */
function printsOwn({ own }: ExaminedNote): boolean {
  return Boolean(own?.fingering);
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
