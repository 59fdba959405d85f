/** Everything that is said in Spanish, area by area; long because it is all of it. */
import type { EtudeWords } from './areas/etudes.ts';
import type { FindingWords } from './areas/findings.ts';
import type { FingeringWords } from './areas/fingerings.ts';
import type { HornWords } from './areas/horns.ts';
import type { ReportWords } from './areas/report.ts';
import type { SummaryWords } from './areas/summary.ts';

/** `1 nota`, `0 notas`, `2 notas`. */
function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

export const findings: FindingWords = {
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
  'closes-upward': ({ from, to, maySlip, falls, starts }, { note, reached }) =>
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
  'opens-downward': ({ from, to, maySlip, rises, starts }, { note, reached }) =>
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

export const report: ReportWords = {
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
  folded: (stopped) =>
    `${stopped === 0 ? 'nada tapado' : stopped === 1 ? '1 sonido tapado' : `${stopped} sonidos tapados`}, no se encontró nada`,
};

export const fingerings: FingeringWords = {
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

export const horns: HornWords = {
  names: {
    double: 'trompa doble en fa y si♭',
    'single-f': 'trompa simple en fa',
    'single-bflat': 'trompa simple en si♭',
    'single-bflat-stop-valve': 'trompa simple en si♭ con cilindro de tapado',
    'double-stop-valve': 'trompa doble con cilindro de tapado en el lado de si♭',
    'double-ascending': 'trompa doble con tercer cilindro ascendente',
    descant: 'trompa discanto en si♭ y fa agudo',
    'triple-high-f': 'trompa triple en fa, si♭ y fa agudo',
    natural: 'trompa natural con el tonillo que pide la parte',
  },
  onCrook: (key) => `trompa natural con el tonillo de ${key}`,
};

export const summary: SummaryWords = {
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
};

export const etudes: EtudeWords = {
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
  numbers: (keys, semitones, changes, risk) =>
    `${keys}, extensión de ${counted(semitones, 'semitono', 'semitonos')}, ${counted(changes, 'cambio', 'cambios')} de mano por minuto, ${risk}.`,
  noRisk: 'ninguna nota arriesgada',
  risks: (count) =>
    `${counted(count, 'nota arriesgada', 'notas arriesgadas')} (en azul, ≈), donde el sonido puede escaparse hacia arriba`,
  naturalLegend: 'o abierto, ¼ ½ ¾ y + cerrado, cada uno hasta el signo siguiente.',
  valveLegend: 'Los cilindros sobre las notas tapadas van con el cilindro de tapar.',
  advice: 'Descansar tanto como se ha tocado. Parar cuando el labio se canse o duela la mano.',
};
