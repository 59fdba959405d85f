/**
 * Host 3.2–3.4: signs, slurs, ties and glissandi are not in the plugin interface, so the host writes the score as
 * MusicXML, the reader of files reads it, and its notes are found again in the score by their order.
 */
import type { Pitch } from '../../core/index.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import type { HornPart } from '../musicxml/read/score.ts';
import { EditorFault } from './editorFault.ts';
import { hornParts } from './hornParts.ts';
import { type Host, type HostChord, type HostScore, isAtLeast } from './hostApi.ts';
import { userColoured } from './ownMarks.ts';
import type { NotePlace, Reader, ReadPart } from './readPart.ts';
import { type PartWalk, type ScoreChord, walkPart } from './scoreWalk.ts';
import { spelledPitch } from './spelling.ts';
import { throughTemporaryFile } from './temporaryFile.ts';

export const readByExport: Reader = (host, score) => {
  const file = readScore(exported(host, score, 'musicxml'));
  return file.horns.map((horn) => {
    const partIndex = file.parts.findIndex(({ id }) => id === horn.id);
    const part = file.parts.length === score.parts.length ? score.parts[partIndex] : undefined;
    if (!part) throw new EditorFault(({ partNotFound }) => partNotFound(horn.name));
    return joined(host, horn, walkPart(host.root, score, part));
  });
};

/** The score as the host itself writes it, in the format of a file name extension. Nothing is kept on disk. */
export function exported(host: Host, score: HostScore, extension: string): string {
  return throughTemporaryFile(host.file, extension, (path) => {
    if (!host.root.writeScore(score, path, extension))
      throw new EditorFault(({ notExported }) => notExported(path));
  });
}

function joined(host: Host, horn: HornPart, walk: PartWalk): ReadPart {
  const places = new Array<NotePlace>(horn.passage.notes.length);
  const readChords = chordsByVoice(horn);
  const walkedChords = new Map<string, ScoreChord[]>();
  for (const chord of walk.chords) {
    if (chord.notes.length === 0) continue;
    append(walkedChords, `${chord.measureIndex}/${chord.track - walk.part.startTrack + 1}`, chord);
  }
  readChords.forEach((chords, voice) => {
    matchVoice(horn, chords, walkedChords.get(voice) ?? [], places);
  });
  const coloured = userColoured(host, walk);
  const notes = horn.passage.notes.map((note, i) => ({ ...note, userColour: coloured(places[i]!.note) }));
  return { passage: { ...horn.passage, notes }, walk, places };
}

/** Note indices, chord by chord in the order of the text, by measure and voice. */
function chordsByVoice({ passage, places }: HornPart): Map<string, number[][]> {
  const voices = new Map<string, number[][]>();
  const starts = passage.notes.map((_, i) => places.at(i).start);
  const order = starts.map((_, i) => i).sort((a, b) => starts[a]! - starts[b]!);
  const chords = new Map<number, number[]>();
  for (const i of order) {
    const { measureIndex, voice, chordHead } = passage.notes[i]!;
    const chord = chords.get(chordHead);
    if (chord) chord.push(i);
    else {
      const begun = [i];
      chords.set(chordHead, begun);
      append(voices, `${measureIndex}/${voice}`, begun);
    }
  }
  return voices;
}

/**
 * Finds the chords of one voice of one measure again. The host leaves nothing out of its export, but cues and hidden
 * notes are not read from it: those are stepped over.
 */
function matchVoice(
  { name, passage }: HornPart,
  read: readonly number[][],
  walked: readonly ScoreChord[],
  places: NotePlace[],
): void {
  let at = 0;
  for (const indices of read) {
    while (
      walked.length - at > 0 &&
      walked.length > read.length &&
      !isSameChord(passage.notes[indices[0]!]!, indices.length, walked[at]!)
    ) {
      at += 1;
    }
    const chord = walked[at];
    if (chord?.notes.length !== indices.length) {
      const { measure } = passage.notes[indices[0]!]!;
      throw new EditorFault(({ barNotMatched }) => barNotMatched(measure, name));
    }
    const fromTop = indices.slice().sort((a, b) => passage.notes[a]!.chordRank - passage.notes[b]!.chordRank);
    fromTop.forEach((index, rank) => {
      places[index] = { chord, note: chord.notes[rank]! };
    });
    at += 1;
  }
}

function isSameChord(note: { grace: boolean; written: Pitch }, size: number, chord: ScoreChord): boolean {
  if ((chord.graceIndex !== null) !== note.grace || chord.notes.length !== size) return false;
  return chord.notes.some((hostNote) => {
    const { step, alter } = spelledPitch(hostNote.pitch, hostNote.tpc2);
    return step === note.written.step && alter === note.written.alter;
  });
}

function append<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/**
 * True where reading the score in the middle of an edit would take the edit out of the undo history: with Concert Pitch
 * on, the host's export to MusicXML opens and closes a step of its own. Before 3.5 there is no other way to read.
 */
export function breaksEdits(host: Host, score: HostScore): boolean {
  if (isAtLeast(host, 3, 5)) return false;
  const { CHORD } = host.root.Element;
  for (const part of hornParts(score)) {
    for (let measure = score.firstMeasure; measure; measure = measure.nextMeasure) {
      for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
        const element = segment.elementAt(part.startTrack) as HostChord | null;
        if (!element || element.type !== CHORD) continue;
        const { tpc, tpc1, tpc2 } = element.notes[0]!;
        if (tpc1 !== tpc2) return tpc === tpc1;
      }
    }
  }
  return false;
}
