/** Every way to name notes: `B♭ B C♯`, `B H Cis`, or `si♭ si do♯`. */
export const NOTE_NAMINGS = ['english', 'german', 'solfege'] as const;

/** A way to name notes. */
export type NoteNaming = (typeof NOTE_NAMINGS)[number];
