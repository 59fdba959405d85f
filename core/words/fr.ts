/** Everything that is said in French, area by area; long because it is all of it. */

import type { AnswerWords } from './areas/answers.ts';
import type { ChartWords } from './areas/chart.ts';
import type { CommandLineWords } from './areas/commandLine.ts';
import type { CurveWords } from './areas/curves.ts';
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornFileWords } from './areas/hornFiles.ts';
import type { HornName, HornWords } from './areas/horns.ts';
import type { PanelWords } from './areas/panel.ts';
import type { RepairWords } from './areas/repairs.ts';
import type { ReportWords } from './areas/report.ts';
import type { ScoreWords } from './areas/scores.ts';
import type { StandWords } from './areas/stand.ts';
import type { SummaryWords } from './areas/summary.ts';
import type { EngravingWords, PageWords, Words } from './areas/words.ts';
import { groupedBy, listed } from './listed.ts';
import { SYLLABLES } from './noteNaming.ts';

const grouped = (value: number) => groupedBy(value, ' ', 5);

/** Names of parts, in quotation marks; a dash for none. */
const quoted = (names: readonly string[]) => names.map((name) => `« ${name} »`).join(', ') || '–';

/** `0 note`, `1 note`, `2 notes`: in French nothing is singular too. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count < 2 ? one : many}`;
}

const findings: FindingWords = {
  'unknown-key': () => ({
    brief: 'quel ton',
    message: 'La partie ne dit pas ici comment elle transpose : ses notes bouchées restent donc sans doigté.',
    remedy: 'Indiquer la transposition de la partie, ou nommer le cor avec son ton, comme « Cor en fa ».',
  }),
  'which-octave': ({ from, bassClef, because }, { note }) => {
    const why =
      because === 'too-low'
        ? 'lue telle quelle, la partie descendrait plus bas que le cor'
        : 'les sauts à l’entrée et à la sortie font penser à l’ancienne notation';
    return {
      brief: 'quelle octave',
      message:
        bassClef === 'old'
          ? `À partir de ${note(from)}, la clé de fa est lue en ancienne notation, une octave plus haut qu’elle n’est écrite : ${why}.`
          : `À partir de ${note(from)}, la clé de fa est lue telle quelle ; pourtant ${why}, qui sonne une octave plus haut.`,
      remedy: 'Préciser, par le réglage de la clé de fa, si l’ancienne ou la nouvelle notation est voulue.',
    };
  },
  'below-the-hand': ({ written, state, horn }, speech) => ({
    brief: 'trop grave',
    message: `Le ${speech.note(written)} ${speech.state(state)} est plus grave que tout ce que la main peut tenir sur un ${speech.horn(horn)}.`,
    remedy: 'L’écrire ouvert, prendre une sourdine bouchée, ou le mettre à l’octave supérieure.',
  }),
  'off-pitch': ({ written, horn, fingering, nearest, way }, speech) => {
    const note = speech.note(written);
    if (fingering)
      return {
        brief: 'pas juste',
        message: `Le ${note} avec ${speech.valves(fingering)} est ${speech.deviation(fingering.deviationCents)} : les lèvres doivent aider.`,
        remedy:
          'Corriger avec les lèvres et un peu plus ou un peu moins de main, ou essayer un autre doigté.',
      };
    const none = `Aucun doigté d’un ${speech.horn(horn)} ne donne ici le ${note}`;
    return {
      brief: 'sans doigté',
      message: nearest
        ? `${none} ; le plus proche, ${speech.valves(nearest)}, est ${speech.deviation(nearest.deviationCents)}.`
        : `${none}.`,
      remedy: {
        'another-crook': 'Choisir un autre ton de rechange, ou changer la note.',
        'play-open': 'Changer la note, ou la jouer ouverte.',
        'another-note': 'Changer la note : même ouverte, elle est hors de portée du cor.',
        'another-side': 'La boucher sur un côté en fa ou avec un piston de bouché, ou changer la note.',
      }[way],
    };
  },
  'rises-not-bends': ({ written, state, fingering, limit, surer }, speech) => {
    const note = `Le ${speech.note(written)} ${speech.state(state)}`;
    const { harmonic } = fingering;
    const rest =
      'emander une sourdine bouchée, ou écrire la note plus haut ou ouverte ; laisser du temps et une attaque douce.';
    return {
      brief: 'veut monter',
      message:
        limit === 'wants-to-rise'
          ? `${note} est pris sur l’harmonique ${harmonic} : si bas, la main qui se ferme laisse le son glisser vers le haut au lieu de l’abaisser.`
          : `${note} n’est tenu que par les lèvres : sur l’harmonique ${harmonic}, la main ne peut que hausser d’un demi-ton le son d’en dessous.`,
      remedy: surer
        ? `Le prendre sur ${speech.fingering(surer)} (${speech.deviation(surer.deviationCents)}), où la main abaisse encore le son, ou d${rest}`
        : `D${rest}`,
    };
  },
  'above-the-hand': ({ written, fingering }, speech) => ({
    brief: 'sans effet',
    message: `Le ${speech.note(written)} est pris sur l’harmonique ${fingering.harmonic}, où la main qui se ferme ne change la hauteur que de ${counted(Math.round(fingering.dropCents), 'cent', 'cents')} : le timbre se voile, le son ne descend pas.`,
    remedy: `Le doigter comme ouvert (${speech.valves(fingering)}) avec la main fermée, ou écrire le passage bouché plus bas.`,
  }),
  'mute-and-hand': ({ written, state }, speech) => ({
    brief: 'sourdine en place',
    message: `Le ${speech.note(written)} doit être ${speech.state(state)} alors que la sourdine est encore dans le pavillon, là où la main devrait aller.`,
    remedy:
      'Faire d’abord ôter la sourdine (en l’indiquant et en laissant le temps), ou demander une sourdine bouchée.',
  }),
  'closes-upward': ({ from, to, maySlip, reached: falls, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'montée incertaine',
          message: `De ${note(from)} ouvert à ${note(to)} bouché, le son doit glisser d’un demi-ton vers le haut. Sur l’harmonique 4, il y tend quand la main se ferme, mais peut aussi descendre${falls.length > 0 ? `, à ${reached(falls)}` : ''}.`,
          remedy: `Le mener vers le haut avec les lèvres, ou écrire le glissando plus bas, où le son monte de lui-même : sur l’harmonique 3 et au-dessous${starts.length > 0 ? ` ; ou partir de ${reached(starts)}, que la main fait descendre à ${note(to)}` : ''}.`,
        }
      : {
          brief: 'ferme en montant',
          message: `De ${note(from)} ouvert à ${note(to)} bouché, la musique monte, mais la main qui se ferme fait descendre le son${falls.length > 0 ? ` : ${note(from)} descend à ${reached(falls)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Partir de ${reached(starts)}, que la main fait descendre à ${note(to)}, ou supprimer le trait et laisser le corniste changer de doigté.`
              : 'Inverser le trait, ou le supprimer et laisser le corniste changer de doigté.',
        },
  'opens-downward': ({ from, to, maySlip, reached: rises, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'descente incertaine',
          message: `De ${note(from)} bouché à ${note(to)} ouvert, le son doit glisser d’un demi-ton vers le bas. Vers l’harmonique 4, il le peut quand la main s’ouvre, mais peut aussi monter${rises.length > 0 ? `, à ${reached(rises)}` : ''}.`,
          remedy: `Le mener vers le bas avec les lèvres, ou écrire le glissando plus bas, où le son descend de lui-même : sur l’harmonique 3 et au-dessous${starts.length > 0 ? ` ; ou partir, bouché, de ${reached(starts)}, qui monte à ${note(to)} en s’ouvrant` : ''}.`,
        }
      : {
          brief: 'ouvre en descendant',
          message: `De ${note(from)} bouché à ${note(to)} ouvert, la musique descend, mais la main qui s’ouvre laisse monter le son${rises.length > 0 ? ` : ${note(from)} monte à ${reached(rises)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Partir, bouché, de ${reached(starts)}, qui monte à ${note(to)} en s’ouvrant, ou supprimer le trait et laisser le corniste changer de doigté.`
              : 'Inverser le trait, ou le supprimer et laisser le corniste changer de doigté.',
        },
  'no-common-tube': ({ from, to, closes, reached, nearest, starts }, speech) => {
    const start = speech.note(from);
    const ends = nearest ? `inir sur ${speech.reached([nearest])}, la note la plus proche à portée` : null;
    const begins =
      starts.length > 0 ? `artir de ${speech.reached(starts)}, ${closes ? 'ouvert' : 'bouché'}` : null;
    return {
      brief: 'sans doigté commun',
      message:
        `Aucun doigté ne tient à la fois ${start} et ${speech.note(to)}, et la main n’agit que sur un seul` +
        (reached.length > 0
          ? ` : ${closes ? 'en se fermant' : 'en s’ouvrant'}, elle mène de ${start} à ${speech.reached(reached)}.`
          : ` ; sur aucun des doigtés de ${start} elle n’atteint une note de la gamme.`),
      remedy: ends
        ? `F${ends}${begins ? `, ou p${begins}` : ''}.`
        : begins
          ? `P${begins}.`
          : 'Supprimer le trait et laisser le corniste changer de doigté.',
    };
  },
  'slur-leaps': ({ from, to, joined }, { note }) => ({
    brief: 'liaison rompue',
    message: `Une liaison ${joined === 'tie' ? 'de prolongation' : 'd’expression'} va de ${note(from)} à ${note(to)} par-dessus un changement de main, et aucun doigté ne tient les deux notes : le son saute.`,
    remedy: `Attaquer la seconde note, couper ${joined === 'tie' ? 'la prolongation' : 'la liaison'} à cet endroit, ou garder les deux notes ouvertes ou bouchées.`,
  }),
  'hand-too-quick': (
    { from, to, goesIn, seconds, neededSeconds, assumedQuartersPerMinute: tempo },
    { note, decimal },
  ) => ({
    brief: 'main trop rapide',
    message: `Entre ${note(from)} et ${note(to)}, la main a ${decimal(seconds, 2)} s pour ${goesIn ? 'entrer' : 'sortir'}${tempo === null ? '' : ` (à ♩ = ${decimal(tempo, 1)}, puisque la partie n’indique pas de tempo)`} ; il lui faut environ ${decimal(neededSeconds, 2)} s.`,
    remedy:
      'Mettre un silence ou une note plus longue avant le changement, garder les deux notes ouvertes ou bouchées, ou les partager entre deux cornistes.',
  }),
  'fingering-misses': ({ written, state, horn, text, instead }, speech) => ({
    brief: 'autre note',
    message: `« ${text} » est écrit au-dessus du ${speech.note(written)} ${speech.state(state)}, mais ne le donne pas sur un ${speech.horn(horn)}.`,
    remedy: `Doigter ${speech.valves(instead)}, ou effacer le doigté écrit.`,
  }),
  'sign-against-word': ({ written, state, word, wordState, sinceMeasure }, speech) => ({
    brief: 'signe ou mot',
    message: `Le signe sur ${speech.note(written)} dit « ${speech.state(state)} », mais « ${word} » (mesure ${sinceMeasure}) vaut toujours : ensuite, ce qui n’a pas de signe redevient ${speech.state(wordState)}.`,
    remedy:
      state === 'open'
        ? 'Écrire ici un mot d’annulation si la suite est ouverte, ou mettre le signe à chaque note.'
        : 'Annuler le mot, ou supprimer le signe.',
  }),
  'never-opened': ({ word, state, sinceMeasure, affectedCount, isLapsed }, speech) => ({
    brief: 'encore bouché',
    message: isLapsed
      ? `« ${word} » (mesure ${sinceMeasure}) n’a jamais été annulé, mais ses signes s’arrêtent avant cette note : ${affectedCount < 2 ? 'elle est lue ouverte' : `les ${affectedCount} notes sans signe à partir d’ici sont lues ouvertes`}.`
      : `« ${word} » (mesure ${sinceMeasure}) n’a jamais été annulé : ${affectedCount < 2 ? 'cette note aussi est lue comme' : `les ${affectedCount} notes à partir de cette entrée aussi sont lues comme`} « ${speech.state(state)} ».`,
    remedy: isLapsed
      ? 'Écrire ici le mot d’annulation, ou mettre le signe sur chaque note qui reste bouchée.'
      : 'Écrire le mot d’annulation là où le jeu ouvert reprend, ou répéter le mot ici s’il vaut encore.',
  }),
  'echo-or-stopped': ({ word, state, from }, speech) => ({
    brief: 'écho ou bouché',
    message: `« ${word} » est lu comme « ${speech.state(state)} » à partir de ${speech.note(from)} ; d’autres éditions l’entendent comme ${state === 'echo' ? 'bouché' : 'écho'}, ce qui se doigte un ton plus ${state === 'echo' ? 'bas' : 'haut'}.`,
    remedy: 'Mettre + sur les notes si le pavillon doit être bouché, ou écrire « son d’écho » sinon.',
  }),
};

const repairs: RepairWords = {
  labels: {
    'octave-up': (note) => `Octave au-dessus (${note})`,
    'octave-down': (note) => `Octave au-dessous (${note})`,
    'other-start': (note) => `Partir de ${note}`,
    'other-end': (note) => `Finir sur ${note}`,
    'line-removed': () => 'Enlever la ligne',
    'slur-removed': () => 'Enlever la liaison',
    'tie-broken': () => 'Couper la liaison de durée',
    'sign-added': (sign, count) => (count > 1 ? `Écrire ${sign} sur ${count} notes` : `Écrire ${sign}`),
    'sign-removed': (_, count) => (count > 1 ? `Ôter le signe de ${count} notes` : 'Ôter le signe'),
    'fingering-taken': (valves) => `Doigter ${valves}`,
    'fingering-removed': (_, count) => (count > 1 ? 'Effacer les deux doigtés' : 'Effacer le doigté'),
    'opening-word': (word) => `Écrire ${word}`,
    'closing-word': (word) => `Écrire ${word}`,
    'stopping-mute': (word) => `Écrire ${word}`,
    'mute-out': (word) => `Écrire ${word}`,
  },
  done: (label) => `Fait : ${label}.`,
  takenBack: (label) => `Annulé : ${label}.`,
  doneAgain: (label) => `Rétabli : ${label}.`,
  quoted: (text) => `« ${text} »`,
};

const answers: AnswerWords = {
  played: (fingered, fingering, natural) => `Doigter ${fingered}, ${fingering} ; son naturel ${natural}`,
  noFingering: 'Aucun doigté de ce cor ne la donne',
  alsoSure: (valves) => `Sûrs aussi : ${valves}`,
  nearestSure: (notes) => `Sûres à côté : ${notes}`,
  closing: (reached) =>
    reached === ''
      ? 'Ouverte, puis fermée par la main : ne mène à aucune note'
      : `Ouverte, puis fermée par la main : mène à ${reached}`,
  opening: (reached) =>
    reached === ''
      ? 'Bouchée, puis ouverte : ne mène à aucune note'
      : `Bouchée, puis ouverte : mène à ${reached}`,
};

const report: ReportWords = {
  page: {
    skip: 'Aller à la musique',
    onThisPage: 'Sur cette page',
    howToRead: 'Comment lire cette page',
    fingeringsOf: (part) => `Doigtés : ${part}`,
    music: 'La musique',
    madeFrom: (file) =>
      `Fait par Bellhand à partir de ${file}. La page n’a besoin ni de réseau ni de script ; on peut l’imprimer telle quelle.`,
    barsTo: (first, last) => `mesures ${first} à ${last}`,
    engraved: (bars) => `${bars}, gravure`,
  },
  severities: { impossible: 'injouable', risky: 'risqué', advice: 'pour la page' },
  table: {
    none: 'Aucune note de cette partie n’est bouchée.',
    labelOf: (part) => `Tableau des doigtés : ${part}`,
    caption:
      'Chaque note bouchée une fois pour chaque façon de la jouer, depuis la plus grave. Les hauteurs sont les hauteurs écrites.',
    note: 'Note',
    hand: 'Main',
    fingeredAs: 'Doigté',
    natural: 'Son naturel',
    drop: 'Abaissement',
    offBy: 'Écart',
    verdict: 'Verdict',
    otherWays: 'Autres doigtés',
    bars: 'Mesures',
    notes: (count) => counted(count, 'note', 'notes'),
  },
  glissando: {
    wanted: (note) => `${note} voulu`,
    natural: 'naturel',
    stopped: 'bouché',
    leads: (from, start, to, end) => `La musique mène de ${from} ${start} à ${to} ${end}.`,
    closes: (from, to, fingering) => `La main qui se ferme mène ${from} à ${to} (${fingering}).`,
    opens: (from, to, fingering) => `La main qui s’ouvre mène ${from} à ${to} (${fingering}).`,
    nowhere: 'La main n’atteint aucune note qui ait un nom.',
  },
  reading: {
    lines: (key) =>
      `À chaque note bouchée se trouvent deux lignes. La plus proche de la note est le doigté : la note à penser et les pistons, avec T pour le côté en ${key}. L’autre, entre parenthèses, est le son naturel : ce qui sonnerait sur ce doigté, la main ouverte.`,
    vermillion: 'vermillon',
    impossible: 'aucune main ne peut le faire tel qu’écrit.',
    blue: 'bleu',
    risky: 'jouable avec de la chance.',
    rings:
      'Un cercle sous une note porte le numéro de la remarque placée à côté ; la remarque ramène au cercle.',
    pitches:
      'Les hauteurs sont les hauteurs écrites. L’abaissement dit de combien la main fait descendre le son ; l’écart, à quelle distance de la note on arrive, + étant trop haut. Cent cents (¢) font un demi-ton.',
  },
  readFor: (horn) => `Lu pour : ${horn}.`,
  stoppedNotesIn: (title) => `Sons bouchés dans ${title}`,
  cannotBePlayed: (count) => (count === 1 ? '1 note est injouable' : `${count} notes sont injouables`),
  canBePlayed: 'Rien ici n’est injouable',
  areRisky: (count) => (count === 1 ? '1 note est risquée' : `${count} notes sont risquées`),
  nothingStopped: 'Rien n’est bouché dans cette partie.',
  findings: 'Ce qui a été relevé, le plus grave d’abord',
  nothingFound: 'Rien n’a été relevé.',
  bars: (count) => (count === 1 ? 'mesure' : 'mesures'),
  elsewhere: (count) =>
    count === 1 ? '1 autre note dans le même cas' : `${count} autres notes dans le même cas`,
  heardClosing: (note, way) => `À écouter : ${note} pendant que la main ferme (${way})`,
  heardOpening: (note, way) => `À écouter : ${note} pendant que la main ouvre (${way})`,
  folded: (stopped) =>
    `${stopped === 0 ? 'rien de bouché' : stopped === 1 ? '1 son bouché' : `${stopped} sons bouchés`}, rien n’a été relevé`,
};

const fingerings: FingeringWords = {
  states: {
    open: 'ouvert',
    'half-stopped': 'mi-bouché',
    stopped: 'bouché',
    echo: 'en écho',
    'stopping-mute': 'avec sourdine bouchée',
    'straight-mute': 'avec sourdine',
  },
  verdicts: { sure: 'sûr', risky: 'risqué', impossible: 'injouable' },
  severities: { impossible: 'injouable', risky: 'risqué', advice: 'conseil' },
  reasons: {
    'wants-to-rise': 'si bas sur ce côté, la main qui se ferme laisse le son glisser vers le haut',
    'lip-only': 'au-dessous de ce que la main abaisse : seules les lèvres tiennent le son',
    'below-the-hand': 'sous cet harmonique, il n’y en a plus vers lequel la main puisse descendre',
    'nothing-changes': 'si haut que la main ne change plus la hauteur',
    'off-pitch': 'pas juste : les lèvres doivent aider',
    'unusual-degree': 'demande une fermeture inhabituelle',
  },
  briefReasons: {
    'wants-to-rise': 'glisse vers le haut',
    'lip-only': 'lèvres seules',
    'below-the-hand': 'hors de portée',
    'nothing-changes': 'ne descend pas',
    'off-pitch': 'pas juste',
    'unusual-degree': 'fermeture inhabituelle',
  },
  forSharpHand: 'l’harmonique d’en dessous est bas : pour une main qui bouche trop haut',
  choices: {
    'one-tube': (instead, neighbour) =>
      `au lieu de ${instead} : même doigté que ${neighbour}, auquel la note est liée`,
    'one-side': (instead, neighbour) =>
      `au lieu de ${instead} : reste sur le côté de ${neighbour}, faute de temps pour en changer`,
    'fewer-changes': (instead, neighbour) =>
      `au lieu de ${instead} : moins de pistons à changer à côté de ${neighbour} à cette vitesse`,
  },
  open: (key) => `cor en ${key} à vide`,
  pressed: (key, valves) => `cor en ${key} ${valves}`,
  crook: (key) => `ton de ${key}`,
  harmonic: (number) => `harmonique ${number}`,
  inTune: 'juste',
  sharp: (cents) => `trop haut de ${counted(cents, 'cent', 'cents')}`,
  flat: (cents) => `trop bas de ${counted(cents, 'cent', 'cents')}`,
  closings: { open: 'ouvert', full: 'entier' },
  keys: {
    high: (key) => `${key} aigu`,
    alto: (key) => `${key} aigu`,
    basso: (key) => `${key} grave`,
  },
  or: 'ou',
  and: 'et',
  decimalSign: ',',
};

const horns: HornWords = {
  names: new Map<string, HornName>([
    ['double', (key) => `cor double en ${key('F')} et ${key('Bb')}`],
    ['single-f', (key) => `cor simple en ${key('F')}`],
    ['single-bflat', (key) => `cor simple en ${key('Bb')}`],
    ['single-bflat-stop-valve', (key) => `cor simple en ${key('Bb')} avec piston de bouché`],
    ['double-stop-valve', (key) => `cor double avec piston de bouché sur le côté en ${key('Bb')}`],
    ['double-ascending', () => 'cor double avec troisième piston ascendant'],
    ['descant', (key) => `cor discant en ${key('Bb')} et ${key('high F')}`],
    ['triple-high-f', (key) => `cor triple en ${key('F')}, ${key('Bb')} et ${key('high F')}`],
    ['natural', () => 'cor naturel dans le ton que demande la partie'],
  ]),
  onCrook: (key) => `cor naturel avec le ton de ${key}`,
};

const summary: SummaryWords = {
  stoppedNotes: (count, verdicts) =>
    count === 0 ? 'aucune note bouchée' : `${counted(count, 'note bouchée', 'notes bouchées')} : ${verdicts}`,
  verdicts: {
    sure: (count) => counted(count, 'sûre', 'sûres'),
    risky: (count) => counted(count, 'risquée', 'risquées'),
    impossible: (count) => counted(count, 'injouable', 'injouables'),
  },
  openNotes: (verdicts) => `notes ouvertes : ${verdicts}`,
  bars: (listed, count) => `${count < 2 ? 'mesure' : 'mesures'} ${listed}`,
  more: (count) => counted(count, 'autre', 'autres'),
  bar: (measure) => `mesure ${measure}`,
  place: (measure, beat) => `mesure ${measure}, temps ${beat}`,
  nothingAdded: 'il ne manquait ni signe ni mot',
  signs: (count) => counted(count, 'signe', 'signes'),
  words: (count) => counted(count, 'mot', 'mots'),
  added: (what) => `ajouté : ${what}`,
  keptColour: (count) =>
    counted(
      count,
      'note douteuse avait déjà une couleur et l’a gardée',
      'notes douteuses avaient déjà une couleur et l’ont gardée',
    ),
};

const etudes: EtudeWords = {
  kinds: {
    seal: {
      name: 'sons tenus',
      title: 'Derrière le volet',
      trains: 'Sons tenus, le pavillon bien fermé : le même son du premier au dernier instant.',
      trainsOnNaturalHorn:
        'Sons tenus à la main : les notes couvertes aussi pleines et stables que les notes ouvertes.',
    },
    match: {
      name: 'note ouverte et bouchée',
      title: 'Deux fois la même note',
      trains:
        'Jouer chaque note la main libre, puis la retrouver la main fermée, de même hauteur et de même force.',
      trainsOnNaturalHorn:
        'Jouer la note ouverte, puis sa voisine couverte, de même force et de même couleur.',
    },
    bend: {
      name: 'son infléchi',
      title: 'Contre la porte',
      trains:
        'Pistons et lèvres immobiles : la main qui ferme laisse descendre le son, celle qui ouvre le laisse remonter.',
      trainsOnNaturalHorn:
        'Lèvres immobiles : la main qui ferme laisse descendre le son, celle qui ouvre le laisse remonter.',
    },
    scale: {
      name: 'gammes et accords',
      title: 'L’escalier dans le noir',
      trains: 'Gammes et accords brisés la main fermée : connaître les doigtés, centrer chaque note.',
      trainsOnNaturalHorn:
        'Gammes et accords brisés à la main : rapprocher les notes couvertes des notes ouvertes.',
    },
    phrase: {
      name: 'phrase et écho',
      title: 'Par-dessus la vallée',
      trains: 'Répondre à chaque phrase la main fermée : plus doux, mais de même dessin et de même hauteur.',
      trainsOnNaturalHorn:
        'Répondre doucement à chaque phrase : aucune note couverte ne doit ressortir ni s’effacer.',
    },
    change: {
      name: 'changements de plus en plus rapides',
      title: 'La barrière qui bat',
      trains:
        'Fermer et ouvrir en notes de plus en plus brèves : la main suit le temps, la hauteur ne bouge pas.',
      trainsOnNaturalHorn:
        'De la note ouverte à la note couverte et retour, de plus en plus vite : la main suit le temps.',
    },
  },
  lesson: 'Leçon pour la main qui bouche',
  lessonOfWeek: (week) => `Leçon pour la main qui bouche, semaine ${week}`,
  hornIn: (key) => `Cor en ${key}`,
  naturalHornIn: (key) => `Cor naturel en ${key}`,
  key: { major: (tonic) => `${tonic} majeur`, minor: (tonic) => `${tonic} mineur` },
  level: (level, seed, difficulty) => `Niveau ${level}, graine ${seed}, difficulté ${difficulty}.`,
  numbers: (keys, semitones, changes) =>
    `${keys}, étendue de ${counted(semitones, 'demi-ton', 'demi-tons')}, ${counted(changes, 'changement', 'changements')} de main par minute.`,
  noRisk: 'Aucune note risquée.',
  risks: (count) =>
    `${counted(count, 'note risquée', 'notes risquées')} (en bleu, ≈), où le son peut glisser vers le haut.`,
  naturalLegend: 'o ouvert, ¼ ½ ¾ et + fermé, chacun jusqu’au signe suivant.',
  valveLegend:
    'Pavillon fermé, piston de bouché enfoncé : les doigtés des notes bouchées sont ceux de la note écrite, côté si♭.',
  advice: [
    'Se reposer aussi longtemps qu’on a joué.',
    'Arrêter quand les lèvres fatiguent ou que la main fait mal.',
  ],
  noTime: (seconds, tempo) =>
    `une main qui met ${seconds} s n’a pas le temps dans une blanche à ${tempo} temps par minute : choisir un tempo plus lent ou une main plus rapide`,
  tooFew: {
    notes: (low, high, horn, count) =>
      `de ${low} à ${high} un ${horn} ${count === 0 ? 'n’a aucune note' : `n’a que ${counted(count, 'note', 'notes')}`} de la tonalité que la main fasse sûrement : choisir une étendue plus large, une autre tonalité, un autre genre ou un autre cor`,
    bends: (low, high, horn, count) =>
      `de ${low} à ${high} un ${horn} ${count === 0 ? 'n’a aucun son' : `n’a que ${counted(count, 'son', 'sons')}`} que la main puisse baisser et laisser remonter : choisir une étendue plus large, une autre tonalité, un autre genre ou un autre cor`,
  },
  noHome: (tonic, low, high, horn) =>
    `un ${horn} n’a pas de ${tonic} sûr où revenir de ${low} à ${high} : choisir une autre tonalité ou une étendue plus large`,
};

const scores: ScoreWords = {
  place: (line, column) => `ligne ${line}, colonne ${column}`,
  cutShort: (plain) => `le fichier est tronqué (${plain}) : le chercher ou l’exporter de nouveau`,
  unmatchedClosing: (plain) =>
    `une balise fermante n’a pas d’ouvrante (${plain}) : exporter de nouveau la partition avec le programme qui l’a écrite`,
  notXml: (plain) => `ce n’est pas du XML (${plain}) : exporter la partition en MusicXML`,
  secondDocument: (plain) =>
    `il y a un second document dans le même fichier (${plain}) : garder une partition par fichier`,
  undeclaredEntity: (plain) =>
    `le fichier emploie une entité qu’il ne déclare pas (${plain}) : écrire le caractère même, ou &amp; pour &`,
  attributeTwice: (plain) =>
    `un attribut est donné deux fois (${plain}) : exporter de nouveau la partition avec le programme qui l’a écrite`,
  disallowedCharacter: (plain) =>
    `un caractère se trouve là où XML ne le permet pas (${plain}) : écrire < et & comme &lt; et &amp;, ou exporter de nouveau la partition avec le programme qui l’a écrite`,
  malformed: (plain) =>
    `ce n’est pas du XML bien formé (${plain}) : exporter de nouveau la partition avec le programme qui l’a écrite`,
  doctypeTooLong: (most) =>
    `le type de document dépasse ${grouped(most)} caractères : vérifier d’où vient le fichier`,
  entityTooLong: (name, most) =>
    `l’entité « ${name} » représente plus de ${grouped(most)} caractères : vérifier d’où vient le fichier`,
  entitiesTooLong: (name, most) =>
    `des entités comme « ${name} » représentent en tout plus de ${grouped(most)} caractères : vérifier d’où vient le fichier`,
  entityInCircle: (name) =>
    `l’entité « ${name} » se représente elle-même, ou presque : vérifier d’où vient le fichier`,
  notMusicXml: (element) => `<${element}> n’est pas une partition MusicXML : exporter la musique en MusicXML`,
  partTwice: (part) =>
    `la partie « ${part} » se trouve ici deux fois : en garder une, ou donner un autre id à l’une d’elles`,
  idTwice: (id) => `deux parties ont l’id « ${id} » : donner à chacune le sien`,
  noPart: (request, parts) =>
    `il n’y a pas de partie « ${request} » : choisir une des parties de cette partition (${parts.length > 0 ? quoted(parts) : 'aucune'})`,
  tooMuchMusic: (most) =>
    `les parties à lire ont plus de ${grouped(most)} notes, silences et mots, plus qu’aucune partie n’en a : vérifier d’où vient le fichier`,
  chordTooLarge: (most) => `un accord a plus de ${grouped(most)} notes : vérifier d’où vient le fichier`,
  halfCharacter: (encoding) =>
    `le texte en ${encoding} finit par un demi-caractère : chercher de nouveau le fichier`,
  unknownEncoding: (encoding) =>
    `Bellhand ne sait pas réécrire l’encodage ${encoding} : enregistrer le fichier en UTF-8`,
  whichFile:
    'l’archive ZIP ne dit pas quel fichier est la partition : exporter la musique en .mxl ou .musicxml',
  fileMissing: (path) => `le conteneur nomme « ${path} », qui n’y est pas : exporter de nouveau la musique`,
  containerMalformed: 'META-INF/container.xml n’est pas du XML bien formé : exporter de nouveau la musique',
  noScoreInside: 'l’archive ZIP ne contient pas de MusicXML : exporter la musique en .mxl ou .musicxml',
  zip64: 'c’est une archive ZIP64 : comprimer de nouveau la partition en ZIP ordinaire',
  directoryDamaged:
    'l’archive ZIP est endommagée : son répertoire ne répond pas à ses contrôles : chercher ou exporter de nouveau le fichier',
  entryDamaged: (name) =>
    `l’archive ZIP est endommagée : « ${name} » ne répond pas à ses contrôles : chercher ou exporter de nouveau le fichier`,
  encrypted: (name) => `« ${name} » est chiffré : comprimer de nouveau la partition sans mot de passe`,
  unpacksTo: (name, megabytes, most) =>
    `« ${name} » fait ${grouped(megabytes)} Mo décomprimé, et on n’ouvre pas plus de ${most} Mo : vérifier d’où vient le fichier, ou n’exporter que les parties de cor`,
  growsTo: (name, times, most) =>
    `« ${name} » grandit ${grouped(times)} fois en se décomprimant, et on n’ouvre pas au-delà de ${most} fois : vérifier d’où vient le fichier, ou l’enregistrer non comprimé en .musicxml`,
  packedBy: (name, method) =>
    `« ${name} » est comprimé par la méthode ${method} : comprimer de nouveau la partition en ZIP ordinaire`,
  archiveCutShort:
    'l’archive ZIP n’a pas de fin : chercher ou exporter de nouveau le fichier : il semble tronqué',
};

const panel: PanelWords = {
  labels: {
    horn: 'Cor',
    noteNames: 'Noms des notes',
    print: 'Au-dessus des notes',
    fingered: 'Note doigtée',
    valves: 'Pistons',
    natural: 'Son naturel',
    verdict: 'Signes ≈ et ×',
    colour: 'Couleurs',
    onlyChanges: 'Seulement aux changements',
    quickValves: 'Notes rapides : pistons seuls',
    widerBars: 'Mesures élargies au besoin',
    tolerance: 'Tolérance en cents',
    handOffset: 'Écart de la main en cents',
    toleranceHint: 'Les doigtés plus éloignés de la note écrite sont écartés',
    handOffsetHint: 'Au-dessus de 0 pour une main qui bouche trop haut, au-dessous si elle bouche trop bas',
    annotate: 'Annoter',
    clear: 'Effacer',
    lookAgain: 'Revoir',
    fromCursor: 'Depuis le curseur',
    previous: 'Remarque précédente',
    next: 'Remarque suivante',
    stoppedSign: 'Écrire ou ôter + sur les notes sélectionnées',
    openSign: 'Écrire ou ôter o sur les notes sélectionnées',
    noteAsked: 'Sélectionner une note de cor pour voir comment elle se bouche.',
    findings: 'À revoir',
    nothingFound: 'Rien : chaque note bouchée est jouable.',
    instead: 'À la place :',
    etude: 'Étude',
    etudeKind: 'Genre',
    etudeLesson: 'Une leçon d’une page',
    etudeKey: 'Tonalité écrite',
    etudeLevel: 'Niveau',
    etudeLength: 'Mesures',
    etudeTempo: 'Temps par minute, 0 pour l’usuel',
    etudeCompass: 'De–à, par exemple C4–G5',
    compose: 'Composer',
    copyPath: 'Copier le chemin',
    openOutside: 'Ouvrir',
  },
  noScore: 'Aucune partition n’est ouverte.',
  emptyScore: 'La partition n’a pas de mesures.',
  reading: (percent) => `Lecture de la partition : ${percent} %`,
  readOnceLetGo: 'La partition est grande : appuyer sur Échap dans la partition pour qu’elle soit lue.',
  noHorn: 'La partition n’a pas de partie de cor.',
  noStopped: 'La partie de cor n’a pas de note bouchée : rien à annoter.',
  noStoppedSelected: 'Aucune note bouchée de cor n’est sélectionnée : rien n’a été changé.',
  annotated: 'C’est annoté.',
  annotatedSelection: 'La sélection est annotée.',
  upToDate: 'Les annotations sont à jour : rien n’a été changé.',
  severalNotes: (count) => `${count} notes à voir`,
  nthOf: (nth, count) => `${nth} sur ${count}`,
  noHornSelected: 'Aucune note de cor n’est sélectionnée.',
  cleared: (count) => `Annotation effacée : ${counted(count, 'note', 'notes')}.`,
  nothingToClear: 'Il n’y a aucune de nos annotations à effacer.',
  failed: (reason) => `Rien n’a été changé : ${reason}.`,
  notShown: 'La note n’est plus dans la partition.',
  etudeOpened: (title) => `Une nouvelle partition est ouverte : ${title}.`,
  etudeWritten: (title, path) =>
    `L’étude « ${title} » est écrite. Ouvrir ce fichier dans l’éditeur : ${path}`,
  etudeAsked: (path) => `Le système doit ouvrir ${path}. Si rien ne vient, ouvrir le fichier dans l’éditeur.`,
  etudeNotWritten: (title) =>
    `L’étude « ${title} » n’a pas pu être écrite : aucun dossier n’accepte le fichier.`,
  etudeRange: (range) =>
    `« ${range} » n’est pas une étendue : écrire deux notes, la plus grave d’abord, comme C4–G5, ou rien.`,
  faults: {
    notExported: (path) => `l’éditeur n’a pas pu écrire ${path}`,
    placeNotFound: 'une note n’est plus là où elle a été lue ; revoir',
    nothingToTakeOut: 'ce qu’il faut ôter n’est plus là',
    notTaken: 'l’éditeur ne l’a pas accepté',
  },
};

const hornFile: HornFileWords = {
  notJson: (plain) => `ce n’est pas du JSON : ${plain}`,
  mustBe: (at, wanted, got) => `${at} demande ${wanted}, on y trouve ${got}`,
  theFile: 'le fichier',
  nothing: 'rien',
  wanted: {
    sides: 'une liste d’un à quatre côtés, chacun { "name": …, "fundamental": … }',
    'one-side': 'un seul côté, le ton, sur un cor naturel',
    fundamental: 'le 1er harmonique réel, de C0 à C3 : F1 pour un cor en fa',
    note: 'un nom de note réelle en lettres anglaises, comme "F1"',
    text: 'un texte de 1 à 60 caractères sans <, > ni &',
    flag: 'true ou false',
    valves: '"compromise", "ascending", "none" ou une liste de { "valves": "12", "semitones": 3 }',
    'valve-numbers': '"0" ou les numéros des pistons, comme "12"',
  },
  number: (from, to) => `un nombre de ${from} à ${to}`,
  whole: (from, to) => `un nombre entier de ${from} à ${to}`,
  unknownField: (at, field, known) =>
    `${at} a un champ "${field}" qui ne veut rien dire ici ; en écrire un de ceux-ci : ${known}`,
  shortSideFrom: '"shortSideFrom" se dit au côté lui-même : y écrire "openFrom": "Db4" et l’enlever ici',
  noSideStoppable:
    'aucun côté ne peut être bouché : enlever "stoppable": false de celui sur lequel on bouche',
  orderForSome: '"stoppingOrder" est donné pour certains côtés ; le donner pour tous ou pour aucun',
  orderTwice: 'deux côtés ont le même "stoppingOrder" ; les numéroter 1, 2, … dans l’ordre où on les prend',
};

/** What a result is. */
const CONTENTS = {
  score: 'une partition en MusicXML',
  page: 'une page pour le navigateur',
  picture: 'une image',
  sound: 'un son',
};

