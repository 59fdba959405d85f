/** Everything that is said in Spanish, area by area; long because it is all of it. */

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
const quoted = (names: readonly string[]) => names.map((name) => `«${name}»`).join(', ') || '–';

/** `1 nota`, `0 notas`, `2 notas`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

const findings: FindingWords = {
  'unknown-key': () => ({
    brief: 'qué tono',
    message: 'La parte no dice aquí cómo transporta, así que sus notas tapadas quedan sin digitación.',
    remedy: 'Indicar el transporte de la parte, o nombrar la trompa con su tono, como «Trompa en fa».',
  }),
  'which-octave': ({ from, bassClef, because }, { note }) => {
    const why =
      because === 'too-low'
        ? 'leída tal cual, la parte bajaría más allá de la trompa'
        : 'los saltos de entrada y de salida hacen pensar en la notación antigua';
    return {
      brief: 'qué octava',
      message:
        bassClef === 'old'
          ? `Desde ${note(from)} la clave de fa se lee en notación antigua, una octava más aguda de lo escrito: ${why}.`
          : `Desde ${note(from)} la clave de fa se lee tal cual; sin embargo, ${why}, que suena una octava más aguda.`,
      remedy: 'Precisar con el ajuste de la clave de fa si se quiere la notación antigua o la nueva.',
    };
  },
  'below-the-hand': ({ written, state, horn }, speech) => ({
    brief: 'demasiado grave',
    message: `El ${speech.note(written)} ${speech.state(state)} es más grave que todo lo que la mano puede sujetar en una ${speech.horn(horn)}.`,
    remedy: 'Escribirlo abierto, usar una sordina de tapado, o subirlo una octava.',
  }),
  'off-pitch': ({ written, horn, fingering, nearest, way }, speech) => {
    const note = speech.note(written);
    if (fingering)
      return {
        brief: 'desafinado',
        message: `El ${note} con ${speech.valves(fingering)} sale ${speech.deviation(fingering.deviationCents)}: el labio tiene que ayudar.`,
        remedy: 'Afinarlo con el labio y un poco más o menos de mano, o probar otra digitación.',
      };
    const none = `Ninguna digitación de una ${speech.horn(horn)} da aquí el ${note}`;
    return {
      brief: 'sin digitación',
      message: nearest
        ? `${none}; la más cercana, ${speech.valves(nearest)}, queda ${speech.deviation(nearest.deviationCents)}.`
        : `${none}.`,
      remedy: {
        'another-crook': 'Elegir otro tonillo, o cambiar la nota.',
        'play-open': 'Cambiar la nota, o tocarla abierta.',
        'another-note': 'Cambiar la nota: ni abierta está al alcance de la trompa.',
        'another-side': 'Taparla en el lado de fa o con un cilindro de tapado, o cambiar la nota.',
      }[way],
    };
  },
  'rises-not-bends': ({ written, state, fingering, limit, surer }, speech) => {
    const note = `El ${speech.note(written)} ${speech.state(state)}`;
    const { harmonic } = fingering;
    const rest =
      'edir una sordina de tapado, o escribir la nota más aguda o abierta; dar tiempo y un ataque suave.';
    return {
      brief: 'tiende a subir',
      message:
        limit === 'wants-to-rise'
          ? `${note} está en el armónico ${harmonic}: tan abajo, al cerrar la mano el sonido resbala hacia arriba en vez de bajar.`
          : `${note} lo sujeta solo el labio: en el armónico ${harmonic} la mano no puede más que subir un semitono el sonido de debajo.`,
      remedy: surer
        ? `Tomarlo en ${speech.fingering(surer)} (${speech.deviation(surer.deviationCents)}), donde la mano aún baja el sonido, o p${rest}`
        : `P${rest}`,
    };
  },
  'above-the-hand': ({ written, fingering }, speech) => ({
    brief: 'sin efecto',
    message: `El ${speech.note(written)} se toma en el armónico ${fingering.harmonic}, donde cerrar la mano cambia la altura solo ${counted(Math.round(fingering.dropCents), 'cent', 'cents')}: el timbre se apaga, el sonido no baja.`,
    remedy: `Digitarlo como abierto (${speech.valves(fingering)}) con la mano cerrada, o escribir más grave el pasaje tapado.`,
  }),
  'mute-and-hand': ({ written, state }, speech) => ({
    brief: 'sordina puesta',
    message: `El ${speech.note(written)} ha de sonar ${speech.state(state)} con la sordina todavía en la campana, donde debería ir la mano.`,
    remedy:
      'Hacer quitar antes la sordina (indicándolo en la parte y dando tiempo), o pedir una sordina de tapado.',
  }),
  'closes-upward': ({ from, to, maySlip, reached: falls, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'subida insegura',
          message: `De ${note(from)} abierto a ${note(to)} tapado el sonido tiene que resbalar un semitono hacia arriba. En el armónico 4 tiende a ello al cerrarse la mano, pero también puede bajar${falls.length > 0 ? `, a ${reached(falls)}` : ''}.`,
          remedy: `Llevarlo hacia arriba con el labio, o escribir el glissando más abajo, donde el sonido sube por sí solo: en el armónico 3 y por debajo${starts.length > 0 ? `; o partir de ${reached(starts)}, que la mano hace bajar a ${note(to)}` : ''}.`,
        }
      : {
          brief: 'cierra subiendo',
          message: `De ${note(from)} abierto a ${note(to)} tapado la música sube, pero la mano al cerrarse hace bajar el sonido${falls.length > 0 ? `: ${note(from)} baja a ${reached(falls)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Partir de ${reached(starts)}, que la mano hace bajar a ${note(to)}, o quitar la línea y dejar que el trompista cambie de digitación.`
              : 'Invertir la línea, o quitarla y dejar que el trompista cambie de digitación.',
        },
  'opens-downward': ({ from, to, maySlip, reached: rises, starts }, { note, reached }) =>
    maySlip
      ? {
          brief: 'bajada insegura',
          message: `De ${note(from)} tapado a ${note(to)} abierto el sonido tiene que resbalar un semitono hacia abajo. Hacia el armónico 4 puede hacerlo al abrirse la mano, pero también puede subir${rises.length > 0 ? `, a ${reached(rises)}` : ''}.`,
          remedy: `Llevarlo hacia abajo con el labio, o escribir el glissando más abajo, donde el sonido baja por sí solo: en el armónico 3 y por debajo${starts.length > 0 ? `; o partir, tapado, de ${reached(starts)}, que al abrir sube a ${note(to)}` : ''}.`,
        }
      : {
          brief: 'abre bajando',
          message: `De ${note(from)} tapado a ${note(to)} abierto la música baja, pero la mano al abrirse deja subir el sonido${rises.length > 0 ? `: ${note(from)} sube a ${reached(rises)}` : ''}.`,
          remedy:
            starts.length > 0
              ? `Partir, tapado, de ${reached(starts)}, que al abrir sube a ${note(to)}, o quitar la línea y dejar que el trompista cambie de digitación.`
              : 'Invertir la línea, o quitarla y dejar que el trompista cambie de digitación.',
        },
  'no-common-tube': ({ from, to, closes, reached, nearest, starts }, speech) => {
    const start = speech.note(from);
    const ends = nearest ? `cabar en ${speech.reached([nearest])}, la nota más cercana a su alcance` : null;
    const begins =
      starts.length > 0 ? `artir de ${speech.reached(starts)}, ${closes ? 'abierto' : 'tapado'}` : null;
    return {
      brief: 'sin digitación común',
      message:
        `Ninguna digitación vale a la vez para ${start} y ${speech.note(to)}, y la mano solo mueve una` +
        (reached.length > 0
          ? `: al ${closes ? 'cerrarse' : 'abrirse'} lleva de ${start} a ${speech.reached(reached)}.`
          : `; con ninguna de las digitaciones de ${start} alcanza una nota de la escala.`),
      remedy: ends
        ? `A${ends}${begins ? `, o p${begins}` : ''}.`
        : begins
          ? `P${begins}.`
          : 'Quitar la línea y dejar que el trompista cambie de digitación.',
    };
  },
  'slur-leaps': ({ from, to, joined }, { note }) => ({
    brief: 'ligadura rota',
    message: `De ${note(from)} a ${note(to)} hay una ligadura ${joined === 'tie' ? 'de unión' : 'de expresión'} sobre un cambio de mano, y ninguna digitación vale para las dos notas: el sonido salta.`,
    remedy: `Atacar la segunda nota, cortar ahí la ligadura ${joined === 'tie' ? 'de unión' : 'de expresión'}, o dejar las dos notas abiertas o tapadas.`,
  }),
  'hand-too-quick': (
    { from, to, goesIn, seconds, neededSeconds, assumedQuartersPerMinute: tempo },
    { note, decimal },
  ) => ({
    brief: 'mano demasiado rápida',
    message: `Entre ${note(from)} y ${note(to)} la mano tiene ${decimal(seconds, 2)} s para ${goesIn ? 'entrar' : 'salir'}${tempo === null ? '' : ` (contando ♩ = ${decimal(tempo, 1)}, pues la parte no indica tempo)`}; necesita unos ${decimal(neededSeconds, 2)} s.`,
    remedy:
      'Poner un silencio o una nota más larga antes del cambio, dejar las dos notas abiertas o tapadas, o repartirlas entre dos trompistas.',
  }),
  'fingering-misses': ({ written, state, horn, text, instead }, speech) => ({
    brief: 'otra nota',
    message: `«${text}» está escrito sobre el ${speech.note(written)} ${speech.state(state)}, pero no lo da en una ${speech.horn(horn)}.`,
    remedy: `Digitar ${speech.valves(instead)}, o quitar la digitación escrita.`,
  }),
  'sign-against-word': ({ written, state, word, wordState, sinceMeasure }, speech) => ({
    brief: 'signo o palabra',
    message: `El signo en ${speech.note(written)} dice «${speech.state(state)}», pero «${word}» (compás ${sinceMeasure}) sigue vigente: después, lo que no lleva signo vuelve a ser ${speech.state(wordState)}.`,
    remedy:
      state === 'open'
        ? 'Escribir aquí una palabra que anule, si desde aquí se toca abierto, o poner el signo en cada nota.'
        : 'Anular la palabra, o quitar el signo.',
  }),
  'never-opened': ({ word, state, sinceMeasure, affectedCount, isLapsed }, speech) => ({
    brief: 'aún tapado',
    message: isLapsed
      ? `«${word}» (compás ${sinceMeasure}) nunca se anuló, pero sus signos acaban antes de esta nota: ${affectedCount === 1 ? 'se lee abierta' : `las ${affectedCount} notas sin signo desde aquí se leen abiertas`}.`
      : `«${word}» (compás ${sinceMeasure}) nunca se anuló: ${affectedCount === 1 ? 'también esta nota se lee' : `también las ${affectedCount} notas desde esta entrada se leen`} como «${speech.state(state)}».`,
    remedy: isLapsed
      ? 'Escribir aquí la palabra que anula, o poner el signo en cada nota que siga tapada.'
      : 'Escribir la palabra que anula donde se vuelve a tocar abierto, o repetir la palabra aquí si sigue vigente.',
  }),
  'echo-or-stopped': ({ word, state, from }, speech) => ({
    brief: 'eco o tapado',
    message: `«${word}» se lee como «${speech.state(state)}» desde ${speech.note(from)}; otras ediciones lo entienden como ${state === 'echo' ? 'tapado' : 'eco'}, que se digita un tono más ${state === 'echo' ? 'abajo' : 'arriba'}.`,
    remedy: 'Poner + sobre las notas si hay que tapar la campana, o escribir «sonidos de eco» si no.',
  }),
};

const repairs: RepairWords = {
  labels: {
    'octave-up': (note) => `Octava arriba (${note})`,
    'octave-down': (note) => `Octava abajo (${note})`,
    'other-start': (note) => `Empezar en ${note}`,
    'other-end': (note) => `Acabar en ${note}`,
    'line-removed': () => 'Quitar la línea',
    'slur-removed': () => 'Quitar la ligadura',
    'tie-broken': () => 'Cortar la ligadura de unión',
    'sign-added': (sign, count) => (count > 1 ? `Escribir ${sign} sobre ${count} notas` : `Escribir ${sign}`),
    'sign-removed': (_, count) => (count > 1 ? `Quitar el signo de ${count} notas` : 'Quitar el signo'),
    'fingering-taken': (valves) => `Digitar ${valves}`,
    'fingering-removed': (_, count) => (count > 1 ? 'Quitar las dos digitaciones' : 'Quitar la digitación'),
    'opening-word': (word) => `Escribir ${word}`,
    'closing-word': (word) => `Escribir ${word}`,
    'stopping-mute': (word) => `Escribir ${word}`,
    'mute-out': (word) => `Escribir ${word}`,
  },
  done: (label) => `Hecho: ${label}.`,
  takenBack: (label) => `Deshecho: ${label}.`,
  doneAgain: (label) => `Rehecho: ${label}.`,
  quoted: (text) => `«${text}»`,
};

const answers: AnswerWords = {
  played: (fingered, fingering, natural) => `Digitar ${fingered}, ${fingering}; sonido natural ${natural}`,
  noFingering: 'Ninguna digitación de esta trompa la da',
  alsoSure: (valves) => `También seguras: ${valves}`,
  nearestSure: (notes) => `Seguras cerca: ${notes}`,
  closing: (reached) =>
    reached === ''
      ? 'Abierta y luego tapada con la mano: no lleva a ninguna nota'
      : `Abierta y luego tapada con la mano: lleva a ${reached}`,
  opening: (reached) =>
    reached === ''
      ? 'Tapada y luego abierta: no lleva a ninguna nota'
      : `Tapada y luego abierta: lleva a ${reached}`,
};

const report: ReportWords = {
  page: {
    skip: 'Ir a la música',
    onThisPage: 'En esta página',
    howToRead: 'Cómo leer esta página',
    fingeringsOf: (part) => `Digitaciones: ${part}`,
    music: 'La música',
    madeFrom: (file) =>
      `Hecho por Bellhand a partir de ${file}. La página no necesita red ni script; se puede imprimir tal cual.`,
    barsTo: (first, last) => `compases ${first} a ${last}`,
    engraved: (bars) => `${bars}, en notación`,
  },
  severities: { impossible: 'imposible', risky: 'arriesgado', advice: 'para la página' },
  table: {
    none: 'Ninguna nota de esta parte está tapada.',
    labelOf: (part) => `Tabla de las digitaciones: ${part}`,
    caption:
      'Cada nota tapada una vez por cada manera de tocarla, desde la más grave. Las alturas son las escritas.',
    note: 'Nota',
    hand: 'Mano',
    fingeredAs: 'Digitación',
    natural: 'Sonido natural',
    drop: 'Bajada',
    offBy: 'Desvío',
    verdict: 'Veredicto',
    otherWays: 'Otras digitaciones',
    bars: 'Compases',
    notes: (count) => counted(count, 'nota', 'notas'),
  },
  glissando: {
    wanted: (note) => `${note} pedido`,
    natural: 'natural',
    stopped: 'tapado',
    leads: (from, start, to, end) => `La música lleva de ${from} ${start} a ${to} ${end}.`,
    closes: (from, to, fingering) => `La mano que se cierra lleva ${from} a ${to} (${fingering}).`,
    opens: (from, to, fingering) => `La mano que se abre lleva ${from} a ${to} (${fingering}).`,
    nowhere: 'La mano no alcanza ninguna nota que tenga nombre.',
  },
  reading: {
    lines: (key) =>
      `En cada nota tapada hay dos líneas. La más cercana a la nota es la digitación: la nota en que se piensa y los cilindros, con T para el lado de ${key}. La otra, entre paréntesis, es el sonido natural: lo que sonaría con esa digitación y la mano abierta.`,
    vermillion: 'bermellón',
    impossible: 'ninguna mano puede hacerlo tal como está escrito.',
    blue: 'azul',
    risky: 'se puede tocar con suerte.',
    rings:
      'Un círculo bajo una nota lleva el número de la observación de al lado; la observación lleva de vuelta al círculo.',
    pitches:
      'Las alturas son las escritas. La bajada dice cuánto hace descender la mano el sonido; el desvío, cuánto dista el resultado de la nota, + si es alto. Cien cents (¢) son un semitono.',
  },
  readFor: (horn) => `Leído para: ${horn}.`,
  stoppedNotesIn: (title) => `Sonidos tapados en ${title}`,
  cannotBePlayed: (count) => (count === 1 ? '1 nota no se puede tocar' : `${count} notas no se pueden tocar`),
  canBePlayed: 'Aquí no hay nada imposible',
  areRisky: (count) => (count === 1 ? '1 nota es arriesgada' : `${count} notas son arriesgadas`),
  nothingStopped: 'En esta parte no hay nada tapado.',
  findings: 'Lo que se encontró, lo peor primero',
  nothingFound: 'No se encontró nada.',
  bars: (count) => (count === 1 ? 'compás' : 'compases'),
  elsewhere: (count) => (count === 1 ? '1 nota más en el mismo caso' : `${count} notas más en el mismo caso`),
  heardClosing: (note, way) => `Para escuchar: ${note} mientras la mano cierra (${way})`,
  heardOpening: (note, way) => `Para escuchar: ${note} mientras la mano abre (${way})`,
  folded: (stopped) =>
    `${stopped === 0 ? 'nada tapado' : stopped === 1 ? '1 sonido tapado' : `${stopped} sonidos tapados`}, no se encontró nada`,
};

const fingerings: FingeringWords = {
  states: {
    open: 'abierto',
    'half-stopped': 'semitapado',
    stopped: 'tapado',
    echo: 'en eco',
    'stopping-mute': 'con sordina de tapado',
    'straight-mute': 'con sordina',
  },
  verdicts: { sure: 'seguro', risky: 'arriesgado', impossible: 'imposible' },
  severities: { impossible: 'imposible', risky: 'arriesgado', advice: 'aviso' },
  reasons: {
    'wants-to-rise': 'tan abajo en este lado, al cerrar la mano el sonido resbala hacia arriba',
    'lip-only': 'por debajo de lo que la mano baja: solo lo sujeta el labio',
    'below-the-hand': 'debajo de este armónico no hay otro hacia el que la mano pueda bajar',
    'nothing-changes': 'tan agudo que la mano ya no cambia la altura',
    'off-pitch': 'desafinado: el labio tiene que ayudar',
    'unusual-degree': 'pide un grado de cierre poco común',
  },
  briefReasons: {
    'wants-to-rise': 'resbala arriba',
    'lip-only': 'solo labio',
    'below-the-hand': 'fuera de alcance',
    'nothing-changes': 'no baja',
    'off-pitch': 'desafinado',
    'unusual-degree': 'cierre poco común',
  },
  forSharpHand: 'el armónico de debajo es bajo: para una mano que tapa demasiado alto',
  choices: {
    'one-tube': (instead, neighbour) =>
      `en vez de ${instead}: la misma digitación que ${neighbour}, al que la nota va unida`,
    'one-side': (instead, neighbour) =>
      `en vez de ${instead}: sigue en el lado de ${neighbour}, no hay tiempo para cambiar`,
    'fewer-changes': (instead, neighbour) =>
      `en vez de ${instead}: menos cilindros que cambiar junto a ${neighbour} a esta velocidad`,
  },
  open: (key) => `trompa en ${key} al aire`,
  pressed: (key, valves) => `trompa en ${key} ${valves}`,
  crook: (key) => `tonillo de ${key}`,
  harmonic: (number) => `armónico ${number}`,
  inTune: 'afinado',
  sharp: (cents) => `${counted(cents, 'cent', 'cents')} alto`,
  flat: (cents) => `${counted(cents, 'cent', 'cents')} bajo`,
  closings: { open: 'abierto', full: 'entero' },
  keys: {
    high: (key) => `${key} agudo`,
    alto: (key) => `${key} agudo`,
    basso: (key) => `${key} grave`,
  },
  or: 'o',
  and: 'y',
  decimalSign: ',',
};

const horns: HornWords = {
  names: new Map<string, HornName>([
    ['double', (key) => `trompa doble en ${key('F')} y ${key('Bb')}`],
    ['single-f', (key) => `trompa simple en ${key('F')}`],
    ['single-bflat', (key) => `trompa simple en ${key('Bb')}`],
    ['single-bflat-stop-valve', (key) => `trompa simple en ${key('Bb')} con cilindro de tapado`],
    ['double-stop-valve', (key) => `trompa doble con cilindro de tapado en el lado de ${key('Bb')}`],
    ['double-ascending', () => 'trompa doble con tercer cilindro ascendente'],
    ['descant', (key) => `trompa discanto en ${key('Bb')} y ${key('high F')}`],
    ['triple-high-f', (key) => `trompa triple en ${key('F')}, ${key('Bb')} y ${key('high F')}`],
    ['natural', () => 'trompa natural con el tonillo que pide la parte'],
  ]),
  onCrook: (key) => `trompa natural con el tonillo de ${key}`,
};

const summary: SummaryWords = {
  stoppedNotes: (count, verdicts) =>
    count === 0 ? 'ninguna nota tapada' : `${counted(count, 'nota tapada', 'notas tapadas')}: ${verdicts}`,
  verdicts: {
    sure: (count) => counted(count, 'segura', 'seguras'),
    risky: (count) => counted(count, 'arriesgada', 'arriesgadas'),
    impossible: (count) => counted(count, 'imposible', 'imposibles'),
  },
  openNotes: (verdicts) => `notas abiertas: ${verdicts}`,
  bars: (listed, count) => `${count === 1 ? 'compás' : 'compases'} ${listed}`,
  more: (count) => `${count} más`,
  bar: (measure) => `compás ${measure}`,
  place: (measure, beat) => `compás ${measure}, tiempo ${beat}`,
  nothingAdded: 'no faltaba ningún signo ni palabra',
  signs: (count) => counted(count, 'signo', 'signos'),
  words: (count) => counted(count, 'palabra', 'palabras'),
  added: (what) => `añadido: ${what}`,
  keptColour: (count) =>
    counted(
      count,
      'nota dudosa ya tenía un color y lo conserva',
      'notas dudosas ya tenían un color y lo conservan',
    ),
};

const etudes: EtudeWords = {
  kinds: {
    seal: {
      name: 'notas tenidas',
      title: 'Tras el postigo',
      trains: 'Notas tenidas con la campana bien cerrada: el mismo sonido del primer instante al último.',
      trainsOnNaturalHorn: 'Notas tenidas con la mano: las cubiertas tan llenas y firmes como las abiertas.',
    },
    match: {
      name: 'nota abierta y tapada',
      title: 'Dos veces la misma nota',
      trains: 'Tocar cada nota abierta y encontrar luego, tapada, la misma altura y la misma fuerza.',
      trainsOnNaturalHorn:
        'Tocar la nota abierta y luego su vecina cubierta con la misma fuerza y el mismo color.',
    },
    bend: {
      name: 'sonido doblado',
      title: 'Contra la puerta',
      trains:
        'Cilindros y labio quietos: la mano que cierra deja bajar el sonido, la que abre lo deja subir.',
      trainsOnNaturalHorn:
        'El labio quieto: la mano que cierra deja bajar el sonido, la que abre lo deja subir.',
    },
    scale: {
      name: 'escalas y acordes',
      title: 'Escaleras a oscuras',
      trains: 'Escalas y arpegios tapados: conocer las posiciones, centrar cada nota.',
      trainsOnNaturalHorn: 'Escalas y arpegios con la mano: acercar las notas cubiertas a las abiertas.',
    },
    phrase: {
      name: 'frase y eco',
      title: 'Sobre el valle',
      trains: 'Responder tapado a cada frase: más suave, pero con el mismo dibujo y la misma altura.',
      trainsOnNaturalHorn: 'Responder suave a cada frase: ninguna nota cubierta debe sobresalir ni hundirse.',
    },
    change: {
      name: 'cambios cada vez más rápidos',
      title: 'La verja que oscila',
      trains: 'Cerrar y abrir en notas cada vez más breves: la mano va con el pulso y la altura no se mueve.',
      trainsOnNaturalHorn:
        'De la nota abierta a la cubierta y vuelta en notas cada vez más breves: la mano va con el pulso.',
    },
  },
  lesson: 'Lección para la mano que tapa',
  lessonOfWeek: (week) => `Lección para la mano que tapa, semana ${week}`,
  hornIn: (key) => `Trompa en ${key}`,
  naturalHornIn: (key) => `Trompa natural en ${key}`,
  key: { major: (tonic) => `${tonic} mayor`, minor: (tonic) => `${tonic} menor` },
  level: (level, seed, difficulty) => `Nivel ${level}, semilla ${seed}, dificultad ${difficulty}.`,
  numbers: (keys, semitones, changes) =>
    `${keys}, extensión de ${counted(semitones, 'semitono', 'semitonos')}, ${counted(changes, 'cambio', 'cambios')} de mano por minuto.`,
  noRisk: 'Ninguna nota arriesgada.',
  risks: (count) =>
    `${counted(count, 'nota arriesgada', 'notas arriesgadas')} (en azul, ≈), donde el sonido puede escaparse hacia arriba.`,
  naturalLegend: 'o abierto, ¼ ½ ¾ y + cerrado, cada uno hasta el signo siguiente.',
  valveLegend:
    'Pabellón cerrado y cilindro de tapado pulsado: sobre las notas tapadas, las posiciones de la nota escrita, lado si♭.',
  advice: ['Descansar tanto como se ha tocado.', 'Parar cuando el labio se canse o duela la mano.'],
  noTime: (seconds, tempo) =>
    `una mano que tarda ${seconds} s no tiene tiempo en una blanca a ${tempo} pulsos por minuto: elegir un tempo más lento o una mano más rápida`,
  tooFew: {
    notes: (low, high, horn, count) =>
      `de ${low} a ${high} una ${horn} ${count === 0 ? 'no tiene ninguna nota' : `solo tiene ${counted(count, 'nota', 'notas')}`} de la tonalidad que la mano haga con seguridad: elegir una extensión más amplia, otra tonalidad, otra clase u otra trompa`,
    bends: (low, high, horn, count) =>
      `de ${low} a ${high} una ${horn} ${count === 0 ? 'no tiene ningún sonido' : `solo tiene ${counted(count, 'sonido', 'sonidos')}`} que la mano pueda bajar y dejar subir: elegir una extensión más amplia, otra tonalidad, otra clase u otra trompa`,
  },
  noHome: (tonic, low, high, horn) =>
    `una ${horn} no tiene un ${tonic} seguro al que volver de ${low} a ${high}: elegir otra tonalidad o una extensión más amplia`,
};

const scores: ScoreWords = {
  place: (line, column) => `línea ${line}, columna ${column}`,
  cutShort: (plain) => `el archivo está cortado (${plain}): traerlo o exportarlo de nuevo`,
  unmatchedClosing: (plain) =>
    `una etiqueta de cierre no tiene la suya de apertura (${plain}): exportar de nuevo la partitura con el programa que la escribió`,
  notXml: (plain) => `esto no es XML (${plain}): exportar la partitura como MusicXML`,
  secondDocument: (plain) =>
    `hay un segundo documento en el mismo archivo (${plain}): dejar una partitura en cada archivo`,
  undeclaredEntity: (plain) =>
    `el archivo usa una entidad que no declara (${plain}): escribir el carácter mismo, o &amp; por &`,
  attributeTwice: (plain) =>
    `un atributo se da dos veces (${plain}): exportar de nuevo la partitura con el programa que la escribió`,
  disallowedCharacter: (plain) =>
    `un carácter está donde XML no lo permite (${plain}): escribir < y & como &lt; y &amp;, o exportar de nuevo la partitura con el programa que la escribió`,
  malformed: (plain) =>
    `esto no es XML bien formado (${plain}): exportar de nuevo la partitura con el programa que la escribió`,
  doctypeTooLong: (most) =>
    `el tipo de documento pasa de ${grouped(most)} caracteres: comprobar de dónde viene el archivo`,
  entityTooLong: (name, most) =>
    `la entidad «${name}» vale por más de ${grouped(most)} caracteres: comprobar de dónde viene el archivo`,
  entitiesTooLong: (name, most) =>
    `entidades como «${name}» valen en total por más de ${grouped(most)} caracteres: comprobar de dónde viene el archivo`,
  entityInCircle: (name) =>
    `la entidad «${name}» vale por sí misma, o casi: comprobar de dónde viene el archivo`,
  notMusicXml: (element) => `<${element}> no es una partitura MusicXML: exportar la música como MusicXML`,
  partTwice: (part) => `la parte «${part}» está aquí dos veces: dejar una de las dos, o dar a una otro id`,
  idTwice: (id) => `dos partes tienen el id «${id}»: dar a cada parte el suyo`,
  noPart: (request, parts) =>
    `no hay ninguna parte «${request}»: elegir una de las partes de esta partitura (${parts.length > 0 ? quoted(parts) : 'ninguna'})`,
  tooMuchMusic: (most) =>
    `las partes por leer tienen más de ${grouped(most)} notas, silencios y palabras, más que parte alguna: comprobar de dónde viene el archivo`,
  chordTooLarge: (most) =>
    `un acorde tiene más de ${grouped(most)} notas: comprobar de dónde viene el archivo`,
  halfCharacter: (encoding) => `el texto en ${encoding} acaba en medio carácter: traer de nuevo el archivo`,
  unknownEncoding: (encoding) =>
    `Bellhand no sabe reescribir la codificación ${encoding}: guardar el archivo en UTF-8`,
  whichFile:
    'el archivo ZIP no dice cuál de los suyos es la partitura: exportar la música como .mxl o .musicxml',
  fileMissing: (path) => `el contenedor nombra «${path}», que no está: exportar de nuevo la música`,
  containerMalformed: 'META-INF/container.xml no es XML bien formado: exportar de nuevo la música',
  noScoreInside: 'el archivo ZIP no contiene MusicXML: exportar la música como .mxl o .musicxml',
  zip64: 'esto es un archivo ZIP64: comprimir de nuevo la partitura como ZIP corriente',
  directoryDamaged:
    'el archivo ZIP está dañado: su índice no concuerda con sus comprobaciones: traer o exportar de nuevo el archivo',
  entryDamaged: (name) =>
    `el archivo ZIP está dañado: «${name}» no concuerda con sus comprobaciones: traer o exportar de nuevo el archivo`,
  encrypted: (name) => `«${name}» está cifrado: comprimir de nuevo la partitura sin contraseña`,
  unpacksTo: (name, megabytes, most) =>
    `«${name}» ocupa ${grouped(megabytes)} MB descomprimido, y no se abren más de ${most} MB: comprobar de dónde viene el archivo, o exportar solo las partes de trompa`,
  growsTo: (name, times, most) =>
    `«${name}» crece ${grouped(times)} veces al descomprimirse, y no se abre más allá de ${most} veces: comprobar de dónde viene el archivo, o guardarlo sin comprimir como .musicxml`,
  packedBy: (name, method) =>
    `«${name}» está comprimido por el método ${method}: comprimir de nuevo la partitura como ZIP corriente`,
  archiveCutShort: 'el archivo ZIP no tiene fin: traer o exportar de nuevo el archivo: parece cortado',
};

const panel: PanelWords = {
  labels: {
    horn: 'Trompa',
    noteNames: 'Nombres de las notas',
    print: 'Sobre las notas',
    fingered: 'Nota digitada',
    valves: 'Cilindros',
    natural: 'Sonido natural',
    verdict: 'Signos ≈ y ×',
    colour: 'Colores',
    onlyChanges: 'Solo en los cambios',
    quickValves: 'Notas rápidas: solo los cilindros',
    widerBars: 'Compases más anchos si hace falta',
    tolerance: 'Tolerancia en cents',
    handOffset: 'Desvío de la mano en cents',
    toleranceHint: 'Las digitaciones más alejadas de la nota escrita quedan fuera',
    handOffsetHint: 'Por encima de 0 para una mano que tapa alto, por debajo para una que tapa bajo',
    annotate: 'Anotar',
    clear: 'Quitar',
    lookAgain: 'Revisar',
    fromCursor: 'Desde el cursor',
    previous: 'Hallazgo anterior',
    next: 'Hallazgo siguiente',
    stoppedSign: 'Escribir o quitar + sobre las notas seleccionadas',
    openSign: 'Escribir o quitar o sobre las notas seleccionadas',
    noteAsked: 'Seleccione una nota de trompa para ver cómo se tapa.',
    findings: 'Por revisar',
    nothingFound: 'Nada: todas las notas tapadas se pueden tocar.',
    instead: 'En su lugar:',
    etude: 'Estudio',
    etudeKind: 'Clase',
    etudeLesson: 'Una lección de una página',
    etudeKey: 'Tonalidad escrita',
    etudeLevel: 'Nivel',
    etudeLength: 'Compases',
    etudeTempo: 'Pulsos por minuto, 0 para lo habitual',
    etudeCompass: 'De–a, por ejemplo C4–G5',
    compose: 'Componer',
    copyPath: 'Copiar la ruta',
    openOutside: 'Abrir',
  },
  noScore: 'No hay ninguna partitura abierta.',
  emptyScore: 'La partitura no tiene compases.',
  reading: (percent) => `Leyendo la partitura: ${percent} %`,
  readOnceLetGo: 'La partitura es grande: pulse Esc en ella y se leerá.',
  noHorn: 'La partitura no tiene parte de trompa.',
  noStopped: 'La parte de trompa no tiene notas tapadas: nada que anotar.',
  noStoppedSelected: 'No hay ninguna nota tapada de trompa seleccionada: no se ha cambiado nada.',
  annotated: 'Anotado.',
  annotatedSelection: 'La selección está anotada.',
  upToDate: 'Las anotaciones están al día: no se ha cambiado nada.',
  severalNotes: (count) => `${count} notas`,
  nthOf: (nth, count) => `${nth} de ${count}`,
  noHornSelected: 'No hay ninguna nota de trompa seleccionada.',
  cleared: (count) => `Anotación quitada: ${counted(count, 'nota', 'notas')}.`,
  nothingToClear: 'No hay ninguna anotación nuestra que quitar.',
  failed: (reason) => `No se ha cambiado nada: ${reason}.`,
  notShown: 'La nota ya no está en la partitura.',
  etudeOpened: (title) => `Hay una nueva partitura abierta: ${title}.`,
  etudeWritten: (title, path) =>
    `El estudio «${title}» está escrito. Abrir este archivo en el editor: ${path}`,
  etudeAsked: (path) => `El sistema debe abrir ${path}. Si no aparece nada, abrir el archivo en el editor.`,
  etudeNotWritten: (title) => `No se pudo escribir el estudio «${title}»: ninguna carpeta acepta el archivo.`,
  etudeRange: (range) =>
    `«${range}» no es una extensión: escribir dos notas, primero la más grave, como C4–G5, o nada.`,
  faults: {
    notExported: (path) => `el editor no pudo escribir ${path}`,
    placeNotFound: 'una nota ya no está donde se leyó; revisar',
    nothingToTakeOut: 'lo que se ha de quitar ya no está',
    notTaken: 'el editor no lo ha aceptado',
  },
};

const hornFile: HornFileWords = {
  notJson: (plain) => `no es JSON: ${plain}`,
  mustBe: (at, wanted, got) => `${at} pide ${wanted}, y ahí hay ${got}`,
  theFile: 'el archivo',
  nothing: 'nada',
  wanted: {
    sides: 'una lista de uno a cuatro lados, cada uno { "name": …, "fundamental": … }',
    'one-side': 'un solo lado, el tono, en una trompa natural',
    fundamental: 'el 1.er armónico real, de C0 a C3: F1 para una trompa en fa',
    note: 'un nombre de nota real en letras inglesas, como "F1"',
    text: 'un texto de 1 a 60 caracteres sin <, > ni &',
    flag: 'true o false',
    valves: '"compromise", "ascending", "none" o una lista de { "valves": "12", "semitones": 3 }',
    'valve-numbers': '"0" o los números de los cilindros, como "12"',
  },
  number: (from, to) => `un número de ${from} a ${to}`,
  whole: (from, to) => `un número entero de ${from} a ${to}`,
  unknownField: (at, field, known) =>
    `${at} tiene un campo "${field}" que aquí no significa nada; escribir uno de estos: ${known}`,
  shortSideFrom: '"shortSideFrom" lo dice el propio lado: escribir ahí "openFrom": "Db4" y quitarlo aquí',
  noSideStoppable: 'ningún lado se puede tapar: quitar "stoppable": false del lado en el que se tapa',
  orderForSome: '"stoppingOrder" está en algunos lados; darlo en todos o en ninguno',
  orderTwice: 'dos lados tienen el mismo "stoppingOrder"; numerarlos 1, 2, … según se toman',
};

/** What a result is. */
const CONTENTS = {
  score: 'una partitura en MusicXML',
  page: 'una página para el navegador',
  picture: 'una imagen',
  sound: 'un sonido',
};

