/** Every slide that the hand alone makes between an open note and a stopped one, by the rules that check a part. */
import {
  type Examination,
  type ExaminedNote,
  examine,
  type Fingering,
  type FingeringReason,
  fingerings,
  formatPitch,
  nameNear,
  type Pitch,
  parsePitch,
  passageOf,
  pitchCents,
  type Settings,
  type Side,
  soundingCents,
  stop,
  transpositionOf,
} from '../../core/index.ts';

/** The written notes asked about. From memory: what a composer may write. */
const LOWEST = parsePitch('F2');
const HIGHEST = parsePitch('C6');
/** Slides are looked for down to an octave, in semitones: the widest fall, of the 3rd harmonic, is about half of it. */
const FURTHEST = 12;

/** One slide, which runs both ways on one fingering. */
export interface HandSlide {
  /** The open note first, the stopped one after it. */
  readonly examination: Examination;
  readonly open: ExaminedNote;
  readonly stopped: ExaminedNote;
  /** The fingering of the stopped note, which the open one shares. */
  readonly fingering: Fingering;
  readonly isSure: boolean;
}

/** Why no slide starts at an open note: it cannot be brought down, does not change, or falls between two notes. */
export type NoSlide = 'too-low' | 'too-high' | 'between';

/** What the hand can do on one horn. */
export interface HandSlides {
  /** From the lowest open note; of one note, the widest fall first. */
  readonly slides: readonly HandSlide[];
  /** Open notes without a slide, from the lowest. */
  readonly none: { readonly [why in NoSlide]: readonly Pitch[] };
  /** Notes that can be stopped, but that no open note falls to, from the lowest. */
  readonly notReached: readonly Pitch[];
}

/** Works out the slides of a player's horn. A stopping valve is left alone: it would be a valve change in mid-slide. */
export function handSlides(asked: Settings): HandSlides {
  const player = { ...asked, horn: { ...asked.horn, sides: asked.horn.sides.map(withoutStoppingValve) } };
  const transposition = transpositionOf(player);
  const slides: HandSlide[] = [];
  const none: { [why in NoSlide]: Pitch[] } = { 'too-low': [], 'too-high': [], between: [] };
  const stoppable: Pitch[] = [];
  for (let cents = pitchCents(LOWEST); cents <= pitchCents(HIGHEST); cents += 100) {
    const written = nameNear(LOWEST, cents);
    const sounding = soundingCents(written, transposition);
    if (fingerings(sounding, 'stopped', player).some(isPlayable)) stoppable.push(written);
    const asOpen = fingerings(sounding, 'open', player);
    if (asOpen.length === 0) continue;
    const before = slides.length;
    for (let semitones = FURTHEST; semitones > 0; semitones--) {
      const target = nameNear(LOWEST, cents - 100 * semitones);
      const text = `${formatPitch(written)}o/2~ ${formatPitch(target)}+/2`;
      const slide = slideIn(examine(passageOf(text, { transposition }), player));
      if (slide) slides.push(slide);
    }
    if (slides.length === before) none[whyNone(asOpen, player)].push(written);
  }
  const reached = new Set(slides.map(({ stopped }) => pitchCents(stopped.note.written)));
  return { slides, none, notReached: stoppable.filter((written) => !reached.has(pitchCents(written))) };
}

/** The side as the hand alone stops it. */
function withoutStoppingValve(side: Side): Side {
  return side.stoppingValveCents === 0
    ? side
    : { ...side, stoppingValveCents: 0, fingeredNote: 'natural-pitch' };
}

function slideIn(examination: Examination): HandSlide | null {
  const { notes, findings } = examination;
  const [open, stopped] = [notes[0]!, notes[1]!];
  const fingering = stopped.fingering;
  if (!open.fingering || !fingering || findings.some(({ severity }) => severity === 'impossible'))
    return null;
  if (open.fingering.harmonic !== fingering.harmonic || !isPlayable(fingering)) return null;
  const isSure = findings.length === 0 && open.verdict === 'sure' && stopped.verdict === 'sure';
  return { examination, open, stopped, fingering, isSure };
}

/** Reasons for which a stopped note is no end of a slide, though it may be played. */
const NO_END: readonly FingeringReason[] = ['lip-only', 'below-the-hand', 'nothing-changes'];

function isPlayable({ reasons }: Fingering): boolean {
  return !reasons.some((reason) => NO_END.indexOf(reason) >= 0);
}

function whyNone(asOpen: readonly Fingering[], { handOffsetCents }: Settings): NoSlide {
  const limits = asOpen
    .filter(({ tube }) => tube.side.stoppable)
    .map(({ tube, harmonic }) =>
      harmonic < 2 ? 'below-the-hand' : stop(tube, harmonic, handOffsetCents).limit,
    );
  if (limits.some((limit) => limit === null || limit === 'wants-to-rise')) return 'between';
  return limits.indexOf('nothing-changes') >= 0 ? 'too-high' : 'too-low';
}
