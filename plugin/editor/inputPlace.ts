/** Where the user is writing, which the host's cursors take away before 3.5. */
import { type Host, type HostChord, type HostScore, isAtLeast, listOf } from './hostApi.ts';
import { cursorOn, moveTo, tickOf, VOICES } from './place.ts';

/** The place of note input, and the length that the next note gets. */
interface InputPlace {
  readonly track: number;
  readonly tick: number;
  readonly duration: { readonly numerator: number; readonly denominator: number };
}

/**
 * Runs work that makes cursors, and puts the place of note input back. Before 3.5 a new cursor resets that place, and
 * nothing tells where it was; but a writer's last note is selected, and writing goes on after it.
 */
export function keepingInputPlace<T>(host: Host, score: HostScore, work: () => T): T {
  const place = isAtLeast(host, 3, 5) ? null : inputPlace(host, score);
  try {
    return work();
  } finally {
    if (place) putBack(score, place);
  }
}

function inputPlace({ root }: Host, score: HostScore): InputPlace | null {
  const elements = listOf(score.selection?.elements);
  const selected = elements[0];
  if (!selected || elements.length > 1) return null;
  const { track, type } = selected;
  if (type === root.Element.NOTE) {
    const chord = selected.parent as HostChord;
    const { duration } = chord;
    return { track, tick: tickOf(chord) + duration.ticks, duration };
  }
  if (type === root.Element.REST) {
    return { track, tick: tickOf(selected), duration: (selected as HostChord).duration };
  }
  return null;
}

function putBack(score: HostScore, { track, tick, duration }: InputPlace): void {
  // The first voice has something at every place where another has; the voice itself may be empty there.
  const cursor = cursorOn(score, track - (track % VOICES));
  moveTo(cursor, tick);
  cursor.track = track;
  cursor.setDuration(duration.numerator, duration.denominator);
}