export const commandLine: CommandLineWords = {
  hornFile,
  scores,
  help: {
    program:
      'Digitaciones y sonidos naturales para las notas tapadas de las partes de trompa, y lo que ninguna mano puede hacer',
    version: 'muestra la versión',
    help: 'muestra esta ayuda',
    helpOf: 'muestra la ayuda de una orden',
    usage: 'Uso:',
    arguments: 'Argumentos:',
    options: 'Opciones:',
    generalOptions: 'Opciones de todas las órdenes:',
    commands: 'Órdenes:',
    byDefault: (value) => `por omisión: ${value}`,
    see: (command) => `véase: ${command}`,
  },
  commands: {
    annotate: 'escribe digitación, sonido natural y veredicto sobre cada nota tapada de las partes de trompa',
    clear: 'quita todas las marcas de annotate y deja lo demás como está',
    check: 'enumera cada nota tapada y cada aviso sin escribir; acaba con 1 si una nota es imposible',
    explain: 'explica una nota escrita: digitación, sonido natural, descenso y todas las demás digitaciones',
    etude: (kinds) => `compone un estudio para la mano que tapa: ${kinds}`,
    lesson: 'compone una lección: una página de ejercicios numerados, de sonidos largos a cambios rápidos',
    course:
      'compone un curso: una lección por semana, cada una algo más difícil y con una vuelta a la anterior',
    report:
      'escribe una página con el veredicto, lo que hay que hacer, la música grabada alrededor de cada aviso, y las digitaciones',
    chart:
      'escribe una tabla de una trompa: la digitación de cada nota que puede tapar, o adónde lleva la mano cada nota',
    watch: 'revisa un archivo cada vez que se guarda y dice qué ha cambiado; Ctrl-C termina',
    install: 'pone el complemento en la carpeta de complementos de MuseScore 3 y 4',
  },
  arguments: {
    files: 'archivos MusicXML, también comprimidos; - para la entrada estándar',
    file: 'un archivo MusicXML, también comprimido; - para la entrada estándar',
    watched: 'un archivo MusicXML que algún programa va guardando',
    note: 'la nota como la imprime la parte, en letras con la octava: C5, F#4, Bb3',
  },
  options: {
    output: (name) => `dónde escribir: un archivo, una carpeta, o - (por omisión: ${name})`,
    outputOfOne: (name) => `dónde escribir, o - (por omisión: ${name})`,
    inPlace: 'escribe en el propio archivo de entrada',
    complete: 'añade los + que faltan bajo una palabra, y las palabras que faltan para anular una',
    jobs: 'cuántos archivos se tratan a la vez; nunca más de lo que permiten procesadores y memoria',
    force:
      'reemplaza también un archivo que Bellhand no hizo, que se cambió después, o que es de solo lectura',
    checkFormat:
      'table; json, un objeto por archivo, uno por línea; json-lines, lo mismo sin las notas, para catálogos',
    explainFormat: 'table o json',
    chartOf:
      'fingerings, las digitaciones de los sonidos tapados, o bends, adónde lleva la mano cada nota, para quien compone',
    chartFormat:
      'html, una página para imprimir, o musicxml, una partitura (si no: según acabe el nombre tras -o, o html)',
    curve:
      'la altura mientras la mano se cierra, según la acústica: como texto, o como imagen SVG en un archivo',
    sound: 'el sonido mientras la mano cierra, según la acústica, como archivo WAV',
    soundOfReport: 'deja oír, como los hace la mano, los glissandos que no puede hacer',
    part: 'una parte que se toma por trompa: su nombre, identificador o lugar; puede repetirse',
    keyOfPart: 'el tono de las trompas cuya parte no lo indica: F, Eb, "Bb basso", …',
    keyOfNote: 'el tono en que está la parte: F, Eb, "Bb basso", …',
    hand: (states) => `lo que hace la mano: ${states}`,
    horn: (ids) =>
      `la trompa que se toca: ${ids}, natural, natural-eb y así sucesivamente, o un archivo .json`,
    tolerance: 'más allá de esta desviación una digitación no vale',
    handOffset: 'lo que esta mano añade a cada cierre: por encima de 0 si tapa demasiado alto',
    handTime: 'el menor tiempo en que la mano entra o sale',
    names: 'notas nombradas como las escribe la parte (as-written) o como las lee una trompa en fa (f-horn)',
    bassClef: 'notas en clave de fa: new, tal cual; old, una octava baja; auto, según su aspecto',
    assumedTempo: 'la velocidad de una parte que no la indica, en negras por minuto',
    show: (items) => `qué escribir, entre ${items}`,
    valvesAs: 'cilindros en el texto sobre la nota (text) o como digitación de la nota (fingering)',
    repeat: 'changes: omitir un texto que la nota anterior del compás ya lleva; all: nunca',
    quick: 'valves: en compases con indicaciones a menos de una negra, solo los cilindros; full: todo',
    language: (languages) =>
      `el idioma de lo que se dice: ${listed(languages, 'o')} (por omisión: el del sistema)`,
    noteNames:
      'nombres de las notas: english (B♭ B), german (B H) o solfege (si♭ si) (por omisión: los del idioma)',
    etudeKey: 'la tonalidad escrita, en letras: C, Bb, F#, Dm, …',
    level: '1 para las primeras semanas, 2 para el estudio diario, 3 para los expertos',
    bars: (phraseBars) => `longitud en compases, en frases de ${phraseBars}`,
    tempo: 'tiempos por minuto (por omisión: lo que conviene al tipo)',
    range: 'nota escrita más grave y más aguda, como C4-G5 (por omisión: según el nivel)',
    seed: 'el mismo número da la misma música (por omisión: una nueva cada vez)',
    copy: 'marked, con sus digitaciones, o plain, para que la rellene el alumno',
    weeks: 'cuántas lecciones',
    lessonKey:
      'la tonalidad escrita de cada ejercicio, en letras: C, Bb, F#, Dm, … (por omisión: según el nivel)',
    whole: 'muestra toda la música; si no, lo que está en orden queda plegado',
    folder: 'la carpeta de complementos, si no está entre sus documentos',
  },
  usage: {
    unknownOption: (option) => `opción desconocida «${option}»`,
    afterCommand: (option, command) => `la opción «${option}» va detrás de la orden «${command}»`,
    unknownCommand: (name) => `orden desconocida «${name}»`,
    suggestion: (names) => `¿Quizá ${names}?`,
    missingArgument: (name) => `falta el argumento «${name}»`,
    missingOption: (flags) => `falta la opción «${flags}»`,
    missingValue: (flags) => `a la opción «${flags}» le falta su valor`,
    tooManyArguments: (command) => `demasiados argumentos para «${command}»`,
    badValue: (flags, value, why) => `«${flags}» no puede ser «${value}». ${why}`,
    number: (unit, from, to) => `Dar un número (${unit}) de ${from} a ${to}.`,
    wholeNumber: 'Dar un número entero a partir de 1.',
    wholeBetween: (from, to) => `Dar un número entero de ${from} a ${to}.`,
    oneOf: (list) => `A elegir: ${listed(list, 'o')}.`,
    someOf: (list) => `Elegir entre ${listed(list, 'o')}, separados por comas.`,
    notANote: (text) =>
      `«${text}» no es una nota: escribir una letra A–G, # o b si hace falta, y la octava, como C#5 o Bb4.`,
    notAKey: (text) =>
      `«${text}» no es una tonalidad de siete alteraciones como mucho: escribir la tónica y, para el menor, una m, como F, Bb, Dm o C#m.`,
    hornOrFile: (list) => `A elegir: ${list}, o un archivo .json.`,
    hornKey: 'Nombrar un tono: F, Eb, D, "Bb alto", "Bb basso", ….',
    bars: (phraseBars, from, to) => `Dar un múltiplo de ${phraseBars} entre ${from} y ${to}.`,
    rangeEnds: 'Dar dos notas con un guion, como C4-G5.',
    lowerFirst: 'Nombrar primero la nota más grave.',
  },
  units: {
    cents: 'cents',
    seconds: 'segundos',
    quarters: 'negras por minuto',
    beats: 'tiempos',
    weeks: 'semanas',
  },
  systemFaults: {
    ENOENT: 'ese archivo no existe: comprobar el nombre y la carpeta',
    EACCES: 'falta el permiso: cambiar los derechos del archivo o de su carpeta, o elegir otro lugar',
    EPERM: 'el sistema no lo permite: cambiar los derechos del archivo o de su carpeta, o elegir otro lugar',
    EROFS: 'este disco solo se puede leer: elegir otro lugar con -o',
    ENOSPC: 'el disco está lleno: hacer sitio o elegir otro lugar con -o',
    EISDIR: 'esto es una carpeta: nombrar un archivo dentro de ella',
    ENOTDIR: 'una parte de la ruta es un archivo y no una carpeta: comprobar la ruta',
    ENAMETOOLONG: 'el nombre es demasiado largo: elegir uno más corto',
    EMFILE: 'hay demasiados archivos abiertos: reducir --jobs',
    ERR_FS_FILE_TOO_LARGE: 'es más grande que cualquier partitura: comprobar de dónde viene',
    ELOOP: 'sus enlaces dan vueltas: nombrar el propio archivo',
    other: (code) => `el sistema lo rechaza (${code})`,
  },
  faults: {
    own: (text) => `un fallo del propio bellhand, rogamos comunicarlo: ${text}`,
    folderMissing: 'su carpeta no existe: crearla antes',
    notWritten: (path, why) => `${path}: no se puede escribir: ${why}`,
    outputNotWritten: (why) => `no se puede escribir en la salida estándar: ${why}`,
    folderNotMade: (path, why) => `${path}: no se puede crear esta carpeta: ${why}`,
    tooLarge: (name, megabytes) =>
      `${name}: más de ${megabytes} MB, lo máximo que se lee: comprobar de dónde viene, o exportar solo las trompas`,
    placeAndInPlace: '-o y --in-place se excluyen: elegir una',
    inputInPlace: 'la entrada estándar no se puede cambiar en su lugar: omitir --in-place',
    manyIntoOne: (output, count) =>
      `${output}: ${count} resultados no caben en un archivo: nombrar una carpeta con -o`,
    inputAmongFiles:
      'la entrada estándar entre otros archivos: su resultado necesita un lugar: nombrar una carpeta con -o',
    ontoInput: (target) => `${target}: esto sobrescribiría una entrada: elegir otro lugar con -o`,
    ontoInputInPlace: (target) =>
      `${target}: esto sobrescribiría una entrada: elegir otro lugar con -o, o decir --in-place`,
    notPlain: (path) => `${path}: no es un archivo corriente y no se puede cambiar en su lugar: usar -o`,
    notOurs: (path) =>
      `${path}: este archivo ya existe, y Bellhand no lo hizo o se cambió después: elegir otro lugar con -o, o reemplazarlo con --force`,
    otherEnding: (path, content, endings) =>
      `${path}: aquí se escribe ${CONTENTS[content]}: terminar el nombre en ${listed(endings, 'o')}`,
    namedTwice: (input) => `${input}: este archivo está nombrado dos veces: basta una`,
    linkToNothing: (path, target) =>
      `${path}: un enlace a ${target}, que no existe: nombrar el propio archivo, o quitar el enlace`,
    readOnly: (path) => `${path}: es de solo lectura: cambiar sus derechos, o reemplazarlo con --force`,
    notPutBack: (path, copy) =>
      `${path}: no se puede escribir ni dejar como estaba: su contenido anterior está en ${copy}`,
    outputIntoInput: (target) => `${target}: la salida estándar va a esta entrada: enviarla a otro archivo`,
    twoOntoOne: (output, one, other) =>
      `${output}: aquí se escribirían ${one} y ${other}: cambiar el nombre de uno, o tratarlos por separado`,
    noParts: (name) => `${name}: la partitura no tiene partes: exportarla de nuevo`,
    noHorn: (name, parts) => `${name}: ninguna parte es una trompa; hay ${quoted(parts)}: elegir con --part`,
    partWithoutMusic: (name, part) =>
      `${name}: la parte «${part}» figura en la lista pero no tiene música: elegir otra con --part, o exportar de nuevo`,
    orNameKey: (name, why) => `${name}: ${why}; o nombrar su tono con --key`,
    noTransposition: 'ninguna parte indica un transporte',
    workerDied: (name, why) => `${name}: no se pudo tratar (${why}): probarlo solo, con --jobs 1`,
    noCurve: (note) => `${note}: no hay digitación ni, por tanto, curva: pedir otra nota u otra trompa`,
    curveTooHigh: (note, highest, harmonic) =>
      `${note}: la curva se calcula hasta el armónico ${highest}, y este es el ${harmonic}: pedir una nota más grave`,
    curveAndJson:
      '--curve es aquí texto, y --format json son datos: dar un archivo a --curve, u omitir uno de los dos',
    inputWatched: 'la entrada estándar no se puede vigilar: nombrar un archivo',
    noPluginFolder: (places) =>
      `ni MuseScore3 ni MuseScore4 están en ${places}: abrir el editor una vez, o nombrar su carpeta de complementos con --dir`,
    pluginNotBuilt: (path) => `el complemento no está en ${path}: ejecutar npm run build`,
  },
  readings: {
    fromName: (part) =>
      `la partitura no indica transporte para «${part}»; se ha tomado su nombre al pie de la letra`,
    concertScore: (part) =>
      `la partitura está en sonidos reales y no indica tono para «${part}»; sus notas se dan como suenan`,
    nowhere: 'la partitura no indica transporte: indicarlo en la parte, o llamarla «Trompa en fa»',
    'no-key': (part) =>
      `la partitura no indica transporte, y el nombre «${part}» no dice el tono: indicar el transporte de la parte, o llamarla «Trompa en fa»`,
    'alto-or-basso': (part) =>
      `la partitura no indica transporte, y el nombre «${part}» no dice si el si♭ es agudo o grave: indicar el transporte de la parte, o llamarla «Trompa en si♭ grave»`,
  },
  told: {
    standardInput: 'entrada estándar',
    thisPart: 'esta parte',
    marksOut: 'marcas quitadas',
    noMarks: 'no había marcas que quitar',
    cannotBePlayed: (count, bars) =>
      `${counted(count, 'nota no se puede tocar tal como está', 'notas no se pueden tocar tal como están')}, ${bars}: bellhand check dice por qué`,
    notKept: (path, what) => `${path}: no se pudo conservar ${what}`,
    owner: 'su propietario',
    group: 'su grupo',
    hardLinks: 'sus otros enlaces físicos',
    files: (count) => counted(count, 'archivo', 'archivos'),
    failed: (count) => counted(count, 'fallido', 'fallidos'),
    interrupted: (left) => `interrumpido, ${left} sin empezar`,
    allDone: 'todo hecho',
    progress: (done, total) => `${done} de ${total} archivos`,
    pageReady: 'lista para abrir en un navegador',
    fileGone: (name) => `${name} ha desaparecido; esperando a que vuelva`,
    watching: 'vigilando; Ctrl-C termina',
    nothingNew: 'nada nuevo',
    findingGone: (finding) => `${finding} ha desaparecido`,
    installed: (version, path) => `instalado para MuseScore ${version}: ${path}`,
    switchOn: (version, how) => `Ahora activarlo, una vez, en MuseScore ${version}: ${how}.`,
    switchOn3: 'Complementos > Gestor de complementos, marcar las entradas de Bellhand, Aceptar',
    switchOn4: 'Inicio > Complementos, elegir cada entrada de Bellhand, Activar',
  },
  table: {
    bar: 'compás',
    beat: 'tiempo',
    written: 'escrita',
    hand: 'mano',
    finger: 'digitación',
    valves: 'cilindros',
    side: 'lado',
    harmonic: 'armónico',
    natural: 'nota natural',
    drop: 'baja',
    off: 'desv.',
    verdict: 'veredicto',
    why: 'por qué esta digitación',
    asPrinted: (text) => `como está escrito: ${text}`,
    sounding: (semitones) =>
      semitones === 0
        ? 'suena como está escrita'
        : `suena ${counted(Math.abs(semitones), 'semitono', 'semitonos')} más ${semitones < 0 ? 'grave' : 'aguda'}`,
  },
  explain: {
    heading: (note, horn, verdict) => `${note}, en una ${horn}: ${verdict}`,
    noFingering: 'sin digitación',
    chosenBecause: 'elegida',
    finger: 'digitación',
    naturalPitch: 'sonido natural',
    handCloses: 'la mano cierra',
    stoppingValve: 'cilindro tapado',
    stoppingValveDown: (cents) =>
      `pulsado: baja la trompa ${cents} cents, lo que sube el pabellón cerrado; digitar la nota escrita`,
    drop: 'descenso',
    comesOut: 'suena',
    otherWays: 'Otras digitaciones, la mejor primero',
    twoClosings: (rule, acoustics) => `${rule} según la regla, ${acoustics} según la acústica`,
    cents: (count) => counted(count, 'cent', 'cents'),
    curveTitle: (note, natural, fingering) =>
      `${note} desde ${natural}: ${fingering}, mientras la mano se cierra`,
  },
};

