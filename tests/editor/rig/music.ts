/** Small horn parts for the tests, written as MusicXML. */

/** One note, rest or word of a part. Pitches like `C#5`, written; lengths in quarters. */
export interface Played {
  /** A pitch, several for a chord from the bottom, or `null` for a rest. */
  readonly pitch: string | readonly string[] | null;
  readonly quarters?: number;
  readonly sign?: 'stopped' | 'open-string';
  /** A fingering at the note, at the lowest of a chord. */
  readonly fingering?: string;
  readonly grace?: boolean;
  /** Words printed above, before the note. */
  readonly words?: string;
  /** Joins that begin (+) or end (−) here. */
  readonly slur?: '+' | '-';
  readonly glissando?: '+' | '-';
  readonly tie?: '+' | '-';
  readonly colour?: string;
  /** Two of three, as in a triplet: three notes in the time of two. */
  readonly triplet?: boolean;
}

export interface PartOptions {
  readonly name?: string;
  readonly sound?: string;
  /** Written to sounding, in semitones and staff steps. */
  readonly transpose?: readonly [chromatic: number, diatonic: number];
  /** A second voice on the same staff, bar by bar with the first. */
  readonly second?: readonly (readonly Played[])[];
  readonly clef?: 'G' | 'F';
  readonly beats?: number;
}

/** Divisions of a quarter: room for triplets of sixteenths. */
const DIVISIONS = 24;

/** A stopped quarter. */
export function stopped(pitch: string, quarters = 1): Played {
  return { pitch, quarters, sign: 'stopped' };
}

/** An open quarter. */
export function open(pitch: string, quarters = 1): Played {
  return { pitch, quarters };
}

export function rest(quarters = 1): Played {
  return { pitch: null, quarters };
}

/** A score of one horn part. */
export function hornScore(bars: readonly (readonly Played[])[], options: PartOptions = {}): string {
  return scoreOf([{ bars, options }]);
}

/** A score of several parts. */
export function scoreOf(
  parts: readonly { readonly bars: readonly (readonly Played[])[]; readonly options?: PartOptions }[],
): string {
  const heads = parts.map(({ options = {} }, i) => {
    const { name = 'Horn in F', sound = 'brass.french-horn' } = options;
    return `<score-part id="P${i + 1}"><part-name>${name}</part-name><score-instrument id="P${i + 1}-I1"><instrument-name>${name}</instrument-name><instrument-sound>${sound}</instrument-sound></score-instrument></score-part>`;
  });
  const bodies = parts.map(
    ({ bars, options = {} }, i) =>
      `<part id="P${i + 1}">${bars.map((bar, b) => measure(bar, options, b)).join('')}</part>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?><score-partwise version="3.1"><part-list>${heads.join('')}</part-list>${bodies.join('')}</score-partwise>`;
}

/** A long part of stopped quarters that climbs up and down the stoppable range. */
export function longPart(notes: number): string {
  const names = [
    'C4',
    'D4',
    'E4',
    'F4',
    'G4',
    'A4',
    'B4',
    'C5',
    'D5',
    'E5',
    'F5',
    'E5',
    'D5',
    'C5',
    'B4',
    'A4',
    'G4',
    'F4',
  ];
  const bars = Array.from({ length: notes / 4 }, (_, b) =>
    [0, 1, 2, 3].map((k) => stopped(names[(4 * b + k) % names.length]!)),
  );
  return hornScore(bars);
}

function measure(bar: readonly Played[], options: PartOptions, index: number): string {
  const { transpose = [-7, -4], clef = 'G', beats = 4, second } = options;
  const attributes =
    index > 0
      ? ''
      : `<attributes><divisions>${DIVISIONS}</divisions><key><fifths>0</fifths></key><time><beats>${beats}</beats><beat-type>4</beat-type></time><clef><sign>${clef}</sign><line>${clef === 'G' ? 2 : 4}</line></clef>${transpose[0] === 0 ? '' : `<transpose><diatonic>${transpose[1]}</diatonic><chromatic>${transpose[0]}</chromatic></transpose>`}</attributes>`;
  const first = bar.map((played) => note(played, 1)).join('');
  const lower = second?.[index];
  const back = lower
    ? `<backup><duration>${beats * DIVISIONS}</duration></backup>${lower.map((played) => note(played, 2)).join('')}`
    : '';
  return `<measure number="${index + 1}">${attributes}${first}${back}</measure>`;
}

function note(played: Played, voice: number): string {
  const {
    pitch,
    quarters = 1,
    sign,
    fingering,
    grace,
    words,
    slur,
    glissando,
    tie,
    colour,
    triplet,
  } = played;
  const direction = words
    ? `<direction placement="above"><direction-type><words>${words}</words></direction-type></direction>`
    : '';
  const ticks = Math.round(quarters * DIVISIONS * (triplet ? 2 / 3 : 1));
  const duration = grace ? '' : `<duration>${ticks}</duration>`;
  const type = `<type>${{ 4: 'whole', 3: 'half', 2: 'half', 1.5: 'quarter', 1: 'quarter', 0.5: 'eighth', 0.25: '16th' }[quarters] ?? 'quarter'}</type>${quarters === 3 || quarters === 1.5 ? '<dot/>' : ''}${triplet ? '<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>' : ''}`;
  if (pitch === null) return `${direction}<note><rest/>${duration}<voice>${voice}</voice>${type}</note>`;
  const pitches = typeof pitch === 'string' ? [pitch] : pitch;
  const technical = (sign ? `<${sign}/>` : '') + (fingering ? `<fingering>${fingering}</fingering>` : '');
  const ends = (name: string, end: '+' | '-' | undefined) =>
    end ? `<${name} type="${end === '+' ? 'start' : 'stop'}"${name === 'tied' ? '' : ' number="1"'}/>` : '';
  return (
    direction +
    pitches
      .map((name, i) => {
        const [, step, alter, octave] = /^([A-G])([#b]?)(\d)$/.exec(name)!;
        const sounds = tie ? `<tie type="${tie === '+' ? 'start' : 'stop'}"/>` : '';
        const notations = `${ends('tied', tie)}${i === 0 ? ends('slur', slur) + ends('glissando', glissando) + (technical ? `<technical>${technical}</technical>` : '') : ''}`;
        return `<note${colour ? ` color="${colour}"` : ''}>${grace ? '<grace/>' : ''}${i > 0 ? '<chord/>' : ''}<pitch><step>${step}</step>${alter ? `<alter>${alter === '#' ? 1 : -1}</alter>` : ''}<octave>${octave}</octave></pitch>${duration}${sounds}<voice>${voice}</voice>${type}${notations ? `<notations>${notations}</notations>` : ''}</note>`;
      })
      .join('')
  );
}
