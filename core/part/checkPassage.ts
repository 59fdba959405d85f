/** What a passage must be, whoever made it, so that everything after it can rely on its indexes and times. */
import { checkInteger, checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { HAND_SIGNS, JOIN_KINDS, type Passage, type PassageNote } from './passage.ts';

/**
 * Lets a passage pass whose notes are in order and whose joins lead to notes.
 * @throws {TypeError} or {RangeError} naming the first field that is wrong, with the note's index, and what is allowed
 */
export function checkPassage(passage: Passage): void {
  checkObject('passage', passage, 'a passage, as passageOf makes one');
  const { notes, words, tempos, rests } = passage;
  for (const [name, list] of [
    ['notes', notes],
    ['words', words],
    ['tempos', tempos],
    ['rests', rests],
  ] as const)
    if (!Array.isArray(list))
      throw new TypeError(`"passage.${name}" must be a list, if need be an empty one`);
  let before = 0;
  for (let i = 0; i < notes.length; i++) {
    checkNote(notes[i]!, i, before, notes.length - 1);
    before = notes[i]!.onsetQuarters;
  }
  tempos.forEach(({ quartersPerMinute }, i) => {
    if (!(quartersPerMinute > 0))
      throw new RangeError(`"tempos[${i}].quartersPerMinute" must be above 0, got ${quartersPerMinute}`);
  });
}

const CLEFS: readonly PassageNote['clef'][] = ['treble', 'bass', 'other'];
const SIGNS: readonly PassageNote['sign'][] = [...HAND_SIGNS, null];

/** Names are put together only where something is wrong: parts are long. */
function checkNote(note: PassageNote, i: number, before: number, last: number): void {
  const { index, onsetQuarters, durationQuarters, chordHead, clef, sign, joins } = note;
  if (index !== i) checkInteger(`notes[${i}].index`, index, i, i);
  if (!(onsetQuarters >= before)) checkNumber(`notes[${i}].onsetQuarters`, onsetQuarters, before, INFINITY);
  if (!(durationQuarters >= 0)) checkNumber(`notes[${i}].durationQuarters`, durationQuarters, 0, INFINITY);
  if (!(chordHead >= 0 && chordHead <= i)) checkInteger(`notes[${i}].chordHead`, chordHead, 0, i);
  if (CLEFS.indexOf(clef) < 0) checkOneOf(`notes[${i}].clef`, clef, CLEFS);
  if (SIGNS.indexOf(sign) < 0) checkOneOf(`notes[${i}].sign`, sign, SIGNS);
  for (const { kind, to } of joins) {
    if (JOIN_KINDS.indexOf(kind) < 0) checkOneOf(`notes[${i}].joins kind`, kind, JOIN_KINDS);
    if (!(to >= 0 && to <= last) || to % 1 !== 0) checkInteger(`notes[${i}].joins to`, to, 0, last);
  }
}

const INFINITY = Number.POSITIVE_INFINITY;
