/** What the command line says: its help, its tables, its faults. Options, file names and JSON are the same in every language. */
import type { HornFileWords } from './hornFiles.ts';
import type { ScoreWords } from './scores.ts';

/** Texts of the command line. Faults are one line that says what is wrong and what to do, without a full stop. */
export interface CommandLineWords {
  /** Of horn files that cannot be read. */
  readonly hornFile: HornFileWords;
  /** Of score files that cannot be read, as every door says it. */
  readonly scores: ScoreWords;
  readonly help: {
    readonly program: string;
    readonly version: string;
    readonly help: string;
    readonly helpOf: string;
    readonly usage: string;
    readonly arguments: string;
    readonly options: string;
    /** The heading over the options that every command takes. */
    readonly generalOptions: string;
    readonly commands: string;
    byDefault(value: string): string;
    see(command: string): string;
  };
  /** What each command does. */
  readonly commands: {
    readonly annotate: string;
    readonly clear: string;
    readonly check: string;
    readonly explain: string;
    etude(kinds: string): string;
    readonly lesson: string;
    readonly course: string;
    readonly report: string;
    readonly chart: string;
    readonly watch: string;
    readonly install: string;
  };
  readonly arguments: {
    readonly files: string;
    readonly file: string;
    readonly watched: string;
    readonly note: string;
  };
  readonly options: {
    /** @param name the name that results get */
    output(name: string): string;
    /** Where one result goes. */
    outputOfOne(name: string): string;
    readonly inPlace: string;
    readonly complete: string;
    readonly jobs: string;
    readonly force: string;
    readonly checkFormat: string;
    readonly explainFormat: string;
    readonly chartOf: string;
    readonly chartFormat: string;
    readonly curve: string;
    readonly sound: string;
    readonly soundOfReport: string;
    readonly part: string;
    readonly keyOfPart: string;
    readonly keyOfNote: string;
    hand(states: string): string;
    horn(ids: string): string;
    readonly tolerance: string;
    readonly handOffset: string;
    readonly handTime: string;
    readonly names: string;
    readonly bassClef: string;
    readonly assumedTempo: string;
    show(items: string): string;
    readonly valvesAs: string;
    readonly repeat: string;
    readonly quick: string;
    language(languages: readonly string[]): string;
    readonly noteNames: string;
    readonly etudeKey: string;
    readonly level: string;
    bars(phraseBars: number): string;
    readonly tempo: string;
    readonly range: string;
    readonly seed: string;
    readonly copy: string;
    readonly weeks: string;
    readonly lessonKey: string;
    readonly whole: string;
    readonly folder: string;
  };
  /** What is wrong with an option, an argument or its value: a sentence for the value, a phrase for the rest. */
  readonly usage: {
    unknownOption(option: string): string;
    /** Of an option that stands before the command it belongs to. */
    afterCommand(option: string, command: string): string;
    unknownCommand(name: string): string;
    suggestion(names: string): string;
    missingArgument(name: string): string;
    missingOption(flags: string): string;
    missingValue(flags: string): string;
    tooManyArguments(command: string): string;
    badValue(flags: string, value: string, why: string): string;
    number(unit: string, from: number, to: number): string;
    readonly wholeNumber: string;
    wholeBetween(from: number, to: number): string;
    oneOf(list: readonly string[]): string;
    someOf(list: readonly string[]): string;
    notANote(text: string): string;
    notAKey(text: string): string;
    hornOrFile(list: string): string;
    readonly hornKey: string;
    bars(phraseBars: number, from: number, to: number): string;
    readonly rangeEnds: string;
    readonly lowerFirst: string;
  };
  readonly units: {
    readonly cents: string;
    readonly seconds: string;
    readonly quarters: string;
    readonly beats: string;
    readonly weeks: string;
  };
  /** Why the system refuses a file, by the code of its error. */
  readonly systemFaults: {
    readonly ENOENT: string;
    readonly EACCES: string;
    readonly EPERM: string;
    readonly EROFS: string;
    readonly ENOSPC: string;
    readonly EISDIR: string;
    readonly ENOTDIR: string;
    readonly ENAMETOOLONG: string;
    readonly EMFILE: string;
    readonly ERR_FS_FILE_TOO_LARGE: string;
    readonly ELOOP: string;
    other(code: string): string;
  };
  readonly faults: {
    own(text: string): string;
    readonly folderMissing: string;
    notWritten(path: string, why: string): string;
    outputNotWritten(why: string): string;
    folderNotMade(path: string, why: string): string;
    tooLarge(name: string, megabytes: number): string;
    readonly placeAndInPlace: string;
    readonly inputInPlace: string;
    manyIntoOne(output: string, count: number): string;
    readonly inputAmongFiles: string;
    ontoInput(target: string): string;
    /** The same, for a command that can change a file in place. */
    ontoInputInPlace(target: string): string;
    notPlain(path: string): string;
    notOurs(path: string): string;
    /** @param content what is written @param endings of the names that may be given it */
    otherEnding(
      path: string,
      content: 'score' | 'page' | 'picture' | 'sound',
      endings: readonly string[],
    ): string;
    namedTwice(input: string): string;
    linkToNothing(path: string, target: string): string;
    readOnly(path: string): string;
    notPutBack(path: string, copy: string): string;
    outputIntoInput(target: string): string;
    twoOntoOne(output: string, one: string, other: string): string;
    noParts(name: string): string;
    noHorn(name: string, parts: readonly string[]): string;
    /** Of a part that was asked for. */
    partWithoutMusic(name: string, part: string): string;
    orNameKey(name: string, why: string): string;
    readonly noTransposition: string;
    workerDied(name: string, why: string): string;
    noCurve(note: string): string;
    curveTooHigh(note: string, highest: number, harmonic: number): string;
    readonly curveAndJson: string;
    readonly inputWatched: string;
    noPluginFolder(places: string): string;
    pluginNotBuilt(path: string): string;
  };
  /** How a part's transposition was found. */
  readonly readings: {
    fromName(part: string): string;
    concertScore(part: string): string;
    readonly nowhere: string;
    'no-key'(part: string): string;
    'alto-or-basso'(part: string): string;
  };
  /** What is told of work that is done. */
  readonly told: {
    readonly standardInput: string;
    readonly thisPart: string;
    readonly marksOut: string;
    readonly noMarks: string;
    cannotBePlayed(count: number, bars: string): string;
    /** What a file that was replaced has lost. */
    notKept(path: string, what: string): string;
    readonly owner: string;
    readonly group: string;
    readonly hardLinks: string;
    files(count: number): string;
    failed(count: number): string;
    interrupted(left: number): string;
    readonly allDone: string;
    progress(done: number, total: number): string;
    readonly pageReady: string;
    fileGone(name: string): string;
    readonly watching: string;
    readonly nothingNew: string;
    findingGone(finding: string): string;
    installed(version: number, path: string): string;
    switchOn(version: number, how: string): string;
    readonly switchOn3: string;
    readonly switchOn4: string;
  };
  /** Headings of tables, and what stands in them. */
  readonly table: {
    readonly bar: string;
    readonly beat: string;
    readonly written: string;
    readonly hand: string;
    readonly finger: string;
    readonly valves: string;
    readonly side: string;
    readonly harmonic: string;
    readonly natural: string;
    readonly drop: string;
    readonly off: string;
    readonly verdict: string;
    readonly why: string;
    /** The part prints this fingering itself. @param text as it stands there */
    asPrinted(text: string): string;
    /** How a part sounds against what it prints. @param semitones above 0 for higher; 0 for as written */
    sounding(semitones: number): string;
  };
  readonly explain: {
    heading(note: string, horn: string, verdict: string): string;
    readonly noFingering: string;
    readonly chosenBecause: string;
    readonly finger: string;
    readonly naturalPitch: string;
    readonly handCloses: string;
    readonly stoppingValve: string;
    /** What it does and what to finger. @param cents how much it lowers the horn; above 0 */
    stoppingValveDown(cents: number): string;
    readonly drop: string;
    readonly comesOut: string;
    readonly otherWays: string;
    twoClosings(rule: string, acoustics: string): string;
    cents(count: number): string;
    curveTitle(note: string, natural: string, fingering: string): string;
  };
}
