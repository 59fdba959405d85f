/** Everything that is said in Italian, area by area; long because it is all of it. */

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
const quoted = (names: readonly string[]) => names.map((name) => `«${name}»`).join(', ') || '–';

/** `1 nota`, `0 note`, `5 note`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

const findings: FindingWords = {
  'unknown-key': () => ({
    brief: 'quale taglio',
    message: 'Qui la parte non dice come traspone: le sue note chiuse restano perciò senza posizione.',
    remedy:
      'Indicare la trasposizione della parte, o nominare il corno con il suo taglio, come «Corno in Fa».',
  }),
  'which-octave': ({ from, bassClef, because }, { note }) => {
    const why =
      because === 'too-low'
        ? 'letta così com’è, la parte scenderebbe sotto il corno'
        : 'i salti in entrata e in uscita fanno pensare alla vecchia notazione';
    return {
      brief: 'quale ottava',
      message:
        bassClef === 'old'
          ? `Da ${note(from)} in poi la chiave di basso è letta secondo la vecchia notazione, un’ottava più in alto di come è scritta: ${why}.`
          : `Da ${note(from)} in poi la chiave di basso è letta così com’è; eppure ${why}, che suona un’ottava più in alto.`,
      remedy:
        'Precisare, con l’impostazione della chiave di basso, se si intende la vecchia o la nuova notazione.',
    };
  },
  'below-the-hand': ({ written, state, horn }, speech) => ({
    brief: 'troppo grave',
    message: `Il ${speech.note(written)} ${speech.state(state)} è più grave di tutto ciò che la mano può tenere su un ${speech.horn(horn)}.`,
    remedy: 'Scriverlo aperto, usare un sordino chiuso, o portarlo all’ottava superiore.',
  }),
  'off-pitch': ({ written, horn, fingering, nearest, way }, speech) => {
    const note = speech.note(written);
    if (fingering)
      return {
        brief: 'stonato',
        message: `Il ${note} con ${speech.valves(fingering)} risulta ${speech.deviation(fingering.deviationCents)}: deve aiutare il labbro.`,
        remedy: 'Correggerlo con il labbro e un po’ più o un po’ meno mano, o provare un’altra posizione.',
      };
    const none = `Nessuna posizione di un ${speech.horn(horn)} dà qui il ${note}`;
    return {
      brief: 'senza posizione',
      message: nearest
        ? `${none}; la più vicina, ${speech.valves(nearest)}, è ${speech.deviation(nearest.deviationCents)}.`
        : `${none}.`,
      remedy: {
        'another-crook': 'Scegliere un altro ritorto, o cambiare la nota.',
        'play-open': 'Cambiare la nota, o suonarla aperta.',
        'another-note': 'Cambiare la nota: anche aperta è fuori dalla portata del corno.',
        'another-side': 'Chiuderla sul lato in fa o con il pistone per i chiusi, o cambiare la nota.',
      }[way],
    };
  },
  'rises-not-bends': ({ written, state, fingering, limit, surer }, speech) => {
    const note = `Il ${speech.note(written)} ${speech.state(state)}`;
    const { harmonic } = fingering;
    const rest =
      'hiedere un sordino chiuso, o scrivere la nota più in alto o aperta; lasciare tempo e un attacco morbido.';
    return {
      brief: 'tende a salire',
      message:
        limit === 'wants-to-rise'
          ? `${note} sta sull’armonico ${harmonic}: così in basso, chiudendo la mano il suono scivola in su invece di scendere.`
          : `${note} è tenuto solo dal labbro: sull’armonico ${harmonic} la mano può soltanto alzare di un semitono il suono che sta sotto.`,
      remedy: surer
        ? `Prenderlo su ${speech.fingering(surer)} (${speech.deviation(surer.deviationCents)}), dove la mano abbassa ancora il suono, o c${rest}`
        : `C${rest}`,
    };
  },
  'above-the-hand': ({ written, fingering }, speech) => ({
    brief: 'senza effetto',
    message: `Il ${speech.note(written)} si prende sull’armonico ${fingering.harmonic}, dove chiudere la mano cambia l’altezza di soli ${Math.round(fingering.dropCents)} cent: il timbro si vela, il suono non scende.`,
    remedy: `Diteggiarlo come aperto (${speech.valves(fingering)}) con la mano chiusa, o scrivere più in basso il passo chiuso.`,
  }),
  'mute-and-hand': ({ written, state }, speech) => ({
    brief: 'sordina inserita',
    message: `Il ${speech.note(written)} dev’essere ${speech.state(state)} mentre la sordina è ancora nel padiglione, dove dovrebbe andare la mano.`,
    remedy:
      'Far togliere prima la sordina (scrivendolo nella parte e lasciando il tempo), o chiedere un sordino chiuso.',
  }),
  'closes-upward': ({ from, to, maySlip, reached: falls, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'salita incerta',
          message: `Da ${note(from)} aperto a ${note(to)} chiuso il suono deve scivolare in su di un semitono. Sull’armonico 4, chiudendo la mano, tende a farlo, ma può anche scendere${falls.length > 0 ? `, a ${reached(falls)}` : ''}.`,
          remedy: `Condurlo in su con il labbro, o scrivere il glissando più in basso, dove il suono sale da sé: sull’armonico 3 e sotto${starts.length > 0 ? `; o partire da ${reached(starts)}, che la mano fa scendere a ${note(to)}` : ''}.`,
        }
      : {
          brief: 'chiude salendo',
          message: `Da ${note(from)} aperto a ${note(to)} chiuso la musica sale, ma la mano che si chiude fa scendere il suono${falls.length > 0 ? `: ${note(from)} scende a ${reached(falls)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Partire da ${reached(starts)}, che la mano fa scendere a ${note(to)}, o togliere la linea e lasciare che l’esecutore cambi posizione.`
              : 'Invertire la linea, o toglierla e lasciare che l’esecutore cambi posizione.',
        },
  'opens-downward': ({ from, to, maySlip, reached: rises, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'discesa incerta',
          message: `Da ${note(from)} chiuso a ${note(to)} aperto il suono deve scivolare in giù di un semitono. Verso l’armonico 4, aprendo la mano, può farlo, ma può anche salire${rises.length > 0 ? `, a ${reached(rises)}` : ''}.`,
          remedy: `Condurlo in giù con il labbro, o scrivere il glissando più in basso, dove il suono scende da sé: sull’armonico 3 e sotto${starts.length > 0 ? `; o partire, chiuso, da ${reached(starts)}, che aprendo sale a ${note(to)}` : ''}.`,
        }
      : {
          brief: 'apre scendendo',
          message: `Da ${note(from)} chiuso a ${note(to)} aperto la musica scende, ma la mano che si apre lascia salire il suono${rises.length > 0 ? `: ${note(from)} sale a ${reached(rises)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Partire, chiuso, da ${reached(starts)}, che aprendo sale a ${note(to)}, o togliere la linea e lasciare che l’esecutore cambi posizione.`
              : 'Invertire la linea, o toglierla e lasciare che l’esecutore cambi posizione.',
        },
  'no-common-tube': ({ from, to, closes, reached, nearest, starts }, speech) => {
    const start = speech.note(from);
    const ends = nearest
      ? `inire su ${speech.reached([nearest])}, la nota più vicina che si raggiunge`
      : null;
    const begins =
      starts.length > 0 ? `artire da ${speech.reached(starts)}, ${closes ? 'aperto' : 'chiuso'}` : null;
    return {
      brief: 'nessuna posizione comune',
      message:
        `Nessuna posizione tiene sia ${start} sia ${speech.note(to)}, e la mano ne muove una sola` +
        (reached.length > 0
          ? `: ${closes ? 'chiudendosi' : 'aprendosi'} porta ${start} a ${speech.reached(reached)}.`
          : `; con nessuna delle posizioni di ${start} raggiunge una nota della scala.`),
      remedy: ends
        ? `F${ends}${begins ? `, o p${begins}` : ''}.`
        : begins
          ? `P${begins}.`
          : 'Togliere la linea e lasciare che l’esecutore cambi posizione.',
    };
  },
  'slur-leaps': ({ from, to, joined }, { note }) => ({
    brief: 'legatura spezzata',
    message: `Da ${note(from)} a ${note(to)} c’è una legatura ${joined === 'tie' ? 'di valore' : 'di portamento'} sopra un cambio di mano, e nessuna posizione tiene entrambe le note: il suono salta.`,
    remedy: `Attaccare la seconda nota, interrompere lì la legatura ${joined === 'tie' ? 'di valore' : 'di portamento'}, o tenere le due note entrambe aperte o chiuse.`,
  }),
  'hand-too-quick': (
    { from, to, goesIn, seconds, neededSeconds, assumedQuartersPerMinute: tempo },
    { note, decimal },
  ) => ({
    brief: 'mano troppo rapida',
    message: `Tra ${note(from)} e ${note(to)} la mano ha ${decimal(seconds, 2)} s per ${goesIn ? 'entrare' : 'uscire'}${tempo === null ? '' : ` (contando ♩ = ${decimal(tempo, 1)}, poiché la parte non indica un tempo)`}; gliene servono circa ${decimal(neededSeconds, 2)}.`,
    remedy:
      'Mettere una pausa o una nota più lunga prima del cambio, tenere le due note entrambe aperte o chiuse, o dividerle fra due esecutori.',
  }),
  'fingering-misses': ({ written, state, horn, text, instead }, speech) => ({
    brief: 'altra nota',
    message: `«${text}» sta scritto sopra il ${speech.note(written)} ${speech.state(state)}, ma non lo dà su un ${speech.horn(horn)}.`,
    remedy: `Diteggiare ${speech.valves(instead)}, o togliere la posizione scritta.`,
  }),
  'sign-against-word': ({ written, state, word, wordState, sinceMeasure }, speech) => ({
    brief: 'segno o parola',
    message: `Il segno su ${speech.note(written)} dice «${speech.state(state)}», ma «${word}» (battuta ${sinceMeasure}) vale ancora: dopo, ciò che non ha segno torna ${speech.state(wordState)}.`,
    remedy:
      state === 'open'
        ? 'Scrivere qui una parola che annulli, se da qui si suona aperto, o mettere il segno a ogni nota.'
        : 'Annullare la parola, o togliere il segno.',
  }),
  'never-opened': ({ word, state, sinceMeasure, affectedCount, isLapsed }, speech) => ({
    brief: 'ancora chiuso',
    message: isLapsed
      ? `«${word}» (battuta ${sinceMeasure}) non è mai stato annullato, ma i suoi segni finiscono prima di questa nota: ${affectedCount === 1 ? 'è letta aperta' : `le ${affectedCount} note senza segno da qui in poi sono lette aperte`}.`
      : `«${word}» (battuta ${sinceMeasure}) non è mai stato annullato: ${affectedCount === 1 ? 'anche questa nota è letta' : `anche le ${affectedCount} note da questa entrata in poi sono lette`} come «${speech.state(state)}».`,
    remedy: isLapsed
      ? 'Scrivere qui la parola che annulla, o mettere il segno su ogni nota che resta chiusa.'
      : 'Scrivere la parola che annulla dove si riprende a suonare aperto, o ripetere la parola qui se vale ancora.',
  }),
  'echo-or-stopped': ({ word, state, from }, speech) => ({
    brief: 'eco o chiuso',
    message: `«${word}» è letto come «${speech.state(state)}» da ${speech.note(from)} in poi; altre edizioni lo intendono come ${state === 'echo' ? 'chiuso' : 'eco'}, che si diteggia un tono più ${state === 'echo' ? 'in basso' : 'in alto'}.`,
    remedy: 'Mettere + sulle note se il suono dev’essere chiuso, o scrivere «suoni d’eco» se non lo è.',
  }),
};

const repairs: RepairWords = {
  labels: {
    'octave-up': (note) => `Ottava sopra (${note})`,
    'octave-down': (note) => `Ottava sotto (${note})`,
    'other-start': (note) => `Partire da ${note}`,
    'other-end': (note) => `Finire su ${note}`,
    'line-removed': () => 'Togliere la linea',
    'slur-removed': () => 'Togliere la legatura',
    'tie-broken': () => 'Spezzare la legatura di valore',
    'sign-added': (sign, count) => (count > 1 ? `Scrivere ${sign} su ${count} note` : `Scrivere ${sign}`),
    'sign-removed': (_, count) => (count > 1 ? `Togliere il segno da ${count} note` : 'Togliere il segno'),
    'fingering-taken': (valves) => `Diteggiare ${valves}`,
    'fingering-removed': (_, count) => (count > 1 ? 'Togliere le due posizioni' : 'Togliere la posizione'),
    'opening-word': (word) => `Scrivere ${word}`,
    'closing-word': (word) => `Scrivere ${word}`,
    'stopping-mute': (word) => `Scrivere ${word}`,
    'mute-out': (word) => `Scrivere ${word}`,
  },
  done: (label) => `Fatto: ${label}.`,
  takenBack: (label) => `Annullato: ${label}.`,
  doneAgain: (label) => `Ripristinato: ${label}.`,
  quoted: (text) => `«${text}»`,
};

const answers: AnswerWords = {
  played: (fingered, fingering, natural) => `Diteggiare ${fingered}, ${fingering}; suono naturale ${natural}`,
  noFingering: 'Nessuna posizione di questo corno la dà',
  alsoSure: (valves) => `Sicure anche: ${valves}`,
  nearestSure: (notes) => `Sicure vicine: ${notes}`,
  closing: (reached) =>
    reached === ''
      ? 'Aperta, poi chiusa dalla mano: non porta a nessuna nota'
      : `Aperta, poi chiusa dalla mano: porta a ${reached}`,
  opening: (reached) =>
    reached === ''
      ? 'Chiusa, poi aperta: non porta a nessuna nota'
      : `Chiusa, poi aperta: porta a ${reached}`,
};

const report: ReportWords = {
  page: {
    skip: 'Vai alla musica',
    onThisPage: 'In questa pagina',
    howToRead: 'Come leggere questa pagina',
    fingeringsOf: (part) => `Diteggiature: ${part}`,
    music: 'La musica',
    madeFrom: (file) =>
      `Fatto da Bellhand a partire da ${file}. La pagina non ha bisogno né di rete né di script; si può stampare così com’è.`,
    barsTo: (first, last) => `battute da ${first} a ${last}`,
    engraved: (bars) => `${bars}, in notazione`,
  },
  severities: { impossible: 'ineseguibile', risky: 'rischioso', advice: 'per la pagina' },
  table: {
    none: 'Nessuna nota di questa parte è chiusa.',
    labelOf: (part) => `Tabella delle diteggiature: ${part}`,
    caption:
      'Ogni nota chiusa una volta per ogni modo di suonarla, dalla più grave. Le altezze sono quelle scritte.',
    note: 'Nota',
    hand: 'Mano',
    fingeredAs: 'Diteggiatura',
    natural: 'Suono naturale',
    drop: 'Abbassamento',
    offBy: 'Scarto',
    verdict: 'Giudizio',
    otherWays: 'Altre diteggiature',
    bars: 'Battute',
    notes: (count) => counted(count, 'nota', 'note'),
  },
  glissando: {
    wanted: (note) => `${note} richiesto`,
    natural: 'naturale',
    stopped: 'chiuso',
    leads: (from, start, to, end) => `La musica porta da ${from} ${start} a ${to} ${end}.`,
    closes: (from, to, fingering) => `La mano che chiude porta ${from} a ${to} (${fingering}).`,
    opens: (from, to, fingering) => `La mano che apre porta ${from} a ${to} (${fingering}).`,
    nowhere: 'La mano non raggiunge nessuna nota che abbia un nome.',
  },
  reading: {
    lines: (key) =>
      `A ogni nota chiusa stanno due righe. Quella più vicina alla nota è la diteggiatura: la nota a cui pensare e i pistoni, con T per il lato in ${key}. L’altra, tra parentesi, è il suono naturale: ciò che suonerebbe con quella diteggiatura a mano aperta.`,
    vermillion: 'vermiglione',
    impossible: 'nessuna mano può farlo così com’è scritto.',
    blue: 'blu',
    risky: 'si può suonare con fortuna.',
    rings:
      'Un cerchio sotto una nota porta il numero dell’osservazione accanto; l’osservazione riporta al cerchio.',
    pitches:
      'Le altezze sono quelle scritte. L’abbassamento dice di quanto la mano fa scendere il suono; lo scarto, quanto il risultato dista dalla nota, + se crescente. Cento cent (¢) sono un semitono.',
  },
  readFor: (horn) => `Letto per: ${horn}.`,
  stoppedNotesIn: (title) => `Suoni chiusi in ${title}`,
  cannotBePlayed: (count) => (count === 1 ? '1 nota è ineseguibile' : `${count} note sono ineseguibili`),
  canBePlayed: 'Nulla qui è ineseguibile',
  areRisky: (count) => (count === 1 ? '1 nota è rischiosa' : `${count} note sono rischiose`),
  nothingStopped: 'In questa parte non c’è nulla di chiuso.',
  findings: 'Che cosa si è trovato, il peggio per primo',
  nothingFound: 'Non si è trovato nulla.',
  bars: (count) => (count === 1 ? 'battuta' : 'battute'),
  elsewhere: (count) =>
    count === 1 ? '1 altra nota nello stesso caso' : `${count} altre note nello stesso caso`,
  heardClosing: (note, way) => `Da ascoltare: ${note} mentre la mano chiude (${way})`,
  heardOpening: (note, way) => `Da ascoltare: ${note} mentre la mano apre (${way})`,
  folded: (stopped) =>
    `${stopped === 0 ? 'nulla di chiuso' : stopped === 1 ? '1 suono chiuso' : `${stopped} suoni chiusi`}, non si è trovato nulla`,
};

const fingerings: FingeringWords = {
  states: {
    open: 'aperto',
    'half-stopped': 'semichiuso',
    stopped: 'chiuso',
    echo: 'eco',
    'stopping-mute': 'con sordino chiuso',
    'straight-mute': 'con sordina',
  },
  verdicts: { sure: 'sicuro', risky: 'rischioso', impossible: 'ineseguibile' },
  severities: { impossible: 'ineseguibile', risky: 'rischioso', advice: 'consiglio' },
  reasons: {
    'wants-to-rise': 'così in basso su questo lato, chiudendo la mano il suono scivola in su',
    'lip-only': 'sotto la zona che la mano abbassa: lo tiene solo il labbro',
    'below-the-hand': 'sotto questo armonico non ce n’è un altro verso cui la mano possa scendere',
    'nothing-changes': 'così in alto che la mano non cambia più l’altezza',
    'off-pitch': 'stonato: deve aiutare il labbro',
    'unusual-degree': 'richiede una chiusura insolita',
  },
  briefReasons: {
    'wants-to-rise': 'scivola in su',
    'lip-only': 'solo labbro',
    'below-the-hand': 'fuori portata',
    'nothing-changes': 'non scende',
    'off-pitch': 'stonato',
    'unusual-degree': 'chiusura insolita',
  },
  forSharpHand: 'l’armonico sottostante è calante: per una mano che chiude crescente',
  choices: {
    'one-tube': (instead, neighbour) =>
      `invece di ${instead}: la stessa posizione di ${neighbour}, a cui la nota è unita`,
    'one-side': (instead, neighbour) =>
      `invece di ${instead}: resta sul lato di ${neighbour}, non c’è tempo per cambiare`,
    'fewer-changes': (instead, neighbour) =>
      `invece di ${instead}: meno pistoni da cambiare accanto a ${neighbour} a questa velocità`,
  },
  open: (key) => `corno in ${key} a vuoto`,
  pressed: (key, valves) => `corno in ${key} ${valves}`,
  crook: (key) => `ritorto di ${key}`,
  harmonic: (number) => `armonico ${number}`,
  inTune: 'intonato',
  sharp: (cents) => `crescente di ${cents} cent`,
  flat: (cents) => `calante di ${cents} cent`,
  closings: { open: 'aperto', full: 'tutto' },
  keys: {
    high: (key) => `${key} acuto`,
    alto: (key) => `${key} acuto`,
    basso: (key) => `${key} grave`,
  },
  or: 'o',
  and: 'e',
  decimalSign: ',',
};

const horns: HornWords = {
  names: new Map<string, HornName>([
    ['double', (key) => `corno doppio in ${key('F')} e ${key('Bb')}`],
    ['single-f', (key) => `corno semplice in ${key('F')}`],
    ['single-bflat', (key) => `corno semplice in ${key('Bb')}`],
    ['single-bflat-stop-valve', (key) => `corno semplice in ${key('Bb')} con pistone per i chiusi`],
    ['double-stop-valve', (key) => `corno doppio con pistone per i chiusi sul lato in ${key('Bb')}`],
    ['double-ascending', () => 'corno doppio con terzo pistone ascendente'],
    ['descant', (key) => `corno discanto in ${key('Bb')} e ${key('high F')}`],
    ['triple-high-f', (key) => `corno triplo in ${key('F')}, ${key('Bb')} e ${key('high F')}`],
    ['natural', () => 'corno naturale con il ritorto che la parte richiede'],
  ]),
  onCrook: (key) => `corno naturale con il ritorto di ${key}`,
};

const summary: SummaryWords = {
  stoppedNotes: (count, verdicts) =>
    count === 0 ? 'nessuna nota chiusa' : `${counted(count, 'nota chiusa', 'note chiuse')}: ${verdicts}`,
  verdicts: {
    sure: (count) => counted(count, 'sicura', 'sicure'),
    risky: (count) => counted(count, 'rischiosa', 'rischiose'),
    impossible: (count) => counted(count, 'ineseguibile', 'ineseguibili'),
  },
  openNotes: (verdicts) => `note aperte: ${verdicts}`,
  bars: (listed, count) => `${count === 1 ? 'battuta' : 'battute'} ${listed}`,
  more: (count) => (count === 1 ? '1 altra' : `altre ${count}`),
  bar: (measure) => `battuta ${measure}`,
  place: (measure, beat) => `battuta ${measure}, tempo ${beat}`,
  nothingAdded: 'non mancava nessun segno e nessuna parola',
  signs: (count) => counted(count, 'segno', 'segni'),
  words: (count) => counted(count, 'parola', 'parole'),
  added: (what) => `aggiunto: ${what}`,
  keptColour: (count) =>
    counted(
      count,
      'nota dubbia aveva già un colore e l’ha tenuto',
      'note dubbie avevano già un colore e l’hanno tenuto',
    ),
};

const etudes: EtudeWords = {
  kinds: {
    seal: {
      name: 'note tenute',
      title: 'Dietro l’imposta',
      trains: 'Note tenute con la campana ben sigillata: lo stesso suono dal primo all’ultimo istante.',
      trainsOnNaturalHorn: 'Note tenute con la mano: quelle coperte piene e ferme come quelle aperte.',
    },
    match: {
      name: 'nota aperta e chiusa',
      title: 'Due volte la stessa nota',
      trains:
        'Suonare ogni nota libera, poi ritrovarla con la mano nella campana alla stessa altezza e forza.',
      trainsOnNaturalHorn:
        'Suonare la nota aperta, poi la vicina coperta con la stessa forza e lo stesso colore.',
    },
    bend: {
      name: 'suono piegato',
      title: 'Appoggiati alla porta',
      trains:
        'Cilindri e labbro fermi: la mano che chiude lascia scendere il suono, quella che apre lo lascia salire.',
      trainsOnNaturalHorn:
        'Labbro fermo: la mano che chiude lascia scendere il suono, quella che apre lo lascia salire.',
    },
    scale: {
      name: 'scale e accordi',
      title: 'Scale nel buio',
      trains:
        'Scale e accordi spezzati con la mano nella campana: conoscere le posizioni, centrare ogni nota.',
      trainsOnNaturalHorn:
        'Scale e accordi spezzati con la mano: avvicinare le note coperte a quelle aperte.',
    },
    phrase: {
      name: 'frase ed eco',
      title: 'Oltre la valle',
      trains:
        'Rispondere a ogni frase con la mano nella campana: più piano, stesso disegno e stessa altezza.',
      trainsOnNaturalHorn: 'Rispondere piano a ogni frase: nessuna nota coperta deve sporgere o ritrarsi.',
    },
    change: {
      name: 'cambi sempre più rapidi',
      title: 'Il cancello che oscilla',
      trains: 'Chiudere e aprire in note sempre più brevi: la mano va col tempo, l’altezza resta dov’è.',
      trainsOnNaturalHorn:
        'Dalla nota aperta alla coperta e ritorno in note sempre più brevi: la mano va col tempo.',
    },
  },
  lesson: 'Lezione per la mano che chiude',
  lessonOfWeek: (week) => `Lezione per la mano che chiude, settimana ${week}`,
  hornIn: (key) => `Corno in ${key}`,
  naturalHornIn: (key) => `Corno naturale in ${key}`,
  key: { major: (tonic) => `${tonic} maggiore`, minor: (tonic) => `${tonic} minore` },
  level: (level, seed, difficulty) => `Livello ${level}, seme ${seed}, difficoltà ${difficulty}.`,
  numbers: (keys, semitones, changes) =>
    `${keys}, estensione di ${counted(semitones, 'semitono', 'semitoni')}, ${counted(changes, 'cambio', 'cambi')} della mano al minuto.`,
  noRisk: 'Nessuna nota rischiosa.',
  risks: (count) =>
    `${counted(count, 'nota rischiosa', 'note rischiose')} (in blu, ≈), dove il suono può scivolare in su.`,
  naturalLegend: 'o aperto, ¼ ½ ¾ e + chiuso, ciascuno fino al segno seguente.',
  valveLegend:
    'Padiglione chiuso, pistone per i chiusi premuto: sulle note chiuse stanno le posizioni della nota scritta, lato si♭.',
  advice: ['Riposare quanto si è suonato.', 'Smettere quando il labbro si stanca o la mano fa male.'],
  noTime: (seconds, tempo) =>
    `una mano che impiega ${seconds} s non ha tempo in una minima a ${tempo} tempi al minuto: scegliere un tempo più lento o una mano più veloce`,
  tooFew: {
    notes: (low, high, horn, count) =>
      `da ${low} a ${high} un ${horn} ${count === 0 ? 'non ha nessuna nota' : `ha solo ${counted(count, 'nota', 'note')}`} della tonalità che la mano faccia con sicurezza: scegliere un’estensione più ampia, un’altra tonalità, un altro genere o corno`,
    bends: (low, high, horn, count) =>
      `da ${low} a ${high} un ${horn} ${count === 0 ? 'non ha nessun suono' : `ha solo ${counted(count, 'suono', 'suoni')}`} che la mano possa abbassare e lasciar risalire: scegliere un’estensione più ampia, un’altra tonalità, un altro genere o corno`,
  },
  noHome: (tonic, low, high, horn) =>
    `un ${horn} non ha un ${tonic} sicuro a cui tornare da ${low} a ${high}: scegliere un’altra tonalità o un’estensione più ampia`,
};

const scores: ScoreWords = {
  place: (line, column) => `riga ${line}, colonna ${column}`,
  cutShort: (plain) => `il file è troncato (${plain}): prenderlo o esportarlo di nuovo`,
  unmatchedClosing: (plain) =>
    `un tag di chiusura non ha il suo di apertura (${plain}): esportare di nuovo la partitura con il programma che l’ha scritta`,
  notXml: (plain) => `questo non è XML (${plain}): esportare la partitura come MusicXML`,
  secondDocument: (plain) =>
    `nello stesso file c’è un secondo documento (${plain}): tenere una partitura per file`,
  undeclaredEntity: (plain) =>
    `il file usa un’entità che non dichiara (${plain}): scrivere il carattere stesso, o &amp; per &`,
  attributeTwice: (plain) =>
    `un attributo è dato due volte (${plain}): esportare di nuovo la partitura con il programma che l’ha scritta`,
  disallowedCharacter: (plain) =>
    `un carattere sta dove XML non lo permette (${plain}): scrivere < e & come &lt; e &amp;, o esportare di nuovo la partitura con il programma che l’ha scritta`,
  malformed: (plain) =>
    `questo non è XML ben formato (${plain}): esportare di nuovo la partitura con il programma che l’ha scritta`,
  doctypeTooLong: (most) =>
    `il tipo di documento supera i ${grouped(most)} caratteri: controllare da dove viene il file`,
  entityTooLong: (name, most) =>
    `l’entità «${name}» sta per più di ${grouped(most)} caratteri: controllare da dove viene il file`,
  entitiesTooLong: (name, most) =>
    `entità come «${name}» stanno in tutto per più di ${grouped(most)} caratteri: controllare da dove viene il file`,
  entityInCircle: (name) =>
    `l’entità «${name}» sta per sé stessa, o quasi: controllare da dove viene il file`,
  notMusicXml: (element) => `<${element}> non è una partitura MusicXML: esportare la musica come MusicXML`,
  partTwice: (part) => `la parte «${part}» sta qui due volte: tenerne una, o dare a una un altro id`,
  idTwice: (id) => `due parti hanno l’id «${id}»: dare a ogni parte il suo`,
  noPart: (request, parts) =>
    `non c’è una parte «${request}»: scegliere una delle parti di questa partitura (${parts.length > 0 ? quoted(parts) : 'nessuna'})`,
  tooMuchMusic: (most) =>
    `le parti da leggere hanno più di ${grouped(most)} note, pause e parole, più di quante ne abbia qualsiasi parte: controllare da dove viene il file`,
  chordTooLarge: (most) => `un accordo ha più di ${grouped(most)} note: controllare da dove viene il file`,
  halfCharacter: (encoding) =>
    `il testo in ${encoding} finisce con mezzo carattere: prendere di nuovo il file`,
  unknownEncoding: (encoding) =>
    `Bellhand non sa riscrivere la codifica ${encoding}: salvare il file in UTF-8`,
  whichFile: 'l’archivio ZIP non dice quale file sia la partitura: esportare la musica come .mxl o .musicxml',
  fileMissing: (path) => `il contenitore nomina «${path}», che non c’è: esportare di nuovo la musica`,
  containerMalformed: 'META-INF/container.xml non è XML ben formato: esportare di nuovo la musica',
  noScoreInside: 'l’archivio ZIP non contiene MusicXML: esportare la musica come .mxl o .musicxml',
  zip64: 'questo è un archivio ZIP64: comprimere di nuovo la partitura come ZIP comune',
  directoryDamaged:
    'l’archivio ZIP è danneggiato: il suo indice non corrisponde ai controlli: prendere o esportare di nuovo il file',
  entryDamaged: (name) =>
    `l’archivio ZIP è danneggiato: «${name}» non corrisponde ai controlli: prendere o esportare di nuovo il file`,
  encrypted: (name) => `«${name}» è cifrato: comprimere di nuovo la partitura senza password`,
  unpacksTo: (name, megabytes, most) =>
    `«${name}» decompresso fa ${grouped(megabytes)} MB, e non se ne aprono più di ${most} MB: controllare da dove viene il file, o esportare solo le parti di corno`,
  growsTo: (name, times, most) =>
    `«${name}» decomprimendosi cresce ${grouped(times)} volte, e non si apre oltre le ${most} volte: controllare da dove viene il file, o salvarlo non compresso come .musicxml`,
  packedBy: (name, method) =>
    `«${name}» è compresso con il metodo ${method}: comprimere di nuovo la partitura come ZIP comune`,
  archiveCutShort: 'l’archivio ZIP non ha fine: prendere o esportare di nuovo il file: sembra troncato',
};

const panel: PanelWords = {
  labels: {
    horn: 'Corno',
    noteNames: 'Nomi delle note',
    print: 'Sopra le note',
    fingered: 'Nota diteggiata',
    valves: 'Pistoni',
    natural: 'Suono naturale',
    verdict: 'Segni ≈ e ×',
    colour: 'Colori',
    onlyChanges: 'Solo ai cambiamenti',
    quickValves: 'Note rapide: solo i pistoni',
    widerBars: 'Battute più larghe se serve',
    tolerance: 'Tolleranza in cent',
    handOffset: 'Scarto della mano in cent',
    toleranceHint: 'Le diteggiature più lontane dalla nota scritta sono escluse',
    handOffsetHint: 'Sopra 0 per una mano che chiude crescente, sotto per una che chiude calante',
    annotate: 'Annotare',
    clear: 'Togliere',
    lookAgain: 'Rivedere',
    fromCursor: 'Dal cursore',
    previous: 'Voce precedente',
    next: 'Voce successiva',
    stoppedSign: 'Scrivere o togliere + sulle note selezionate',
    openSign: 'Scrivere o togliere o sulle note selezionate',
    noteAsked: 'Selezionare una nota del corno per vedere come si chiude.',
    findings: 'Da rivedere',
    nothingFound: 'Niente: ogni nota chiusa si può suonare.',
    instead: 'Invece:',
    etude: 'Studio',
    etudeKind: 'Genere',
    etudeLesson: 'Una lezione di una pagina',
    etudeKey: 'Tonalità scritta',
    etudeLevel: 'Livello',
    etudeLength: 'Battute',
    etudeTempo: 'Tempi al minuto, 0 per il solito',
    etudeCompass: 'Da–a, per esempio C4–G5',
    compose: 'Comporre',
    copyPath: 'Copia il percorso',
    openOutside: 'Apri',
  },
  noScore: 'Nessuna partitura è aperta.',
  emptyScore: 'La partitura non ha battute.',
  reading: (percent) => `Lettura della partitura: ${percent} %`,
  readOnceLetGo: 'La partitura è grande: premere Esc nella partitura, poi viene letta.',
  noHorn: 'La partitura non ha una parte di corno.',
  noStopped: 'La parte di corno non ha note chiuse: niente da annotare.',
  noStoppedSelected: 'Nessuna nota chiusa di corno è selezionata: non è stato cambiato nulla.',
  annotated: 'Annotato.',
  annotatedSelection: 'La selezione è annotata.',
  upToDate: 'Le annotazioni sono aggiornate: non è stato cambiato nulla.',
  severalNotes: (count) => `${count} note`,
  nthOf: (nth, count) => `${nth} di ${count}`,
  noHornSelected: 'Nessuna nota del corno è selezionata.',
  cleared: (count) => `Annotazione tolta: ${counted(count, 'nota', 'note')}.`,
  nothingToClear: 'Non c’è nessuna nostra annotazione da togliere.',
  failed: (reason) => `Non è stato cambiato nulla: ${reason}.`,
  notShown: 'La nota non è più nella partitura.',
  etudeOpened: (title) => `Una nuova partitura è aperta: ${title}.`,
  etudeWritten: (title, path) => `Lo studio «${title}» è scritto. Aprire questo file nell’editor: ${path}`,
  etudeAsked: (path) => `Il sistema deve aprire ${path}. Se non compare nulla, aprire il file nell’editor.`,
  etudeNotWritten: (title) =>
    `Non è stato possibile scrivere lo studio «${title}»: nessuna cartella accetta il file.`,
  etudeRange: (range) =>
    `«${range}» non è un’estensione: scrivere due note, prima la più grave, come C4–G5, o niente.`,
  faults: {
    notExported: (path) => `l’editor non ha potuto scrivere ${path}`,
    placeNotFound: 'una nota non è più dove è stata letta; rivedere',
    nothingToTakeOut: 'ciò che va tolto non c’è più',
    notTaken: 'l’editor non lo ha accettato',
  },
};

const hornFile: HornFileWords = {
  notJson: (plain) => `non è JSON: ${plain}`,
  mustBe: (at, wanted, got) => `${at} chiede ${wanted}, e vi si trova ${got}`,
  theFile: 'il file',
  nothing: 'niente',
  wanted: {
    sides: 'un elenco da uno a quattro lati, ciascuno { "name": …, "fundamental": … }',
    'one-side': 'un solo lato, il ritorto, su un corno naturale',
    fundamental: 'il 1º armonico reale, da C0 a C3: F1 per un corno in fa',
    note: 'un nome di nota reale in lettere inglesi, come "F1"',
    text: 'un testo da 1 a 60 caratteri senza <, > e &',
    flag: 'true o false',
    valves: '"compromise", "ascending", "none" o un elenco di { "valves": "12", "semitones": 3 }',
    'valve-numbers': '"0" o i numeri dei pistoni, come "12"',
  },
  number: (from, to) => `un numero da ${from} a ${to}`,
  whole: (from, to) => `un numero intero da ${from} a ${to}`,
  unknownField: (at, field, known) =>
    `${at} ha un campo "${field}" che qui non significa nulla; scriverne uno di questi: ${known}`,
  shortSideFrom: '"shortSideFrom" lo dice il lato stesso: scrivervi "openFrom": "Db4" e toglierlo qui',
  noSideStoppable: 'nessun lato può essere chiuso: togliere "stoppable": false da quello su cui si chiude',
  orderForSome: '"stoppingOrder" è dato per alcuni lati; darlo per tutti o per nessuno',
  orderTwice: 'due lati hanno lo stesso "stoppingOrder"; numerarli 1, 2, … nell’ordine in cui si prendono',
};

/** What a result is. */
const CONTENTS = {
  score: 'una partitura in MusicXML',
  page: 'una pagina per il browser',
  picture: 'un’immagine',
  sound: 'un suono',
};

