/** Everything that is said in English, area by area; long because it is all of it. */
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornWords } from './areas/horns.ts';
import type { ReportWords } from './areas/report.ts';
import type { SummaryWords } from './areas/summary.ts';

/** `1 cent`, `0 cents`, `5 cents`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

export const findings: FindingWords = {
  'unknown-key': () => ({
    brief: 'which key',
    message: 'The part does not say how it transposes here, so its stopped notes have no fingering.',
    remedy: 'Give the part its transposition, or name the horn with its key, as in "Horn in F".',
  }),
  'which-octave': ({ from, bassClef, because }, { note }) => {
    const why =
      because === 'too-low'
        ? 'as it stands the part would go below the horn'
        : 'the leaps into and out of it look like old notation';
    return {
      brief: 'which octave',
      message:
        bassClef === 'old'
          ? `From ${note(from)} on the bass clef is read in old notation, an octave higher than it stands: ${why}.`
          : `From ${note(from)} on the bass clef is read as it stands, although ${why}, which sounds an octave higher.`,
      remedy: 'Say which is meant by setting the bass clef to old or new.',
    };
  },
  'below-the-hand': ({ written, state, horn }, speech) => ({
    brief: 'too low',
    message: `${speech.note(written)} ${speech.state(state)} lies below every note that the hand holds there on a ${speech.horn(horn)}.`,
    remedy: 'Write it open, use a stopping mute, or put it an octave higher.',
  }),
  'off-pitch': ({ written, horn, fingering, nearest, way }, speech) => {
    const note = speech.note(written);
    if (fingering)
      return {
        brief: 'off pitch',
        message: `${note} on ${speech.valves(fingering)} comes out ${speech.deviation(fingering.deviationCents)}: the lip has to help.`,
        remedy: 'Tune it with the lip and a little more or less hand, or try one of the alternatives.',
      };
    const none = `No fingering of a ${speech.horn(horn)} gives ${note} here`;
    return {
      brief: 'no fingering',
      message: nearest
        ? `${none}; the nearest, ${speech.valves(nearest)}, is ${speech.deviation(nearest.deviationCents)}.`
        : `${none}.`,
      remedy: {
        'another-crook': 'Choose another crook, or change the note.',
        'play-open': 'Change the note, or play it open.',
        'another-side': 'Stop it on an F side or with a stopping valve, or change the note.',
      }[way],
    };
  },
  'rises-not-bends': ({ written, state, fingering, limit, surer }, speech) => {
    const note = `${speech.note(written)} ${speech.state(state)}`;
    const { harmonic } = fingering;
    const rest = 'for a stopping mute, or write the note higher or open; give it time and a soft attack.';
    return {
      brief: 'wants up',
      message:
        limit === 'wants-to-rise'
          ? `${note} lies on harmonic ${harmonic}: so low, the closing hand lets the tone slip up instead of bringing it down.`
          : `${note} is held by the lip alone: on harmonic ${harmonic} the hand can only raise the tone below it by a semitone.`,
      remedy: surer
        ? `Take it on the ${speech.fingering(surer)} (${speech.deviation(surer.deviationCents)}), where the hand still bends; or ask ${rest}`
        : `Ask ${rest}`,
    };
  },
  'above-the-hand': ({ written, fingering }, speech) => ({
    brief: 'no change',
    message: `${speech.note(written)} is taken on harmonic ${fingering.harmonic}, where closing the hand moves the pitch by ${counted(Math.round(fingering.dropCents), 'cent', 'cents')}: the colour dims, nothing bends.`,
    remedy: `Finger it open (${speech.valves(fingering)}) with the hand in, or write the stopped passage lower.`,
  }),
  'mute-and-hand': ({ written, state }, speech) => ({
    brief: 'mute in',
    message: `${speech.note(written)} is to be ${speech.state(state)} while the mute is still in the bell, where the hand cannot go.`,
    remedy:
      'Take the mute out first (and say so in the part, with time to do it), or ask for a stopping mute.',
  }),
  'closes-upward': ({ from, to, maySlip, falls, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'may not rise',
          message: `From ${note(from)} open to ${note(to)} closed the tone has to slip up a semitone. On harmonic 4 it tends to as the hand closes, but may come down instead${falls.length > 0 ? `, to ${reached(falls)}` : ''}.`,
          remedy: `Lead it up with the lip, or write the slide lower, where the tone slips up by itself: on harmonic 3 and below${starts.length > 0 ? `; or start from ${reached(starts)}, which the hand brings down to ${note(to)}` : ''}.`,
        }
      : {
          brief: 'closes upward',
          message: `From ${note(from)} open to ${note(to)} closed the music goes up, but closing the hand brings a tone down${falls.length > 0 ? `: ${note(from)} falls to ${reached(falls)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Start from ${reached(starts)}, which the hand brings down to ${note(to)}, or leave the line out and let the player change.`
              : 'Turn the line round, or leave it out and let the player change.',
        },
  'opens-downward': ({ from, to, maySlip, rises, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'may not fall',
          message: `From ${note(from)} closed to ${note(to)} open the tone has to slip down a semitone. To harmonic 4 it may as the hand opens, but it may go up instead${rises.length > 0 ? `, to ${reached(rises)}` : ''}.`,
          remedy: `Lead it down with the lip, or write the slide lower, where the tone slips down by itself: on harmonic 3 and below${starts.length > 0 ? `; or start from ${reached(starts)} closed, which opens up to ${note(to)}` : ''}.`,
        }
      : {
          brief: 'opens downward',
          message: `From ${note(from)} closed to ${note(to)} open the music goes down, but opening the hand lets a tone rise${rises.length > 0 ? `: ${note(from)} rises to ${reached(rises)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Start from ${reached(starts)} closed, which opens up to ${note(to)}, or leave the line out and let the player change.`
              : 'Turn the line round, or leave it out and let the player change.',
        },
  'no-common-tube': ({ from, to, closes, reached, nearest, starts }, speech) => {
    const start = speech.note(from);
    const ends = nearest ? `nd on ${speech.reached([nearest])}, the nearest it reaches` : null;
    const begins = starts.length > 0 ? `tart from ${speech.reached(starts)}${closes ? '' : ' closed'}` : null;
    return {
      brief: 'no one tube',
      message:
        `No one fingering holds both ${start} and ${speech.note(to)}, and the hand moves only one` +
        (reached.length > 0
          ? `: ${closes ? 'closing' : 'opening'} takes ${start} to ${speech.reached(reached)}.`
          : `; on none of the fingerings of ${start} does it reach a note of the scale.`),
      remedy: ends
        ? `E${ends}${begins ? `, or s${begins}` : ''}.`
        : begins
          ? `S${begins}.`
          : 'Leave the line out and let the player change.',
    };
  },
  'slur-leaps': ({ from, to, joined }, { note }) => ({
    brief: 'slur breaks',
    message: `${note(from)} and ${note(to)} are ${joined === 'tie' ? 'tied' : 'slurred'} across a change of the hand, and no one fingering holds both: the tone jumps.`,
    remedy: `Tongue the second note, break the ${joined} there, or keep both notes on one side of the change.`,
  }),
  'hand-too-quick': (
    { from, to, goesIn, seconds, neededSeconds, assumedQuartersPerMinute: tempo },
    { note, decimal },
  ) => ({
    brief: 'hand too quick',
    message: `The hand has ${decimal(seconds, 2)} s to ${goesIn ? 'go in' : 'come out'} between ${note(from)} and ${note(to)}${tempo === null ? '' : `, taking ♩ = ${decimal(tempo, 1)} since the part states no tempo`}; it needs about ${decimal(neededSeconds, 2)} s.`,
    remedy:
      'Put a rest or a longer note before the change, keep both notes open or both stopped, or share them between two players.',
  }),
  'sign-against-word': ({ written, state, word, wordState, sinceMeasure }, speech) => ({
    brief: 'sign or word',
    message: `The sign at ${speech.note(written)} says ${speech.state(state)}, but "${word}" (bar ${sinceMeasure}) still holds: unmarked notes after it are ${speech.state(wordState)} again.`,
    remedy:
      state === 'open'
        ? 'Write a cancelling word here if the notes from here on are open, or mark each of them.'
        : 'Cancel the word, or take the sign away.',
  }),
  'never-opened': ({ word, state, sinceMeasure, affectedCount, isLapsed }, speech) => ({
    brief: 'still closed',
    message: isLapsed
      ? `"${word}" (bar ${sinceMeasure}) was never cancelled, but its signs end before this note: ${affectedCount === 1 ? 'it is' : `the ${affectedCount} unmarked notes from here on are`} read open.`
      : `"${word}" (bar ${sinceMeasure}) was never cancelled, so ${affectedCount === 1 ? 'this note is' : `the ${affectedCount} notes from this entry on are`} read ${speech.state(state)} as well.`,
    remedy: isLapsed
      ? 'Write the cancelling word here, or the sign over every note that it still closes.'
      : 'Write the cancelling word where open playing begins, or repeat the word here if it still holds.',
  }),
  'echo-or-stopped': ({ word, state, from }, speech) => ({
    brief: 'echo or stopped',
    message: `"${word}" is read as ${speech.state(state)} from ${speech.note(from)} on; other editions would mean ${state === 'echo' ? 'stopped' : 'echo horn'}, which is fingered a whole tone ${state === 'echo' ? 'lower' : 'higher'}.`,
    remedy: 'Write + over the notes if the bell is to be stopped, or "echo horn" if it is not.',
  }),
};

export const report: ReportWords = {
  readFor: (horn) => `Read for a ${horn}.`,
  stoppedNotesIn: (title) => `Stopped notes in ${title}`,
  cannotBePlayed: (count) => `${counted(count, 'note', 'notes')} cannot be played`,
  canBePlayed: 'Nothing here is impossible',
  areRisky: (count) => `${counted(count, 'note is', 'notes are')} risky`,
  nothingStopped: 'Nothing is stopped in this part.',
  findings: 'What was found, the worst first',
  nothingFound: 'Nothing was found.',
  bars: (count) => (count === 1 ? 'bar' : 'bars'),
  elsewhere: (count) => `${counted(count, 'more note', 'more notes')} with the same trouble`,
  folded: (stopped) =>
    `${stopped === 0 ? 'nothing stopped' : counted(stopped, 'stopped note', 'stopped notes')}, nothing found`,
};

export const fingerings: FingeringWords = {
  states: {
    open: 'open',
    'half-stopped': 'half-stopped',
    stopped: 'stopped',
    echo: 'echo',
    'stopping-mute': 'with stopping mute',
    'straight-mute': 'muted',
  },
  verdicts: { sure: 'sure', risky: 'risky', impossible: 'impossible' },
  severities: { impossible: 'impossible', risky: 'risky', advice: 'advice' },
  reasons: {
    'wants-to-rise': 'so low on this side the closing hand lets the tone slip up',
    'lip-only': 'below the bending range: only the lip holds it down',
    'below-the-hand': 'nothing below this harmonic for the hand to bring it down to',
    'nothing-changes': 'so high that closing the hand does not change the pitch',
    'off-pitch': 'out of tune: the lip has to help',
    'unusual-degree': 'needs an unusual degree of closing',
  },
  briefReasons: {
    'wants-to-rise': 'slips upward',
    'lip-only': 'lip only',
    'below-the-hand': 'out of reach',
    'nothing-changes': 'no bend',
    'off-pitch': 'off pitch',
    'unusual-degree': 'unusual degree',
  },
  forSharpHand: 'the harmonic below is flat: for a hand that stops sharp',
  choices: {
    'one-tube': (instead, neighbour) =>
      `instead of ${instead}: one tube with ${neighbour}, to which it is joined`,
    'one-side': (instead, neighbour) =>
      `instead of ${instead}: stays on the side of ${neighbour}, with no time to change sides`,
    'fewer-changes': (instead, neighbour) =>
      `instead of ${instead}: fewer valves to change beside ${neighbour} at this speed`,
  },
  open: (key) => `open ${key} horn`,
  pressed: (key, valves) => `${key} horn ${valves}`,
  crook: (key) => `${key} crook`,
  harmonic: (number) => `harmonic ${number}`,
  inTune: 'in tune',
  sharp: (cents) => `${counted(cents, 'cent', 'cents')} sharp`,
  flat: (cents) => `${counted(cents, 'cent', 'cents')} flat`,
  closings: { open: 'open', full: 'full' },
  keys: { high: (key) => `high ${key}`, alto: (key) => `${key} alto`, basso: (key) => `${key} basso` },
  or: 'or',
  and: 'and',
  decimalSign: '.',
};

export const horns: HornWords = {
  names: {},
  onCrook: (key) => `natural horn with the ${key} crook`,
};

export const summary: SummaryWords = {
  stoppedNotes: (count, verdicts) =>
    count === 0 ? 'no stopped notes' : `${counted(count, 'stopped note', 'stopped notes')}: ${verdicts}`,
  verdicts: {
    sure: (count) => `${count} sure`,
    risky: (count) => `${count} risky`,
    impossible: (count) => `${count} impossible`,
  },
  openNotes: (verdicts) => `open notes: ${verdicts}`,
  bars: (listed, count) => `${count === 1 ? 'bar' : 'bars'} ${listed}`,
  more: (count) => `${count} more`,
  bar: (measure) => `bar ${measure}`,
  place: (measure, beat) => `bar ${measure}, beat ${beat}`,
  nothingAdded: 'no sign or word was missing',
  signs: (count) => counted(count, 'sign', 'signs'),
  words: (count) => counted(count, 'word', 'words'),
  added: (what) => `added ${what}`,
};

export const etudes: EtudeWords = {
  kinds: {
    seal: {
      name: 'long tones',
      title: 'Behind the Shutter',
      trains: 'Long tones with the bell well sealed: the same sound from the first moment to the last.',
      trainsOnNaturalHorn: 'Long tones by hand: the covered notes as full and as steady as the open ones.',
    },
    match: {
      name: 'a note matched',
      title: 'The Same Note Twice',
      trains: 'Play each note open, then find the same pitch and the same strength with the hand closed.',
      trainsOnNaturalHorn:
        'Play the open note, then its covered neighbour with the same strength and colour.',
    },
    bend: {
      name: 'a tone bent',
      title: 'Leaning on the Door',
      trains:
        'Keep valves and lip still: the closing hand lets the tone sink, the opening hand lets it rise.',
      trainsOnNaturalHorn:
        'Keep the lip still: the closing hand lets the tone sink, the opening hand lets it rise.',
    },
    scale: {
      name: 'scales and chords',
      title: 'Stairs in the Dark',
      trains: 'Scales and broken chords with the hand closed: know the fingerings, centre every note.',
      trainsOnNaturalHorn:
        'Scales and broken chords by hand: bring what the hand makes close to what the horn gives.',
    },
    phrase: {
      name: 'a phrase and its echo',
      title: 'Over the Valley',
      trains: 'Answer every phrase with the hand closed, softer, but with the same shape and the same pitch.',
      trainsOnNaturalHorn:
        'Answer every phrase softly: no covered note may stick out of the line or fall back in it.',
    },
    change: {
      name: 'ever quicker changes',
      title: 'Swinging Gate',
      trains:
        'Close and open in ever shorter notes: the hand moves with the beat and the pitch stays where it is.',
      trainsOnNaturalHorn:
        'From the open note to the covered one and back in ever shorter notes: the hand moves with the beat.',
    },
  },
  lesson: 'Lesson for the Stopping Hand',
  lessonOfWeek: (week) => `Lesson for the Stopping Hand, Week ${week}`,
  hornIn: (key) => `Horn in ${key}`,
  naturalHornIn: (key) => `Natural horn in ${key}`,
  key: { major: (tonic) => `${tonic} major`, minor: (tonic) => `${tonic} minor` },
  level: (level, seed, difficulty) => `Level ${level}, seed ${seed}, difficulty ${difficulty}.`,
  numbers: (keys, semitones, changes, risk) =>
    `${keys}, range of ${counted(semitones, 'semitone', 'semitones')}, ${counted(changes, 'change', 'changes')} of the hand a minute, ${risk}.`,
  noRisk: 'no risky note',
  risks: (count) => `${counted(count, 'risky note', 'risky notes')} (blue, ≈) where the tone may slip up`,
  naturalLegend: 'o open, ¼ ½ ¾ and + closed, each until the next sign.',
  valveLegend: 'Valves over a stopped note go with the stopping valve.',
  advice: 'Rest as long as you have played. Stop when the lip tires or the hand hurts.',
};
