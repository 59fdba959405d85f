/** Everything that is said in English, area by area; long because it is all of it. */

import type { AnswerWords } from './areas/answers.ts';
import type { ChartWords } from './areas/chart.ts';
import type { CommandLineWords } from './areas/commandLine.ts';
import type { CurveWords } from './areas/curves.ts';
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornFileWords } from './areas/hornFiles.ts';
import type { HornWords } from './areas/horns.ts';
import type { PanelWords } from './areas/panel.ts';
import type { RepairWords } from './areas/repairs.ts';
import type { ReportWords } from './areas/report.ts';
import type { ScoreWords } from './areas/scores.ts';
import type { StandWords } from './areas/stand.ts';
import type { SummaryWords } from './areas/summary.ts';
import type { EngravingWords, PageWords, Words } from './areas/words.ts';
import { groupedBy, listed } from './listed.ts';
import { SYLLABLES } from './noteNaming.ts';

const grouped = (value: number) => groupedBy(value, ',', 4);

/** Names of parts, in quotation marks; a dash for none. */
const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`).join(', ') || '–';

/** `1 cent`, `0 cents`, `5 cents`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

const findings: FindingWords = {
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
        'another-note': 'Change the note: it lies beyond the horn, open too.',
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
  'closes-upward': ({ from, to, maySlip, reached: falls, starts }, { note, reached }) =>
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
  'opens-downward': ({ from, to, maySlip, reached: rises, starts }, { note, reached }) =>
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
  'fingering-misses': ({ written, state, horn, text, instead }, speech) => ({
    brief: 'other note',
    message: `"${text}" is printed over ${speech.note(written)} ${speech.state(state)}, but does not give it on a ${speech.horn(horn)}.`,
    remedy: `Finger it ${speech.valves(instead)}, or take the printed fingering away.`,
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

const repairs: RepairWords = {
  labels: {
    'octave-up': (note) => `Octave up (${note})`,
    'octave-down': (note) => `Octave down (${note})`,
    'other-start': (note) => `Start from ${note}`,
    'other-end': (note) => `End on ${note}`,
    'line-removed': () => 'Take the line out',
    'slur-removed': () => 'Take the slur out',
    'tie-broken': () => 'Break the tie',
    'sign-added': (sign, count) => (count > 1 ? `Write ${sign} over ${count} notes` : `Write ${sign}`),
    'sign-removed': (_, count) => (count > 1 ? `Take the sign off ${count} notes` : 'Take the sign away'),
    'fingering-taken': (valves) => `Finger it ${valves}`,
    'fingering-removed': (_, count) => (count > 1 ? 'Take both fingerings away' : 'Take the fingering away'),
    'opening-word': (word) => `Write ${word}`,
    'closing-word': (word) => `Write ${word}`,
    'stopping-mute': (word) => `Write ${word}`,
    'mute-out': (word) => `Write ${word}`,
  },
  done: (label) => `Done: ${label}.`,
  takenBack: (label) => `Taken back: ${label}.`,
  doneAgain: (label) => `Done again: ${label}.`,
  quoted: (text) => `“${text}”`,
};

const answers: AnswerWords = {
  played: (fingered, fingering, natural) =>
    `Finger ${fingered} on the ${fingering}; natural pitch ${natural}`,
  noFingering: 'No fingering of this horn gives it',
  alsoSure: (valves) => `Also sure: ${valves}`,
  nearestSure: (notes) => `Sure nearby: ${notes}`,
  closing: (reached) =>
    reached === ''
      ? 'Open, then closed by the hand: goes to no note'
      : `Open, then closed by the hand: goes to ${reached}`,
  opening: (reached) =>
    reached === '' ? 'Stopped, then opened: goes to no note' : `Stopped, then opened: goes to ${reached}`,
};

const report: ReportWords = {
  page: {
    skip: 'Skip to the music',
    onThisPage: 'On this page',
    howToRead: 'How to read this page',
    fingeringsOf: (part) => `Fingerings of ${part}`,
    music: 'The music',
    madeFrom: (file) =>
      `Made by Bellhand from ${file}. The page needs no network and no script; print it as it is.`,
    barsTo: (first, last) => `bars ${first} to ${last}`,
    engraved: (bars) => `${bars}, engraved`,
  },
  severities: { impossible: 'cannot be played', risky: 'risky', advice: 'for the page' },
  table: {
    none: 'No note of this part is stopped.',
    labelOf: (part) => `Table of the fingerings of ${part}`,
    caption:
      'Every stopped note once for each way it is played, from the lowest. Pitches are written pitches.',
    note: 'Note',
    hand: 'Hand',
    fingeredAs: 'Fingered as',
    natural: 'Natural pitch',
    drop: 'Drop',
    offBy: 'Off by',
    verdict: 'Verdict',
    otherWays: 'Other ways',
    bars: 'Bars',
    notes: (count) => counted(count, 'note', 'notes'),
  },
  glissando: {
    wanted: (note) => `${note} wanted`,
    natural: 'natural',
    stopped: 'stopped',
    leads: (from, start, to, end) => `The music leads from ${from} ${start} to ${to} ${end}.`,
    closes: (from, to, fingering) => `The hand, closing, takes ${from} to ${to} (${fingering}).`,
    opens: (from, to, fingering) => `The hand, opening, takes ${from} to ${to} (${fingering}).`,
    nowhere: 'The hand reaches no note that has a name.',
  },
  reading: {
    lines: (key) =>
      `At every stopped note stand two lines. The one nearest the note is what the player fingers: the note to think of and the valves, with T for the ${key} side. The other, in round brackets, is the natural pitch: what would sound on that fingering with the hand open.`,
    vermillion: 'vermillion',
    impossible: 'no hand can do this as written.',
    blue: 'blue',
    risky: 'it can be played with luck.',
    rings:
      'A ring under a note carries the number of the remark beside it; the remark leads back to the ring.',
    pitches:
      'Pitches are written pitches. A drop is how far the hand brings the tone down; “off by” is how far the result lies from the note, + being sharp. A hundred cents (¢) are a semitone.',
  },
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
  heardClosing: (note, way) => `To be heard: ${note} as the hand closes (${way})`,
  heardOpening: (note, way) => `To be heard: ${note} as the hand opens (${way})`,
  folded: (stopped) =>
    `${stopped === 0 ? 'nothing stopped' : counted(stopped, 'stopped note', 'stopped notes')}, nothing found`,
};

const fingerings: FingeringWords = {
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

const horns: HornWords = {
  names: new Map(),
  onCrook: (key) => `natural horn with the ${key} crook`,
};

const summary: SummaryWords = {
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
  keptColour: (count) =>
    `${counted(count, 'doubtful note', 'doubtful notes')} had a colour already and kept it`,
};

const etudes: EtudeWords = {
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
        'Play what the horn gives, then its covered neighbour with the same strength and colour.',
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
  numbers: (keys, semitones, changes) =>
    `${keys}, range of ${counted(semitones, 'semitone', 'semitones')}, ${counted(changes, 'change', 'changes')} of the hand a minute.`,
  noRisk: 'No risky note.',
  risks: (count) => `${counted(count, 'risky note', 'risky notes')} (blue, ≈), where the tone may slip up.`,
  naturalLegend: 'o open, ¼ ½ ¾ and + closed, each until the next sign.',
  valveLegend:
    'Bell closed, stopping valve down: the fingerings over stopped notes are those of the note as written, on the B♭ side.',
  advice: ['Rest as long as you have played.', 'Stop when the lip tires or the hand hurts.'],
  noTime: (seconds, tempo) =>
    `a hand that needs ${seconds} s has no time within a half note at ${tempo} beats a minute: choose a slower tempo or a quicker hand`,
  tooFew: {
    notes: (low, high, horn, count) =>
      `from ${low} to ${high} a ${horn} has ${count === 0 ? 'no' : `only ${count}`} ${count === 1 ? 'note' : 'notes'} of the key that the hand makes surely: choose a wider range, another key, kind or horn`,
    bends: (low, high, horn, count) =>
      `from ${low} to ${high} a ${horn} has ${count === 0 ? 'no' : `only ${count}`} ${count === 1 ? 'tone' : 'tones'} the hand can take down and let up again: choose a wider range, another key, kind or horn`,
  },
  noHome: (tonic, low, high, horn) =>
    `a ${horn} has no sure ${tonic} to come home to from ${low} to ${high}: choose another key or a wider range`,
};

const scores: ScoreWords = {
  place: (line, column) => `line ${line}, column ${column}`,
  cutShort: (plain) => `the file is cut short (${plain}): fetch or export it again`,
  unmatchedClosing: (plain) =>
    `a closing tag has no opening tag to match (${plain}): export the score again from the program that wrote it`,
  notXml: (plain) => `this is not XML (${plain}): export the score as MusicXML`,
  secondDocument: (plain) =>
    `there is a second document in the same file (${plain}): keep one score in each file`,
  undeclaredEntity: (plain) =>
    `an entity is used that the file does not declare (${plain}): write the character itself, or &amp; for &`,
  attributeTwice: (plain) =>
    `an attribute is given twice (${plain}): export the score again from the program that wrote it`,
  disallowedCharacter: (plain) =>
    `a character stands where XML does not allow it (${plain}): write < and & as &lt; and &amp;, or export the score again from the program that wrote it`,
  malformed: (plain) =>
    `this is not well-formed XML (${plain}): export the score again from the program that wrote it`,
  doctypeTooLong: (most) =>
    `the document type is longer than ${grouped(most)} characters: check where the file comes from`,
  entityTooLong: (name, most) =>
    `the entity "${name}" stands for more than ${grouped(most)} characters: check where the file comes from`,
  entitiesTooLong: (name, most) =>
    `entities such as "${name}" stand for more than ${grouped(most)} characters in all: check where the file comes from`,
  entityInCircle: (name) =>
    `the entity "${name}" stands for itself, or nearly: check where the file comes from`,
  notMusicXml: (element) => `<${element}> is not a MusicXML score: export the music as MusicXML`,
  partTwice: (part) => `the part "${part}" stands here twice: keep one of the two, or give one another id`,
  idTwice: (id) => `two parts have the id "${id}": give each part an id of its own`,
  noPart: (request, parts) =>
    `there is no part "${request}": choose one of the parts of this score (${parts.length > 0 ? quoted(parts) : 'none'})`,
  tooMuchMusic: (most) =>
    `there are more than ${grouped(most)} notes, rests and words in the parts to read, more than any parts have: check where the file comes from`,
  chordTooLarge: (most) => `a chord has more than ${grouped(most)} notes: check where the file comes from`,
  halfCharacter: (encoding) => `the ${encoding} text ends in half a character: fetch the file again`,
  unknownEncoding: (encoding) =>
    `the encoding ${encoding} is not one Bellhand can write back: save the file as UTF-8`,
  whichFile:
    'the ZIP archive does not say which file in it is the score: export the music as .mxl or .musicxml',
  fileMissing: (path) => `the container names "${path}", which is not in it: export the music again`,
  containerMalformed: 'META-INF/container.xml is not well-formed XML: export the music again',
  noScoreInside: 'the ZIP archive holds no MusicXML: export the music as .mxl or .musicxml',
  zip64: 'this is a ZIP64 archive: pack the score again as plain ZIP',
  directoryDamaged:
    'the ZIP archive is damaged: its directory does not match its checks: fetch or export the file again',
  entryDamaged: (name) =>
    `the ZIP archive is damaged: "${name}" does not match its checks: fetch or export the file again`,
  encrypted: (name) => `"${name}" is encrypted: pack the score again without a password`,
  unpacksTo: (name, megabytes, most) =>
    `"${name}" unpacks to ${grouped(megabytes)} MB, and ${most} MB is the most that is opened: check where the file comes from, or export the horn parts alone`,
  growsTo: (name, times, most) =>
    `"${name}" unpacks to ${grouped(times)} times its size, and ${most} times is the most that is opened: check where the file comes from, or save it uncompressed as .musicxml`,
  packedBy: (name, method) => `"${name}" is packed by method ${method}: pack the score again as plain ZIP`,
  archiveCutShort: 'the ZIP archive has no end: fetch or export the file again: it seems cut short',
};

const panel: PanelWords = {
  labels: {
    horn: 'Horn',
    noteNames: 'Note names',
    print: 'Shown over the notes',
    fingered: 'Fingered note',
    valves: 'Valves',
    natural: 'Natural pitch',
    verdict: 'Signs ≈ and ×',
    colour: 'Colours',
    onlyChanges: 'Only where it changes',
    quickValves: 'Quick notes: valves only',
    widerBars: 'Wider bars where marks need room',
    tolerance: 'Tolerance in cents',
    handOffset: 'Hand offset in cents',
    toleranceHint: 'Fingerings further than this from the written note are left out',
    handOffsetHint: 'Above 0 for a hand that stops sharp, below for one that stops flat',
    annotate: 'Annotate',
    clear: 'Clear',
    lookAgain: 'Look again',
    fromCursor: 'From the cursor',
    previous: 'Previous finding',
    next: 'Next finding',
    stoppedSign: 'Write + over the selected notes, or take it away',
    openSign: 'Write o over the selected notes, or take it away',
    noteAsked: 'Select a horn note to see how it is stopped.',
    findings: 'To be looked at',
    nothingFound: 'Nothing: every stopped note can be played.',
    instead: 'Instead:',
    etude: 'Étude',
    etudeKind: 'Kind',
    etudeLesson: 'A lesson of one page',
    etudeKey: 'Written key',
    etudeLevel: 'Level',
    etudeLength: 'Bars',
    etudeTempo: 'Beats a minute, 0 for the usual',
    etudeCompass: 'From–to, as in C4–G5',
    compose: 'Compose',
    copyPath: 'Copy path',
    openOutside: 'Open',
  },
  noScore: 'No score is open.',
  emptyScore: 'The score has no bars.',
  reading: (percent) => `Reading the score: ${percent} %`,
  readOnceLetGo: 'The score is large: press Escape in it, and it is read.',
  noHorn: 'The score has no horn part.',
  noStopped: 'The horn part has no stopped note: nothing to annotate.',
  noStoppedSelected: 'No stopped horn note is selected: nothing was changed.',
  annotated: 'Annotated.',
  annotatedSelection: 'Annotated in the selection.',
  upToDate: 'The annotations are up to date: nothing was changed.',
  severalNotes: (count) => `${count} notes`,
  nthOf: (nth, count) => `${nth} of ${count}`,
  noHornSelected: 'No horn note is selected.',
  cleared: (count) => `Cleared: ${counted(count, 'note', 'notes')}.`,
  nothingToClear: 'There is nothing of ours to clear.',
  failed: (reason) => `Nothing was changed: ${reason}.`,
  notShown: 'The note is no longer in the score.',
  etudeOpened: (title) => `A new score is open: ${title}.`,
  etudeWritten: (title, path) => `The étude “${title}” is written. Open this file in the editor: ${path}`,
  etudeAsked: (path) =>
    `The desktop was asked to open ${path}. If the editor does not show it, open the file there.`,
  etudeNotWritten: (title) => `The étude “${title}” could not be written: no folder takes the file.`,
  etudeRange: (range) => `“${range}” is no range: write two notes, the lower first, as in C4–G5, or nothing.`,
  faults: {
    notExported: (path) => `the editor could not write ${path}`,
    placeNotFound: 'a note is no longer where it was read; look again',
    nothingToTakeOut: 'what is to be taken out is not there any more',
    notTaken: 'the editor did not take it',
  },
};

const hornFile: HornFileWords = {
  notJson: (plain) => `not JSON: ${plain}`,
  mustBe: (at, wanted, got) => `${at} must be ${wanted}, got ${got}`,
  theFile: 'the file',
  nothing: 'nothing',
  wanted: {
    sides: 'a list of one to four sides, each { "name": …, "fundamental": … }',
    'one-side': 'one side, the crook, on a natural horn',
    fundamental: 'the sounding 1st harmonic, from C0 to C3: F1 for a horn in F',
    note: 'a sounding note name such as "F1"',
    text: 'a text of 1 to 60 characters without <, > and &',
    flag: 'true or false',
    valves: '"compromise", "ascending", "none", or a list of { "valves": "12", "semitones": 3 }',
    'valve-numbers': '"0" or the numbers of the valves, as "12"',
  },
  number: (from, to) => `a number from ${from} to ${to}`,
  whole: (from, to) => `a whole number from ${from} to ${to}`,
  unknownField: (at, field, known) =>
    `${at} has a field "${field}" that means nothing here; write one of ${known}`,
  shortSideFrom:
    '"shortSideFrom" is said by the side itself: write it there as "openFrom": "Db4", and leave it out here',
  noSideStoppable: 'no side can be stopped: leave out "stoppable": false on the one players stop on',
  orderForSome: '"stoppingOrder" is given for some sides; give it for every side, or for none',
  orderTwice: 'two sides have the same "stoppingOrder"; number them 1, 2, … as the player reaches for them',
};

/** What a result is. */
const CONTENTS = {
  score: 'a score in MusicXML',
  page: 'a page for the browser',
  picture: 'a picture',
  sound: 'a sound',
};

export const commandLine: CommandLineWords = {
  hornFile,
  scores,
  help: {
    program: 'Fingerings and natural pitches for the stopped notes of horn parts, and what no hand can do',
    version: 'print the version',
    help: 'print this help',
    helpOf: 'print the help of a command',
    usage: 'Usage:',
    arguments: 'Arguments:',
    options: 'Options:',
    generalOptions: 'Options of every command:',
    commands: 'Commands:',
    byDefault: (value) => `default: ${value}`,
    see: (command) => `see: ${command}`,
  },
  commands: {
    annotate: 'write fingering, natural pitch and verdict over every stopped note of the horn parts',
    clear: 'take every mark of annotate out again and leave all else as it is',
    check: 'list every stopped note and every finding without writing; ends with 1 if a note is impossible',
    explain: 'explain one written note: fingering, natural pitch, drop, and every other way to play it',
    etude: (kinds) => `compose an étude for the stopping hand: ${kinds}`,
    lesson: 'compose a lesson: one page of numbered exercises, from long tones to quick changes',
    course: 'compose a course: a lesson a week, each a little harder and each coming back to the last',
    report:
      'write a page with the verdict, what to do, the engraved music around every finding, and the fingerings',
    chart:
      'write a chart of a horn: the fingering of every note it can stop, or where the hand bends each note',
    watch: 'check a file whenever it is saved and say what changed; Ctrl-C ends it',
    install: 'put the plugin into the plugin folder of MuseScore 3 and 4',
  },
  arguments: {
    files: 'MusicXML files, plain or compressed; - for standard input',
    file: 'a MusicXML file, plain or compressed; - for standard input',
    watched: 'a MusicXML file that some program keeps saving',
    note: 'the note as the part prints it, with its octave: C5, F#4, Bb3',
  },
  options: {
    output: (name) => `where to write: a file, a folder, or - (default: ${name})`,
    outputOfOne: (name) => `where to write, or - (default: ${name})`,
    inPlace: 'write onto the input itself',
    complete: 'add + signs missing under a word, and words missing to end one',
    jobs: 'files worked on at once; no more than cores and memory allow',
    force: 'replace a file that Bellhand did not make, that was changed since, or that may only be read',
    checkFormat:
      'table; json, one object for each file, one a line; json-lines, the same without the notes, for catalogues',
    explainFormat: 'table or json',
    chartOf: 'fingerings of stopped notes, or bends: where the moving hand takes each note, for composers',
    chartFormat:
      'html, a page to print, or musicxml, a score (default: as the name after -o ends, else html)',
    curve: 'the pitch as the hand closes, from acoustics: as text, or as an SVG picture in a file',
    sound: 'the tone as the hand closes, from acoustics, as a WAV file',
    soundOfReport: 'let the glissandos that the hand cannot make be heard as it makes them',
    part: 'a part to take for a horn: its name, id or place in the score; may be given again',
    keyOfPart: 'the key of horns whose part states none: F, Eb, "Bb basso", …',
    keyOfNote: 'the key the part stands in: F, Eb, "Bb basso", …',
    hand: (states) => `what the hand does: ${states}`,
    horn: (ids) => `the horn played: ${ids}, natural, natural-eb and the like, or a .json file`,
    tolerance: 'fingerings further off than this are none',
    handOffset: 'what this hand adds to every closing: above 0 for a hand that stops sharp',
    handTime: 'the least time in which the hand goes in or out',
    names: 'notes named as-written in the part, or as a player reading for the f-horn names them',
    bassClef: 'notes in the bass clef: new, as they stand; old, an octave low; auto, by the look of them',
    assumedTempo: 'the speed of a part that states none, in quarters a minute',
    show: (items) => `what to write, of ${items}`,
    valvesAs: 'valves in the text over the note, or as a fingering of the note: text or fingering',
    repeat: 'changes: leave a text out where the note before in the bar carries the same; all: never',
    quick: 'valves: in bars whose marks are less than a quarter apart, the valves alone; full: everything',
    language: (languages) =>
      `the language of what is said: ${listed(languages, 'or')} (default: the system’s)`,
    noteNames:
      'names of notes: english (B♭ B), german (B H) or solfege (si♭ si) (default: as the language has them)',
    etudeKey: 'the written key: C, Bb, F#, Dm, …',
    level: '1 for the first weeks, 2 for daily practice, 3 for the experienced',
    bars: (phraseBars) => `length in bars, in phrases of ${phraseBars}`,
    tempo: 'beats a minute (default: what suits the kind)',
    range: 'lowest and highest written note, as in C4-G5 (default: by level)',
    seed: 'the same seed makes the same music (default: a new one each time)',
    copy: 'marked, with its fingerings, or plain, for the student to fill in',
    weeks: 'how many lessons',
    lessonKey: 'the written key of every exercise: C, Bb, F#, Dm, … (default: by level)',
    whole: 'show all the music; otherwise what is in order is folded away',
    folder: 'the plugin folder, where it is not among your documents',
  },
  usage: {
    unknownOption: (option) => `unknown option '${option}'`,
    afterCommand: (option, command) => `option '${option}' goes after the command '${command}'`,
    unknownCommand: (name) => `unknown command '${name}'`,
    suggestion: (names) => `Did you mean ${names}?`,
    missingArgument: (name) => `missing required argument '${name}'`,
    missingOption: (flags) => `required option '${flags}' not specified`,
    missingValue: (flags) => `option '${flags}' needs a value`,
    tooManyArguments: (command) => `too many arguments for '${command}'`,
    badValue: (flags, value, why) => `'${flags}' cannot be '${value}'. ${why}`,
    number: (unit, from, to) => `Give a number of ${unit} from ${from} to ${to}.`,
    wholeNumber: 'Give a whole number from 1 up.',
    wholeBetween: (from, to) => `Give a whole number from ${from} to ${to}.`,
    oneOf: (list) => `Choose one of ${listed(list, 'or')}.`,
    someOf: (list) => `Choose from ${listed(list, 'or')}, with commas between.`,
    notANote: (text) =>
      `"${text}" is not a note name: write a letter A–G, # or b if needed, and the octave, as in C#5 or Bb4.`,
    notAKey: (text) =>
      `"${text}" is not a key of at most seven signs: write a tonic and, for minor, an m, as in F, Bb, Dm or C#m.`,
    hornOrFile: (list) => `Choose one of ${list}, or name a .json file.`,
    hornKey: 'Name a key as a part would: F, Eb, D, "Bb alto", "Bb basso", ….',
    bars: (phraseBars, from, to) => `Give a multiple of ${phraseBars} from ${from} to ${to}.`,
    rangeEnds: 'Give two notes with a hyphen between, as in C4-G5.',
    lowerFirst: 'Name the lower note first.',
  },
  units: {
    cents: 'cents',
    seconds: 'seconds',
    quarters: 'quarters a minute',
    beats: 'beats',
    weeks: 'weeks',
  },
  systemFaults: {
    ENOENT: 'there is no such file: check the name and the folder',
    EACCES: 'permission is missing: change the rights of the file or its folder, or choose another place',
    EPERM:
      'the system does not permit it: change the rights of the file or its folder, or choose another place',
    EROFS: 'this disk can only be read: choose another place with -o',
    ENOSPC: 'the disk is full: make room or choose another place with -o',
    EISDIR: 'this is a folder: name a file in it',
    ENOTDIR: 'a part of the path is a file and not a folder: check the path',
    ENAMETOOLONG: 'the name is too long: choose a shorter one',
    EMFILE: 'too many files are open: lower --jobs',
    ERR_FS_FILE_TOO_LARGE: 'it is larger than any score: check where it comes from',
    ELOOP: 'its links lead in a circle: name the file itself',
    other: (code) => `the system refuses it (${code})`,
  },
  faults: {
    own: (text) => `a fault in bellhand itself, please report it: ${text}`,
    folderMissing: 'its folder does not exist: make it first',
    notWritten: (path, why) => `${path}: cannot be written: ${why}`,
    outputNotWritten: (why) => `standard output cannot be written: ${why}`,
    folderNotMade: (path, why) => `${path}: this folder cannot be made: ${why}`,
    tooLarge: (name, megabytes) =>
      `${name}: larger than ${megabytes} MB, the most that is read: check where it comes from, or export the horn parts alone`,
    placeAndInPlace: '-o and --in-place exclude each other: choose one',
    inputInPlace: 'standard input cannot be changed in place: leave --in-place out',
    manyIntoOne: (output, count) =>
      `${output}: ${count} results do not fit into one file: name a folder with -o`,
    inputAmongFiles: 'standard input among other files: its result needs a place: name a folder with -o',
    ontoInput: (target) => `${target}: this would overwrite an input: choose another place with -o`,
    ontoInputInPlace: (target) =>
      `${target}: this would overwrite an input: choose another place with -o, or say --in-place`,
    notPlain: (path) => `${path}: no plain file, so not to be changed in place: use -o`,
    notOurs: (path) =>
      `${path}: this file is there already, and Bellhand did not make it or it was changed since: choose another place with -o, or replace it with --force`,
    otherEnding: (path, content, endings) =>
      `${path}: what is written here is ${CONTENTS[content]}: end the name with ${listed(endings, 'or')}`,
    namedTwice: (input) => `${input}: this file is named twice: name it once`,
    linkToNothing: (path, target) =>
      `${path}: a link to ${target}, which is not there: name the file itself, or remove the link`,
    readOnly: (path) => `${path}: may only be read: change its rights, or replace it with --force`,
    notPutBack: (path, copy) =>
      `${path}: cannot be written, nor put back as it was: its old content is in ${copy}`,
    outputIntoInput: (target) => `${target}: standard output goes into this input: send it to another file`,
    twoOntoOne: (output, one, other) =>
      `${output}: both ${one} and ${other} would be written here: rename one, or run them apart`,
    noParts: (name) => `${name}: the score has no parts: export it again`,
    noHorn: (name, parts) => `${name}: no part is a horn; there is ${quoted(parts)}: choose with --part`,
    partWithoutMusic: (name, part) =>
      `${name}: the part "${part}" is listed but has no music: choose another with --part, or export it again`,
    orNameKey: (name, why) => `${name}: ${why}; or name its key with --key`,
    noTransposition: 'no part states a transposition',
    workerDied: (name, why) => `${name}: could not be worked on (${why}): try it alone, with --jobs 1`,
    noCurve: (note) => `${note}: no fingering, so no closing curve: ask for another note or horn`,
    curveTooHigh: (note, highest, harmonic) =>
      `${note}: the curve is worked out up to harmonic ${highest}, and this is harmonic ${harmonic}: ask for a lower note`,
    curveAndJson:
      '--curve is text here, and --format json data: give --curve a file, or leave one of them out',
    inputWatched: 'standard input cannot be watched: name a file',
    noPluginFolder: (places) =>
      `neither MuseScore3 nor MuseScore4 is in ${places}: start the editor once, or name its plugin folder with --dir`,
    pluginNotBuilt: (path) => `the plugin is not in ${path}: run npm run build`,
  },
  readings: {
    fromName: (part) => `the score states no transposition for "${part}", so its name was taken at its word`,
    concertScore: (part) =>
      `the score is in concert pitch and names no key for "${part}", so its notes are given as they sound`,
    nowhere: 'the score states no transposition: give the part its transposition, or call it "Horn in F"',
    'no-key': (part) =>
      `the score states no transposition and its name "${part}" tells no key: give the part its transposition, or call it "Horn in F"`,
    'alto-or-basso': (part) =>
      `the score states no transposition and its name "${part}" leaves open whether B♭ is alto or basso: give the part its transposition, or call it "Horn in B♭ basso"`,
  },
  told: {
    standardInput: 'standard input',
    thisPart: 'this part',
    marksOut: 'marks taken out',
    noMarks: 'there were no marks to take out',
    cannotBePlayed: (count, bars) =>
      `${counted(count, 'note', 'notes')} cannot be played as written, in ${bars}: bellhand check says why`,
    notKept: (path, what) => `${path}: ${what} could not be kept`,
    owner: 'its owner',
    group: 'its group',
    hardLinks: 'its other hard links',
    files: (count) => counted(count, 'file', 'files'),
    failed: (count) => `${count} failed`,
    interrupted: (left) => `interrupted, ${left} not begun`,
    allDone: 'all done',
    progress: (done, total) => `${done} of ${total} files`,
    pageReady: 'ready to open in a browser',
    fileGone: (name) => `${name} is gone; waiting for it to come back`,
    watching: 'watching; Ctrl-C ends it',
    nothingNew: 'nothing new',
    findingGone: (finding) => `${finding} is gone`,
    installed: (version, path) => `installed for MuseScore ${version}: ${path}`,
    switchOn: (version, how) => `Now switch it on, once, in MuseScore ${version}: ${how}.`,
    switchOn3: 'Plugins > Plugin Manager, tick the Bellhand entries, OK',
    switchOn4: 'Home > Plugins, choose each Bellhand entry, Enable',
  },
  table: {
    bar: 'bar',
    beat: 'beat',
    written: 'written',
    hand: 'hand',
    finger: 'finger',
    valves: 'valves',
    side: 'side',
    harmonic: 'harmonic',
    natural: 'natural',
    drop: 'drop',
    off: 'off',
    verdict: 'verdict',
    why: 'why this fingering',
    asPrinted: (text) => `as the part prints: ${text}`,
    sounding: (semitones) =>
      semitones === 0
        ? 'sounding as written'
        : `sounding ${counted(Math.abs(semitones), 'semitone', 'semitones')} ${semitones < 0 ? 'lower' : 'higher'}`,
  },
  explain: {
    heading: (note, horn, verdict) => `${note}, on a ${horn}: ${verdict}`,
    noFingering: 'no fingering',
    chosenBecause: 'chosen because',
    finger: 'finger',
    naturalPitch: 'natural pitch',
    handCloses: 'hand closes',
    stoppingValve: 'stopping valve',
    stoppingValveDown: (cents) =>
      `pressed: it lowers the horn by ${cents} cents, what the closed bell adds, so finger the note as written`,
    drop: 'drop',
    comesOut: 'comes out',
    otherWays: 'Other ways, best first',
    twoClosings: (rule, acoustics) => `${rule} by the rule, ${acoustics} by the acoustics`,
    cents: (count) => counted(count, 'cent', 'cents'),
    curveTitle: (note, natural, fingering) => `${note} from ${natural}: ${fingering}, as the hand closes`,
  },
};