export const commandLine: CommandLineWords = {
  hornFile,
  scores,
  help: {
    program:
      'Posizioni e suoni naturali per le note chiuse delle parti di corno, e ciò che nessuna mano può fare',
    version: 'stampa la versione',
    help: 'stampa questo aiuto',
    helpOf: 'stampa l’aiuto di un comando',
    usage: 'Uso:',
    arguments: 'Argomenti:',
    options: 'Opzioni:',
    generalOptions: 'Opzioni di tutti i comandi:',
    commands: 'Comandi:',
    byDefault: (value) => `predefinito: ${value}`,
    see: (command) => `vedere: ${command}`,
  },
  commands: {
    annotate: 'scrive posizione, suono naturale e giudizio sopra ogni nota chiusa delle parti di corno',
    clear: 'toglie tutti i segni di annotate e lascia il resto com’è',
    check: 'elenca ogni nota chiusa e ogni rilievo senza scrivere; termina con 1 se una nota è ineseguibile',
    explain: 'spiega una nota scritta: posizione, suono naturale, abbassamento e tutte le altre posizioni',
    etude: (kinds) => `compone uno studio per la mano che chiude: ${kinds}`,
    lesson: 'compone una lezione: una pagina di esercizi numerati, dai suoni tenuti ai cambi rapidi',
    course:
      'compone un corso: una lezione alla settimana, ognuna un po’ più difficile e con un richiamo alla precedente',
    report:
      'scrive una pagina con il giudizio, ciò che c’è da fare, la musica incisa attorno a ogni rilievo, e le posizioni',
    chart:
      'scrive una tavola di un corno: la diteggiatura di ogni nota che può chiudere, o dove la mano porta ogni nota',
    watch: 'controlla un file a ogni salvataggio e dice che cosa è cambiato; Ctrl-C termina',
    install: 'mette il plugin nella cartella dei plugin di MuseScore 3 e 4',
  },
  arguments: {
    files: 'file MusicXML, anche compressi; - per lo standard input',
    file: 'un file MusicXML, anche compresso; - per lo standard input',
    watched: 'un file MusicXML che un programma continua a salvare',
    note: 'la nota come la stampa la parte, in lettere con l’ottava: C5, F#4, Bb3',
  },
  options: {
    output: (name) => `dove scrivere: un file, una cartella, o - (predefinito: ${name})`,
    outputOfOne: (name) => `dove scrivere, o - (predefinito: ${name})`,
    inPlace: 'scrive nel file stesso',
    complete: 'aggiunge i + che mancano sotto una parola, e le parole che mancano per annullarne una',
    jobs: 'quanti file lavorare insieme; mai più di quanto processori e memoria permettano',
    force: 'sostituisce anche un file che Bellhand non ha fatto, cambiato da allora, o di sola lettura',
    checkFormat:
      'table; json, un oggetto per file, uno per riga; json-lines, lo stesso senza le note, per i cataloghi',
    explainFormat: 'table o json',
    chartOf:
      'fingerings, le diteggiature dei suoni chiusi, o bends, dove la mano porta ogni nota, per chi compone',
    chartFormat:
      'html, una pagina da stampare, o musicxml, una partitura (altrimenti: come finisce il nome dopo -o, o html)',
    curve: 'l’altezza mentre la mano chiude, secondo l’acustica: come testo, o come immagine SVG in un file',
    sound: 'il suono mentre la mano chiude, secondo l’acustica, come file WAV',
    soundOfReport: 'fa sentire, come li fa la mano, i glissandi che non può fare',
    part: 'una parte da prendere per corno: nome, identificativo o posto nella partitura; ripetibile',
    keyOfPart: 'il taglio dei corni la cui parte non lo indica: F, Eb, "Bb basso", …',
    keyOfNote: 'il taglio in cui sta la parte: F, Eb, "Bb basso", …',
    hand: (states) => `che cosa fa la mano: ${states}`,
    horn: (ids) => `il corno suonato: ${ids}, natural, natural-eb e così via, o un file .json`,
    tolerance: 'oltre questo scarto una posizione non vale',
    handOffset: 'ciò che questa mano aggiunge a ogni chiusura: sopra 0 se chiude crescente',
    handTime: 'il tempo minimo in cui la mano entra o esce',
    names: 'note nominate come le scrive la parte (as-written) o come le legge un corno in fa (f-horn)',
    bassClef:
      'note in chiave di basso: new, come stanno; old, un’ottava sotto; auto, a giudicare dall’aspetto',
    assumedTempo: 'la velocità di una parte che non la indica, in semiminime al minuto',
    show: (items) => `che cosa scrivere, fra ${items}`,
    valvesAs: 'pistoni nel testo sopra la nota (text) o come diteggiatura della nota (fingering)',
    repeat: 'changes: omettere un testo che la nota precedente della battuta porta già; all: mai',
    quick: 'valves: nelle battute con indicazioni più vicine di una semiminima, solo i pistoni; full: tutto',
    language: (languages) =>
      `la lingua di ciò che si dice: ${listed(languages, 'o')} (predefinita: quella del sistema)`,
    noteNames:
      'nomi delle note: english (B♭ B), german (B H) o solfege (si♭ si) (predefinito: quelli della lingua)',
    etudeKey: 'la tonalità scritta, in lettere: C, Bb, F#, Dm, …',
    level: '1 per le prime settimane, 2 per lo studio quotidiano, 3 per gli esperti',
    bars: (phraseBars) => `lunghezza in battute, a frasi di ${phraseBars}`,
    tempo: 'tempi al minuto (predefinito: ciò che si addice al genere)',
    range: 'nota scritta più grave e più acuta, come C4-G5 (predefinito: secondo il livello)',
    seed: 'lo stesso numero dà la stessa musica (predefinito: ogni volta una nuova)',
    copy: 'marked, con le posizioni, o plain, da completare per l’allievo',
    weeks: 'quante lezioni',
    lessonKey:
      'la tonalità scritta di ogni esercizio, in lettere: C, Bb, F#, Dm, … (predefinita: secondo il livello)',
    whole: 'mostra tutta la musica; altrimenti ciò che è in ordine è ripiegato',
    folder: 'la cartella dei plugin, se non è fra i vostri documenti',
  },
  usage: {
    unknownOption: (option) => `opzione sconosciuta «${option}»`,
    afterCommand: (option, command) => `l’opzione «${option}» va dopo il comando «${command}»`,
    unknownCommand: (name) => `comando sconosciuto «${name}»`,
    suggestion: (names) => `Forse ${names}?`,
    missingArgument: (name) => `manca l’argomento «${name}»`,
    missingOption: (flags) => `manca l’opzione «${flags}»`,
    missingValue: (flags) => `all’opzione «${flags}» manca il valore`,
    tooManyArguments: (command) => `troppi argomenti per «${command}»`,
    badValue: (flags, value, why) => `«${flags}» non può essere «${value}». ${why}`,
    number: (unit, from, to) => `Dare un numero (${unit}) da ${from} a ${to}.`,
    wholeNumber: 'Dare un numero intero da 1 in su.',
    wholeBetween: (from, to) => `Dare un numero intero da ${from} a ${to}.`,
    oneOf: (list) => `A scelta: ${listed(list, 'o')}.`,
    someOf: (list) => `Scegliere fra ${listed(list, 'o')}, separati da virgole.`,
    notANote: (text) =>
      `«${text}» non è una nota: scrivere una lettera A–G, # o b se serve, e l’ottava, come C#5 o Bb4.`,
    notAKey: (text) =>
      `«${text}» non è una tonalità con al massimo sette alterazioni: scrivere la tonica e, per il minore, una m, come F, Bb, Dm o C#m.`,
    hornOrFile: (list) => `A scelta: ${list}, o un file .json.`,
    hornKey: 'Nominare un taglio: F, Eb, D, "Bb alto", "Bb basso", ….',
    bars: (phraseBars, from, to) => `Dare un multiplo di ${phraseBars} da ${from} a ${to}.`,
    rangeEnds: 'Dare due note con un trattino, come C4-G5.',
    lowerFirst: 'Nominare prima la nota più grave.',
  },
  units: {
    cents: 'cent',
    seconds: 'secondi',
    quarters: 'semiminime al minuto',
    beats: 'tempi',
    weeks: 'settimane',
  },
  systemFaults: {
    ENOENT: 'questo file non esiste: controllare il nome e la cartella',
    EACCES: 'manca il permesso: cambiare i diritti del file o della cartella, o scegliere un altro posto',
    EPERM:
      'il sistema non lo permette: cambiare i diritti del file o della cartella, o scegliere un altro posto',
    EROFS: 'questo disco si può solo leggere: scegliere un altro posto con -o',
    ENOSPC: 'il disco è pieno: fare spazio o scegliere un altro posto con -o',
    EISDIR: 'questa è una cartella: nominare un file che vi sta dentro',
    ENOTDIR: 'una parte del percorso è un file e non una cartella: controllare il percorso',
    ENAMETOOLONG: 'il nome è troppo lungo: sceglierne uno più breve',
    EMFILE: 'troppi file aperti: ridurre --jobs',
    ERR_FS_FILE_TOO_LARGE: 'è più grande di qualsiasi partitura: controllare da dove viene',
    ELOOP: 'i suoi collegamenti girano in tondo: nominare il file stesso',
    other: (code) => `il sistema lo rifiuta (${code})`,
  },
  faults: {
    own: (text) => `un errore di bellhand stesso, da segnalare: ${text}`,
    folderMissing: 'la sua cartella non esiste: crearla prima',
    notWritten: (path, why) => `${path}: non si può scrivere: ${why}`,
    outputNotWritten: (why) => `non si può scrivere sullo standard output: ${why}`,
    folderNotMade: (path, why) => `${path}: non si può creare questa cartella: ${why}`,
    tooLarge: (name, megabytes) =>
      `${name}: più di ${megabytes} MB, il massimo che si legge: controllare da dove viene, o esportare solo i corni`,
    placeAndInPlace: '-o e --in-place si escludono: sceglierne una',
    inputInPlace: 'lo standard input non si può cambiare sul posto: omettere --in-place',
    manyIntoOne: (output, count) =>
      `${output}: ${count} risultati non stanno in un file: nominare una cartella con -o`,
    inputAmongFiles:
      'lo standard input fra altri file: il suo risultato ha bisogno di un posto: nominare una cartella con -o',
    ontoInput: (target) =>
      `${target}: così si sovrascriverebbe un file di partenza: scegliere un altro posto con -o`,
    ontoInputInPlace: (target) =>
      `${target}: così si sovrascriverebbe un file di partenza: scegliere un altro posto con -o, o dire --in-place`,
    notPlain: (path) => `${path}: non è un semplice file e non si può cambiare sul posto: usare -o`,
    notOurs: (path) =>
      `${path}: questo file c’è già, e Bellhand non l’ha fatto o è stato cambiato da allora: scegliere un altro posto con -o, o sostituirlo con --force`,
    otherEnding: (path, content, endings) =>
      `${path}: qui si scrive ${CONTENTS[content]}: finire il nome con ${listed(endings, 'o')}`,
    namedTwice: (input) => `${input}: questo file è nominato due volte: basta una`,
    linkToNothing: (path, target) =>
      `${path}: un collegamento a ${target}, che non c’è: nominare il file stesso, o togliere il collegamento`,
    readOnly: (path) => `${path}: si può solo leggere: cambiarne i diritti, o sostituirlo con --force`,
    notPutBack: (path, copy) =>
      `${path}: non si può né scrivere né rimettere com’era: il vecchio contenuto è in ${copy}`,
    outputIntoInput: (target) =>
      `${target}: lo standard output va in questo file di partenza: mandarlo in un altro`,
    twoOntoOne: (output, one, other) =>
      `${output}: qui si scriverebbero sia ${one} sia ${other}: rinominarne uno, o lavorarli separatamente`,
    noParts: (name) => `${name}: la partitura non ha parti: esportarla di nuovo`,
    noHorn: (name, parts) =>
      `${name}: nessuna parte è un corno; ci sono ${quoted(parts)}: scegliere con --part`,
    partWithoutMusic: (name, part) =>
      `${name}: la parte «${part}» è elencata ma non ha musica: sceglierne un’altra con --part, o esportare di nuovo`,
    orNameKey: (name, why) => `${name}: ${why}; o nominare il taglio con --key`,
    noTransposition: 'nessuna parte indica una trasposizione',
    workerDied: (name, why) => `${name}: non si è potuto lavorare (${why}): provarlo da solo, con --jobs 1`,
    noCurve: (note) =>
      `${note}: nessuna posizione, quindi nessuna curva: chiedere un’altra nota o un altro corno`,
    curveTooHigh: (note, highest, harmonic) =>
      `${note}: la curva si calcola fino all’armonico ${highest}, e questo è l’armonico ${harmonic}: chiedere una nota più grave`,
    curveAndJson:
      '--curve qui è testo, e --format json sono dati: dare un file a --curve, o omettere uno dei due',
    inputWatched: 'lo standard input non si può sorvegliare: nominare un file',
    noPluginFolder: (places) =>
      `né MuseScore3 né MuseScore4 in ${places}: avviare l’editor una volta, o nominare la sua cartella dei plugin con --dir`,
    pluginNotBuilt: (path) => `il plugin non è in ${path}: eseguire npm run build`,
  },
  readings: {
    fromName: (part) =>
      `la partitura non indica una trasposizione per «${part}»; il nome è stato preso in parola`,
    concertScore: (part) =>
      `la partitura è in suoni reali e non indica un taglio per «${part}»; le note sono date come suonano`,
    nowhere: 'la partitura non indica una trasposizione: indicarla per la parte, o nominarla «Corno in Fa»',
    'no-key': (part) =>
      `la partitura non indica una trasposizione, e il nome «${part}» non dice il taglio: indicare la trasposizione della parte, o nominarla «Corno in Fa»`,
    'alto-or-basso': (part) =>
      `la partitura non indica una trasposizione, e il nome «${part}» non dice se il si♭ è alto o basso: indicare la trasposizione della parte, o nominarla «Corno in Si♭ basso»`,
  },
  told: {
    standardInput: 'standard input',
    thisPart: 'questa parte',
    marksOut: 'segni tolti',
    noMarks: 'non c’erano segni da togliere',
    cannotBePlayed: (count, bars) =>
      `${counted(count, 'nota non si può suonare com’è scritta', 'note non si possono suonare come sono scritte')}, ${bars}: bellhand check dice perché`,
    notKept: (path, what) => `${path}: non si è potuto conservare ${what}`,
    owner: 'il proprietario',
    group: 'il gruppo',
    hardLinks: 'gli altri collegamenti fisici',
    files: (count) => `${count} file`,
    failed: (count) => counted(count, 'non riuscito', 'non riusciti'),
    interrupted: (left) => `interrotto, ${counted(left, 'non iniziato', 'non iniziati')}`,
    allDone: 'tutto fatto',
    progress: (done, total) => `${done} file su ${total}`,
    pageReady: 'pronto da aprire in un browser',
    fileGone: (name) => `${name} non c’è più; in attesa che torni`,
    watching: 'in sorveglianza; Ctrl-C termina',
    nothingNew: 'niente di nuovo',
    findingGone: (finding) => `${finding} non c’è più`,
    installed: (version, path) => `installato per MuseScore ${version}: ${path}`,
    switchOn: (version, how) => `Ora attivarlo, una volta, in MuseScore ${version}: ${how}.`,
    switchOn3: 'Plugin > Gestione plugin, spuntare le voci Bellhand, OK',
    switchOn4: 'Home > Plugin, scegliere ogni voce Bellhand, Abilita',
  },
  table: {
    bar: 'battuta',
    beat: 'tempo',
    written: 'scritto',
    hand: 'mano',
    finger: 'posizione',
    valves: 'pistoni',
    side: 'lato',
    harmonic: 'armonico',
    natural: 'naturale',
    drop: 'scende',
    off: 'scarto',
    verdict: 'giudizio',
    why: 'perché questa posizione',
    asPrinted: (text) => `come sta scritto: ${text}`,
    sounding: (semitones) =>
      semitones === 0
        ? 'suona come scritto'
        : `suona ${counted(Math.abs(semitones), 'semitono', 'semitoni')} più ${semitones < 0 ? 'in basso' : 'in alto'}`,
  },
  explain: {
    heading: (note, horn, verdict) => `${note}, su un ${horn}: ${verdict}`,
    noFingering: 'nessuna posizione',
    chosenBecause: 'scelta',
    finger: 'posizione',
    naturalPitch: 'suono naturale',
    handCloses: 'la mano chiude',
    stoppingValve: 'pistone chiusi',
    stoppingValveDown: (cents) =>
      `premuto: abbassa il corno di ${cents} cent, quanto il padiglione chiuso alza; diteggiare la nota scritta`,
    drop: 'abbassamento',
    comesOut: 'risulta',
    otherWays: 'Altre posizioni, la migliore per prima',
    twoClosings: (rule, acoustics) => `${rule} secondo la regola, ${acoustics} secondo l’acustica`,
    cents: (count) => `${count} cent`,
    curveTitle: (note, natural, fingering) => `${note} da ${natural}: ${fingering}, mentre la mano chiude`,
  },
};

