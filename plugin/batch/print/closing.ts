/** What the acoustics say of a fingering, beside the rule: the way down as the hand closes, and how far it must. */
import {
  CLOSING_BANDS,
  type ClosingBand,
  closingBand,
  closingCurve,
  closingForDrop,
  curveSvg,
  curveText,
  type ExaminedNote,
  type Fingering,
  fingeringText,
  HIGHEST_CURVE_HARMONIC,
  naturalPitch,
  noteName,
  type Reader,
} from '../../../core/index.ts';
import { hasSound, slideSound } from '../../pages/slideSound.ts';
import { Failure } from '../failure.ts';
import { wordsFor } from '../reader.ts';

/** The curve of a note's fingering as lines for a terminal. */
export function closingLines(examined: ExaminedNote, reader: Reader): readonly string[] {
  return curveText(curveOf(curvable(examined, reader)), reader);
}

/** The same as a picture, with the written note pointed out where the hand only bends the open one. */
export function closingPicture(examined: ExaminedNote, reader: Reader): string {
  const fingering = curvable(examined, reader);
  const { written } = examined.note;
  const natural = noteName(naturalPitch(written, fingering).pitch, reader);
  return curveSvg(curveOf(fingering), {
    reader,
    title: wordsFor(reader).explain.curveTitle(
      noteName(written, reader),
      natural,
      fingeringText(fingering, reader),
    ),
    wanted: { harmonicNumber: fingering.harmonic, dropCents: Math.max(0, fingering.dropCents) },
  });
}

/** The same to be heard, as a WAV file: open, on its way, sealed. */
export function closingSound(examined: ExaminedNote, reader: Reader): Uint8Array {
  const fingering = curvable(examined, reader);
  if (hasSound(fingering)) return slideSound(fingering, 'closing');
  const written = noteName(examined.note.written, reader);
  throw new Failure(({ faults }) => faults.noCurve(written));
}

/** The band of closing by the acoustics, where it lies more than one band away from the rule's; else `null`. */
export function otherBand(fingering: Fingering): ClosingBand | null {
  if (!fingering.band || fingering.harmonic > HIGHEST_CURVE_HARMONIC) return null;
  const found = closingForDrop(curveOf(fingering), fingering.harmonic, Math.max(0, fingering.dropCents));
  const band = found.ok ? closingBand(found.closing) : 'full';
  return Math.abs(CLOSING_BANDS.indexOf(band) - CLOSING_BANDS.indexOf(fingering.band)) > 1 ? band : null;
}

function curveOf({ tube, harmonic }: Fingering) {
  return closingCurve(tube, { harmonics: [harmonic] });
}

function curvable({ note, fingering }: ExaminedNote, reader: Reader): Fingering {
  const written = noteName(note.written, reader);
  if (!fingering) throw new Failure(({ faults }) => faults.noCurve(written));
  if (fingering.harmonic <= HIGHEST_CURVE_HARMONIC) return fingering;
  throw new Failure(({ faults }) => faults.curveTooHigh(written, HIGHEST_CURVE_HARMONIC, fingering.harmonic));
}
