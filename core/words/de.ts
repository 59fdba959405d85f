/** Everything that is said in German, area by area; long because it is all of it. */

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

const grouped = (value: number) => groupedBy(value, '.', 5);

/** Names of parts, in quotation marks; a dash for none. */
const quoted = (names: readonly string[]) => names.map((name) => `„${name}“`).join(', ') || '–';

/** `1 Ton`, `0 Töne`, `5 Töne`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

const findings: FindingWords = {
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
        'another-note': 'Den Ton ändern: Er liegt auch offen außerhalb des Horns.',
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
  'closes-upward': ({ from, to, maySlip, reached: falls, starts }, { note, reached }) =>
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
  'opens-downward': ({ from, to, maySlip, reached: rises, starts }, { note, reached }) =>
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
  'fingering-misses': ({ written, state, horn, text, instead }, speech) => ({
    brief: 'anderer Ton',
    message: `Über dem Ton ${speech.note(written)}, ${speech.state(state)}, steht „${text}“; auf dem ${speech.horn(horn)} kommt er damit nicht.`,
    remedy: `Mit ${speech.valves(instead)} greifen oder den Griff in der Stimme streichen.`,
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

const repairs: RepairWords = {
  labels: {
    'octave-up': (note) => `Oktave höher (${note})`,
    'octave-down': (note) => `Oktave tiefer (${note})`,
    'other-start': (note) => `Auf ${note} beginnen`,
    'other-end': (note) => `Auf ${note} enden`,
    'line-removed': () => 'Linie entfernen',
    'slur-removed': () => 'Bindebogen entfernen',
    'tie-broken': () => 'Haltebogen trennen',
    'sign-added': (sign, count) =>
      count > 1 ? `${sign} über ${count} Noten schreiben` : `${sign} schreiben`,
    'sign-removed': (_, count) => (count > 1 ? `Zeichen von ${count} Noten entfernen` : 'Zeichen entfernen'),
    'fingering-taken': (valves) => `Mit ${valves} greifen`,
    'fingering-removed': (_, count) => (count > 1 ? 'Beide Griffe streichen' : 'Griff streichen'),
    'opening-word': (word) => `${word} schreiben`,
    'closing-word': (word) => `${word} schreiben`,
    'stopping-mute': (word) => `${word} schreiben`,
    'mute-out': (word) => `${word} schreiben`,
  },
  done: (label) => `Erledigt: ${label}.`,
  takenBack: (label) => `Zurückgenommen: ${label}.`,
  doneAgain: (label) => `Wiederholt: ${label}.`,
  quoted: (text) => `„${text}“`,
};

const answers: AnswerWords = {
  played: (fingered, fingering, natural) => `Griff ${fingered}, ${fingering}; Naturton ${natural}`,
  noFingering: 'Kein Griff dieses Horns bringt ihn hervor',
  alsoSure: (valves) => `Auch sicher: ${valves}`,
  nearestSure: (notes) => `Sicher in der Nähe: ${notes}`,
  closing: (reached) =>
    reached === ''
      ? 'Offen, dann von der Hand geschlossen: führt zu keinem Ton'
      : `Offen, dann von der Hand geschlossen: führt zu ${reached}`,
  opening: (reached) =>
    reached === ''
      ? 'Gestopft, dann geöffnet: führt zu keinem Ton'
      : `Gestopft, dann geöffnet: führt zu ${reached}`,
};

const report: ReportWords = {
  page: {
    skip: 'Zur Musik springen',
    onThisPage: 'Auf dieser Seite',
    howToRead: 'Wie diese Seite zu lesen ist',
    fingeringsOf: (part) => `Griffe: ${part}`,
    music: 'Die Musik',
    madeFrom: (file) =>
      `Mit Bellhand aus ${file} gemacht. Die Seite braucht kein Netz und kein Skript; man kann sie drucken, wie sie ist.`,
    barsTo: (first, last) => `Takte ${first} bis ${last}`,
    engraved: (bars) => `${bars}, gestochen`,
  },
  severities: { impossible: 'unspielbar', risky: 'heikel', advice: 'zum Notenbild' },
  table: {
    none: 'In dieser Stimme ist kein Ton gestopft.',
    labelOf: (part) => `Tabelle der Griffe: ${part}`,
    caption:
      'Jeder gestopfte Ton einmal für jede Art, wie er gespielt wird, vom tiefsten an. Tonhöhen sind notierte Tonhöhen.',
    note: 'Ton',
    hand: 'Hand',
    fingeredAs: 'Griff',
    natural: 'Naturton',
    drop: 'Absenkung',
    offBy: 'Abweichung',
    verdict: 'Urteil',
    otherWays: 'Andere Griffe',
    bars: 'Takte',
    notes: (count) => counted(count, 'Note', 'Noten'),
  },
  glissando: {
    wanted: (note) => `${note} verlangt`,
    natural: 'offen',
    stopped: 'gestopft',
    leads: (from, start, to, end) => `Die Musik führt von ${from} ${start} nach ${to} ${end}.`,
    closes: (from, to, fingering) => `Die schließende Hand bringt ${from} nach ${to} (${fingering}).`,
    opens: (from, to, fingering) => `Die öffnende Hand bringt ${from} nach ${to} (${fingering}).`,
    nowhere: 'Die Hand erreicht keinen Ton, der einen Namen hat.',
  },
  reading: {
    lines: (key) =>
      `Bei jedem gestopften Ton stehen zwei Zeilen. Die der Note nächste ist der Griff: der Ton, an den man denkt, und die Ventile, mit T für die ${key}-Seite. Die andere, in runden Klammern, ist der Naturton: was auf diesem Griff bei offener Hand klänge.`,
    vermillion: 'zinnoberrot',
    impossible: 'so notiert kann es keine Hand.',
    blue: 'blau',
    risky: 'mit Glück spielbar.',
    rings:
      'Ein Ring unter einer Note trägt die Nummer der Bemerkung daneben; die Bemerkung führt zum Ring zurück.',
    pitches:
      'Tonhöhen sind notierte Tonhöhen. Absenkung heißt, wie weit die Hand den Ton herunterbringt; Abweichung, wie weit das Ergebnis vom Ton liegt, + zu hoch. Hundert Cent (¢) sind ein Halbton.',
  },
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
  heardClosing: (note, way) => `Zum Hören: ${note}, während die Hand schließt (${way})`,
  heardOpening: (note, way) => `Zum Hören: ${note}, während die Hand öffnet (${way})`,
  folded: (stopped) =>
    `${stopped === 0 ? 'nichts gestopft' : stopped === 1 ? '1 gestopfter Ton' : `${stopped} gestopfte Töne`}, nichts fiel auf`,
};

const fingerings: FingeringWords = {
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

const horns: HornWords = {
  names: new Map<string, HornName>([
    ['double', (key) => `Doppelhorn in ${key('F')} und ${key('Bb')}`],
    ['single-f', (key) => `${key('F')}-Horn`],
    ['single-bflat', (key) => `${key('Bb')}-Horn`],
    ['single-bflat-stop-valve', (key) => `${key('Bb')}-Horn mit Stopfventil`],
    ['double-stop-valve', (key) => `Doppelhorn mit Stopfventil auf der ${key('Bb')}-Seite`],
    ['double-ascending', () => 'Doppelhorn mit aufsteigendem drittem Ventil'],
    ['descant', (key) => `Diskanthorn in ${key('Bb')} und ${key('high F')}`],
    ['triple-high-f', (key) => `Tripelhorn in ${key('F')}, ${key('Bb')} und ${key('high F')}`],
    ['natural', () => 'Naturhorn mit dem Bogen, den die Stimme verlangt'],
  ]),
  onCrook: (key) => `Naturhorn mit ${key.replace(' ', '-')}-Bogen`,
};

const summary: SummaryWords = {
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
  keptColour: (count) =>
    count === 1
      ? '1 zweifelhafter Ton hatte schon eine Farbe und behielt sie'
      : `${count} zweifelhafte Töne hatten schon eine Farbe und behielten sie`,
};

const etudes: EtudeWords = {
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
      trains:
        'Jeden Ton erst frei spielen, dann mit geschlossener Hand in gleicher Höhe und Stärke wiederfinden.',
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
        'Tonleitern und gebrochene Akkorde mit geschlossener Hand: die Griffe kennen, jeden Ton mittig setzen.',
      trainsOnNaturalHorn:
        'Tonleitern und gebrochene Akkorde mit der Hand: die gedeckten Töne den offenen angleichen.',
    },
    phrase: {
      name: 'Phrase und Echo',
      title: 'Über das Tal',
      trains: 'Jede Phrase mit geschlossener Hand beantworten: leiser, aber in gleicher Gestalt und Höhe.',
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
  numbers: (keys, semitones, changes) =>
    `${keys}, Umfang ${counted(semitones, 'Halbton', 'Halbtöne')}, ${counted(changes, 'Handwechsel', 'Handwechsel')} in der Minute.`,
  noRisk: 'Kein unsicherer Ton.',
  risks: (count) =>
    `${counted(count, 'unsicherer Ton', 'unsichere Töne')} (blau, ≈), wo der Ton nach oben rutschen kann.`,
  naturalLegend: 'o offen, ¼ ½ ¾ und + geschlossen, jeweils bis zum nächsten Zeichen.',
  valveLegend:
    'Schallbecher zu, Stopfventil gedrückt: über gestopften Tönen stehen die Griffe des geschriebenen Tons auf der B-Seite.',
  advice: [
    'So lange ruhen, wie gespielt wurde.',
    'Aufhören, wenn der Ansatz ermüdet oder die Hand schmerzt.',
  ],
  noTime: (seconds, tempo) =>
    `eine Hand, die ${seconds} s braucht, hat in einer halben Note bei ${tempo} Schlägen pro Minute keine Zeit: ein langsameres Tempo oder eine schnellere Hand wählen`,
  tooFew: {
    notes: (low, high, horn, count) =>
      `von ${low} bis ${high} hat das Instrument (${horn}) ${count === 0 ? 'keinen Ton' : `nur ${counted(count, 'Ton', 'Töne')}`} der Tonart, ${count < 2 ? 'den' : 'die'} die Hand sicher macht: einen weiteren Umfang, eine andere Tonart, Art oder ein anderes Horn wählen`,
    bends: (low, high, horn, count) =>
      `von ${low} bis ${high} hat das Instrument (${horn}) ${count === 0 ? 'keinen Ton' : `nur ${counted(count, 'Ton', 'Töne')}`}, ${count < 2 ? 'den' : 'die'} die Hand senken und wieder heben kann: einen weiteren Umfang, eine andere Tonart, Art oder ein anderes Horn wählen`,
  },
  noHome: (tonic, low, high, horn) =>
    `das Instrument (${horn}) hat von ${low} bis ${high} kein sicheres ${tonic} als Grundton: eine andere Tonart oder einen weiteren Umfang wählen`,
};

const scores: ScoreWords = {
  place: (line, column) => `Zeile ${line}, Spalte ${column}`,
  cutShort: (plain) => `die Datei bricht ab (${plain}): noch einmal holen oder exportieren`,
  unmatchedClosing: (plain) =>
    `ein schließendes Tag hat kein öffnendes (${plain}): die Partitur mit dem Programm, das sie schrieb, neu exportieren`,
  notXml: (plain) => `das ist kein XML (${plain}): die Partitur als MusicXML exportieren`,
  secondDocument: (plain) =>
    `in derselben Datei steht ein zweites Dokument (${plain}): für jede Partitur eine eigene Datei nehmen`,
  undeclaredEntity: (plain) =>
    `die Datei benutzt eine Entität, die sie nicht erklärt (${plain}): das Zeichen selbst schreiben, oder &amp; für &`,
  attributeTwice: (plain) =>
    `ein Attribut steht doppelt (${plain}): die Partitur mit dem Programm, das sie schrieb, neu exportieren`,
  disallowedCharacter: (plain) =>
    `ein Zeichen steht, wo XML es nicht erlaubt (${plain}): < und & als &lt; und &amp; schreiben, oder die Partitur mit dem Programm, das sie schrieb, neu exportieren`,
  malformed: (plain) =>
    `das ist kein wohlgeformtes XML (${plain}): die Partitur mit dem Programm, das sie schrieb, neu exportieren`,
  doctypeTooLong: (most) =>
    `der Dokumenttyp ist länger als ${grouped(most)} Zeichen: prüfen, woher die Datei kommt`,
  entityTooLong: (name, most) =>
    `die Entität „${name}“ steht für mehr als ${grouped(most)} Zeichen: prüfen, woher die Datei kommt`,
  entitiesTooLong: (name, most) =>
    `Entitäten wie „${name}“ stehen zusammen für mehr als ${grouped(most)} Zeichen: prüfen, woher die Datei kommt`,
  entityInCircle: (name) =>
    `die Entität „${name}“ steht für sich selbst, oder beinahe: prüfen, woher die Datei kommt`,
  notMusicXml: (element) => `<${element}> ist keine MusicXML-Partitur: die Noten als MusicXML exportieren`,
  partTwice: (part) =>
    `die Stimme „${part}“ steht hier zweimal: eine davon behalten, oder einer eine andere Id geben`,
  idTwice: (id) => `zwei Stimmen haben die Id „${id}“: jeder Stimme eine eigene geben`,
  noPart: (request, parts) =>
    `es gibt keine Stimme „${request}“: eine der Stimmen dieser Partitur wählen (${parts.length > 0 ? quoted(parts) : 'keine'})`,
  tooMuchMusic: (most) =>
    `die zu lesenden Stimmen haben mehr als ${grouped(most)} Noten, Pausen und Wörter, mehr als es gibt: prüfen, woher die Datei kommt`,
  chordTooLarge: (most) => `ein Akkord hat mehr als ${grouped(most)} Noten: prüfen, woher die Datei kommt`,
  halfCharacter: (encoding) =>
    `der Text in ${encoding} endet mit einem halben Zeichen: die Datei noch einmal holen`,
  unknownEncoding: (encoding) =>
    `die Kodierung ${encoding} kann Bellhand nicht zurückschreiben: die Datei als UTF-8 speichern`,
  whichFile:
    'das ZIP-Archiv sagt nicht, welche Datei darin die Partitur ist: die Noten als .mxl oder .musicxml exportieren',
  fileMissing: (path) => `der Container nennt „${path}“, das nicht darin ist: die Noten neu exportieren`,
  containerMalformed: 'META-INF/container.xml ist kein wohlgeformtes XML: die Noten neu exportieren',
  noScoreInside: 'das ZIP-Archiv enthält kein MusicXML: die Noten als .mxl oder .musicxml exportieren',
  zip64: 'das ist ein ZIP64-Archiv: die Partitur als gewöhnliches ZIP neu packen',
  directoryDamaged:
    'das ZIP-Archiv ist beschädigt: sein Verzeichnis stimmt nicht mit seinen Prüfsummen überein: die Datei noch einmal holen oder exportieren',
  entryDamaged: (name) =>
    `das ZIP-Archiv ist beschädigt: „${name}“ stimmt nicht mit seinen Prüfsummen überein: die Datei noch einmal holen oder exportieren`,
  encrypted: (name) => `„${name}“ ist verschlüsselt: die Partitur ohne Passwort neu packen`,
  unpacksTo: (name, megabytes, most) =>
    `„${name}“ wird entpackt ${grouped(megabytes)} MB groß, geöffnet werden höchstens ${most} MB: prüfen, woher die Datei kommt, oder nur die Hornstimmen exportieren`,
  growsTo: (name, times, most) =>
    `„${name}“ wird beim Entpacken ${grouped(times)}-mal so groß, geöffnet wird höchstens das ${most}-Fache: prüfen, woher die Datei kommt, oder sie ungepackt als .musicxml speichern`,
  packedBy: (name, method) =>
    `„${name}“ ist mit Verfahren ${method} gepackt: die Partitur als gewöhnliches ZIP neu packen`,
  archiveCutShort:
    'das ZIP-Archiv hat kein Ende: die Datei noch einmal holen oder exportieren: sie scheint abgeschnitten',
};

const panel: PanelWords = {
  labels: {
    horn: 'Horn',
    noteNames: 'Notennamen',
    print: 'Über den Noten',
    fingered: 'Gegriffener Ton',
    valves: 'Ventile',
    natural: 'Naturton',
    verdict: 'Zeichen ≈ und ×',
    colour: 'Farben',
    onlyChanges: 'Nur bei Wechsel',
    quickValves: 'Schnelle Noten: nur Ventile',
    widerBars: 'Breitere Takte, wo nötig',
    tolerance: 'Toleranz in Cent',
    handOffset: 'Handabweichung in Cent',
    toleranceHint: 'Griffe, die weiter vom notierten Ton liegen, bleiben weg',
    handOffsetHint: 'Über 0 für eine Hand, die zu hoch stopft, darunter für eine, die zu tief stopft',
    annotate: 'Bezeichnen',
    clear: 'Entfernen',
    lookAgain: 'Neu prüfen',
    fromCursor: 'Ab dem Cursor',
    previous: 'Voriger Fund',
    next: 'Nächster Fund',
    stoppedSign: '+ über die ausgewählten Noten schreiben oder entfernen',
    openSign: 'o über die ausgewählten Noten schreiben oder entfernen',
    noteAsked: 'Eine Hornnote auswählen, um zu sehen, wie sie gestopft wird.',
    findings: 'Zu prüfen',
    nothingFound: 'Nichts: Jeder gestopfte Ton ist spielbar.',
    instead: 'Stattdessen:',
    etude: 'Etüde',
    etudeKind: 'Art',
    etudeLesson: 'Eine Lektion auf einer Seite',
    etudeKey: 'Notierte Tonart',
    etudeLevel: 'Stufe',
    etudeLength: 'Takte',
    etudeTempo: 'Schläge pro Minute, 0 für das übliche Maß',
    etudeCompass: 'Von–bis, etwa C4–G5',
    compose: 'Komponieren',
    copyPath: 'Pfad kopieren',
    openOutside: 'Öffnen',
  },
  noScore: 'Es ist keine Partitur geöffnet.',
  emptyScore: 'Die Partitur hat keine Takte.',
  reading: (percent) => `Die Partitur wird gelesen: ${percent} %`,
  readOnceLetGo: 'Die Partitur ist groß: Esc in den Noten drücken, dann wird sie gelesen.',
  noHorn: 'Die Partitur hat keine Hornstimme.',
  noStopped: 'Die Hornstimme hat keinen gestopften Ton: nichts zu bezeichnen.',
  noStoppedSelected: 'Kein gestopfter Hornton ist ausgewählt: Es wurde nichts geändert.',
  annotated: 'Bezeichnet.',
  annotatedSelection: 'In der Auswahl bezeichnet.',
  upToDate: 'Alles ist schon bezeichnet: Es wurde nichts geändert.',
  severalNotes: (count) => `${count} Noten`,
  nthOf: (nth, count) => `${nth} von ${count}`,
  noHornSelected: 'Keine Hornnote ist ausgewählt.',
  cleared: (count) => `Bezeichnung entfernt: ${counted(count, 'Note', 'Noten')}.`,
  nothingToClear: 'Es gibt keine unserer Bezeichnungen zu entfernen.',
  failed: (reason) => `Es wurde nichts geändert: ${reason}.`,
  notShown: 'Die Note steht nicht mehr in der Partitur.',
  etudeOpened: (title) => `Eine neue Partitur ist offen: ${title}.`,
  etudeWritten: (title, path) =>
    `Die Etüde „${title}“ ist geschrieben. Diese Datei im Notenprogramm öffnen: ${path}`,
  etudeAsked: (path) =>
    `Das System soll ${path} öffnen. Erscheint nichts, die Datei im Notenprogramm öffnen.`,
  etudeNotWritten: (title) =>
    `Die Etüde „${title}“ ließ sich nicht schreiben: Kein Ordner nimmt die Datei an.`,
  etudeRange: (range) =>
    `„${range}“ ist kein Umfang: zwei Töne, den tieferen zuerst, wie C4–G5, oder nichts.`,
  faults: {
    notExported: (path) => `das Notenprogramm konnte ${path} nicht schreiben`,
    placeNotFound: 'eine Note steht nicht mehr, wo sie gelesen wurde; neu prüfen',
    nothingToTakeOut: 'was zu entfernen ist, steht nicht mehr da',
    notTaken: 'das Notenprogramm hat es nicht angenommen',
  },
};

const hornFile: HornFileWords = {
  notJson: (plain) => `kein JSON: ${plain}`,
  mustBe: (at, wanted, got) => `${at} verlangt ${wanted}, da steht ${got}`,
  theFile: 'die Datei',
  nothing: 'nichts',
  wanted: {
    sides: 'eine Liste von einer bis vier Seiten, jede { "name": …, "fundamental": … }',
    'one-side': 'auf einem Naturhorn eine einzige Seite, den Bogen',
    fundamental: 'den klingenden 1. Naturton, von C0 bis C3: F1 für ein Horn in F',
    note: 'einen klingenden Notennamen in englischer Schreibung wie "F1"',
    text: 'einen Text von 1 bis 60 Zeichen ohne <, > und &',
    flag: 'true oder false',
    valves: '"compromise", "ascending", "none" oder eine Liste von { "valves": "12", "semitones": 3 }',
    'valve-numbers': '"0" oder die Nummern der Ventile, etwa "12"',
  },
  number: (from, to) => `eine Zahl von ${from} bis ${to}`,
  whole: (from, to) => `eine ganze Zahl von ${from} bis ${to}`,
  unknownField: (at, field, known) =>
    `${at} hat ein Feld "${field}", das hier nichts bedeutet; eines von diesen schreiben: ${known}`,
  shortSideFrom:
    '"shortSideFrom" sagt die Seite selbst: dort "openFrom": "Db4" schreiben und es hier weglassen',
  noSideStoppable: 'keine Seite lässt sich stopfen: "stoppable": false bei der weglassen, auf der man stopft',
  orderForSome: '"stoppingOrder" steht bei einigen Seiten; für jede Seite angeben oder für keine',
  orderTwice:
    'zwei Seiten haben dieselbe "stoppingOrder"; mit 1, 2, … zählen, wie die Hand nach ihnen greift',
};

/** What a result is. */
const CONTENTS = {
  score: 'eine Partitur in MusicXML',
  page: 'eine Seite für den Browser',
  picture: 'ein Bild',
  sound: 'ein Klang',
};

