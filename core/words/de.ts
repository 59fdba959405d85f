/** Everything that is said in German, area by area; long because it is all of it. */
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornWords } from './areas/horns.ts';
import type { ReportWords } from './areas/report.ts';
import type { SummaryWords } from './areas/summary.ts';

/** `1 Ton`, `0 Töne`, `5 Töne`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

export const findings: FindingWords = {
  'unknown-key': () => ({
    brief: 'welche Stimmung',
    message:
      'Die Stimme sagt hier nicht, wie sie transponiert; ihre gestopften Töne haben deshalb keinen Griff.',
    remedy: 'Der Stimme ihre Transposition geben oder das Horn mit seiner Stimmung nennen, etwa „Horn in F“.',
  }),
  'which-octave': ({ from, bassClef, because }, { note }) => {
    const why =
      because === 'too-low'
        ? 'so, wie er dasteht, käme die Stimme unter das Horn'
        : 'die Sprünge in ihn hinein und aus ihm heraus sehen nach alter Notation aus';
    return {
      brief: 'welche Oktave',
      message:
        bassClef === 'old'
          ? `Ab ${note(from)} wird der Bassschlüssel nach alter Notation gelesen, eine Oktave höher, als er dasteht: ${why}.`
          : `Ab ${note(from)} wird der Bassschlüssel so gelesen, wie er dasteht; ${why}. Dann klänge es eine Oktave höher.`,
      remedy: 'Mit der Einstellung für den Bassschlüssel festlegen, ob alte oder neue Notation gemeint ist.',
    };
  },
  'below-the-hand': ({ written, state, horn }, speech) => ({
    brief: 'zu tief',
    message: `Der Ton ${speech.note(written)}, ${speech.state(state)}, liegt tiefer als alles, was die Hand auf dem ${speech.horn(horn)} halten kann.`,
    remedy: 'Offen notieren, einen Stopfdämpfer nehmen oder eine Oktave höher setzen.',
  }),
  'off-pitch': ({ written, horn, fingering, nearest, way }, speech) => {
    const note = speech.note(written);
    if (fingering)
      return {
        brief: 'verstimmt',
        message: `Der Ton ${note} kommt mit ${speech.valves(fingering)} ${speech.deviation(fingering.deviationCents)}: Der Ansatz muss nachhelfen.`,
        remedy:
          'Mit dem Ansatz und etwas mehr oder weniger Hand einstimmen oder einen anderen Griff versuchen.',
      };
    const none = `Auf dem ${speech.horn(horn)} gibt es hier keinen Griff für ${note}`;
    return {
      brief: 'kein Griff',
      message: nearest
        ? `${none}; der nächste, ${speech.valves(nearest)}, ist ${speech.deviation(nearest.deviationCents)}.`
        : `${none}.`,
      remedy: {
        'another-crook': 'Einen anderen Bogen wählen oder den Ton ändern.',
        'play-open': 'Den Ton ändern oder offen spielen.',
        'another-side': 'Auf einer F-Seite oder mit Stopfventil stopfen oder den Ton ändern.',
      }[way],
    };
  },
  'rises-not-bends': ({ written, state, fingering, limit, surer }, speech) => {
    const note = `Der Ton ${speech.note(written)}, ${speech.state(state)},`;
    const { harmonic } = fingering;
    const rest =
      'einen Stopfdämpfer verlangen oder den Ton höher oder offen setzen; Zeit und einen weichen Anstoß lassen.';
    return {
      brief: 'will nach oben',
      message:
        limit === 'wants-to-rise'
          ? `${note} liegt auf Naturton ${harmonic}: So tief rutscht der Ton beim Schließen nach oben, statt zu sinken.`
          : `${note} wird allein vom Ansatz gehalten: Bei Naturton ${harmonic} kann die Hand nur den Ton darunter um einen Halbton heben.`,
      remedy: surer
        ? `Auf ${speech.fingering(surer)} nehmen (${speech.deviation(surer.deviationCents)}), wo die Hand den Ton noch zieht, oder ${rest}`
        : rest.replace(/^e/, 'E'),
    };
  },
  'above-the-hand': ({ written, fingering }, speech) => ({
    brief: 'ohne Wirkung',
    message: `Der Ton ${speech.note(written)} liegt auf Naturton ${fingering.harmonic}; dort ändert die schließende Hand die Tonhöhe nur um ${Math.round(fingering.dropCents)} Cent: Die Farbe wird matter, der Ton bleibt, wo er ist.`,
    remedy: `Wie offen greifen (${speech.valves(fingering)}) und die Hand schließen oder die gestopfte Stelle tiefer setzen.`,
  }),
  'mute-and-hand': ({ written, state }, speech) => ({
    brief: 'Dämpfer steckt',
    message: `Der Ton ${speech.note(written)} soll ${speech.state(state)} klingen, während der Dämpfer noch im Schalltrichter steckt, wo die Hand hinmüsste.`,
    remedy:
      'Zuerst den Dämpfer herausnehmen lassen (mit Angabe in der Stimme und Zeit dafür) oder einen Stopfdämpfer verlangen.',
  }),
  'closes-upward': ({ from, to, maySlip, falls, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'steigt nur vielleicht',
          message: `Von ${note(from)} offen nach ${note(to)} gestopft muss der Ton um einen Halbton nach oben rutschen. Auf Naturton 4 neigt er beim Schließen dazu, kann aber auch sinken${falls.length > 0 ? `, auf ${reached(falls)}` : ''}.`,
          remedy: `Mit dem Ansatz nach oben führen oder das Glissando tiefer setzen, wo der Ton von selbst nach oben rutscht: auf Naturton 3 und darunter${starts.length > 0 ? `; oder bei ${reached(starts)} beginnen, von wo die Hand auf ${note(to)} hinunterzieht` : ''}.`,
        }
      : {
          brief: 'schließt aufwärts',
          message: `Von ${note(from)} offen nach ${note(to)} gestopft geht es aufwärts, aber die schließende Hand zieht den Ton nach unten${falls.length > 0 ? `: ${note(from)} sinkt auf ${reached(falls)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Bei ${reached(starts)} beginnen, von wo die Hand auf ${note(to)} hinunterzieht, oder die Linie weglassen und den Spieler umgreifen lassen.`
              : 'Die Linie umkehren oder weglassen und den Spieler umgreifen lassen.',
        },
  'opens-downward': ({ from, to, maySlip, rises, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'sinkt nur vielleicht',
          message: `Von ${note(from)} gestopft nach ${note(to)} offen muss der Ton um einen Halbton nach unten rutschen. Auf Naturton 4 kann er das beim Öffnen, kann aber auch steigen${rises.length > 0 ? `, auf ${reached(rises)}` : ''}.`,
          remedy: `Mit dem Ansatz nach unten führen oder das Glissando tiefer setzen, wo der Ton von selbst nach unten rutscht: auf Naturton 3 und darunter${starts.length > 0 ? `; oder gestopft bei ${reached(starts)} beginnen, von wo es beim Öffnen auf ${note(to)} steigt` : ''}.`,
        }
      : {
          brief: 'öffnet abwärts',
          message: `Von ${note(from)} gestopft nach ${note(to)} offen geht es abwärts, aber wenn die Hand sich öffnet, steigt der Ton${rises.length > 0 ? `: ${note(from)} steigt auf ${reached(rises)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Gestopft bei ${reached(starts)} beginnen, von wo es beim Öffnen auf ${note(to)} steigt, oder die Linie weglassen und den Spieler umgreifen lassen.`
              : 'Die Linie umkehren oder weglassen und den Spieler umgreifen lassen.',
        },
  'no-common-tube': ({ from, to, closes, reached, nearest, starts }, speech) => {
    const start = speech.note(from);
    const ends = nearest ? `uf ${speech.reached([nearest])} enden, dem nächsten erreichbaren Ton` : null;
    const begins =
      starts.length > 0 ? `ei ${speech.reached(starts)} ${closes ? 'offen' : 'gestopft'} beginnen` : null;
    return {
      brief: 'kein gemeinsamer Griff',
      message:
        `Kein Griff enthält sowohl ${start} als auch ${speech.note(to)}, und die Hand bewegt nur einen` +
        (reached.length > 0
          ? `: ${closes ? 'Schließen' : 'Öffnen'} führt von ${start} nach ${speech.reached(reached)}.`
          : `; mit keinem der Griffe von ${start} erreicht sie einen Ton der Skala.`),
      remedy: ends
        ? `A${ends}${begins ? `, oder b${begins}` : ''}.`
        : begins
          ? `B${begins}.`
          : 'Die Linie weglassen und den Spieler umgreifen lassen.',
    };
  },
  'slur-leaps': ({ from, to, joined }, { note }) => ({
    brief: 'Bindung reißt',
    message: `Von ${note(from)} nach ${note(to)} steht ${joined === 'tie' ? 'ein Haltebogen' : 'ein Bindebogen'} über einem Wechsel der Hand, und kein Griff enthält beide Töne: Der Ton springt.`,
    remedy: `Den zweiten Ton anstoßen, den ${joined === 'tie' ? 'Haltebogen' : 'Bindebogen'} dort teilen oder beide Töne gleich spielen lassen, offen oder gestopft.`,
  }),
  'hand-too-quick': (
    { from, to, goesIn, seconds, neededSeconds, assumedQuartersPerMinute: tempo },
    { note, decimal },
  ) => ({
    brief: 'Hand zu schnell',
    message: `Zwischen ${note(from)} und ${note(to)} hat die Hand ${decimal(seconds, 2)} s, um ${goesIn ? 'hineinzugehen' : 'herauszukommen'}${tempo === null ? '' : ` (gerechnet mit ♩ = ${decimal(tempo, 1)}, da die Stimme kein Tempo angibt)`}; sie braucht etwa ${decimal(neededSeconds, 2)} s.`,
    remedy:
      'Vor den Wechsel eine Pause oder einen längeren Ton setzen, beide Töne offen oder beide gestopft lassen oder sie auf zwei Spieler verteilen.',
  }),
  'sign-against-word': ({ written, state, word, wordState, sinceMeasure }, speech) => ({
    brief: 'Zeichen oder Wort',
    message: `Das Zeichen bei ${speech.note(written)} sagt ${speech.state(state)}, aber „${word}“ (Takt ${sinceMeasure}) gilt noch: Unbezeichnete Töne danach sind wieder ${speech.state(wordState)}.`,
    remedy:
      state === 'open'
        ? 'Hier ein aufhebendes Wort setzen, wenn es von hier an offen weitergeht, oder jeden Ton bezeichnen.'
        : 'Das Wort aufheben oder das Zeichen streichen.',
  }),
  'never-opened': ({ word, state, sinceMeasure, affectedCount, isLapsed }, speech) => ({
    brief: 'noch gestopft',
    message: isLapsed
      ? `„${word}“ (Takt ${sinceMeasure}) wurde nie aufgehoben, aber seine Zeichen enden vor diesem Ton: ${affectedCount === 1 ? 'Er wird' : `Die ${affectedCount} unbezeichneten Töne von hier an werden`} offen gelesen.`
      : `„${word}“ (Takt ${sinceMeasure}) wurde nie aufgehoben; deshalb ${affectedCount === 1 ? 'wird auch dieser Ton' : `werden auch die ${affectedCount} Töne ab diesem Einsatz`} als ${speech.state(state)} gelesen.`,
    remedy: isLapsed
      ? 'Hier das aufhebende Wort setzen oder das Zeichen über jeden Ton, der noch gestopft sein soll.'
      : 'Das aufhebende Wort setzen, wo es offen weitergeht, oder das Wort hier wiederholen, wenn es noch gilt.',
  }),
  'echo-or-stopped': ({ word, state, from }, speech) => ({
    brief: 'Echo oder gestopft',
    message: `„${word}“ wird ab ${speech.note(from)} als ${speech.state(state)} gelesen; andere Ausgaben meinen ${state === 'echo' ? 'gestopft' : 'Echoton'}, was einen Ganzton ${state === 'echo' ? 'tiefer' : 'höher'} gegriffen wird.`,
    remedy: 'Über die Töne + setzen, wenn gestopft werden soll, oder „Echoton“ schreiben, wenn nicht.',
  }),
};

export const report: ReportWords = {
  readFor: (horn) => `Gelesen für: ${horn}.`,
  stoppedNotesIn: (title) => `Gestopfte Töne in ${title}`,
  cannotBePlayed: (count) => (count === 1 ? '1 Ton ist unspielbar' : `${count} Töne sind unspielbar`),
  canBePlayed: 'Nichts davon ist unspielbar',
  areRisky: (count) => (count === 1 ? '1 Ton ist heikel' : `${count} Töne sind heikel`),
  nothingStopped: 'In dieser Stimme ist nichts gestopft.',
  findings: 'Was auffiel, das Schlimmste zuerst',
  nothingFound: 'Nichts fiel auf.',
  bars: (count) => (count === 1 ? 'Takt' : 'Takte'),
  elsewhere: (count) =>
    count === 1 ? '1 weiterer Ton, dem es ebenso geht' : `${count} weitere Töne, denen es ebenso geht`,
  folded: (stopped) =>
    `${stopped === 0 ? 'nichts gestopft' : stopped === 1 ? '1 gestopfter Ton' : `${stopped} gestopfte Töne`}, nichts fiel auf`,
};

export const fingerings: FingeringWords = {
  states: {
    open: 'offen',
    'half-stopped': 'halb gestopft',
    stopped: 'gestopft',
    echo: 'Echo',
    'stopping-mute': 'mit Stopfdämpfer',
    'straight-mute': 'mit Dämpfer',
  },
  verdicts: { sure: 'sicher', risky: 'heikel', impossible: 'unspielbar' },
  severities: { impossible: 'unspielbar', risky: 'heikel', advice: 'Hinweis' },
  reasons: {
    'wants-to-rise': 'so tief auf dieser Seite rutscht der Ton beim Schließen nach oben',
    'lip-only': 'unter dem Bereich, in dem die Hand zieht: Nur der Ansatz hält den Ton',
    'below-the-hand': 'unter diesem Naturton liegt keiner mehr, zu dem die Hand hinunterziehen könnte',
    'nothing-changes': 'so hoch, dass die Hand an der Tonhöhe nichts mehr ändert',
    'off-pitch': 'verstimmt: Der Ansatz muss nachhelfen',
    'unusual-degree': 'verlangt einen ungewöhnlichen Grad des Schließens',
  },
  briefReasons: {
    'wants-to-rise': 'rutscht hoch',
    'lip-only': 'nur Ansatz',
    'below-the-hand': 'zu tief',
    'nothing-changes': 'zieht nicht',
    'off-pitch': 'verstimmt',
    'unusual-degree': 'ungewöhnlicher Grad',
  },
  forSharpHand: 'der Naturton darunter ist tief: gut für eine Hand, die zu hoch stopft',
  choices: {
    'one-tube': (instead, neighbour) =>
      `statt ${instead}: derselbe Griff wie ${neighbour}, mit dem der Ton verbunden ist`,
    'one-side': (instead, neighbour) =>
      `statt ${instead}: bleibt auf der Seite von ${neighbour}, für einen Wechsel fehlt die Zeit`,
    'fewer-changes': (instead, neighbour) =>
      `statt ${instead}: neben ${neighbour} wechseln in diesem Tempo weniger Ventile`,
  },
  open: (key) => `${key}-Horn leer`,
  pressed: (key, valves) => `${key}-Horn ${valves}`,
  crook: (key) => `${key.replace(' ', '-')}-Bogen`,
  harmonic: (number) => `Naturton ${number}`,
  inTune: 'rein',
  sharp: (cents) => `${cents} Cent zu hoch`,
  flat: (cents) => `${cents} Cent zu tief`,
  closings: { open: 'offen', full: 'ganz' },
  keys: { high: (key) => `Hoch-${key}`, alto: (key) => `${key} alto`, basso: (key) => `${key} basso` },
  or: 'oder',
  and: 'und',
  decimalSign: ',',
};

export const horns: HornWords = {
  names: {
    double: 'Doppelhorn in F und B',
    'single-f': 'F-Horn',
    'single-bflat': 'B-Horn',
    'single-bflat-stop-valve': 'B-Horn mit Stopfventil',
    'double-stop-valve': 'Doppelhorn mit Stopfventil auf der B-Seite',
    'double-ascending': 'Doppelhorn mit aufsteigendem drittem Ventil',
    descant: 'Diskanthorn in B und Hoch-F',
    'triple-high-f': 'Tripelhorn in F, B und Hoch-F',
    natural: 'Naturhorn mit dem Bogen, den die Stimme verlangt',
  },
  onCrook: (key) => `Naturhorn mit ${key.replace(' ', '-')}-Bogen`,
};

export const summary: SummaryWords = {
  stoppedNotes: (count, verdicts) =>
    count === 0
      ? 'keine gestopften Töne'
      : `${counted(count, 'gestopfter Ton', 'gestopfte Töne')}: ${verdicts}`,
  verdicts: {
    sure: (count) => `${count} sicher`,
    risky: (count) => `${count} heikel`,
    impossible: (count) => `${count} unspielbar`,
  },
  openNotes: (verdicts) => `offene Töne: ${verdicts}`,
  bars: (listed, count) => `${count === 1 ? 'Takt' : 'Takte'} ${listed}`,
  more: (count) => counted(count, 'weiterer', 'weitere'),
  bar: (measure) => `Takt ${measure}`,
  place: (measure, beat) => `Takt ${measure}, Schlag ${beat}`,
  nothingAdded: 'kein Zeichen und kein Wort fehlte',
  signs: (count) => counted(count, 'Zeichen', 'Zeichen'),
  words: (count) => counted(count, 'Wort', 'Wörter'),
  added: (what) => `ergänzt: ${what}`,
};

export const etudes: EtudeWords = {
  kinds: {
    seal: {
      name: 'lange Töne',
      title: 'Hinter dem Fensterladen',
      trains:
        'Lange Töne mit gut verschlossenem Becher: derselbe Klang vom ersten bis zum letzten Augenblick.',
      trainsOnNaturalHorn: 'Lange Töne mit der Hand: die gedeckten so voll und ruhig wie die offenen.',
    },
    match: {
      name: 'gleicher Ton offen und gestopft',
      title: 'Zweimal derselbe Ton',
      trains: 'Jeden Ton offen spielen, dann gestopft dieselbe Höhe und dieselbe Stärke wiederfinden.',
      trainsOnNaturalHorn:
        'Den offenen Ton spielen, dann den gedeckten Nachbarn gleich stark und in gleicher Farbe.',
    },
    bend: {
      name: 'Ton gezogen',
      title: 'An die Tür gelehnt',
      trains:
        'Ventile und Ansatz ruhig: Die schließende Hand lässt den Ton sinken, die öffnende lässt ihn steigen.',
      trainsOnNaturalHorn:
        'Den Ansatz ruhig: Die schließende Hand lässt den Ton sinken, die öffnende lässt ihn steigen.',
    },
    scale: {
      name: 'Tonleitern und Akkorde',
      title: 'Treppen im Dunkeln',
      trains:
        'Gestopfte Tonleitern und gebrochene Akkorde: die Griffe kennen, jeden Ton in die Mitte setzen.',
      trainsOnNaturalHorn:
        'Tonleitern und gebrochene Akkorde mit der Hand: die gedeckten Töne den offenen angleichen.',
    },
    phrase: {
      name: 'Phrase und Echo',
      title: 'Über das Tal',
      trains: 'Jede Phrase gestopft beantworten: leiser, aber in gleicher Gestalt und gleicher Höhe.',
      trainsOnNaturalHorn:
        'Jede Phrase leise beantworten: Kein gedeckter Ton darf herausstechen oder zurückfallen.',
    },
    change: {
      name: 'immer schnellere Wechsel',
      title: 'Die schwingende Pforte',
      trains:
        'Schließen und öffnen in immer kürzeren Noten: Die Hand geht mit dem Schlag, die Höhe bleibt, wo sie ist.',
      trainsOnNaturalHorn:
        'Vom offenen zum gedeckten Ton und zurück in immer kürzeren Noten: Die Hand geht mit dem Schlag.',
    },
  },
  lesson: 'Lektion für die stopfende Hand',
  lessonOfWeek: (week) => `Lektion für die stopfende Hand, Woche ${week}`,
  hornIn: (key) => `Horn in ${key}`,
  naturalHornIn: (key) => `Naturhorn in ${key}`,
  key: { major: (tonic) => `${tonic}-Dur`, minor: (tonic) => `${tonic.toLowerCase()}-Moll` },
  level: (level, seed, difficulty) => `Stufe ${level}, Startzahl ${seed}, Schwierigkeit ${difficulty}.`,
  numbers: (keys, semitones, changes, risk) =>
    `${keys}, Umfang ${counted(semitones, 'Halbton', 'Halbtöne')}, ${counted(changes, 'Handwechsel', 'Handwechsel')} in der Minute, ${risk}.`,
  noRisk: 'kein unsicherer Ton',
  risks: (count) =>
    `${counted(count, 'unsicherer Ton', 'unsichere Töne')} (blau, ≈), wo der Ton nach oben rutschen kann`,
  naturalLegend: 'o offen, ¼ ½ ¾ und + geschlossen, jeweils bis zum nächsten Zeichen.',
  valveLegend: 'Die Ventile über gestopften Tönen gelten mit dem Stopfventil.',
  advice: 'So lange ruhen, wie gespielt wurde. Aufhören, wenn der Ansatz ermüdet oder die Hand schmerzt.',
};
