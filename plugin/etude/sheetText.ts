/** A sheet of études as MusicXML text: with its fingerings, by the same marks that annotating a part makes, or without. */
import { etudeMarks, examine, type Settings, type Sheet } from '../../core/index.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import { sheetScore } from './scoreTree.ts';
import type { XmlElement } from './xmlTree.ts';

/** `marked` is the teacher's, `plain` the student's, who writes the fingerings in. */
export type Copy = 'marked' | 'plain';

/**
 * The text of a sheet's score for one player. Clearing the marked copy leaves the plain one, but for a natural horn,
 * whose plain copy has no signs for the hand either: they are what is to be found.
 * @param textOf writes a tree as text: `documentText`, or `treeText` in the editor
 */
export function sheetText(
  sheet: Sheet,
  player: Settings,
  copy: Copy,
  textOf: (root: XmlElement) => string,
): string {
  if (copy === 'plain') return textOf(sheetScore(player.horn.natural ? withoutSigns(sheet) : sheet));
  const score = readScore(textOf(sheetScore(sheet)));
  // Our own bass clef is in new notation, whatever the player takes others to be.
  const reading: Settings = { ...player, bassClef: 'new' };
  const parts = score.horns.map(({ id, passage }) => ({
    partId: id,
    marks: etudeMarks(examine(passage, reading), sheet.reader),
  }));
  return writeMarks(score, parts);
}

function withoutSigns(sheet: Sheet): Sheet {
  const etudes = sheet.etudes.map((etude) => ({
    ...etude,
    bars: etude.bars.map((bar) => ({ ...bar, notes: bar.notes.map((note) => ({ ...note, sign: null })) })),
  }));
  return { ...sheet, etudes };
}