const chart: ChartWords = {
  stoppedNotesOn: (horn) => `Suoni chiusi: ${horn}`,
  notesOn: (horn) => `La mano nella campana: ${horn}`,
  fingeredReading: (example) => `${example}: la nota da diteggiare e i pistoni.`,
  naturalReading: 'o aperto; ¼ ½ ¾ chiuso di tanto; + chiuso del tutto.',
  naturalPitchReading: 'Tra parentesi: ciò che suona quando la mano apre.',
  arrows: '↑ ↓: quasi un quarto di tono sopra o sotto.',
  bassClef: 'La chiave di basso vale come sta scritta.',
  stoppingValve: (key) =>
    `Sul lato in ${key} con la mano scende il pistone di chiusura; la diteggiatura è quella del suono aperto.`,
  otherWaysReading:
    'Note piccole: altre diteggiature della nota precedente, con lo scarto in cent dove si sente.',
  chart: 'La tavola',
  low: 'Grave',
  high: 'Acuto',
  back: 'Altre diteggiature, cent e glissandi',
  heads: {
    note: 'Nota',
    fingering: 'Posizione',
    natural: 'Naturale',
    falls: 'Scende di',
    otherWays: 'Altre posizioni',
    open: 'Aperto',
    fallsTo: 'La mano chiude',
  },
  centsReading: (least) =>
    `Numeri piccoli: scarto in cent dalla nota scritta, + crescente, dove si sente (da ${least} in su).`,
  stoppedNote: (note) => `${note}, chiuso`,
  slidesOn: (horn) => `Glissandi della mano: ${horn}`,
  slidesReading:
    'Note scritte: o aperto, + chiuso. Sopra ogni suono chiuso stanno i pistoni, tenuti per tutto il glissando.',
  slidesReadingNatural: 'Note scritte: o aperto; ¼ ½ ¾ chiuso di tanto; + chiuso del tutto.',
  prefix: (letter, key) => `${letter} è il lato in ${key}.`,
  withLuck: '≈ e blu: con fortuna.',
  asTheHandCloses: 'La mano chiude: dove scende ogni suono aperto',
  asTheHandOpens: 'La mano apre: dove sale ogni suono chiuso',
  cannotBeWritten: 'Che cosa non si può scrivere',
  slide: (from, to, way) => `da ${from} a ${to} (${way})`,
  neverUp:
    'Un glissando che sale a un suono chiuso o scende da un suono chiuso: la mano chiudendo abbassa il suono, aprendo lo rialza.',
  widest: (semitones) => `Un glissando di più di ${counted(semitones, 'semitono', 'semitoni')}.`,
  tooLow: (notes) =>
    `Da ${notes}: troppo grave perché la mano lo abbassi; al massimo il suono scivola in su di un semitono.`,
  tooHigh: (notes) => `Da ${notes}: così acuto che chiudere non cambia nulla di udibile.`,
  between: (notes) => `Da ${notes}: il suono scende, ma non fino a un’altra nota.`,
  notReached: (notes) => `Verso ${notes} chiusi: eseguibili, ma nessun suono aperto vi scende.`,
  withoutStoppingValve: 'Il pistone di chiusura resta alzato in ogni glissando.',
  madeBy: 'Fatto con Bellhand.',
};