const chart: ChartWords = {
  stoppedNotesOn: (horn) => `Stopped notes: ${horn}`,
  notesOn: (horn) => `The hand in the bell: ${horn}`,
  fingeredReading: (example) => `${example}: the note to finger and the valves.`,
  naturalReading: 'o open; ¼ ½ ¾ so far closed; + stopped.',
  naturalPitchReading: 'In brackets: what sounds when the hand opens.',
  arrows: '↑ ↓: nearly a quarter tone above or below.',
  bassClef: 'The bass clef is meant as it stands.',
  stoppingValve: (key) =>
    `On the ${key} side the stopping valve goes down with the hand; the fingering is that of the open note.`,
  otherWaysReading:
    'Small notes: other ways to play the note before, with the cents they are off where that is heard.',
  chart: 'The chart',
  low: 'Low',
  high: 'High',
  back: 'Other ways, cents and bends',
  heads: {
    note: 'Note',
    fingering: 'Fingering',
    natural: 'Natural',
    falls: 'Falls',
    otherWays: 'Other ways',
    open: 'Open',
    fallsTo: 'As the hand closes',
  },
  centsReading: (least) =>
    `Small numbers: cents off the written note, + being sharp, where they are heard (from ${least} up).`,
  stoppedNote: (note) => `${note}, stopped`,
  slidesOn: (horn) => `What the hand bends: ${horn}`,
  slidesReading:
    'Written notes: o open, + stopped. Over each stopped note stand the valves, which stay down for the whole slide.',
  slidesReadingNatural: 'Written notes: o open; ¼ ½ ¾ so far closed; + stopped.',
  prefix: (letter, key) => `${letter} is the ${key} side.`,
  withLuck: '≈ and blue: with luck.',
  asTheHandCloses: 'As the hand closes: where each open note falls',
  asTheHandOpens: 'As the hand opens: where each stopped note rises',
  cannotBeWritten: 'What cannot be written',
  slide: (from, to, way) => `${from} to ${to} (${way})`,
  neverUp:
    'A slide up into a stopped note, or down out of one: closing lowers the tone, opening raises it again.',
  widest: (semitones) => `A slide wider than ${counted(semitones, 'semitone', 'semitones')}.`,
  tooLow: (notes) =>
    `From ${notes}: too low for the hand to bring down; at most the tone slips up a semitone.`,
  tooHigh: (notes) => `From ${notes}: so high that closing changes nothing that is heard.`,
  between: (notes) => `From ${notes}: the tone falls, but not as far as another note.`,
  notReached: (notes) => `To ${notes} stopped: they can be played, but no open note falls to them.`,
  withoutStoppingValve: 'The stopping valve stays up in every slide.',
  madeBy: 'Made by Bellhand.',
};

