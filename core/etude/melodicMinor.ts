/** Scales in minor as they are sung: up to the tonic by the raised sixth and seventh, and down, or back, without them. */
import { degreeOfTonic, type Key, neighbourKeys } from './key.ts';
import type { Tone } from './tone.ts';

/** A tone of a line, and the key in which it stands. */
export interface Sung {
  readonly tone: Tone;
  readonly key: Key;
}

/** Signs that a minor key takes from the major key on its tonic, and the most that can be written. */
const RAISED_FIFTHS = 3;
const MOST_SIGNS = 7;

/**
 * A line with its sixths and sevenths as each minor key has them.
 * @param home the key of which tones have their degrees
 * @param toneIn a tone as another key has it
 */
export function melodic(
  line: readonly Sung[],
  home: Key,
  toneIn: (tone: Tone, key: Key) => Tone,
): readonly Tone[] {
  const degreeIn = ({ tone, key }: Sung) => (tone.degree - degreeOfTonic(home, key) + 7) % 7;
  const isUpper = (sung: Sung | undefined, key: Key) =>
    sung !== undefined && sung.key === key && key.mode === 'minor' && degreeIn(sung) >= 5;
  const made: Tone[] = [];
  for (let from = 0; from < line.length; ) {
    const { tone, key } = line[from]!;
    let to = from;
    while (isUpper(line[to], key)) to += 1;
    const degrees = line.slice(from, to).map(degreeIn);
    const next = line[to];
    const leadsHome = degrees[degrees.length - 1] === 6 && !(next && degreeIn(next) === 4);
    // A sixth or seventh by itself stays as the key has it.
    const way =
      degrees.indexOf(5) < 0 || degrees.indexOf(6) < 0
        ? key
        : leadsHome
          ? raised(key)
          : neighbourKeys(key)[0]!;
    for (const each of line.slice(from, to)) made.push(way === home ? each.tone : toneIn(each.tone, way));
    if (to === from) made.push(key === home ? tone : toneIn(tone, key));
    from = Math.max(to, from + 1);
  }
  return made;
}

/** A minor key as its scale rises: with the sixth and seventh of the major key on its tonic; itself where that cannot be written. */
function raised(key: Key): Key {
  const fifths = key.fifths + RAISED_FIFTHS;
  return fifths > MOST_SIGNS ? key : { ...key, mode: 'major', fifths };
}