const curves: CurveWords = {
  none: 'Il padiglione non tiene nessuno di questi armonici',
  plotted: (harmonic, hz) =>
    `Armonico ${harmonic}, aperto a ${hz} Hz; cent dalla nota aperta mentre la mano chiude`,
  closing: 'chiuso',
  cents: 'cent',
  tabled: 'Cent dalla nota aperta mentre la mano chiude',
  openHz: 'Hz ap.',
  pictured: (hz) => `La mano chiude un tubo di ${hz} Hz`,
  howFar: 'quanto la mano è chiusa',
  sealed: 'a tenuta',
  harmonic: 'armonico',
  described: (ways) => `Dalla mano aperta alla chiusura completa: ${ways}.`,
  falls: (harmonic, cents) => `l’armonico ${harmonic} scende di ${cents} cent`,
  rises: (harmonic, cents) => `l’armonico ${harmonic} sale di ${cents} cent`,
  stays: (harmonic) => `l’armonico ${harmonic} resta`,
};

/** What both doors say. */
export const words: Words = {
  usualNaming: 'solfege',
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
    'questa parte non si può incidere: aprirla in un editor, esportarla di nuovo come MusicXML, o usare check',
  noEngraver:
    'le pagine sono disegnate da verovio, che non è installato: eseguire npm install verovio, o usare check, o chart --format musicxml',
};