const curves: CurveWords = {
  none: 'The bell holds none of these harmonics',
  plotted: (harmonic, hz) =>
    `Harmonic ${harmonic}, open at ${hz} Hz; cents from the open note as the hand closes`,
  closing: 'closing',
  cents: 'cents',
  tabled: 'Cents from the open note as the hand closes',
  openHz: 'open Hz',
  pictured: (hz) => `Closing the hand on a tube of ${hz} Hz`,
  howFar: 'how far the hand is closed',
  sealed: 'sealed',
  harmonic: 'harmonic',
  described: (ways) => `From the open hand to the full stop, ${ways}.`,
  falls: (harmonic, cents) => `harmonic ${harmonic} falls ${counted(cents, 'cent', 'cents')}`,
  rises: (harmonic, cents) => `harmonic ${harmonic} rises ${counted(cents, 'cent', 'cents')}`,
  stays: (harmonic) => `harmonic ${harmonic} stays`,
};

/** What both doors say. */
export const words: Words = {
  usualNaming: 'english',
  syllables: SYLLABLES,
  findings,
  fingerings,
  horns,
  summary,
  repairs,
  answers,
  etudes,
  scores,
  panel,
};

const engraving: EngravingWords = {
  unreadable: 'this part cannot be engraved: open it in an editor, export it as MusicXML again, or use check',
  noEngraver:
    'pages are drawn by verovio, which is not installed: run npm install verovio, or use check, or chart --format musicxml',
};

