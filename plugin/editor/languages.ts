/** Every word the editor's user reads that is not about a note: one table, complete in four languages. */

const ENGLISH = {
  horn: 'Horn',
  print: 'Print',
  fingered: 'Fingered note',
  valves: 'Valves',
  natural: 'Natural pitch',
  verdict: 'Signs ≈ and ×',
  colour: 'Colours',
  onlyChanges: 'Only where it changes',
  tolerance: 'Tolerance in cents',
  handOffset: 'Hand offset in cents',
  toleranceHint: 'Fingerings further than this from the written note are left out',
  handOffsetHint: 'Above 0 for a hand that stops sharp, below for one that stops flat',
  annotate: 'Annotate',
  clear: 'Clear',
  lookAgain: 'Look again',
  findings: 'To be looked at',
  nothingFound: 'Nothing: every stopped note can be played.',
  impossible: 'impossible',
  risky: 'risky',
  advice: 'advice',
  bar: 'bar',
  beat: 'beat',
  instead: 'Instead:',
  noScore: 'No score is open.',
  emptyScore: 'The score has no bars.',
  noHorn: 'The score has no horn part.',
  noStopped: 'The horn part has no stopped note: nothing to annotate.',
  noStoppedSelected: 'No stopped horn note is selected: nothing was changed.',
  annotated: 'Stopped notes annotated: {total} ({sure} sure, {risky} risky, {impossible} impossible).',
  annotatedSelection:
    'Stopped notes annotated in the selection: {total} ({sure} sure, {risky} risky, {impossible} impossible).',
  keptColours: 'Notes that keep a colour of your own: {count}.',
  upToDate: 'The annotations are up to date: nothing was changed.',
  cleared: 'Notes cleared: {count}.',
  nothingToClear: 'There is nothing of ours to clear.',
  failed: 'Nothing was changed: {reason}.',
  notShown: 'The note is no longer in the score.',
  hornDouble: 'Double, F and B♭',
  hornSingleF: 'Single, F',
  hornSingleBFlat: 'Single, B♭',
  hornSingleBFlatStopValve: 'Single, B♭, stopping valve',
  hornDoubleStopValve: 'Double, stopping valve',
  hornTriple: 'Triple, F, B♭ and high F',
  hornNatural: 'Natural, crook as the part asks',
  hornCrook: 'Natural, {crook} crook',
  crooks: 'C alto, B♭ alto, A, A♭, G, F, E, E♭, D, D♭, C basso, B♭ basso',
};

/** One language's words. `{name}` stands for what is filled in. */
export type Words = { readonly [word in keyof typeof ENGLISH]: string };

const GERMAN: Words = {
  horn: 'Horn',
  print: 'Drucken',
  fingered: 'Gegriffener Ton',
  valves: 'Ventile',
  natural: 'Naturton',
  verdict: 'Zeichen ≈ und ×',
  colour: 'Farben',
  onlyChanges: 'Nur bei Wechsel',
  tolerance: 'Toleranz in Cent',
  handOffset: 'Handabweichung in Cent',
  toleranceHint: 'Griffe, die weiter vom notierten Ton liegen, bleiben weg',
  handOffsetHint: 'Über 0 für eine Hand, die zu hoch stopft, darunter für eine, die zu tief stopft',
  annotate: 'Bezeichnen',
  clear: 'Entfernen',
  lookAgain: 'Neu prüfen',
  findings: 'Zu prüfen',
  nothingFound: 'Nichts: Jeder gestopfte Ton ist spielbar.',
  impossible: 'unspielbar',
  risky: 'heikel',
  advice: 'Hinweis',
  bar: 'Takt',
  beat: 'Schlag',
  instead: 'Stattdessen:',
  noScore: 'Es ist keine Partitur geöffnet.',
  emptyScore: 'Die Partitur hat keine Takte.',
  noHorn: 'Die Partitur hat keine Hornstimme.',
  noStopped: 'Die Hornstimme hat keinen gestopften Ton: nichts zu bezeichnen.',
  noStoppedSelected: 'Kein gestopfter Hornton ist ausgewählt: Es wurde nichts geändert.',
  annotated: 'Gestopfte Töne bezeichnet: {total} ({sure} sicher, {risky} heikel, {impossible} unspielbar).',
  annotatedSelection:
    'Gestopfte Töne in der Auswahl bezeichnet: {total} ({sure} sicher, {risky} heikel, {impossible} unspielbar).',
  keptColours: 'Noten, die Ihre eigene Farbe behalten: {count}.',
  upToDate: 'Alles ist schon bezeichnet: Es wurde nichts geändert.',
  cleared: 'Noten, deren Bezeichnung entfernt wurde: {count}.',
  nothingToClear: 'Es gibt keine unserer Bezeichnungen zu entfernen.',
  failed: 'Es wurde nichts geändert: {reason}.',
  notShown: 'Die Note steht nicht mehr in der Partitur.',
  hornDouble: 'Doppelhorn F/B',
  hornSingleF: 'F-Horn',
  hornSingleBFlat: 'B-Horn',
  hornSingleBFlatStopValve: 'B-Horn mit Stopfventil',
  hornDoubleStopValve: 'Doppelhorn mit Stopfventil',
  hornTriple: 'Tripelhorn F/B/hoch F',
  hornNatural: 'Naturhorn, Bogen nach der Stimme',
  hornCrook: 'Naturhorn, {crook}-Bogen',
  crooks: 'C-alto, B-alto, A, As, G, F, E, Es, D, Des, C-basso, B-basso',
};