const chart: ChartWords = {
  stoppedNotesOn: (horn) => `Sonidos tapados: ${horn}`,
  notesOn: (horn) => `La mano en el pabellón: ${horn}`,
  fingeredReading: (example) => `${example}: la nota que se digita y los pistones.`,
  naturalReading: 'o abierto; ¼ ½ ¾ cerrado en esa medida; + tapado.',
  naturalPitchReading: 'Entre paréntesis: lo que suena cuando la mano abre.',
  arrows: '↑ ↓: casi un cuarto de tono por encima o por debajo.',
  bassClef: 'La clave de fa vale tal como está escrita.',
  stoppingValve: (key) =>
    `En el lado de ${key} el pistón de tapado baja con la mano; la digitación es la del sonido abierto.`,
  otherWaysReading:
    'Notas pequeñas: otras digitaciones de la nota anterior, con la desviación en cents donde se oye.',
  chart: 'La tabla',
  low: 'Grave',
  high: 'Agudo',
  back: 'Otras digitaciones, cents y glissandos',
  heads: {
    note: 'Nota',
    fingering: 'Digitación',
    natural: 'Armónico',
    falls: 'Baja',
    otherWays: 'Otras digitaciones',
    open: 'Abierto',
    fallsTo: 'La mano cierra',
  },
  centsReading: (least) =>
    `Números pequeños: desviación en cents respecto a la nota escrita, + alta, donde se oye (desde ${least}).`,
  stoppedNote: (note) => `${note}, tapado`,
  slidesOn: (horn) => `Glissandos de la mano: ${horn}`,
  slidesReading:
    'Notas escritas: o abierto, + tapado. Sobre cada sonido tapado están los pistones, que se mantienen durante todo el glissando.',
  slidesReadingNatural: 'Notas escritas: o abierto; ¼ ½ ¾ cerrado en esa medida; + tapado.',
  prefix: (letter, key) => `${letter} es el lado de ${key}.`,
  withLuck: '≈ y azul: con suerte.',
  asTheHandCloses: 'La mano cierra: adónde baja cada sonido abierto',
  asTheHandOpens: 'La mano abre: adónde sube cada sonido tapado',
  cannotBeWritten: 'Lo que no se puede escribir',
  slide: (from, to, way) => `de ${from} a ${to} (${way})`,
  neverUp:
    'Un glissando que suba a un sonido tapado o baje de un sonido tapado: la mano baja el sonido al cerrar y lo sube al abrir.',
  widest: (semitones) => `Un glissando de más de ${counted(semitones, 'semitono', 'semitonos')}.`,
  tooLow: (notes) =>
    `Desde ${notes}: demasiado grave para que la mano baje el sonido; como mucho resbala un semitono hacia arriba.`,
  tooHigh: (notes) => `Desde ${notes}: tan agudo que cerrar no cambia nada audible.`,
  between: (notes) => `Desde ${notes}: el sonido baja, pero no hasta otra nota.`,
  notReached: (notes) =>
    `Hasta ${notes} tapados: se pueden tocar, pero ningún sonido abierto baja hasta ellos.`,
  withoutStoppingValve: 'El pistón de tapado queda libre en todos los glissandos.',
  madeBy: 'Hecho con Bellhand.',
};

