/** Notices that the music was edited, without writing and without costing the writer anything. */

import { hornParts } from './hornParts.ts';
import { type Host, type HostChord, type HostScore, isAtLeast, listOf } from './hostApi.ts';
import { exported } from './readByExport.ts';

/** A quick look may not take longer than the eye notices, in milliseconds: scores too big for it are looked at note by note only. */
const EXPORT_LIMIT_MS = 80;
/** Signs are looked for at most this often, in milliseconds: an edit shows within a second. */
const EXPORT_EVERY_MS = 700;

/**
 * Watches the score that is open. Notes and texts of the horn parts are compared at every look. Before 4.0 signs and
 * slurs are not in the plugin interface: there the score as the host writes it is compared too, in big scores only
 * when the notes or the selection changed.
 */
export class ChangeWatch {
  private readonly host: Host;
  private readonly now: () => number;
  private notes = '';
  private selected = 0;
  private written = '';
  private writtenAt = 0;
  private writingTook = 0;

  constructor(host: Host, now: () => number = Date.now) {
    this.host = host;
    this.now = now;
  }

  /** True where the score can be compared as written, with every sign and word in it. */
  get seesEveryEdit(): boolean {
    return !isAtLeast(this.host, 4, 0);
  }

  /** True when something changed since the last look. */
  hasChanged(): boolean {
    const score = this.host.root.curScore;
    const look = score ? lookAt(this.host, score) : { notes: '', selected: 0 };
    const notesChanged = look.notes !== this.notes;
    const selectionMoved = look.selected !== this.selected;
    this.notes = look.notes;
    this.selected = look.selected;
    if (notesChanged) return true;
    return score !== null && this.isExportDue(selectionMoved) && this.hasWritingChanged(score);
  }

  private isExportDue(selectionMoved: boolean): boolean {
    if (!this.seesEveryEdit) return false;
    if (this.writingTook > EXPORT_LIMIT_MS) return selectionMoved;
    return this.now() - this.writtenAt >= EXPORT_EVERY_MS;
  }

  private hasWritingChanged(score: HostScore): boolean {
    const start = this.now();
    const written = exported(this.host, score, 'mscx');
    this.writtenAt = this.now();
    this.writingTook = this.writtenAt - start;
    const changed = written !== this.written;
    this.written = written;
    return changed;
  }
}

/** The horn parts' notes, and signs where chords own them, in a few numbers. */
function lookAt(host: Host, score: HostScore): { notes: string; selected: number } {
  let sum = 0;
  let selected = 0;
  let count = 0;
  const add = (value: number) => {
    sum = (Math.imul(sum, 31) + value) | 0;
  };
  const { CHORD } = host.root.Element;
  for (const part of hornParts(score)) {
    for (let track = part.startTrack; track < part.endTrack; track++) {
      const cursor = score.newCursor();
      cursor.track = track;
      cursor.rewind(0);
      for (; cursor.segment; cursor.next()) {
        const element = cursor.segment.elementAt(track) as HostChord | null;
        add(cursor.tick);
        if (!element || element.type !== CHORD) continue;
        for (const { pitch, tpc1, selected: isSelected } of listOf(element.notes)) {
          count += 1;
          add(pitch);
          add(tpc1);
          if (isSelected) selected = (Math.imul(selected, 31) + count) | 0;
        }
        for (const { symbol } of listOf(element.articulations)) add(Number(symbol));
      }
    }
  }
  return { notes: `${score.scoreName}/${score.nmeasures}/${count}/${sum}`, selected };
}