export const commandLine: CommandLineWords = {
  hornFile,
  scores,
  help: {
    program:
      'Doigtés et sons naturels pour les notes bouchées des parties de cor, et ce qu’aucune main ne peut faire',
    version: 'affiche la version',
    help: 'affiche cette aide',
    helpOf: 'affiche l’aide d’une commande',
    usage: 'Emploi :',
    arguments: 'Arguments :',
    options: 'Options :',
    generalOptions: 'Options de toutes les commandes :',
    commands: 'Commandes :',
    byDefault: (value) => `par défaut : ${value}`,
    see: (command) => `voir : ${command}`,
  },
  commands: {
    annotate: 'écrit doigté, son naturel et verdict au-dessus de chaque note bouchée des parties de cor',
    clear: 'retire toutes les marques d’annotate et laisse le reste tel quel',
    check:
      'énumère chaque note bouchée et chaque remarque sans rien écrire ; finit par 1 si une note est injouable',
    explain: 'explique une note écrite : doigté, son naturel, abaissement et tous les autres doigtés',
    etude: (kinds) => `compose une étude pour la main qui bouche : ${kinds}`,
    lesson: 'compose une leçon : une page d’exercices numérotés, des sons filés aux changements rapides',
    course:
      'compose un cours : une leçon par semaine, chacune un peu plus difficile et revenant sur la précédente',
    report:
      'écrit une page avec le verdict, ce qu’il faut faire, la musique gravée autour de chaque remarque, et les doigtés',
    chart:
      'écrire un tableau d’un cor : le doigté de chaque son qu’il peut boucher, ou où la main mène chaque note',
    watch: 'vérifie un fichier à chaque enregistrement et dit ce qui a changé ; Ctrl-C arrête',
    install: 'met le plugin dans le dossier des plugins de MuseScore 3 et 4',
  },
  arguments: {
    files: 'des fichiers MusicXML, compressés ou non ; - pour l’entrée standard',
    file: 'un fichier MusicXML, compressé ou non ; - pour l’entrée standard',
    watched: 'un fichier MusicXML qu’un programme enregistre régulièrement',
    note: 'la note telle que la partie l’imprime, en lettres avec l’octave : C5, F#4, Bb3',
  },
  options: {
    output: (name) => `où écrire : un fichier, un dossier, ou - (par défaut : ${name})`,
    outputOfOne: (name) => `où écrire, ou - (par défaut : ${name})`,
    inPlace: 'écrit dans le fichier d’entrée lui-même',
    complete: 'ajoute les + qui manquent sous un mot, et les mots qui manquent pour en annuler un',
    jobs: 'nombre de fichiers traités en même temps ; jamais plus que ne le permettent processeurs et mémoire',
    force:
      'remplace aussi un fichier que Bellhand n’a pas fait, qui a été changé depuis, ou qui ne peut qu’être lu',
    checkFormat:
      'table ; json, un objet par fichier, un par ligne ; json-lines, le même sans les notes, pour les catalogues',
    explainFormat: 'table ou json',
    chartOf:
      'fingerings, les doigtés des sons bouchés, ou bends, où la main mène chaque note, pour les compositeurs',
    chartFormat:
      'html, une page à imprimer, ou musicxml, une partition (sinon : selon la fin du nom après -o, ou html)',
    curve:
      'la hauteur pendant que la main se ferme, d’après l’acoustique : en texte, ou en image SVG dans un fichier',
    sound: 'le son pendant que la main ferme, d’après l’acoustique, en fichier WAV',
    soundOfReport: 'fait entendre, tels que la main les fait, les glissandos qu’elle ne peut pas faire',
    part: 'une partie à prendre pour un cor : son nom, son identifiant ou sa place ; peut être répété',
    keyOfPart: 'le ton des cors dont la partie n’en indique pas : F, Eb, "Bb basso", …',
    keyOfNote: 'le ton dans lequel la partie est écrite : F, Eb, "Bb basso", …',
    hand: (states) => `ce que fait la main : ${states}`,
    horn: (ids) => `le cor joué : ${ids}, natural, natural-eb et ainsi de suite, ou un fichier .json`,
    tolerance: 'au-delà de cet écart, un doigté ne compte pas',
    handOffset: 'ce que cette main ajoute à chaque fermeture : au-dessus de 0 si elle bouche trop haut',
    handTime: 'le temps le plus court pour que la main entre ou sorte',
    names: 'notes nommées comme la partie les écrit (as-written) ou comme les lit un cor en fa (f-horn)',
    bassClef: 'notes en clé de fa : new, telles quelles ; old, une octave trop bas ; auto, selon leur allure',
    assumedTempo: 'la vitesse d’une partie qui n’en indique pas, en noires par minute',
    show: (items) => `quoi écrire, parmi ${items}`,
    valvesAs: 'pistons dans le texte au-dessus de la note (text) ou comme doigté de la note (fingering)',
    repeat: 'changes : omettre un texte que la note précédente de la mesure porte déjà ; all : jamais',
    quick:
      'valves : dans les mesures dont les indications sont à moins d’une noire, les pistons seuls ; full : tout',
    language: (languages) =>
      `la langue de ce qui est dit : ${listed(languages, 'ou')} (par défaut : celle du système)`,
    noteNames:
      'noms des notes : english (B♭ B), german (B H) ou solfege (si♭ si) (par défaut : ceux de la langue)',
    etudeKey: 'la tonalité écrite, en lettres : C, Bb, F#, Dm, …',
    level: '1 pour les premières semaines, 2 pour le travail quotidien, 3 pour les plus avancés',
    bars: (phraseBars) => `longueur en mesures, par phrases de ${phraseBars}`,
    tempo: 'temps par minute (par défaut : ce qui convient au genre)',
    range: 'note écrite la plus grave et la plus aiguë, comme C4-G5 (par défaut : selon le niveau)',
    seed: 'le même nombre donne la même musique (par défaut : une nouvelle à chaque fois)',
    copy: 'marked, avec ses doigtés, ou plain, à compléter par l’élève',
    weeks: 'combien de leçons',
    lessonKey:
      'la tonalité écrite de chaque exercice, en lettres : C, Bb, F#, Dm, … (par défaut : selon le niveau)',
    whole: 'montre toute la musique ; sinon, ce qui est en ordre est replié',
    folder: 'le dossier des plugins, s’il n’est pas parmi vos documents',
  },
  usage: {
    unknownOption: (option) => `option inconnue « ${option} »`,
    afterCommand: (option, command) => `l’option « ${option} » se met après la commande « ${command} »`,
    unknownCommand: (name) => `commande inconnue « ${name} »`,
    suggestion: (names) => `Peut-être ${names} ?`,
    missingArgument: (name) => `il manque l’argument « ${name} »`,
    missingOption: (flags) => `il manque l’option « ${flags} »`,
    missingValue: (flags) => `il manque une valeur à l’option « ${flags} »`,
    tooManyArguments: (command) => `trop d’arguments pour « ${command} »`,
    badValue: (flags, value, why) => `« ${flags} » ne peut pas être « ${value} ». ${why}`,
    number: (unit, from, to) => `Donner un nombre (${unit}) de ${from} à ${to}.`,
    wholeNumber: 'Donner un nombre entier à partir de 1.',
    wholeBetween: (from, to) => `Donner un nombre entier de ${from} à ${to}.`,
    oneOf: (list) => `Au choix : ${listed(list, 'ou')}.`,
    someOf: (list) => `Choisir parmi ${listed(list, 'ou')}, séparés par des virgules.`,
    notANote: (text) =>
      `« ${text} » n’est pas une note : écrire une lettre A–G, # ou b s’il le faut, et l’octave, comme C#5 ou Bb4.`,
    notAKey: (text) =>
      `« ${text} » n’est pas une tonalité d’au plus sept altérations : écrire la tonique et, pour le mineur, un m, comme F, Bb, Dm ou C#m.`,
    hornOrFile: (list) => `Au choix : ${list}, ou un fichier .json.`,
    hornKey: 'Nommer un ton : F, Eb, D, "Bb alto", "Bb basso", ….',
    bars: (phraseBars, from, to) => `Donner un multiple de ${phraseBars} entre ${from} et ${to}.`,
    rangeEnds: 'Donner deux notes avec un trait d’union, comme C4-G5.',
    lowerFirst: 'Nommer d’abord la note la plus grave.',
  },
  units: {
    cents: 'cents',
    seconds: 'secondes',
    quarters: 'noires par minute',
    beats: 'temps',
    weeks: 'semaines',
  },
  systemFaults: {
    ENOENT: 'ce fichier n’existe pas : vérifier le nom et le dossier',
    EACCES:
      'l’autorisation manque : changer les droits du fichier ou de son dossier, ou choisir un autre endroit',
    EPERM:
      'le système ne le permet pas : changer les droits du fichier ou de son dossier, ou choisir un autre endroit',
    EROFS: 'ce disque ne peut qu’être lu : choisir un autre endroit avec -o',
    ENOSPC: 'le disque est plein : faire de la place ou choisir un autre endroit avec -o',
    EISDIR: 'c’est un dossier : nommer un fichier qui s’y trouve',
    ENOTDIR: 'une partie du chemin est un fichier et non un dossier : vérifier le chemin',
    ENAMETOOLONG: 'le nom est trop long : en choisir un plus court',
    EMFILE: 'trop de fichiers sont ouverts : réduire --jobs',
    ERR_FS_FILE_TOO_LARGE: 'c’est plus grand que toute partition : vérifier d’où il vient',
    ELOOP: 'ses liens tournent en rond : nommer le fichier lui-même',
    other: (code) => `le système le refuse (${code})`,
  },
  faults: {
    own: (text) => `une erreur de bellhand lui-même, merci de la signaler : ${text}`,
    folderMissing: 'son dossier n’existe pas : le créer d’abord',
    notWritten: (path, why) => `${path} : impossible d’écrire : ${why}`,
    outputNotWritten: (why) => `impossible d’écrire sur la sortie standard : ${why}`,
    folderNotMade: (path, why) => `${path} : impossible de créer ce dossier : ${why}`,
    tooLarge: (name, megabytes) =>
      `${name} : plus de ${megabytes} Mo, la limite de ce qui est lu : vérifier d’où il vient, ou n’exporter que les cors`,
    placeAndInPlace: '-o et --in-place s’excluent : choisir l’un des deux',
    inputInPlace: 'l’entrée standard ne peut être changée sur place : omettre --in-place',
    manyIntoOne: (output, count) =>
      `${output} : ${count} résultats ne tiennent pas dans un fichier : nommer un dossier avec -o`,
    inputAmongFiles:
      'l’entrée standard parmi d’autres fichiers : il faut un endroit pour son résultat : nommer un dossier avec -o',
    ontoInput: (target) =>
      `${target} : cela écraserait un fichier d’entrée : choisir un autre endroit avec -o`,
    ontoInputInPlace: (target) =>
      `${target} : cela écraserait un fichier d’entrée : choisir un autre endroit avec -o, ou dire --in-place`,
    notPlain: (path) =>
      `${path} : ce n’est pas un simple fichier, il ne peut être changé sur place : employer -o`,
    notOurs: (path) =>
      `${path} : ce fichier existe déjà, et Bellhand ne l’a pas fait ou il a été changé depuis : choisir un autre endroit avec -o, ou le remplacer avec --force`,
    otherEnding: (path, content, endings) =>
      `${path} : ce qui s’écrit ici est ${CONTENTS[content]} : terminer le nom par ${listed(endings, 'ou')}`,
    namedTwice: (input) => `${input} : ce fichier est nommé deux fois : une fois suffit`,
    linkToNothing: (path, target) =>
      `${path} : un lien vers ${target}, qui n’existe pas : nommer le fichier lui-même, ou supprimer le lien`,
    readOnly: (path) => `${path} : ne peut qu’être lu : changer ses droits, ou le remplacer avec --force`,
    notPutBack: (path, copy) =>
      `${path} : impossible de l’écrire ni de le rétablir : son ancien contenu est dans ${copy}`,
    outputIntoInput: (target) =>
      `${target} : la sortie standard va dans ce fichier d’entrée : l’envoyer dans un autre`,
    twoOntoOne: (output, one, other) =>
      `${output} : ${one} et ${other} seraient écrits ici tous les deux : renommer l’un, ou les traiter séparément`,
    noParts: (name) => `${name} : la partition n’a pas de parties : l’exporter de nouveau`,
    noHorn: (name, parts) =>
      `${name} : aucune partie n’est un cor ; il y a ${quoted(parts)} : choisir avec --part`,
    partWithoutMusic: (name, part) =>
      `${name} : la partie « ${part} » est annoncée mais n’a pas de musique : en choisir une autre avec --part, ou exporter de nouveau`,
    orNameKey: (name, why) => `${name} : ${why} ; ou nommer son ton avec --key`,
    noTransposition: 'aucune partie n’indique de transposition',
    workerDied: (name, why) => `${name} : n’a pu être traité (${why}) : l’essayer seul, avec --jobs 1`,
    noCurve: (note) =>
      `${note} : pas de doigté, donc pas de courbe : demander une autre note ou un autre cor`,
    curveTooHigh: (note, highest, harmonic) =>
      `${note} : la courbe se calcule jusqu’à l’harmonique ${highest}, et c’est l’harmonique ${harmonic} : demander une note plus grave`,
    curveAndJson:
      '--curve est ici du texte, et --format json des données : donner un fichier à --curve, ou omettre l’un des deux',
    inputWatched: 'l’entrée standard ne peut être surveillée : nommer un fichier',
    noPluginFolder: (places) =>
      `ni MuseScore3 ni MuseScore4 dans ${places} : lancer l’éditeur une fois, ou nommer son dossier de plugins avec --dir`,
    pluginNotBuilt: (path) => `le plugin n’est pas dans ${path} : lancer npm run build`,
  },
  readings: {
    fromName: (part) =>
      `la partition n’indique pas de transposition pour « ${part} » ; son nom a été pris au mot`,
    concertScore: (part) =>
      `la partition est en sons réels et n’indique pas de ton pour « ${part} » ; ses notes sont données telles qu’elles sonnent`,
    nowhere:
      'la partition n’indique pas de transposition : l’indiquer pour la partie, ou la nommer « Cor en fa »',
    'no-key': (part) =>
      `la partition n’indique pas de transposition, et le nom « ${part} » ne dit pas le ton : indiquer la transposition de la partie, ou la nommer « Cor en fa »`,
    'alto-or-basso': (part) =>
      `la partition n’indique pas de transposition, et le nom « ${part} » ne dit pas si le si♭ est aigu ou grave : indiquer la transposition de la partie, ou la nommer « Cor en si♭ grave »`,
  },
  told: {
    standardInput: 'entrée standard',
    thisPart: 'cette partie',
    marksOut: 'marques retirées',
    noMarks: 'il n’y avait pas de marques à retirer',
    cannotBePlayed: (count, bars) =>
      `${counted(count, 'note injouable telle quelle', 'notes injouables telles quelles')}, ${bars} : bellhand check dit pourquoi`,
    notKept: (path, what) => `${path} : impossible de garder ${what}`,
    owner: 'son propriétaire',
    group: 'son groupe',
    hardLinks: 'ses autres liens physiques',
    files: (count) => counted(count, 'fichier', 'fichiers'),
    failed: (count) => counted(count, 'échec', 'échecs'),
    interrupted: (left) => `interrompu, ${counted(left, 'non commencé', 'non commencés')}`,
    allDone: 'tout est fait',
    progress: (done, total) => `${done} fichiers sur ${total}`,
    pageReady: 'à ouvrir dans un navigateur',
    fileGone: (name) => `${name} a disparu ; en attente de son retour`,
    watching: 'sous surveillance ; Ctrl-C arrête',
    nothingNew: 'rien de nouveau',
    findingGone: (finding) => `${finding} a disparu`,
    installed: (version, path) => `installé pour MuseScore ${version} : ${path}`,
    switchOn: (version, how) => `À activer maintenant, une fois, dans MuseScore ${version} : ${how}.`,
    switchOn3: 'Plugins > Gestionnaire de plugins, cocher les entrées Bellhand, OK',
    switchOn4: 'Accueil > Plugins, choisir chaque entrée Bellhand, Activer',
  },
  table: {
    bar: 'mesure',
    beat: 'temps',
    written: 'écrit',
    hand: 'main',
    finger: 'doigté',
    valves: 'pistons',
    side: 'côté',
    harmonic: 'harmonique',
    natural: 'naturel',
    drop: 'baisse',
    off: 'écart',
    verdict: 'verdict',
    why: 'pourquoi ce doigté',
    asPrinted: (text) => `comme écrit : ${text}`,
    sounding: (semitones) =>
      semitones === 0
        ? 'sonne comme écrit'
        : `sonne ${counted(Math.abs(semitones), 'demi-ton', 'demi-tons')} plus ${semitones < 0 ? 'bas' : 'haut'}`,
  },
  explain: {
    heading: (note, horn, verdict) => `${note}, sur un ${horn} : ${verdict}`,
    noFingering: 'pas de doigté',
    chosenBecause: 'choisi',
    finger: 'doigté',
    naturalPitch: 'son naturel',
    handCloses: 'la main ferme',
    stoppingValve: 'piston de bouché',
    stoppingValveDown: (cents) =>
      `enfoncé : il baisse le cor de ${cents} cents, ce que le pavillon fermé ajoute ; doigter la note écrite`,
    drop: 'abaissement',
    comesOut: 'sonne',
    otherWays: 'Autres doigtés, le meilleur d’abord',
    twoClosings: (rule, acoustics) => `${rule} selon la règle, ${acoustics} selon l’acoustique`,
    cents: (count) => counted(count, 'cent', 'cents'),
    curveTitle: (note, natural, fingering) => `${note} depuis ${natural} : ${fingering}, la main se fermant`,
  },
};

