/** How pages show verdicts: inks for texts, signs and words beside them. */
import type { Verdict } from '../../core/index.ts';

/**
 * Inks for texts about a verdict, on paper: the hues of the note colours, darker, since letters are thinner than note
 * heads. Their contrast with the paper is 4.5 : 1 or more; a test measures it. @source WCAG 2.2, 1.4.3
 */
export const VERDICT_INKS = { impossible: '#9c3d00', risky: '#005a8c' } as const;

/** Signs for a verdict, which stand before its word, so that it never rests on colour. */
export const VERDICT_SIGNS: {
  readonly [verdict in Verdict]: { sign: string; className: string };
} = {
  sure: { sign: '', className: '' },
  risky: { sign: '≈', className: 'doubt' },
  impossible: { sign: '×', className: 'no' },
};
