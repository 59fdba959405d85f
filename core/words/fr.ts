/** Everything that is said in French, area by area; long because it is all of it. */
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornWords } from './areas/horns.ts';
import type { ReportWords } from './areas/report.ts';
import type { SummaryWords } from './areas/summary.ts';

/** `0 note`, `1 note`, `2 notes`: in French nothing is singular too. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count < 2 ? one : many}`;
}

export const findings: FindingWords = {
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
  'closes-upward': ({ from, to, maySlip, falls, starts }, { note, reached }) =>
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
  'opens-downward': ({ from, to, maySlip, rises, starts }, { note, reached }) =>
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

export const report: ReportWords = {
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
  folded: (stopped) =>
    `${stopped === 0 ? 'rien de bouché' : stopped === 1 ? '1 son bouché' : `${stopped} sons bouchés`}, rien n’a été relevé`,
};

export const fingerings: FingeringWords = {
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

export const horns: HornWords = {
  names: {
    double: 'cor double en fa et si♭',
    'single-f': 'cor simple en fa',
    'single-bflat': 'cor simple en si♭',
    'single-bflat-stop-valve': 'cor simple en si♭ avec piston de bouché',
    'double-stop-valve': 'cor double avec piston de bouché sur le côté en si♭',
    'double-ascending': 'cor double avec troisième piston ascendant',
    descant: 'cor discant en si♭ et fa aigu',
    'triple-high-f': 'cor triple en fa, si♭ et fa aigu',
    natural: 'cor naturel dans le ton que demande la partie',
  },
  onCrook: (key) => `cor naturel avec le ton de ${key}`,
};

export const summary: SummaryWords = {
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
};

export const etudes: EtudeWords = {
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
      trains: 'Jouer chaque note ouverte, puis retrouver bouchées la même hauteur et la même force.',
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
      trains: 'Gammes et accords brisés bouchés : connaître les doigtés, centrer chaque note.',
      trainsOnNaturalHorn:
        'Gammes et accords brisés à la main : rapprocher les notes couvertes des notes ouvertes.',
    },
    phrase: {
      name: 'phrase et écho',
      title: 'Par-dessus la vallée',
      trains: 'Répondre bouché à chaque phrase : plus doux, mais de même dessin et de même hauteur.',
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
  numbers: (keys, semitones, changes, risk) =>
    `${keys}, étendue de ${counted(semitones, 'demi-ton', 'demi-tons')}, ${counted(changes, 'changement', 'changements')} de main par minute, ${risk}.`,
  noRisk: 'aucune note risquée',
  risks: (count) =>
    `${counted(count, 'note risquée', 'notes risquées')} (en bleu, ≈), où le son peut glisser vers le haut`,
  naturalLegend: 'o ouvert, ¼ ½ ¾ et + fermé, chacun jusqu’au signe suivant.',
  valveLegend: 'Au-dessus des notes bouchées, les pistons se prennent avec le piston à sons bouchés.',
  advice:
    'Se reposer aussi longtemps qu’on a joué. Arrêter quand les lèvres fatiguent ou que la main fait mal.',
};