const curves: CurveWords = {
  none: 'El pabellón no sostiene ninguno de estos armónicos',
  plotted: (harmonic, hz) =>
    `Armónico ${harmonic}, abierto a ${hz} Hz; cents desde la nota abierta mientras la mano se cierra`,
  closing: 'cierre',
  cents: 'cents',
  tabled: 'Cents desde la nota abierta mientras la mano se cierra',
  openHz: 'Hz ab.',
  pictured: (hz) => `La mano se cierra en un tubo de ${hz} Hz`,
  howFar: 'cuánto se cierra la mano',
  sealed: 'sellada',
  harmonic: 'armónico',
  described: (ways) => `De la mano abierta al tapado completo: ${ways}.`,
  falls: (harmonic, cents) => `el armónico ${harmonic} baja ${counted(cents, 'cent', 'cents')}`,
  rises: (harmonic, cents) => `el armónico ${harmonic} sube ${counted(cents, 'cent', 'cents')}`,
  stays: (harmonic) => `el armónico ${harmonic} no se mueve`,
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
    'esta parte no se puede grabar: abrirla en un editor, exportarla de nuevo como MusicXML, o usar check',
  noEngraver:
    'las páginas las dibuja verovio, que no está instalado: ejecutar npm install verovio, o usar check, o chart --format musicxml',
};