const stand: StandWords = {
  law: 'La mano che chiude fa scendere il suono fin poco sopra l’armonico inferiore, mai salire.',
  sheets: { note: 'Una nota', part: 'Una parte', lesson: 'Una lezione' },
  toSheet: 'Vai al foglio',
  stays: 'Nulla lascia questa pagina. Non le serve la rete e non invia nulla; la vostra parte resta da voi.',
  engravedBy: 'Musica incisa da Verovio (LGPL 3).',
  language: 'Lingua',
  itself: 'Italiano',
  usual: 'secondo l’uso',
  namings: ['lettere inglesi', 'lettere tedesche', 'do re mi'],
  writtenNote: 'Nota scritta',
  partKey: 'Parte in',
  lower: 'Un semitono sotto',
  higher: 'Un semitono sopra',
  hand: 'La mano nel padiglione',
  open: 'aperto',
  sealed: 'chiuso del tutto',
  closing: (closed, cents) => `chiuso al ${closed} %, ${cents} cent sotto il suono aperto`,
  hear: 'Tenere il suono',
  silence: 'Silenzio',
  letClose: 'Sentire la mano che chiude',
  ladder: 'Come la mano fa scendere il suono',
  pulled: (number, note) => `Armonico ${number}, ${note}: è questo che scende`,
  above: (number, note) => `Armonico ${number}, ${note}: il suono si ferma sopra di lui`,
  comesToRest: (cents) => `chiuso, ${cents} cent sopra`,
  waysToPlay: 'Modi di suonarla, prima il più usuale',
  noPicture: 'Qui la mano non fa nulla che si possa disegnare: scegliere un’altra nota o un altro corno.',
  choosePart: 'Scegliere un file MusicXML',
  orDrop: 'o lasciarlo cadere su questa pagina, compresso o no.',
  putAway: 'Riporre',
  example: 'Aprire l’esempio',
  marked: 'Annotata',
  cleared: 'Ripulita',
  completed: 'Annotata e completata',
  print: 'Stampare',
  engraving: 'La musica viene incisa …',
  notEngraved: 'La musica di questa parte non si può disegnare; ciò che è stato trovato sta comunque qui.',
  notRead: (name, reason) => `${name}: ${reason}.`,
  tooLarge: (name, megabytes) => `${name} supera ${megabytes} MB: scegliere la parte invece della partitura.`,
  noHorn: (name, parts) =>
    `${name}: nessuna parte è un corno; c’è ${quoted(parts)}. Dire quale prendere per tale.`,
  noKey: (name) => `${name}: la parte non dice come traspone. Scegliere il suo tono.`,
  hornPart: 'Parte letta',
  findThem: 'tutti i corni',
  handTime: 'Tempo della mano in secondi',
  tempo: '♩ al minuto, se non indicate',
  bassClef: 'Chiave di basso',
  bassClefs: {
    auto: 'secondo l’aspetto delle note',
    old: 'un’ottava sotto (antica)',
    new: 'come sta scritta (nuova)',
  },
  teacher: 'Per l’insegnante, con diteggiature',
  student: 'Per l’allievo, senza',
  another: 'Un’altra',
  usualKey: 'secondo il livello',
  ownHorn: 'Corno proprio (file JSON)',
  lowest: 'Nota più bassa',
  highest: 'Nota più alta',
  asSuits: 'come conviene',
  etudeTempo: '♩ al minuto',
  course: 'Un corso, una pagina alla settimana',
  weeks: 'Settimane',
  weekShown: 'Settimana mostrata',
  composing: 'Il corso viene composto …',
  lowerFirst: 'La nota più bassa deve stare sotto la più alta.',
};

/** What pages say. */
export const pages: PageWords = { engraving, report, chart, curves, stand };
