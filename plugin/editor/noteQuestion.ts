/** The answer for the note that is selected, stopped or not, before anything is written or read. */
import { answerText, askNote, type Reader, type Settings } from '../../core/index.ts';
import type { Host } from './hostApi.ts';
import type { AnswerView } from './panelView.ts';
import { askedNote } from './selectedHorns.ts';

/** Follows the selection; reads one note of it and exports nothing. */
export class NoteQuestion {
  private asked = '';
  private current: AnswerView | null = null;

  /** `null` while no horn note is selected. */
  get answer(): AnswerView | null {
    return this.current;
  }

  /** @returns true when there is another answer */
  follow(host: Host, settings: Settings, reader: Reader): boolean {
    const score = host.root.curScore;
    const note = score && askedNote(host, score);
    const { horn, toleranceCents, handOffsetCents } = settings;
    const { language, noteNaming } = reader;
    const key = note
      ? JSON.stringify([note, horn.id, toleranceCents, handOffsetCents, language, noteNaming])
      : '';
    if (key === this.asked) return false;
    this.asked = key;
    this.current = null;
    if (!note) return true;
    const answer = askNote(note.written, note.transposition, settings);
    const { heading, verdict, lines, slides } = answerText(answer, reader);
    this.current = {
      heading,
      verdict: answer.stopped.verdict,
      label: verdict,
      lines: lines.concat(slides).map((line) => `${line}.`),
    };
    return true;
  }
}
