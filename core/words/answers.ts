/** Answers about a note in words. */
import type { NoteAnswer } from '../rules/askNote.ts';
import { fingeredPitch, naturalPitch } from '../stopping/names.ts';
import { findingText } from './findings.ts';
import { choicesText, fingeringText, listText, stateText, valvesText, verdictText } from './fingerings.ts';
import type { Reader } from './language.ts';
import { noteName } from './noteNames.ts';
import { speechFor } from './speech.ts';

/** An answer in words: what stands over it, and the lines below. */
export interface AnswerText {
  readonly heading: string;
  /** How sure it is, in a word; empty where nobody can tell. */
  readonly verdict: string;
  /** One to four: how it is played, what speaks against it, what else is sure. */
  readonly lines: readonly string[];
  /** The slides by the hand, closing and opening. */
  readonly slides: readonly string[];
}

/**
 * What a reader is told who asks about a note.
 * @example
 * answerText(askNote(parsePitch('C5'), HORN_IN_F, DEFAULT_SETTINGS), ENGLISH_READER).heading // => 'C5 stopped'
 */
export function answerText(answer: NoteAnswer, reader: Reader): AnswerText {
  const words = reader.words.answers;
  const { stopped, alsoSure, nearestSure } = answer;
  const { note, namedFrom, fingering, verdict } = stopped;
  const name = (pitch: typeof note.written) => noteName(pitch, reader);
  const { reached } = speechFor(reader);
  const lines = fingering
    ? [
        words.played(
          name(fingeredPitch(namedFrom, fingering)),
          fingeringText(fingering, reader),
          name(naturalPitch(namedFrom, fingering).pitch),
        ),
      ]
    : [];
  // What speaks against the note says it better than its having no fingering.
  const [against] = answer.findings;
  if (against) lines.push(findingText(against, reader).message.replace(/\.$/, ''));
  else if (!fingering) lines.push(words.noFingering);
  if (alsoSure.length > 0)
    lines.push(
      words.alsoSure(
        listText(
          alsoSure.map((other) => valvesText(other, reader)),
          reader,
        ),
      ),
    );
  if (nearestSure.length > 0) lines.push(words.nearestSure(choicesText(nearestSure.map(name), reader)));
  return {
    heading: `${name(note.written)} ${stateText('stopped', reader)}`,
    verdict: stopped.soundingCents === null ? '' : verdictText(verdict, reader),
    lines,
    slides: [words.closing(reached(answer.closesTo)), words.opening(reached(answer.opensTo))],
  };
}

export type { AnswerWords } from './areas/answers.ts';
