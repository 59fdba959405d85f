/** Host 4.6 and later: chords own their signs, notes the lines that start at them; slurs and octave lines still come from a selection. */
import type { HandSign } from '../../core/index.ts';
import { signOf } from './handSigns.ts';
import { hornParts } from './hornParts.ts';
import { listOf } from './hostApi.ts';
import { passageFromScore } from './passageFromScore.ts';
import type { Reader } from './readPart.ts';
import { walkPart } from './scoreWalk.ts';
import { evidenceOf } from './selectionEvidence.ts';
import { statedTransposition } from './spelling.ts';

export const readByChords: Reader = (host, score) => {
  const { GLISSANDO, GLISSANDO_SEGMENT } = host.root.Element;
  const { fractionFromTicks } = host.root;
  return hornParts(score).map((part) => {
    const { slurs, octaveLines } = evidenceOf(host, score, part);
    return passageFromScore(host, walkPart(host.root, score, part), {
      signOf: ({ element }) =>
        listOf(element.articulations)
          .map((articulation) => signOf(host.root, articulation))
          .filter((sign): sign is HandSign => sign !== null)[0] ?? null,
      transpositionOf: ({ tick }, { staff }) =>
        staff && fractionFromTicks ? statedTransposition(staff.transpose(fractionFromTicks(tick))) : null,
      startsGlissando: (_, { spannerForward }) =>
        listOf(spannerForward).some(({ type }) => type === GLISSANDO || type === GLISSANDO_SEGMENT),
      slurs,
      octaveLines,
    });
  });
};