export const commandLine: CommandLineWords = {
  hornFile,
  scores,
  help: {
    program: 'Griffe und Naturtöne für die gestopften Töne von Hornstimmen, und was keine Hand kann',
    version: 'gibt die Version aus',
    help: 'gibt diese Hilfe aus',
    helpOf: 'gibt die Hilfe zu einem Befehl aus',
    usage: 'Aufruf:',
    arguments: 'Argumente:',
    options: 'Optionen:',
    generalOptions: 'Optionen aller Befehle:',
    commands: 'Befehle:',
    byDefault: (value) => `sonst: ${value}`,
    see: (command) => `siehe: ${command}`,
  },
  commands: {
    annotate: 'schreibt Griff, Naturton und Urteil über jeden gestopften Ton der Hornstimmen',
    clear: 'nimmt alles, was annotate geschrieben hat, wieder heraus und lässt das Übrige, wie es ist',
    check:
      'zählt jeden gestopften Ton und jeden Befund auf, ohne zu schreiben; endet mit 1, wenn ein Ton unspielbar ist',
    explain: 'erklärt einen notierten Ton: Griff, Naturton, Absenkung und alle anderen Griffe',
    etude: (kinds) => `komponiert eine Etüde für die stopfende Hand: ${kinds}`,
    lesson:
      'komponiert eine Lektion: eine Seite nummerierter Übungen, von langen Tönen bis zu schnellen Wechseln',
    course:
      'komponiert einen Lehrgang: jede Woche eine Lektion, jede etwas schwerer und mit einem Rückgriff auf die vorige',
    report:
      'schreibt eine Seite mit dem Urteil, dem, was zu tun ist, den gestochenen Noten um jeden Befund und den Griffen',
    chart:
      'eine Tabelle eines Horns schreiben: die Griffe aller Töne, die sich stopfen lassen, oder wohin die Hand jeden Ton zieht',
    watch: 'prüft eine Datei bei jedem Speichern und sagt, was sich geändert hat; Strg-C beendet',
    install: 'legt das Plugin in den Plugin-Ordner von MuseScore 3 und 4',
  },
  arguments: {
    files: 'MusicXML-Dateien, auch gepackte; - für die Standardeingabe',
    file: 'eine MusicXML-Datei, auch gepackt; - für die Standardeingabe',
    watched: 'eine MusicXML-Datei, die ein Programm immer wieder speichert',
    note: 'der Ton, wie ihn die Stimme druckt, englisch mit Oktave: C5, F#4, Bb3',
  },
  options: {
    output: (name) => `wohin geschrieben wird: eine Datei, ein Ordner oder - (sonst: ${name})`,
    outputOfOne: (name) => `wohin geschrieben wird, oder - (sonst: ${name})`,
    inPlace: 'schreibt in die Eingabedatei selbst',
    complete: 'ergänzt fehlende + unter einem Wort und Wörter, die eines aufheben',
    jobs: 'wie viele Dateien gleichzeitig bearbeitet werden; nie mehr, als Kerne und Speicher erlauben',
    force:
      'ersetzt auch eine Datei, die nicht von Bellhand stammt, seither geändert wurde oder schreibgeschützt ist',
    checkFormat:
      'table; json, ein Objekt für jede Datei, eines je Zeile; json-lines, dasselbe ohne die Töne, für Kataloge',
    explainFormat: 'table oder json',
    chartOf: 'fingerings: Griffe gestopfter Töne; bends: wohin die Hand jeden Ton führt, für Komponisten',
    chartFormat:
      'html, eine Seite zum Drucken, oder musicxml, Noten (sonst: wie der Name nach -o endet, oder html)',
    curve: 'die Tonhöhe beim Schließen der Hand, aus der Akustik: als Text oder als SVG-Bild in einer Datei',
    sound: 'der Ton, während die Hand schließt, aus der Akustik, als WAV-Datei',
    soundOfReport: 'Glissandi, die der Hand nicht gelingen, hören lassen, wie sie ihr geraten',
    part: 'eine Stimme, die als Horn gelten soll: Name, Kennung oder Platz in der Partitur; auch mehrmals',
    keyOfPart: 'die Stimmung von Hörnern, deren Stimme keine nennt: F, Eb, "Bb basso", …',
    keyOfNote: 'die Stimmung, in der die Stimme steht: F, Eb, "Bb basso", …',
    hand: (states) => `was die Hand tut: ${states}`,
    horn: (ids) => `das gespielte Horn: ${ids}, natural, natural-eb und so weiter, oder eine .json-Datei`,
    tolerance: 'Griffe, die weiter abweichen, gelten nicht',
    handOffset: 'was diese Hand zu jedem Schließen hinzutut: über 0 für eine Hand, die zu hoch stopft',
    handTime: 'die kürzeste Zeit, in der die Hand hinein- oder herauskommt',
    names:
      'Töne so benannt, wie die Stimme sie schreibt (as-written), oder wie ein F-Hornist sie liest (f-horn)',
    bassClef:
      'Töne im Bassschlüssel: new, wie sie stehen; old, eine Oktave zu tief; auto, nach dem Augenschein',
    assumedTempo: 'das Tempo einer Stimme, die keines nennt, in Vierteln pro Minute',
    show: (items) => `was geschrieben wird, aus ${items}`,
    valvesAs: 'Ventile im Text über dem Ton (text) oder als Fingersatz der Note (fingering)',
    repeat: 'changes: Text weglassen, wo der Ton davor im selben Takt denselben trägt; all: nie',
    quick: 'valves: in Takten, deren Angaben dichter als eine Viertel stehen, nur die Ventile; full: alles',
    language: (languages) => `die Sprache der Ausgabe: ${listed(languages, 'oder')} (sonst: die des Systems)`,
    noteNames:
      'Tonnamen: english (B♭ B), german (B H) oder solfege (si♭ si) (sonst: wie in der Sprache üblich)',
    etudeKey: 'die notierte Tonart, englisch geschrieben: C, Bb, F#, Dm, …',
    level: '1 für die ersten Wochen, 2 für das tägliche Üben, 3 für Erfahrene',
    bars: (phraseBars) => `Länge in Takten, in Phrasen von ${phraseBars}`,
    tempo: 'Schläge pro Minute (sonst: was zur Art passt)',
    range: 'tiefster und höchster notierter Ton, etwa C4-G5 (sonst: nach der Stufe)',
    seed: 'dieselbe Zahl ergibt dieselbe Musik (sonst: jedes Mal eine neue)',
    copy: 'marked, mit den Griffen, oder plain, zum Eintragen für den Schüler',
    weeks: 'wie viele Lektionen',
    lessonKey:
      'die notierte Tonart jeder Übung, englisch geschrieben: C, Bb, F#, Dm, … (sonst: nach der Stufe)',
    whole: 'zeigt alle Noten; sonst ist eingeklappt, was in Ordnung ist',
    folder: 'der Plugin-Ordner, wenn er nicht bei Ihren Dokumenten liegt',
  },
  usage: {
    unknownOption: (option) => `unbekannte Option „${option}“`,
    afterCommand: (option, command) => `die Option „${option}“ gehört hinter den Befehl „${command}“`,
    unknownCommand: (name) => `unbekannter Befehl „${name}“`,
    suggestion: (names) => `Gemeint vielleicht ${names}?`,
    missingArgument: (name) => `das Argument „${name}“ fehlt`,
    missingOption: (flags) => `die Option „${flags}“ fehlt`,
    missingValue: (flags) => `der Option „${flags}“ fehlt ihr Wert`,
    tooManyArguments: (command) => `zu viele Argumente für „${command}“`,
    badValue: (flags, value, why) => `„${flags}“ kann nicht „${value}“ sein. ${why}`,
    number: (unit, from, to) => `Eine Zahl (${unit}) von ${from} bis ${to} angeben.`,
    wholeNumber: 'Eine ganze Zahl ab 1 angeben.',
    wholeBetween: (from, to) => `Eine ganze Zahl von ${from} bis ${to} angeben.`,
    oneOf: (list) => `Zur Wahl stehen ${listed(list, 'oder')}.`,
    someOf: (list) => `Aus ${listed(list, 'oder')} wählen, mit Kommas dazwischen.`,
    notANote: (text) =>
      `„${text}“ ist kein Ton: einen Buchstaben A–G schreiben, wenn nötig # oder b, und die Oktave, wie C#5 oder Bb4 (B ist hier H).`,
    notAKey: (text) =>
      `„${text}“ ist keine Tonart mit höchstens sieben Vorzeichen: den Grundton schreiben und für Moll ein m, wie F, Bb, Dm oder C#m.`,
    hornOrFile: (list) => `Zur Wahl stehen ${list} oder eine .json-Datei.`,
    hornKey: 'Eine Stimmung nennen: F, Eb, D, "Bb alto", "Bb basso", ….',
    bars: (phraseBars, from, to) => `Ein Vielfaches von ${phraseBars} zwischen ${from} und ${to} angeben.`,
    rangeEnds: 'Zwei Töne mit Bindestrich angeben, wie C4-G5.',
    lowerFirst: 'Den tieferen Ton zuerst nennen.',
  },
  units: {
    cents: 'Cent',
    seconds: 'Sekunden',
    quarters: 'Viertel pro Minute',
    beats: 'Schläge',
    weeks: 'Wochen',
  },
  systemFaults: {
    ENOENT: 'diese Datei gibt es nicht: Namen und Ordner prüfen',
    EACCES:
      'die Berechtigung fehlt: Rechte der Datei oder ihres Ordners ändern oder einen anderen Ort wählen',
    EPERM:
      'das System erlaubt es nicht: Rechte der Datei oder ihres Ordners ändern oder einen anderen Ort wählen',
    EROFS: 'dieser Datenträger ist schreibgeschützt: mit -o einen anderen Ort wählen',
    ENOSPC: 'der Datenträger ist voll: Platz schaffen oder mit -o einen anderen Ort wählen',
    EISDIR: 'das ist ein Ordner: eine Datei darin nennen',
    ENOTDIR: 'ein Teil des Pfads ist eine Datei und kein Ordner: den Pfad prüfen',
    ENAMETOOLONG: 'der Name ist zu lang: einen kürzeren wählen',
    EMFILE: 'zu viele Dateien sind offen: --jobs verringern',
    ERR_FS_FILE_TOO_LARGE: 'das ist größer als jede Partitur: prüfen, woher es kommt',
    ELOOP: 'die Verknüpfungen führen im Kreis: die Datei selbst nennen',
    other: (code) => `das System weist es zurück (${code})`,
  },
  faults: {
    own: (text) => `ein Fehler in bellhand selbst, bitte melden: ${text}`,
    folderMissing: 'den Ordner gibt es nicht: zuerst anlegen',
    notWritten: (path, why) => `${path}: lässt sich nicht schreiben: ${why}`,
    outputNotWritten: (why) => `die Standardausgabe lässt sich nicht schreiben: ${why}`,
    folderNotMade: (path, why) => `${path}: dieser Ordner lässt sich nicht anlegen: ${why}`,
    tooLarge: (name, megabytes) =>
      `${name}: größer als ${megabytes} MB, mehr wird nicht gelesen: prüfen, woher es kommt, oder nur die Hornstimmen exportieren`,
    placeAndInPlace: '-o und --in-place schließen einander aus: eines wählen',
    inputInPlace: 'die Standardeingabe lässt sich nicht an Ort und Stelle ändern: --in-place weglassen',
    manyIntoOne: (output, count) =>
      `${output}: ${count} Ergebnisse passen nicht in eine Datei: mit -o einen Ordner nennen`,
    inputAmongFiles:
      'die Standardeingabe neben anderen Dateien: ihr Ergebnis braucht einen Ort: mit -o einen Ordner nennen',
    ontoInput: (target) => `${target}: das würde eine Eingabe überschreiben: mit -o einen anderen Ort wählen`,
    ontoInputInPlace: (target) =>
      `${target}: das würde eine Eingabe überschreiben: mit -o einen anderen Ort wählen oder --in-place sagen`,
    notPlain: (path) =>
      `${path}: keine gewöhnliche Datei und nicht an Ort und Stelle zu ändern: -o verwenden`,
    notOurs: (path) =>
      `${path}: diese Datei gibt es schon, und sie stammt nicht von Bellhand oder wurde seither geändert: mit -o einen anderen Ort wählen oder mit --force ersetzen`,
    otherEnding: (path, content, endings) =>
      `${path}: hier entsteht ${CONTENTS[content]}: den Namen auf ${listed(endings, 'oder')} enden lassen`,
    namedTwice: (input) => `${input}: diese Datei ist zweimal genannt: einmal genügt`,
    linkToNothing: (path, target) =>
      `${path}: eine Verknüpfung mit ${target}, das es nicht gibt: die Datei selbst nennen oder die Verknüpfung entfernen`,
    readOnly: (path) => `${path}: ist schreibgeschützt: die Rechte ändern oder mit --force ersetzen`,
    notPutBack: (path, copy) =>
      `${path}: lässt sich weder schreiben noch wiederherstellen: der alte Inhalt liegt in ${copy}`,
    outputIntoInput: (target) =>
      `${target}: die Standardausgabe geht in diese Eingabe: in eine andere Datei leiten`,
    twoOntoOne: (output, one, other) =>
      `${output}: hierher würden ${one} und ${other} geschrieben: eine umbenennen oder einzeln bearbeiten`,
    noParts: (name) => `${name}: die Partitur hat keine Stimmen: noch einmal exportieren`,
    noHorn: (name, parts) =>
      `${name}: keine Stimme ist ein Horn; es gibt ${quoted(parts)}: mit --part wählen`,
    partWithoutMusic: (name, part) =>
      `${name}: die Stimme „${part}“ ist aufgeführt, hat aber keine Noten: mit --part eine andere wählen oder noch einmal exportieren`,
    orNameKey: (name, why) => `${name}: ${why}; oder mit --key die Stimmung nennen`,
    noTransposition: 'keine Stimme nennt eine Transposition',
    workerDied: (name, why) => `${name}: ließ sich nicht bearbeiten (${why}): allein versuchen, mit --jobs 1`,
    noCurve: (note) => `${note}: kein Griff, also keine Kurve: nach einem anderen Ton oder Horn fragen`,
    curveTooHigh: (note, highest, harmonic) =>
      `${note}: die Kurve wird bis Naturton ${highest} gerechnet, dies ist Naturton ${harmonic}: nach einem tieferen Ton fragen`,
    curveAndJson:
      '--curve ist hier Text und --format json sind Daten: --curve eine Datei geben oder eines weglassen',
    inputWatched: 'die Standardeingabe lässt sich nicht beobachten: eine Datei nennen',
    noPluginFolder: (places) =>
      `weder MuseScore3 noch MuseScore4 liegt in ${places}: den Editor einmal starten oder mit --dir seinen Plugin-Ordner nennen`,
    pluginNotBuilt: (path) => `das Plugin liegt nicht in ${path}: npm run build ausführen`,
  },
  readings: {
    fromName: (part) =>
      `die Partitur nennt für „${part}“ keine Transposition; der Name wurde beim Wort genommen`,
    concertScore: (part) =>
      `die Partitur steht klingend und nennt für „${part}“ keine Stimmung; die Töne sind so angegeben, wie sie klingen`,
    nowhere:
      'die Partitur nennt keine Transposition: der Stimme ihre Transposition geben oder sie „Horn in F“ nennen',
    'no-key': (part) =>
      `die Partitur nennt keine Transposition, und der Name „${part}“ sagt keine Stimmung: der Stimme ihre Transposition geben oder sie „Horn in F“ nennen`,
    'alto-or-basso': (part) =>
      `die Partitur nennt keine Transposition, und der Name „${part}“ lässt offen, ob B alto oder B basso gemeint ist: der Stimme ihre Transposition geben oder sie „Horn in B basso“ nennen`,
  },
  told: {
    standardInput: 'Standardeingabe',
    thisPart: 'dieser Stimme',
    marksOut: 'Bezeichnungen herausgenommen',
    noMarks: 'es gab keine Bezeichnungen herauszunehmen',
    cannotBePlayed: (count, bars) =>
      `${counted(count, 'Ton ist', 'Töne sind')} so nicht spielbar, in ${bars}: bellhand check sagt, warum`,
    notKept: (path, what) => `${path}: ${what} ließ sich nicht erhalten`,
    owner: 'der Besitzer',
    group: 'die Gruppe',
    hardLinks: 'die anderen harten Verknüpfungen',
    files: (count) => counted(count, 'Datei', 'Dateien'),
    failed: (count) => `${count} gescheitert`,
    interrupted: (left) => `unterbrochen, ${left} nicht begonnen`,
    allDone: 'alles erledigt',
    progress: (done, total) => `${done} von ${total} Dateien`,
    pageReady: 'im Browser zu öffnen',
    fileGone: (name) => `${name} ist weg; warte, bis die Datei wiederkommt`,
    watching: 'beobachte; Strg-C beendet',
    nothingNew: 'nichts Neues',
    findingGone: (finding) => `${finding} ist erledigt`,
    installed: (version, path) => `für MuseScore ${version} eingerichtet: ${path}`,
    switchOn: (version, how) => `Jetzt in MuseScore ${version} einmal einschalten: ${how}.`,
    switchOn3: 'Plugins > Plugin-Manager, die Bellhand-Einträge ankreuzen, OK',
    switchOn4: 'Start > Plugins, jeden Bellhand-Eintrag wählen, Aktivieren',
  },
  table: {
    bar: 'Takt',
    beat: 'Schlag',
    written: 'notiert',
    hand: 'Hand',
    finger: 'Griff',
    valves: 'Ventile',
    side: 'Seite',
    harmonic: 'Naturton Nr.',
    natural: 'Naturton',
    drop: 'tiefer um',
    off: 'Abw.',
    verdict: 'Urteil',
    why: 'warum dieser Griff',
    asPrinted: (text) => `wie in der Stimme: ${text}`,
    sounding: (semitones) =>
      semitones === 0
        ? 'klingt wie notiert'
        : `klingt ${counted(Math.abs(semitones), 'Halbton', 'Halbtöne')} ${semitones < 0 ? 'tiefer' : 'höher'}`,
  },
  explain: {
    heading: (note, horn, verdict) => `${note}, ${horn}: ${verdict}`,
    noFingering: 'kein Griff',
    chosenBecause: 'gewählt',
    finger: 'Griff',
    naturalPitch: 'Naturton',
    handCloses: 'Hand schließt',
    stoppingValve: 'Stopfventil',
    stoppingValveDown: (cents) =>
      `gedrückt: senkt das Horn um ${cents} Cent, um so viel der geschlossene Schallbecher erhöht; greifen wie geschrieben`,
    drop: 'Absenkung',
    comesOut: 'klingt',
    otherWays: 'Andere Griffe, der beste zuerst',
    twoClosings: (rule, acoustics) => `${rule} nach der Regel, ${acoustics} nach der Akustik`,
    cents: (count) => `${count} Cent`,
    curveTitle: (note, natural, fingering) =>
      `${note} aus ${natural}: ${fingering}, während die Hand schließt`,
  },
};

