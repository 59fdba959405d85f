/**
 * Finds stopped notes in the low register, where the hand cannot bring the tone down.
 * Why: below the bending range closing the hand lets the tone slide up a semitone from the next lower harmonic, and
 * only the lip can hold it there. @source commonPractice; smalley (none lower than the 4th harmonic)
 */
import { printPitch } from '../pitch/pitch.ts';
import { deviationText, fingeringText } from '../words/wording.ts';
import { noteRule } from './rule.ts';

export const risesNotBends = noteRule('rises-not-bends', ({ note, reading, fingering, candidates }) => {
  const limit = fingering?.reasons.filter((reason) => reason === 'wants-to-rise' || reason === 'lip-only')[0];
  if (!limit || !fingering) return null;
  const written = printPitch(note.written);
  const sure = candidates.filter(({ verdict }) => verdict === 'sure')[0];
  return {
    severity: 'risky',
    brief: 'wants up',
    message:
      limit === 'wants-to-rise'
        ? `${written} ${reading.state} lies on harmonic ${fingering.harmonic}: so low, the closing hand lets the tone slip up instead of bringing it down.`
        : `${written} ${reading.state} is held by the lip alone: on harmonic ${fingering.harmonic} the hand can only raise the tone below it by a semitone.`,
    remedy: `${sure ? `Take it on the ${fingeringText(sure)} (${deviationText(sure.deviationCents)}), where the hand still bends; or ask` : 'Ask'} for a stopping mute, or write the note higher or open; give it time and a soft attack.`,
  };
});