const stand: StandWords = {
  law: 'The closing hand takes a tone down to a little above the next lower harmonic, never up.',
  sheets: { note: 'A note', part: 'A part', lesson: 'A lesson' },
  toSheet: 'Skip to the sheet',
  stays: 'Nothing leaves this page. It needs no network and sends nothing; your part stays with you.',
  engravedBy: 'Music engraved by Verovio (LGPL 3).',
  language: 'Language',
  itself: 'English',
  usual: 'as usual',
  namings: ['English letters', 'German letters', 'do re mi'],
  writtenNote: 'Written note',
  partKey: 'Part in',
  lower: 'A semitone lower',
  higher: 'A semitone higher',
  hand: 'The hand in the bell',
  open: 'open',
  sealed: 'sealed',
  closing: (closed, cents) => `${closed} % closed, ${cents} cents below the open tone`,
  hear: 'Hold the tone',
  silence: 'Silence',
  letClose: 'Hear the hand close',
  ladder: 'How the hand takes the tone down',
  pulled: (number, note) => `Harmonic ${number}, ${note}: this one is pulled down`,
  above: (number, note) => `Harmonic ${number}, ${note}: it comes to rest above this one`,
  comesToRest: (cents) => `sealed, ${cents} cents above it`,
  waysToPlay: 'Ways to play it, the more usual first',
  noPicture: 'The hand does nothing here that could be drawn: choose another note or horn.',
  choosePart: 'Choose a MusicXML file',
  orDrop: 'or drop one onto this page, plain or compressed.',
  putAway: 'Put away',
  example: 'Lay out the example',
  marked: 'Marked',
  cleared: 'Cleared',
  completed: 'Marked and completed',
  print: 'Print',
  engraving: 'The music is being engraved …',
  notEngraved: 'The music of this part cannot be drawn; what was found stands here all the same.',
  notRead: (name, reason) => `${name}: ${reason}.`,
  tooLarge: (name, megabytes) =>
    `${name} is larger than ${megabytes} MB: choose the part instead of the score.`,
  noHorn: (name, parts) =>
    `${name}: no part is a horn; there is ${quoted(parts)}. Say which part to take for one.`,
  noKey: (name) => `${name}: the part does not say how it transposes. Choose its key.`,
  hornPart: 'Part to read',
  findThem: 'all horns',
  handTime: 'Time for the hand in seconds',
  tempo: '♩ a minute where none is stated',
  bassClef: 'Bass clef',
  bassClefs: { auto: 'by the look of the notes', old: 'an octave low (old)', new: 'as it stands (new)' },
  teacher: 'The teacher’s copy, with fingerings',
  student: 'The student’s copy, without',
  another: 'Another one',
  usualKey: 'as suits the level',
  ownHorn: 'Own horn (a JSON file)',
  lowest: 'Lowest note',
  highest: 'Highest note',
  asSuits: 'as suits',
  etudeTempo: '♩ a minute',
  course: 'A course, one page a week',
  weeks: 'Weeks',
  weekShown: 'Week shown',
  composing: 'The course is being composed …',
  lowerFirst: 'The lowest note must lie below the highest.',
};

/** What pages say. */
export const pages: PageWords = { engraving, report, chart, curves, stand };
