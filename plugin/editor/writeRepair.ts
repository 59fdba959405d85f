/** Makes a repair in the score: one step of its undo history, or nothing at all. */
import {
  escapedText,
  fifthsOf,
  fingeredPitch,
  type HandSign,
  isLowerVoice,
  noteClassName,
  type OwnFingering,
  type PassageNote,
  type Pitch,
  pitchCents,
  type Reader,
  type RepairStep,
} from '../../core/index.ts';
import { EditorFault } from './editorFault.ts';
import { fingeringsAt } from './fingeringsInScore.ts';
import { ANCHOR_BELOW, glyphOf } from './handSigns.ts';
import {
  type Host,
  type HostArticulation,
  type HostChord,
  type HostElement,
  type HostNote,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';
import { keepingInputPlace } from './inputPlace.ts';
import { layOutOnly } from './layoutRange.ts';
import { type NoteAddress, noteAt } from './noteAddress.ts';
import { cursorOn, moveTo, VOICES, voiceOf } from './place.ts';
import { joinsAt, signsAt } from './placedElements.ts';
import { plainText } from './plainValues.ts';
import { inOneStep, type UndoStep } from './undoStep.ts';

/** A change with its place in the score. */
export type PlacedStep =
  | { readonly change: 'note'; readonly at: NoteAddress; readonly from: Pitch; readonly to: Pitch }
  | { readonly change: 'sign'; readonly at: NoteAddress; readonly sign: HandSign | null }
  | { readonly change: 'word'; readonly at: NoteAddress; readonly text: string }
  | {
      readonly change: 'fingering';
      readonly at: NoteAddress;
      /** At the note; as a word, where the editor takes none there. */
      readonly text: { readonly note: string; readonly word: string } | null;
      readonly before: OwnFingering | null;
    }
  | { readonly change: 'elements'; readonly elements: readonly HostElement[] };

/** Puts the steps of a repair where they belong. @param addresses of the notes, one by one */
export function writeRepair(
  host: Host,
  score: HostScore,
  steps: readonly RepairStep[],
  notes: readonly PassageNote[],
  addresses: readonly NoteAddress[],
  reader: Reader,
): void {
  // What is to be taken out is looked up first: that may need a selection, which nothing can make within a step.
  writePlaced(
    host,
    score,
    steps.map((step) => placed(host, score, step, notes, addresses, reader)),
  );
}

function placed(
  host: Host,
  score: HostScore,
  step: RepairStep,
  notes: readonly PassageNote[],
  addresses: readonly NoteAddress[],
  reader: Reader,
): PlacedStep {
  const at = addresses[step.noteIndex]!;
  switch (step.change) {
    case 'note':
      return { change: 'note', at, from: notes[step.noteIndex]!.written, to: step.written };
    case 'sign':
      return { change: 'sign', at, sign: step.sign };
    case 'word':
      return { change: 'word', at, text: step.text };
    case 'fingering': {
      const { fingering, before } = step;
      const name =
        fingering && noteClassName(fingeredPitch(notes[step.noteIndex]!.written, fingering), reader);
      const text = fingering && { note: fingering.printed, word: `${name} ${fingering.printed}` };
      return { change: 'fingering', at, text, before };
    }
    case 'join': {
      const [first, last] = step.kind === 'slur' ? slurSpan(notes, step) : [step.noteIndex, step.toIndex];
      const span = {
        from: at,
        to: addresses[step.toIndex]!,
        first: addresses[first]!,
        last: addresses[last]!,
      };
      const elements = joinsAt(host, score, step.kind, span);
      if (elements.length === 0) throw new EditorFault((faults) => faults.nothingToTakeOut);
      return { change: 'elements', elements };
    }
  }
}

/** A slur may begin before and end after the two notes it is about: so far a selection has to reach. */
function slurSpan(
  notes: readonly PassageNote[],
  { noteIndex, toIndex }: { noteIndex: number; toIndex: number },
) {
  let first = noteIndex;
  let last = toIndex;
  const slurredTo = (index: number) => notes[index]!.joins.filter(({ kind }) => kind === 'slur')[0]?.to ?? -1;
  for (let index = first - 1; index >= 0; index--) if (slurredTo(index) === first) first = index;
  for (let to = slurredTo(last); to > last; to = slurredTo(last)) last = to;
  return [first, last] as const;
}

/** Writes or takes away a sign over some notes, each chord once. */
export function writeSigns(
  host: Host,
  score: HostScore,
  addresses: readonly NoteAddress[],
  sign: HandSign | null,
): void {
  writePlaced(
    host,
    score,
    addresses.map((at) => ({ change: 'sign', at, sign })),
  );
}

function writePlaced(host: Host, score: HostScore, steps: readonly PlacedStep[]): void {
  const chords = new Map<string, PlacedStep>();
  const once = steps.filter((step) => {
    if (step.change !== 'sign') return true;
    const { tick, track, graceIndex } = step.at;
    const key = `${tick}/${track}/${graceIndex}`;
    if (chords.has(key)) return false;
    chords.set(key, step);
    return true;
  });
  const selected = listOf(score.selection?.elements);
  const gone = once.map((step) => {
    if (step.change !== 'sign') return [];
    const signs = signsAt(host, score, step.at, selected);
    if (step.sign === null && signs.length === 0) throw new EditorFault((faults) => faults.nothingToTakeOut);
    return signs;
  });
  keepingInputPlace(host, score, () => {
    inOneStep(host, score, (step) => {
      // Pitches are told by how far they move: all are read before one is written, since tied notes may follow.
      const pitches = once.map((placed) =>
        placed.change === 'note' ? noteOf(host, score, placed.at).pitch : 0,
      );
      once.forEach((placed, i) => {
        for (const element of gone[i]!) takeOut(host, element, step);
        carryOut(host, score, placed, pitches[i]!, step);
      });
      const words = once.filter((placed) => placed.change === 'word' || placed.change === 'fingering');
      // What else may change reaches further than its place.
      if (words.length === once.length)
        layOutOnly(
          host,
          score,
          words.map(({ at }) => at),
          step,
        );
    });
  });
}

function carryOut(host: Host, score: HostScore, placed: PlacedStep, pitch: number, step: UndoStep): void {
  switch (placed.change) {
    case 'note': {
      const note = noteOf(host, score, placed.at);
      const { from, to } = placed;
      const fifths = fifthsOf(to) - fifthsOf(from);
      const [tpc1, tpc2] = [note.tpc1 + fifths, note.tpc2 + fifths];
      note.pitch = pitch + Math.round((pitchCents(to) - pitchCents(from)) / 100);
      note.tpc1 = tpc1;
      note.tpc2 = tpc2;
      step.changes += 1;
      return;
    }
    case 'sign':
      if (placed.sign) addSign(host, score, placed.at, placed.sign, step);
      return;
    case 'word':
      addWord(host, score, placed.at, placed.text, step);
      return;
    case 'fingering':
      setFingering(host, score, placed, step);
      return;
    case 'elements':
      for (const element of placed.elements) takeOut(host, element, step);
  }
}

function noteOf({ root }: Host, score: HostScore, address: NoteAddress): HostNote {
  const note = noteAt(root, score, address);
  if (!note) throw new EditorFault((faults) => faults.placeNotFound);
  return note;
}

/** What is made is added at once: from 4.0 on the host dies of an element that is not. */
function addSign(host: Host, score: HostScore, at: NoteAddress, sign: HandSign, step: UndoStep): void {
  const { root } = host;
  const chord = noteOf(host, score, at).parent as HostChord;
  const articulation = root.newElement(root.Element.ARTICULATION) as unknown as HostArticulation;
  articulation.symbol = glyphOf(root, sign);
  chord.add(articulation);
  step.changes += 1;
  if (isLowerVoice(voiceOf(at.track))) articulation.articulationAnchor = ANCHOR_BELOW;
}

function addWord(
  { root }: Host,
  score: HostScore,
  { tick, track }: NoteAddress,
  text: string,
  step: UndoStep,
): void {
  const cursor = cursorOn(score, track);
  moveTo(cursor, tick);
  if (!cursor.segment || cursor.tick !== tick) throw new EditorFault((faults) => faults.placeNotFound);
  const word = root.newElement(root.Element.STAFF_TEXT);
  word.text = escapedText(text);
  cursor.add(word);
  step.changes += 1;
}

function setFingering(
  host: Host,
  score: HostScore,
  { at, text, before }: Extract<PlacedStep, { change: 'fingering' }>,
  step: UndoStep,
): void {
  const { root } = host;
  const note = noteOf(host, score, at);
  const gone: HostElement[] = before?.isWord
    ? wordsAt(score, at).filter((word) => plainText(word.text) === before.text)
    : fingeringsAt(root, note);
  if (before && gone.length === 0) throw new EditorFault((faults) => faults.nothingToTakeOut);
  for (const element of gone) takeOut(host, element, step);
  if (!text) return;
  // Before 3.3 nothing that a plugin makes can be hung on a note.
  if (typeof note.add !== 'function') {
    addWord(host, score, at, text.word, step);
    return;
  }
  const fingering = root.newElement(root.Element.FINGERING);
  fingering.text = text.note;
  note.add(fingering);
  step.changes += 1;
}

/** The texts over a place of a staff. */
function wordsAt(score: HostScore, { tick, track }: NoteAddress): HostText[] {
  const cursor = cursorOn(score, track);
  moveTo(cursor, tick);
  const staff = Math.floor(track / VOICES);
  return listOf(cursor.segment?.annotations).filter(
    (one) => typeof (one as HostText).text === 'string' && Math.floor(one.track / VOICES) === staff,
  ) as HostText[];
}

function takeOut({ root }: Host, element: HostElement, step: UndoStep): void {
  if (typeof root.removeElement !== 'function') throw new EditorFault((faults) => faults.notTaken);
  root.removeElement(element);
  step.changes += 1;
}