const chart: ChartWords = {
  stoppedNotesOn: (horn) => `Sons bouchés : ${horn}`,
  notesOn: (horn) => `La main dans le pavillon : ${horn}`,
  fingeredReading: (example) => `${example} : la note doigtée et les pistons.`,
  naturalReading: 'o ouvert ; ¼ ½ ¾ fermé d’autant ; + bouché.',
  naturalPitchReading: 'Entre parenthèses : ce qui sonne quand la main ouvre.',
  arrows: '↑ ↓ : près d’un quart de ton au-dessus ou au-dessous.',
  bassClef: 'La clé de fa vaut telle qu’elle est écrite.',
  stoppingValve: (key) =>
    `Côté ${key}, le piston de bouché s’abaisse avec la main ; le doigté est celui du son ouvert.`,
  otherWaysReading:
    'Petites notes : autres doigtés de la note précédente, avec l’écart en cents quand il s’entend.',
  chart: 'Le tableau',
  low: 'Grave',
  high: 'Aigu',
  back: 'Autres doigtés, cents et glissandos',
  heads: {
    note: 'Son',
    fingering: 'Doigté',
    natural: 'Naturel',
    falls: 'Baisse',
    otherWays: 'Autres doigtés',
    open: 'Ouvert',
    fallsTo: 'La main ferme',
  },
  centsReading: (least) =>
    `Petits chiffres : écart en cents avec la note écrite, + trop haut, quand il s’entend (à partir de ${least}).`,
  stoppedNote: (note) => `${note}, bouché`,
  slidesOn: (horn) => `Glissandos de la main : ${horn}`,
  slidesReading:
    'Notes écrites : o ouvert, + bouché. Au-dessus de chaque son bouché, les pistons, tenus pendant tout le glissando.',
  slidesReadingNatural: 'Notes écrites : o ouvert ; ¼ ½ ¾ fermé d’autant ; + bouché.',
  prefix: (letter, key) => `${letter} : le côté ${key}.`,
  withLuck: '≈ et bleu : avec de la chance.',
  asTheHandCloses: 'La main ferme : où descend chaque son ouvert',
  asTheHandOpens: 'La main ouvre : où monte chaque son bouché',
  cannotBeWritten: 'Ce qui ne peut s’écrire',
  slide: (from, to, way) => `${from} à ${to} (${way})`,
  neverUp:
    'Un glissando qui monte vers un son bouché ou descend d’un son bouché : la main baisse le son en fermant, et le relève en ouvrant.',
  widest: (semitones) => `Un glissando de plus de ${counted(semitones, 'demi-ton', 'demi-tons')}.`,
  tooLow: (notes) =>
    `À partir de ${notes} : trop grave pour que la main baisse le son ; au mieux il glisse d’un demi-ton vers le haut.`,
  tooHigh: (notes) => `À partir de ${notes} : si aigu que fermer ne change rien d’audible.`,
  between: (notes) => `À partir de ${notes} : le son descend, mais pas jusqu’à une autre note.`,
  notReached: (notes) => `Vers ${notes} bouchés : jouables, mais aucun son ouvert n’y descend.`,
  withoutStoppingValve: 'Le piston de bouché reste levé pendant tout glissando.',
  madeBy: 'Fait avec Bellhand.',
};

