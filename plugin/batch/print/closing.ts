/** What the acoustics say of a fingering, beside the rule: the way down as the hand closes, and how far it must. */
import {
  type ClosingBand,
  closingBand,
  closingCurve,
  closingForDrop,
  curveSvg,
  curveText,
  ENGLISH_READER,
  type ExaminedNote,
  type Fingering,
  fingeringText,
  HIGHEST_CURVE_HARMONIC,
  naturalPitch,
  printPitch,
} from '../../../core/index.ts';
import { Failure } from '../failure.ts';

/** The curve of a note's fingering as lines for a terminal. */
export function closingLines(examined: ExaminedNote): readonly string[] {
  return curveText(curveOf(curvable(examined)));
}

/** The same as a picture, with the written note pointed out where the hand only bends the open one. */
export function closingPicture(examined: ExaminedNote): string {
  const fingering = curvable(examined);
  const { written } = examined.note;
  const natural = printPitch(naturalPitch(written, fingering).pitch);
  return curveSvg(curveOf(fingering), {
    title: `${printPitch(written)} from ${natural}: ${fingeringText(fingering, ENGLISH_READER)}, as the hand closes`,
    wanted: { harmonicNumber: fingering.harmonic, dropCents: Math.max(0, fingering.dropCents) },
  });
}

/** The band of closing by the acoustics, where it lies more than one band away from the rule's; else `null`. */
export function otherBand(fingering: Fingering): ClosingBand | null {
  if (!fingering.band || fingering.harmonic > HIGHEST_CURVE_HARMONIC) return null;
  const found = closingForDrop(curveOf(fingering), fingering.harmonic, Math.max(0, fingering.dropCents));
  const band = found.ok ? closingBand(found.closing) : 'full';
  return Math.abs(BANDS.indexOf(band) - BANDS.indexOf(fingering.band)) > 1 ? band : null;
}

const BANDS: readonly ClosingBand[] = ['open', '¼', '½', '¾', 'full'];

function curveOf({ tube, harmonic }: Fingering) {
  return closingCurve(tube, { harmonics: [harmonic] });
}

function curvable({ note, fingering }: ExaminedNote): Fingering {
  const written = printPitch(note.written);
  if (!fingering)
    throw new Failure(`${written}: no fingering, so no closing curve: ask for another note or horn`);
  if (fingering.harmonic <= HIGHEST_CURVE_HARMONIC) return fingering;
  throw new Failure(
    `${written}: the curve is worked out up to harmonic ${HIGHEST_CURVE_HARMONIC}, and this is harmonic ${fingering.harmonic}: ask for a lower note`,
  );
}
