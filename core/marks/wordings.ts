/** The lines that marks print. */
import { isHandState } from '../part/handStates.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Finding } from '../rules/rules.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { fingeredPitch, naturalPitch } from '../stopping/names.ts';
import { findingText } from '../words/findings.ts';
import { closingText } from '../words/fingerings.ts';
import type { Reader } from '../words/language.ts';
import { naturalName, noteClassName } from '../words/noteNames.ts';
import type { Show } from './show.ts';

/** A note that is to be marked. */
export interface MarkedNote {
  readonly examined: ExaminedNote;
  /** The worst that was found at it. */
  readonly finding: Finding | undefined;
  /** True where a natural horn's hand opens and the part does not say so. */
  readonly isOpened: boolean;
}

/** The open hand, as the sign has it. */
const OPEN = 'o';

/** Lines made once for all marks that say the same: a part has many marks, and few different ones. */
export class Wordings {
  private readonly show: Show;
  private readonly reader: Reader;
  private readonly isTight: boolean;
  private readonly known = new Map<Fingering, Map<number, readonly string[]>>();

  /** @param isTight true where no space stands after a ≈ */
  constructor(show: Show, reader: Reader, isTight = false) {
    this.show = show;
    this.reader = reader;
    this.isTight = isTight;
  }

  /** From the top; the line nearest the note last. The same array for the same lines, wherever they are known. */
  linesOf(marked: MarkedNote): readonly string[] {
    const { fingering, namedFrom, note, reading, verdict } = marked.examined;
    if (!fingering || verdict === 'impossible' || !isHandState(reading.state)) return this.make(marked);
    let ofFingering = this.known.get(fingering);
    if (!ofFingering) {
      ofFingering = new Map();
      this.known.set(fingering, ofFingering);
    }
    const circumstances =
      (note.sign === 'stopped' ? 1 : 0) +
      (verdict === 'risky' ? 2 : 0) +
      (printsOwn(marked.examined) ? 4 : 0);
    const key = 8 * numberOf(namedFrom) + circumstances;
    let lines = ofFingering.get(key);
    if (!lines) {
      lines = this.make(marked);
      ofFingering.set(key, lines);
    }
    return lines;
  }

  private make({ examined, finding, isOpened }: MarkedNote): readonly string[] {
    const { show, reader } = this;
    const isClosed = isHandState(examined.reading.state);
    const lines = isClosed ? fingeringLines(examined, show, reader) : isOpened ? [OPEN] : [];
    if (show.verdict) {
      if (examined.verdict === 'impossible')
        lines.unshift(finding ? `× ${findingText(finding, reader).brief}` : '×');
      else if (examined.verdict === 'risky') lines[0] = `≈${this.isTight ? '' : ' '}${lines[0] ?? ''}`.trim();
    }
    return lines;
  }
}

/** A number for each pitch as it is spelled. */
function numberOf({ step, alter, octave }: Pitch): number {
  return 1000 * (100 * octave + step.charCodeAt(0)) + alter;
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
export function printsOwn({ own }: ExaminedNote): boolean {
  return Boolean(own?.fingering);
}