const curves: CurveWords = {
  none: 'Le pavillon ne tient aucune de ces harmoniques',
  plotted: (harmonic, hz) =>
    `Harmonique ${harmonic}, ouverte à ${hz} Hz ; cents depuis la note ouverte, la main se fermant`,
  closing: 'fermé',
  cents: 'cents',
  tabled: 'Cents depuis la note ouverte, la main se fermant',
  openHz: 'Hz ouv.',
  pictured: (hz) => `La main se ferme sur un tube de ${hz} Hz`,
  howFar: 'degré de fermeture de la main',
  sealed: 'étanche',
  harmonic: 'harmonique',
  described: (ways) => `De la main ouverte au bouché complet : ${ways}.`,
  falls: (harmonic, cents) => `l’harmonique ${harmonic} descend de ${counted(cents, 'cent', 'cents')}`,
  rises: (harmonic, cents) => `l’harmonique ${harmonic} monte de ${counted(cents, 'cent', 'cents')}`,
  stays: (harmonic) => `l’harmonique ${harmonic} ne bouge pas`,
};

/** What both doors say. */
export const words: Words = {
  usualNaming: 'solfege',
  syllables: { ...SYLLABLES, D: 'ré' },
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
  unreadable:
    'cette partie ne peut pas être gravée : l’ouvrir dans un éditeur, l’exporter de nouveau en MusicXML, ou employer check',
  noEngraver:
    'les pages sont dessinées par verovio, qui n’est pas installé : lancer npm install verovio, ou employer check, ou chart --format musicxml',
};

