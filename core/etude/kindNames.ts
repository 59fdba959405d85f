/** The kinds of études by name, in the order in which a pupil meets them and a lesson practises them. */
export const ETUDE_KIND_NAMES = ['seal', 'match', 'bend', 'scale', 'phrase', 'change'] as const;

/** The name of a kind. */
export type EtudeKind = (typeof ETUDE_KIND_NAMES)[number];
