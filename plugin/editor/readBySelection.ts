/** Host 3.5–4.5: a selection of the whole part lists signs, slurs and glissandi. The sign of a grace chord is not in it. */
import { hornParts } from './hornParts.ts';
import { passageFromScore } from './passageFromScore.ts';
import type { Reader } from './readPart.ts';
import { walkPart } from './scoreWalk.ts';
import { evidenceOf } from './selectionEvidence.ts';

export const readBySelection: Reader = (host, score) =>
  hornParts(score).map((part) => {
    const { signs, glissandi, slurs, octaveLines } = evidenceOf(host, score, part);
    return passageFromScore(host, walkPart(host.root, score, part), {
      signOf: ({ tick, track, graceIndex }) =>
        graceIndex === null ? (signs.get(`${tick}/${track}`) ?? null) : null,
      startsGlissando: ({ tick, track, graceIndex }, { pitch }) =>
        graceIndex === null && glissandi.has(`${tick}/${track}/${pitch}`),
      slurs,
      octaveLines,
    });
  });