const FRENCH: Words = {
  horn: 'Cor',
  print: 'Imprimer',
  fingered: 'Note doigtée',
  valves: 'Pistons',
  natural: 'Son naturel',
  verdict: 'Signes ≈ et ×',
  colour: 'Couleurs',
  onlyChanges: 'Seulement aux changements',
  tolerance: 'Tolérance en cents',
  handOffset: 'Écart de la main en cents',
  toleranceHint: 'Les doigtés plus éloignés de la note écrite sont écartés',
  handOffsetHint: 'Au-dessus de 0 pour une main qui bouche trop haut, au-dessous si elle bouche trop bas',
  annotate: 'Annoter',
  clear: 'Effacer',
  lookAgain: 'Revoir',
  findings: 'À revoir',
  nothingFound: 'Rien : chaque note bouchée est jouable.',
  impossible: 'injouable',
  risky: 'risqué',
  advice: 'conseil',
  bar: 'mesure',
  beat: 'temps',
  instead: 'À la place :',
  noScore: 'Aucune partition n’est ouverte.',
  emptyScore: 'La partition n’a pas de mesures.',
  noHorn: 'La partition n’a pas de partie de cor.',
  noStopped: 'La partie de cor n’a pas de note bouchée : rien à annoter.',
  noStoppedSelected: 'Aucune note bouchée de cor n’est sélectionnée : rien n’a été changé.',
  annotated: 'Notes bouchées annotées : {total} ({sure} sûres, {risky} risquées, {impossible} injouables).',
  annotatedSelection:
    'Notes bouchées annotées dans la sélection : {total} ({sure} sûres, {risky} risquées, {impossible} injouables).',
  keptColours: 'Notes qui gardent votre propre couleur : {count}.',
  upToDate: 'Les annotations sont à jour : rien n’a été changé.',
  cleared: 'Notes dont l’annotation est effacée : {count}.',
  nothingToClear: 'Il n’y a aucune de nos annotations à effacer.',
  failed: 'Rien n’a été changé : {reason}.',
  notShown: 'La note n’est plus dans la partition.',
  hornDouble: 'Double, fa et si♭',
  hornSingleF: 'Simple, fa',
  hornSingleBFlat: 'Simple, si♭',
  hornSingleBFlatStopValve: 'Simple, si♭, piston de bouché',
  hornDoubleStopValve: 'Double, piston de bouché',
  hornTriple: 'Triple, fa, si♭ et fa aigu',
  hornNatural: 'Naturel, ton de la partie',
  hornCrook: 'Naturel, ton de {crook}',
  crooks: 'ut aigu, si♭ aigu, la, la♭, sol, fa, mi, mi♭, ré, ré♭, ut grave, si♭ grave',
};

