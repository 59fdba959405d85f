/** What could be done about each finding, by its remedy. Whether it helps is tried afterwards, in `repairsFor`. */

import { linesOf } from '../part/lines.ts';
import type { JoinKind } from '../part/passage.ts';
import { forgottenWordsIn } from '../plan/forgottenWords.ts';
import type { Examination } from '../rules/examine.ts';
import type { Reach } from '../rules/handJoin.ts';
import type { Finding } from '../rules/rules.ts';
import {
  closed,
  fingered,
  octaveAway,
  opened,
  signed,
  surer,
  underStoppingMute,
  unfingered,
  unjoined,
  unslurred,
  worded,
  writtenAs,
} from './changes.ts';
import { cancellingWord, closingWord, muteWord } from './partWords.ts';
import type { Repair } from './repair.ts';

const LINES: readonly JoinKind[] = ['glissando', 'bend'];

/** In the order in which the remedy names them. Empty where the remedy is no change of the part. */
export function proposalsFor({ passage, notes }: Examination, finding: Finding): readonly Repair[] {
  const at = finding.noteIndex;
  const from = finding.otherIndex ?? at;
  const startingOn = (starts: readonly Reach[]) =>
    starts.map(({ written }) => writtenAs('other-start', notes, from, written));
  const { word } = notes[at]!.reading;
  switch (finding.id) {
    case 'below-the-hand':
      return [
        ...surer(notes, at),
        ...unfingered(notes, [at]),
        octaveAway(notes, at, 1),
        ...opened(notes, at),
        ...underStoppingMute(passage, notes, at),
      ];
    case 'rises-not-bends':
      return [
        ...surer(notes, at),
        ...unfingered(notes, [at]),
        ...underStoppingMute(passage, notes, at),
        octaveAway(notes, at, 1),
        ...opened(notes, at),
      ];
    case 'above-the-hand':
      return [...surer(notes, at), ...unfingered(notes, [at]), octaveAway(notes, at, -1)];
    case 'off-pitch':
      return [...surer(notes, at), ...unfingered(notes, [at]), ...opened(notes, at)];
    case 'mute-and-hand':
      return [
        worded('mute-out', at, muteWord(passage, 'mute-out')),
        ...underStoppingMute(passage, notes, at),
        ...opened(notes, at),
      ];
    case 'fingering-misses':
      return [fingered(notes, at, finding.cause.instead), ...unfingered(notes, [at])];
    case 'closes-upward':
    case 'opens-downward':
      return [
        ...unfingered(notes, [from, at]),
        ...startingOn(finding.cause.starts),
        ...unjoined(notes, from, at, LINES),
      ];
    case 'no-common-tube': {
      const { nearest, starts } = finding.cause;
      const ends = nearest ? [writtenAs('other-end', notes, at, nearest.written)] : [];
      return [
        ...unfingered(notes, [from, at]),
        ...ends,
        ...startingOn(starts),
        ...unjoined(notes, from, at, LINES),
      ];
    }
    case 'slur-leaps':
      return [
        ...unfingered(notes, [from, at]),
        ...unjoined(notes, from, at, ['tie']),
        ...unslurred(notes, from, at),
        ...onOneSide(notes, from, at),
      ];
    case 'hand-too-quick':
      return onOneSide(notes, from, at);
    case 'sign-against-word':
      return [
        worded('opening-word', at, cancellingWord(passage, word?.language ?? null)),
        signed(notes, [at], null),
      ];
    case 'never-opened': {
      const forgotten = forgottenAt({ passage, notes }, at);
      if (!forgotten) return [];
      const language = forgotten.word.language;
      const { state } = finding.cause;
      const sign = state === 'stopped' || state === 'half-stopped' ? state : null;
      return [
        worded('opening-word', at, cancellingWord(passage, language)),
        forgotten.isLapsed
          ? signed(notes, forgotten.affected, sign ?? 'stopped')
          : worded('closing-word', at, finding.cause.word),
      ];
    }
    case 'echo-or-stopped': {
      const under = notes.filter(
        ({ reading }) => reading.from === 'word' && reading.word?.wordIndex === word?.wordIndex,
      );
      return [
        signed(
          notes,
          under.map(({ note }) => note.index),
          'stopped',
        ),
        worded('closing-word', at, closingWord(passage)),
      ];
    }
    case 'unknown-key':
    case 'which-octave':
      return [];
  }
}

/** Both notes open, or both closed. */
function onOneSide(notes: Examination['notes'], from: number, to: number): readonly Repair[] {
  return [
    ...opened(notes, from),
    ...opened(notes, to),
    ...closed(notes, from, notes[to]!.reading.state),
    ...closed(notes, to, notes[from]!.reading.state),
  ];
}

function forgottenAt({ passage, notes }: Pick<Examination, 'passage' | 'notes'>, noteIndex: number) {
  for (const line of linesOf(passage))
    for (const forgotten of forgottenWordsIn(line, notes))
      if (forgotten.affected[0] === noteIndex) return forgotten;
  return null;
}
