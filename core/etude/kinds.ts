/** The list of étude kinds. A new kind is a file in `kinds` and a line here. */
import { bend } from './kinds/bend.ts';
import { change } from './kinds/change.ts';
import type { KindOfEtude } from './kinds/kind.ts';
import { match } from './kinds/match.ts';
import { phrase } from './kinds/phrase.ts';
import { scale } from './kinds/scale.ts';
import { seal } from './kinds/seal.ts';

const KINDS = [seal, match, bend, scale, phrase, change] as const satisfies readonly KindOfEtude[];

/** The name of a kind. */
export type EtudeKind = (typeof KINDS)[number]['kind'];

/** Every kind, in the order in which a pupil meets them and a lesson practises them. */
export const ETUDE_KINDS: readonly (KindOfEtude & { readonly kind: EtudeKind })[] = KINDS;