const chart: ChartWords = {
  stoppedNotesOn: (horn) => `Gestopfte Töne: ${horn}`,
  notesOn: (horn) => `Die Hand im Schalltrichter: ${horn}`,
  fingeredReading: (example) => `${example}: der gegriffene Ton und die Ventile.`,
  naturalReading: 'o offen; ¼ ½ ¾ so weit geschlossen; + gestopft.',
  naturalPitchReading: 'In Klammern: was klingt, wenn die Hand öffnet.',
  arrows: '↑ ↓: fast einen Viertelton darüber oder darunter.',
  bassClef: 'Der Bassschlüssel gilt, wie er dasteht.',
  stoppingValve: (key) =>
    `Auf der ${key}-Seite wird mit der Hand das Stopfventil gedrückt; gegriffen wird wie offen.`,
  otherWaysReading:
    'Kleine Noten: andere Griffe für den Ton davor, mit der Abweichung in Cent, wo man sie hört.',
  chart: 'Die Tabelle',
  low: 'Tief',
  high: 'Hoch',
  back: 'Andere Griffe, Cent und Glissandi',
  heads: {
    note: 'Ton',
    fingering: 'Griff',
    natural: 'Naturton',
    falls: 'fällt um',
    otherWays: 'Andere Griffe',
    open: 'Offen',
    fallsTo: 'Die Hand schließt',
  },
  centsReading: (least) =>
    `Kleine Zahlen: Abweichung vom notierten Ton in Cent, + zu hoch, wo man sie hört (ab ${least}).`,
  stoppedNote: (note) => `${note}, gestopft`,
  slidesOn: (horn) => `Glissandi der Hand: ${horn}`,
  slidesReading:
    'Notierte Töne: o offen, + gestopft. Über jedem gestopften Ton stehen die Ventile; sie bleiben das ganze Glissando lang gedrückt.',
  slidesReadingNatural: 'Notierte Töne: o offen; ¼ ½ ¾ so weit geschlossen; + gestopft.',
  prefix: (letter, key) => `${letter} ist die ${key}-Seite.`,
  withLuck: '≈ und blau: mit Glück.',
  asTheHandCloses: 'Die Hand schließt: wohin jeder offene Ton fällt',
  asTheHandOpens: 'Die Hand öffnet: wohin jeder gestopfte Ton steigt',
  cannotBeWritten: 'Was nicht geschrieben werden kann',
  slide: (from, to, way) => `${from} nach ${to} (${way})`,
  neverUp:
    'Ein Glissando hinauf zu einem gestopften Ton oder von einem gestopften hinunter: die schließende Hand senkt den Ton, die öffnende hebt ihn wieder.',
  widest: (semitones) => `Ein Glissando von mehr als ${counted(semitones, 'Halbton', 'Halbtönen')}.`,
  tooLow: (notes) =>
    `Von ${notes} aus: zu tief, als dass die Hand den Ton senken könnte; er rutscht höchstens einen Halbton hinauf.`,
  tooHigh: (notes) => `Von ${notes} aus: so hoch, dass das Schließen nichts Hörbares ändert.`,
  between: (notes) => `Von ${notes} aus: der Ton fällt, aber nicht bis zu einem anderen Ton.`,
  notReached: (notes) => `Nach ${notes} gestopft: spielbar, aber kein offener Ton fällt dorthin.`,
  withoutStoppingValve: 'Das Stopfventil bleibt bei jedem Glissando ungedrückt.',
  madeBy: 'Mit Bellhand gemacht.',
};

