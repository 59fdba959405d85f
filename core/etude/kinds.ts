/** The kinds of études. A new one is a file in `kinds`, its name in `kindNames.ts`, and a word here. */
import { ETUDE_KIND_NAMES, type EtudeKind } from './kindNames.ts';
import { bend } from './kinds/bend.ts';
import { change } from './kinds/change.ts';
import type { KindOfEtude } from './kinds/kind.ts';
import { match } from './kinds/match.ts';
import { phrase } from './kinds/phrase.ts';
import { scale } from './kinds/scale.ts';
import { seal } from './kinds/seal.ts';

export type { EtudeKind } from './kindNames.ts';

const KINDS: { readonly [name in EtudeKind]: KindOfEtude & { readonly kind: name } } = {
  seal,
  match,
  bend,
  scale,
  phrase,
  change,
};

/** Every kind, in the order in which a pupil meets them and a lesson practises them. */
export const ETUDE_KINDS: readonly (KindOfEtude & { readonly kind: EtudeKind })[] = ETUDE_KIND_NAMES.map(
  (name) => KINDS[name],
);