const ITALIAN: Words = {
  horn: 'Corno',
  print: 'Stampare',
  fingered: 'Nota diteggiata',
  valves: 'Pistoni',
  natural: 'Suono naturale',
  verdict: 'Segni ≈ e ×',
  colour: 'Colori',
  onlyChanges: 'Solo ai cambiamenti',
  tolerance: 'Tolleranza in cent',
  handOffset: 'Scarto della mano in cent',
  toleranceHint: 'Le diteggiature più lontane dalla nota scritta sono escluse',
  handOffsetHint: 'Sopra 0 per una mano che chiude crescente, sotto per una che chiude calante',
  annotate: 'Annotare',
  clear: 'Togliere',
  lookAgain: 'Rivedere',
  findings: 'Da rivedere',
  nothingFound: 'Niente: ogni nota chiusa si può suonare.',
  impossible: 'ineseguibile',
  risky: 'rischioso',
  advice: 'consiglio',
  bar: 'battuta',
  beat: 'tempo',
  instead: 'Invece:',
  noScore: 'Nessuna partitura è aperta.',
  emptyScore: 'La partitura non ha battute.',
  noHorn: 'La partitura non ha una parte di corno.',
  noStopped: 'La parte di corno non ha note chiuse: niente da annotare.',
  noStoppedSelected: 'Nessuna nota chiusa di corno è selezionata: non è stato cambiato nulla.',
  annotated: 'Note chiuse annotate: {total} ({sure} sicure, {risky} rischiose, {impossible} ineseguibili).',
  annotatedSelection:
    'Note chiuse annotate nella selezione: {total} ({sure} sicure, {risky} rischiose, {impossible} ineseguibili).',
  keptColours: 'Note che mantengono il vostro colore: {count}.',
  upToDate: 'Le annotazioni sono aggiornate: non è stato cambiato nulla.',
  cleared: 'Note senza più annotazione: {count}.',
  nothingToClear: 'Non c’è nessuna nostra annotazione da togliere.',
  failed: 'Non è stato cambiato nulla: {reason}.',
  notShown: 'La nota non è più nella partitura.',
  hornDouble: 'Doppio, fa e si♭',
  hornSingleF: 'Semplice, fa',
  hornSingleBFlat: 'Semplice, si♭',
  hornSingleBFlatStopValve: 'Semplice, si♭, pistone per i chiusi',
  hornDoubleStopValve: 'Doppio, pistone per i chiusi',
  hornTriple: 'Triplo, fa, si♭ e fa acuto',
  hornNatural: 'Naturale, ritorto della parte',
  hornCrook: 'Naturale, ritorto in {crook}',
  crooks: 'do acuto, si♭ acuto, la, la♭, sol, fa, mi, mi♭, re, re♭, do grave, si♭ grave',
};

/** By the first two letters of a locale's name. */
export const LANGUAGES: { readonly [language: string]: Words } = {
  en: ENGLISH,
  de: GERMAN,
  fr: FRENCH,
  it: ITALIAN,
};

/** The words for a locale such as `de_AT`; English where we have none. */
export function wordsFor(locale: string): Words {
  return LANGUAGES[locale.slice(0, 2).toLowerCase()] ?? ENGLISH;
}

/** A sentence of the table with its values filled in. */
export function filled(sentence: string, values: { readonly [name: string]: string | number }): string {
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) =>
    name in values ? String(values[name]) : place,
  );
}

const HORN_WORDS: { readonly [hornId: string]: keyof Words } = {
  double: 'hornDouble',
  'single-f': 'hornSingleF',
  'single-bflat': 'hornSingleBFlat',
  'single-bflat-stop-valve': 'hornSingleBFlatStopValve',
  'double-stop-valve': 'hornDoubleStopValve',
  'triple-high-f': 'hornTriple',
  natural: 'hornNatural',
};

/** The crooks in the order in which every language lists them. */
const CROOK_IDS = [
  'natural-c-alto',
  'natural-bb-alto',
  'natural-a',
  'natural-ab',
  'natural-g',
  'natural-f',
  'natural-e',
  'natural-eb',
  'natural-d',
  'natural-db',
  'natural-c-basso',
  'natural-bb-basso',
];

/** A horn's name in a list; the core's own label where the table has none. */
export function hornName(words: Words, horn: { readonly id: string; readonly label: string }): string {
  const word = HORN_WORDS[horn.id];
  if (word) return words[word];
  const crook = words.crooks.split(', ')[CROOK_IDS.indexOf(horn.id)];
  return crook ? filled(words.hornCrook, { crook }) : horn.label;
}
