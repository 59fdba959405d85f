/** The ways to name notes, and the syllables that most languages have. */
import type { Step } from '../pitch/pitch.ts';

/** Every way to name notes: `B♭ B C♯`, `B H Cis`, or `si♭ si do♯`. */
export const NOTE_NAMINGS = ['english', 'german', 'solfege'] as const;

/** A way to name notes. */
export type NoteNaming = (typeof NOTE_NAMINGS)[number];

/** The steps as syllables. */
export type Syllables = { readonly [step in Step]: string };

/** As Italian has them. @source commonPractice */
export const SYLLABLES: Syllables = { C: 'do', D: 're', E: 'mi', F: 'fa', G: 'sol', A: 'la', B: 'si' };
