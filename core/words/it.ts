/** Everything that is said in Italian, area by area; long because it is all of it. */
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornWords } from './areas/horns.ts';
import type { ReportWords } from './areas/report.ts';
import type { SummaryWords } from './areas/summary.ts';

/** `1 nota`, `0 note`, `5 note`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

export const findings: FindingWords = {
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
  'closes-upward': ({ from, to, maySlip, falls, starts }, { note, reached }) =>
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
  'opens-downward': ({ from, to, maySlip, rises, starts }, { note, reached }) =>
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

export const report: ReportWords = {
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
  folded: (stopped) =>
    `${stopped === 0 ? 'nulla di chiuso' : stopped === 1 ? '1 suono chiuso' : `${stopped} suoni chiusi`}, non si è trovato nulla`,
};

export const fingerings: FingeringWords = {
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

export const horns: HornWords = {
  names: {
    double: 'corno doppio in fa e si♭',
    'single-f': 'corno semplice in fa',
    'single-bflat': 'corno semplice in si♭',
    'single-bflat-stop-valve': 'corno semplice in si♭ con pistone per i chiusi',
    'double-stop-valve': 'corno doppio con pistone per i chiusi sul lato in si♭',
    'double-ascending': 'corno doppio con terzo pistone ascendente',
    descant: 'corno discanto in si♭ e fa acuto',
    'triple-high-f': 'corno triplo in fa, si♭ e fa acuto',
    natural: 'corno naturale con il ritorto che la parte richiede',
  },
  onCrook: (key) => `corno naturale con il ritorto di ${key}`,
};

export const summary: SummaryWords = {
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
};

export const etudes: EtudeWords = {
  kinds: {
    seal: {
      name: 'note tenute',
      title: 'Dietro l’imposta',
      trains: 'Note tenute con la campana ben chiusa: lo stesso suono dal primo all’ultimo istante.',
      trainsOnNaturalHorn: 'Note tenute con la mano: quelle coperte piene e ferme come quelle aperte.',
    },
    match: {
      name: 'nota aperta e chiusa',
      title: 'Due volte la stessa nota',
      trains: 'Suonare ogni nota aperta, poi ritrovare chiusa la stessa altezza e la stessa forza.',
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
      trains: 'Scale e accordi spezzati chiusi: conoscere le posizioni, centrare ogni nota.',
      trainsOnNaturalHorn:
        'Scale e accordi spezzati con la mano: avvicinare le note coperte a quelle aperte.',
    },
    phrase: {
      name: 'frase ed eco',
      title: 'Oltre la valle',
      trains:
        'Rispondere a ogni frase con i suoni chiusi: più piano, ma con lo stesso disegno e la stessa altezza.',
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
  numbers: (keys, semitones, changes, risk) =>
    `${keys}, estensione di ${counted(semitones, 'semitono', 'semitoni')}, ${counted(changes, 'cambio', 'cambi')} della mano al minuto, ${risk}.`,
  noRisk: 'nessuna nota rischiosa',
  risks: (count) =>
    `${counted(count, 'nota rischiosa', 'note rischiose')} (in blu, ≈), dove il suono può scivolare in su`,
  naturalLegend: 'o aperto, ¼ ½ ¾ e + chiuso, ciascuno fino al segno seguente.',
  valveLegend: 'I cilindri sopra le note chiuse valgono con la macchina per i suoni chiusi.',
  advice: 'Riposare quanto si è suonato. Smettere quando il labbro si stanca o la mano fa male.',
};