const curves: CurveWords = {
  none: 'Der Becher hält keinen dieser Naturtöne',
  plotted: (harmonic, hz) =>
    `Naturton ${harmonic}, offen bei ${hz} Hz; Cent vom offenen Ton, während die Hand schließt`,
  closing: 'zu',
  cents: 'Cent',
  tabled: 'Cent vom offenen Ton, während die Hand schließt',
  openHz: 'Hz offen',
  pictured: (hz) => `Die Hand schließt ein Rohr von ${hz} Hz`,
  howFar: 'wie weit die Hand geschlossen ist',
  sealed: 'dicht',
  harmonic: 'Naturton',
  described: (ways) => `Von der offenen Hand bis zur ganz geschlossenen: ${ways}.`,
  falls: (harmonic, cents) => `Naturton ${harmonic} fällt um ${cents} Cent`,
  rises: (harmonic, cents) => `Naturton ${harmonic} steigt um ${cents} Cent`,
  stays: (harmonic) => `Naturton ${harmonic} bleibt`,
};

/** What both doors say. */
export const words: Words = {
  usualNaming: 'german',
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
  unreadable:
    'diese Stimme lässt sich nicht stechen: in einem Notenprogramm öffnen, neu als MusicXML exportieren, oder check nehmen',
  noEngraver:
    'Seiten zeichnet verovio, das nicht installiert ist: npm install verovio ausführen, oder check nehmen, oder chart --format musicxml',
};

