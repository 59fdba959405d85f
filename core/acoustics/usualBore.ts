/** The inside of the horn that the acoustics are worked out for. One shape and one hand serve every tube. */
import type { HornBore } from './hornShape.ts';

/**
 * A horn of usual size. The bore and the 31 cm rim are what double horns are built with (common practice, no source).
 * Everything else is a plain number within what instruments and hands have, chosen to tune the horn: the mouthpiece,
 * leadpipe and flare so that the open notes of the F and the B♭ side lie on harmonic series, the hand so that closed
 * notes rest where players find them. Nothing is fitted to a single harmonic, and nothing differs between the sides
 * but the length of cylinder.
 */
export const USUAL_BORE: HornBore = {
  mouthpiece: [
    // A funnel of a cup under a rim 17.5 mm wide, down to a 4.5 mm throat; then the backbore.
    { lengthMetres: 0.03, nearRadiusMetres: 0.00875, farRadiusMetres: 0.00225 },
    { lengthMetres: 0.045, nearRadiusMetres: 0.00225, farRadiusMetres: 0.0045 },
  ],
  leadpipe: { lengthMetres: 0.3, nearRadiusMetres: 0.0045, farRadiusMetres: 0.0059 },
  boreRadiusMetres: 0.0059,
  bell: { lengthMetres: 1.05, rimRadiusMetres: 0.155, flare: 0.86 },
  hand: {
    outerMetres: 0.145,
    innerMetres: 0.185,
    restingRadiusMetres: 0.021,
    leakRadiusMetres: 0.002,
  },
};
