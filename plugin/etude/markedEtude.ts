/** An étude as a MusicXML score with its fingerings written in, by the same marks that annotating a part makes. */
import { type Etude, etudeMarks, examine, type Settings } from '../../core/index.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import { etudeScore } from './scoreTree.ts';
import type { XmlElement } from './xmlTree.ts';

/**
 * The text of an étude's score for one player. Clearing it leaves the bare score.
 * @param textOf writes a tree as text: `documentText`, or `treeText` in the editor
 */
export function markedEtudeText(
  etude: Etude,
  player: Settings,
  textOf: (root: XmlElement) => string,
): string {
  const score = readScore(textOf(etudeScore(etude)));
  const parts = score.horns.map(({ id, passage }) => ({
    partId: id,
    marks: etudeMarks(examine(passage, player)),
  }));
  return writeMarks(score, parts);
}