const stand: StandWords = {
  law: 'La mano que cierra hace bajar el sonido hasta un poco por encima del armónico inferior, nunca subir.',
  sheets: { note: 'Una nota', part: 'Una parte', lesson: 'Una lección' },
  toSheet: 'Ir a la hoja',
  stays: 'Nada sale de esta página. No necesita red ni envía nada; su parte se queda con usted.',
  engravedBy: 'Música grabada por Verovio (LGPL 3).',
  language: 'Idioma',
  itself: 'Español',
  usual: 'según el uso',
  namings: ['letras inglesas', 'letras alemanas', 'do re mi'],
  writtenNote: 'Nota escrita',
  partKey: 'Parte en',
  lower: 'Un semitono más abajo',
  higher: 'Un semitono más arriba',
  hand: 'La mano en el pabellón',
  open: 'abierto',
  sealed: 'tapado del todo',
  closing: (closed, cents) => `cerrado al ${closed} %, ${cents} cents bajo el sonido abierto`,
  hear: 'Mantener el sonido',
  silence: 'Silencio',
  letClose: 'Oír cómo cierra la mano',
  ladder: 'Cómo la mano hace bajar el sonido',
  pulled: (number, note) => `Armónico ${number}, ${note}: este es el que baja`,
  above: (number, note) => `Armónico ${number}, ${note}: el sonido se detiene por encima de él`,
  comesToRest: (cents) => `tapado, ${cents} cents por encima`,
  waysToPlay: 'Maneras de tocarla, la más usual primero',
  noPicture: 'Aquí la mano no hace nada que se pueda dibujar: elegir otra nota u otra trompa.',
  choosePart: 'Elegir un archivo MusicXML',
  orDrop: 'o soltarlo sobre esta página, comprimido o no.',
  putAway: 'Guardar',
  example: 'Poner el ejemplo',
  marked: 'Anotada',
  cleared: 'Limpia',
  completed: 'Anotada y completada',
  print: 'Imprimir',
  engraving: 'Se está grabando la música …',
  notEngraved: 'La música de esta parte no se puede dibujar; lo que se encontró está aquí de todos modos.',
  notRead: (name, reason) => `${name}: ${reason}.`,
  tooLarge: (name, megabytes) => `${name} pasa de ${megabytes} MB: elegir la parte en lugar de la partitura.`,
  noHorn: (name, parts) =>
    `${name}: ninguna parte es una trompa; hay ${quoted(parts)}. Decir cuál tomar por tal.`,
  noKey: (name) => `${name}: la parte no dice cómo transporta. Elegir su tono.`,
  hornPart: 'Parte leída',
  findThem: 'todas las trompas',
  handTime: 'Tiempo de la mano en segundos',
  tempo: '♩ por minuto si no se indica',
  bassClef: 'Clave de fa',
  bassClefs: {
    auto: 'según el aspecto de las notas',
    old: 'una octava baja (antigua)',
    new: 'tal cual (nueva)',
  },
  teacher: 'Para el profesor, con digitaciones',
  student: 'Para el alumno, sin ellas',
  another: 'Otra',
  usualKey: 'según el nivel',
  ownHorn: 'Trompa propia (archivo JSON)',
  lowest: 'Nota más grave',
  highest: 'Nota más aguda',
  asSuits: 'según convenga',
  etudeTempo: '♩ por minuto',
  course: 'Un curso, una página por semana',
  weeks: 'Semanas',
  weekShown: 'Semana mostrada',
  composing: 'Se está componiendo el curso …',
  lowerFirst: 'La nota más grave debe quedar por debajo de la más aguda.',
};

/** What pages say. */
export const pages: PageWords = { engraving, report, chart, curves, stand };
