/** The list of étude kinds. A new kind is a file beside this one and a line here. */
import { bend } from './bend.ts';
import { change } from './change.ts';
import { match } from './match.ts';
import { phrase } from './phrase.ts';
import { scale } from './scale.ts';
import type { KindOfEtude } from './workshop.ts';

const KINDS = [match, bend, scale, phrase, change] as const satisfies readonly KindOfEtude[];

/** The name of a kind. */
export type EtudeKind = (typeof KINDS)[number]['kind'];

/** Every kind, in the order in which a pupil meets them. */
export const ETUDE_KINDS: readonly (KindOfEtude & { readonly kind: EtudeKind })[] = KINDS;