const stand: StandWords = {
  law: 'La main qui ferme fait descendre le son jusqu’un peu au-dessus de l’harmonique inférieur, jamais monter.',
  sheets: { note: 'Une note', part: 'Une partie', lesson: 'Une leçon' },
  toSheet: 'Aller à la feuille',
  stays:
    'Rien ne quitte cette page. Elle n’a besoin d’aucun réseau et n’envoie rien ; votre partie reste chez vous.',
  engravedBy: 'Musique gravée par Verovio (LGPL 3).',
  language: 'Langue',
  itself: 'Français',
  usual: 'selon l’usage',
  namings: ['lettres anglaises', 'lettres allemandes', 'do ré mi'],
  writtenNote: 'Note écrite',
  partKey: 'Partie en',
  lower: 'Un demi-ton plus bas',
  higher: 'Un demi-ton plus haut',
  hand: 'La main dans le pavillon',
  open: 'ouvert',
  sealed: 'bouché à fond',
  closing: (closed, cents) => `fermé à ${closed} %, ${cents} cents sous le son ouvert`,
  hear: 'Tenir le son',
  silence: 'Silence',
  letClose: 'Entendre la main fermer',
  ladder: 'Comment la main fait descendre le son',
  pulled: (number, note) => `Harmonique ${number}, ${note} : c’est lui qui descend`,
  above: (number, note) => `Harmonique ${number}, ${note} : le son s’arrête au-dessus de lui`,
  comesToRest: (cents) => `bouché, ${cents} cents au-dessus`,
  waysToPlay: 'Façons de la jouer, la plus usuelle d’abord',
  noPicture: 'La main ne fait rien ici qui se dessine : choisir une autre note ou un autre cor.',
  choosePart: 'Choisir un fichier MusicXML',
  orDrop: 'ou le déposer sur cette page, compressé ou non.',
  putAway: 'Ranger',
  example: 'Poser l’exemple',
  marked: 'Annotée',
  cleared: 'Effacée',
  completed: 'Annotée et complétée',
  print: 'Imprimer',
  engraving: 'La musique se grave …',
  notEngraved: 'La musique de cette partie ne peut être dessinée ; ce qui a été trouvé est là quand même.',
  notRead: (name, reason) => `${name} : ${reason}.`,
  tooLarge: (name, megabytes) =>
    `${name} dépasse ${megabytes} Mo : choisir la partie au lieu de la partition.`,
  noHorn: (name, parts) =>
    `${name} : aucune partie n’est un cor ; il y a ${quoted(parts)}. Dire laquelle prendre pour tel.`,
  noKey: (name) => `${name} : la partie ne dit pas comment elle transpose. Choisir son ton.`,
  hornPart: 'Partie lue',
  findThem: 'tous les cors',
  handTime: 'Temps de la main en secondes',
  tempo: '♩ par minute, à défaut d’indication',
  bassClef: 'Clé de fa',
  bassClefs: {
    auto: 'selon l’allure des notes',
    old: 'une octave plus bas (ancienne)',
    new: 'telle quelle (nouvelle)',
  },
  teacher: 'Pour le professeur, avec doigtés',
  student: 'Pour l’élève, sans doigtés',
  another: 'Une autre',
  usualKey: 'selon le niveau',
  ownHorn: 'Son propre cor (fichier JSON)',
  lowest: 'Note la plus basse',
  highest: 'Note la plus haute',
  asSuits: 'selon le niveau',
  etudeTempo: '♩ par minute',
  course: 'Un cours, une page par semaine',
  weeks: 'Semaines',
  weekShown: 'Semaine affichée',
  composing: 'Le cours se compose …',
  lowerFirst: 'La note la plus basse doit être sous la plus haute.',
};

/** What pages say. */
export const pages: PageWords = { engraving, report, chart, curves, stand };
