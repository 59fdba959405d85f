/** Slurs and octave lines (before 4.6 signs and glissandi too), which from 4.0 on only a selection lists: as a text to compare. */
import { hornParts } from './hornParts.ts';
import { type Host, type HostScore, listOf } from './hostApi.ts';
import { evidenceOf } from './selectionEvidence.ts';

/**
 * True while the user's selection may be taken and given back unnoticed: nothing, a stretch of the score, notes and
 * rests. A text may be in the middle of being written, and a line has handles that would be lost.
 */
export function canBorrowSelection({ root }: Host, { selection }: HostScore): boolean {
  if (!selection || selection.isRange) return true;
  const { NOTE, REST, CHORD } = root.Element;
  return listOf(selection.elements).every(({ type }) => type === NOTE || type === REST || type === CHORD);
}

/** The lines and signs that a selection of the horn parts lists. The user's selection is put back. */
export function listedLines(host: Host, score: HostScore): string {
  return hornParts(score)
    .map((part) => {
      const { slurs, octaveLines, signs, glissandi } = evidenceOf(host, score, part);
      return JSON.stringify([slurs, octaveLines, Array.from(signs.entries()), Array.from(glissandi)]);
    })
    .join('\n');
}
