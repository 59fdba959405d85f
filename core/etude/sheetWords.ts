/** What a sheet says to its player: every sentence of the études is here or in its kind's own file. */

import { sidesForStopping } from '../horn/horn.ts';
import type { Settings } from '../part/settings.ts';
import type { Transposition } from '../pitch/pitch.ts';
import type { Difficulty } from './difficulty.ts';
import type { Etude } from './etude.ts';
import { printKey } from './key.ts';

/** @source commonPractice */
export const ADVICE = 'Rest as long as you have played. Stop when the lip tires or the hand hurts.';

/** `Horn in F`, `Horn in E♭`: the name that stands at the head of a part. */
export function instrumentName({ horn }: Settings, { chromatic }: Transposition): string {
  const crook = horn.natural ? (horn.crookFollowsPart ? 'F' : horn.sides[0]!.name) : 'F';
  return chromatic === -7 && !horn.natural
    ? 'Horn in F'
    : `Natural horn in ${crook.replace(/^([A-G])b/, '$1♭')}`;
}

/** How the marks are read on a horn where they do not say it themselves; empty elsewhere. */
function legendText({ horn }: Settings): string {
  if (horn.natural) return 'o open, ¼ ½ ¾ and + closed, each until the next sign. ';
  return sidesForStopping(horn)[0]!.stoppingValveCents > 0
    ? 'Valves over a stopped note go with the stopping valve. '
    : '';
}

/**
 * What stands at the head of a page, three lines: the horn, and how hard it is; what makes it so, and what is risky in it; how to
 * read it and when to rest.
 * @param risky how many of its notes are risky
 */
export function headTexts(
  etudes: readonly Etude[],
  player: Settings,
  seed: number,
  it: Difficulty,
  risky: number,
): readonly string[] {
  const keys = etudes.map((each) => printKey(each.key)).filter((each, i, all) => all.indexOf(each) === i);
  const risk =
    risky === 0
      ? 'no risky note'
      : `${risky} risky ${risky === 1 ? 'note' : 'notes'} (blue, ≈) where the tone may slip up`;
  return [
    `${instrumentName(player, etudes[0]!.transposition)}. Level ${etudes[0]!.level}, seed ${seed}, difficulty ${Math.round(it.score)}.`,
    `${capital(player.horn.label)}, ${keys.join(' and ')}, range of ${it.rangeSemitones} semitones, ${Math.round(it.changesPerMinute)} changes of the hand a minute, ${risk}.`,
    `${legendText(player)}${ADVICE}`,
  ];
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** The title of a lesson sheet. @param week from 1, or null outside a course */
export function lessonTitle(week: number | null): string {
  return week === null ? 'Lesson for the Stopping Hand' : `Lesson for the Stopping Hand, Week ${week}`;
}