const stand: StandWords = {
  law: 'Die schließende Hand holt einen Ton herunter, bis knapp über den nächsttieferen Naturton, nie hinauf.',
  sheets: { note: 'Ein Ton', part: 'Eine Stimme', lesson: 'Eine Stunde' },
  toSheet: 'Zum Blatt',
  stays:
    'Nichts verlässt diese Seite. Sie braucht kein Netz und sendet nichts; Ihre Stimme bleibt bei Ihnen.',
  engravedBy: 'Notenstich: Verovio (LGPL 3).',
  language: 'Sprache',
  itself: 'Deutsch',
  usual: 'wie üblich',
  namings: ['englische Buchstaben', 'deutsche Buchstaben', 'do re mi'],
  writtenNote: 'Notierter Ton',
  partKey: 'Stimme in',
  lower: 'Einen Halbton tiefer',
  higher: 'Einen Halbton höher',
  hand: 'Die Hand im Becher',
  open: 'offen',
  sealed: 'dicht',
  closing: (closed, cents) => `zu ${closed} % geschlossen, ${cents} Cent unter dem offenen Ton`,
  hear: 'Ton halten',
  silence: 'Stille',
  letClose: 'Die Hand schließen hören',
  ladder: 'Wie die Hand den Ton herunterholt',
  pulled: (number, note) => `${number}. Naturton, ${note}: er wird heruntergeholt`,
  above: (number, note) => `${number}. Naturton, ${note}: über ihm kommt der Ton zur Ruhe`,
  comesToRest: (cents) => `dicht, ${cents} Cent darüber`,
  waysToPlay: 'So lässt er sich spielen, das Üblichere zuerst',
  noPicture:
    'Hier tut die Hand nichts, was sich zeichnen ließe: einen anderen Ton oder ein anderes Horn wählen.',
  choosePart: 'Eine MusicXML-Datei wählen',
  orDrop: 'oder auf diese Seite ziehen, gepackt oder ungepackt.',
  putAway: 'Weglegen',
  example: 'Das Beispiel auflegen',
  marked: 'Bezeichnet',
  cleared: 'Bereinigt',
  completed: 'Bezeichnet und ergänzt',
  print: 'Drucken',
  engraving: 'Die Noten werden gestochen …',
  notEngraved: 'Die Noten dieser Stimme lassen sich nicht zeichnen; was gefunden wurde, steht trotzdem hier.',
  notRead: (name, reason) => `${name}: ${reason}.`,
  tooLarge: (name, megabytes) =>
    `${name} ist größer als ${megabytes} MB: die Stimme statt der Partitur wählen.`,
  noHorn: (name, parts) =>
    `${name}: keine Stimme ist ein Horn; es gibt ${quoted(parts)}. Sagen, welche eines sein soll.`,
  noKey: (name) => `${name}: Die Stimme sagt nicht, wie sie transponiert. Ihre Stimmung wählen.`,
  hornPart: 'Gelesene Stimme',
  findThem: 'alle Hörner',
  handTime: 'Zeit für die Hand in Sekunden',
  tempo: '♩ in der Minute, wo nichts steht',
  bassClef: 'Bassschlüssel',
  bassClefs: { auto: 'nach dem Notenbild', old: 'eine Oktave tiefer (alt)', new: 'wie er dasteht (neu)' },
  teacher: 'Für die Lehrkraft, mit Griffen',
  student: 'Für die Schülerin oder den Schüler, ohne',
  another: 'Noch eine',
  usualKey: 'wie es zur Stufe passt',
  ownHorn: 'Eigenes Horn (JSON-Datei)',
  lowest: 'Tiefster Ton',
  highest: 'Höchster Ton',
  asSuits: 'wie es passt',
  etudeTempo: '♩ in der Minute',
  course: 'Ein Kurs, eine Seite je Woche',
  weeks: 'Wochen',
  weekShown: 'Gezeigte Woche',
  composing: 'Der Kurs wird komponiert …',
  lowerFirst: 'Der tiefste Ton muss unter dem höchsten liegen.',
};

/** What pages say. */
export const pages: PageWords = { engraving, report, chart, curves, stand };
