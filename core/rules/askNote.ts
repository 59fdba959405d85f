/** What a composer asks before writing a note: how it would be stopped, what is surer near it, where the hand takes it. */
import type { Passage, PassageNote } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import { type Pitch, pitchCents, type Transposition } from '../pitch/pitch.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { nameNear } from '../stopping/names.ts';
import { examine } from './examine.ts';
import { closesTo, opensTo, type Reach } from './handJoin.ts';
import type { Finding } from './rules.ts';

/** Everything about one written note, stopped and as the end of a slide by the hand. */
export interface NoteAnswer {
  /** The note as it would be stopped, by itself. */
  readonly stopped: ExaminedNote;
  /** What speaks against it. */
  readonly findings: readonly Finding[];
  /** Other fingerings that are sure, the player's first choices first. */
  readonly alsoSure: readonly Fingering[];
  /** The nearest notes that are sure when stopped, one below and one above; empty for a note that is sure itself. */
  readonly nearestSure: readonly Pitch[];
  /** Where the hand takes the open note as it closes; empty when it goes nowhere that has a name, or not for sure. */
  readonly closesTo: readonly Reach[];
  /** Where the hand takes the stopped note as it opens; empty likewise. */
  readonly opensTo: readonly Reach[];
}

/** More than this many help nobody. */
const MOST_FINGERINGS = 3;
/** So far, in semitones, a note is still a substitute. A choice. */
const FURTHEST_SEMITONES = 24;

/**
 * Answers for one written note, whatever stands in the part there.
 * @param transposition written to sounding; `null` when it is not known: then nothing but the note itself is
 * @throws {TypeError} or {RangeError} when a field of the settings is not what it may be
 * @example
 * const { stopped, opensTo } = askNote(parsePitch('C5'), HORN_IN_F, DEFAULT_SETTINGS);
 * stopped.fingering.printed // => '2'
 * opensTo[0].written // => { step: 'C', alter: 1, octave: 5 }
 */
export function askNote(written: Pitch, transposition: Transposition | null, settings: Settings): NoteAnswer {
  const player = { ...settings, bassClef: 'new' as const };
  const played = (pitch: Pitch, sign: 'stopped' | 'open') => ({ pitch, sign });
  const ask = (...notes: readonly Asked[]) => examine(passageWith(notes, transposition), player);
  const { notes, findings } = ask(played(written, 'stopped'));
  const stopped = notes[0]!;
  const open = ask(played(written, 'open')).notes[0]!;
  const led = (sign: Asked['sign'], reaches: readonly Reach[], slip: number): readonly Reach[] => {
    const leads = (to: Pitch) => ask(played(written, sign), played(to, sign === 'open' ? 'stopped' : 'open'));
    // Low down the tone slips by a semitone instead of bending: what is risky to hold there is easy to slide to.
    const slipped = nameNear(written, pitchCents(written) + slip);
    const { notes: ends, findings: doubts } = leads(slipped);
    const { fingering } = ends[1]!;
    const slips = fingering && doubts.every(({ id }) => id === 'rises-not-bends');
    return reaches
      .filter((reach) => leads(reach.written).findings.every(({ severity }) => severity === 'advice'))
      .concat(slips ? { written: slipped, fingering } : []);
  };
  return {
    stopped,
    findings,
    alsoSure: stopped.candidates
      .filter((candidate) => candidate !== stopped.fingering && candidate.verdict === 'sure')
      .slice(0, MOST_FINGERINGS),
    nearestSure:
      stopped.verdict === 'sure' || stopped.soundingCents === null
        ? []
        : nearestSure(written, (pitch) => ask(played(pitch, 'stopped')).notes[0]!.verdict === 'sure'),
    closesTo: led('open', closesTo(open, stopped), 100),
    opensTo: led('stopped', opensTo(stopped), -100),
  };
}

interface Asked {
  readonly pitch: Pitch;
  readonly sign: 'stopped' | 'open';
}

function nearestSure(written: Pitch, isSure: (pitch: Pitch) => boolean): readonly Pitch[] {
  const found: Pitch[] = [];
  for (const direction of [-100, 100]) {
    for (let semitones = 1; semitones <= FURTHEST_SEMITONES; semitones++) {
      const pitch = nameNear(written, pitchCents(written) + direction * semitones);
      if (!isSure(pitch)) continue;
      found.push(pitch);
      break;
    }
  }
  return found;
}

/** Whole notes, long enough for any hand; each slides into the next. */
function passageWith(asked: readonly Asked[], transposition: Transposition | null): Passage {
  const notes = asked.map(
    ({ pitch, sign }, index): PassageNote => ({
      index,
      measureIndex: index,
      measure: String(index + 1),
      beat: 1,
      onsetQuarters: 4 * index,
      durationQuarters: 4,
      grace: false,
      staff: 1,
      voice: '1',
      chordRank: 0,
      chordHead: index,
      written: pitch,
      transposition,
      clef: 'treble',
      sign,
      fingering: null,
      joins: index + 1 < asked.length ? [{ kind: 'glissando', to: index + 1 }] : [],
      userColour: false,
    }),
  );
  return { name: '', notes, words: [], tempos: [], rests: [] };
}
