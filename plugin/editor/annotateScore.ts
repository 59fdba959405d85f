/** The two things that change a score: annotating it and clearing it, each one step of its undo history. */

import {
  capital,
  countNotes,
  countText,
  examine,
  isHandState,
  keptColourText,
  marksFor,
  panelWords,
  type Reader,
  totalOf,
} from '../../core/index.ts';
import { BarRooms } from './barRooms.ts';
import { setBars } from './barWidths.ts';
import { type Choice, keepWithScore, settingsOf } from './choice.ts';
import { faultText } from './editorFault.ts';
import { hornParts } from './hornParts.ts';
import type { Host, HostPart, HostScore } from './hostApi.ts';
import { keepingInputPlace } from './inputPlace.ts';
import { type ExaminedPart, type KnownPart, partAsKnown, partAsListed } from './knownPart.ts';
import type { MarkSpot } from './lastAction.ts';
import type { NoteAddress } from './noteAddress.ts';
import { holdsOurs, isColoured } from './ownMarks.ts';
import { passageFromScore } from './passageFromScore.ts';
import { planClearing, planMarks, type Scope } from './planMarks.ts';
import type { PlannedPart, PlannedPlace } from './plannedPlace.ts';
import { withSelectedSigns } from './rangeEvidence.ts';
import { type ReadOptions, readParts } from './readParts.ts';
import { walkParts } from './scoreWalk.ts';
import { isInSelection, selectedNotes } from './selection.ts';
import { inOneStep } from './undoStep.ts';
import { carryOut } from './writeMarks.ts';

/** Reads and examines the horn parts of the score. @param listed what a panel has found in them, which holds where they are the same */
export function examineScore(
  host: Host,
  score: HostScore,
  choice: Choice,
  listed: Known = () => null,
  options: ReadOptions = {},
): readonly ExaminedPart[] {
  const settings = settingsOf(choice);
  return readParts(host, score, options).map(({ walk, evidence }) => {
    const known = listed(walk.part);
    const asListed = known && partAsListed(host, walk, evidence, known);
    if (asListed) return asListed;
    const part = passageFromScore(host, walk, evidence);
    return { part, examination: examine(part.passage, settings) };
  });
}

/** Told the first place that is about to change, just before. */
export type OnChange = (place: MarkSpot) => void;

/**
 * Annotates the stopped notes of the selection, or of the whole score where none is.
 * @param shown the note the panel itself has selected, which is no selection of the user's
 * @returns one sentence on what was done
 */
export function annotate(
  host: Host,
  choice: Choice,
  reader: Reader,
  shown: NoteAddress | null,
  onChange?: OnChange,
  known: Known = () => null,
): string {
  const words = panelWords(reader);
  return plainly(host, reader, (score) => {
    if (!score.firstMeasure) return words.emptyScore;
    if (hornParts(score).length === 0) return words.noHorn;
    const selected = selectedNotes(host, score, shown);
    const parts = selected
      ? examineSelected(host, score, choice, known)
      : examineScore(host, score, choice, known);
    const scope = selected ?? (() => true);
    const counts = countNotes(
      parts.map(({ examination }) => examination),
      (part, note) => scope(parts[part]!.part.chordNotes[note]!.note),
    );
    if (totalOf(counts.stopped) === 0) return selected ? words.noStoppedSelected : words.noStopped;
    // The width of a bar that others share is not the horn's.
    const mayWiden = choice.widerBars && score.parts.length === 1;
    const rooms = new BarRooms(host);
    const plans = parts.map(({ part, examination }) =>
      planMarks(
        host,
        part,
        (narrowBars) => marksFor(examination, choice.show, reader, narrowBars),
        scope,
        mayWiden,
        rooms,
      ),
    );
    const changed = plans.some(({ places }) => places.length > 0);
    if (changed) {
      write(host, score, plans, onChange);
    }
    keepWithScore(score, choice);
    const done = !changed
      ? words.upToDate
      : selected
        ? `${words.annotatedSelection} ${capital(countText(counts, reader))}.`
        : words.annotated;
    const kept = choice.show.colour ? keptColours(host, parts, scope) : 0;
    return kept > 0 ? `${done} ${capital(keptColourText(kept, reader))}.` : done;
  });
}

/** Takes our marks and colours off the selection, or off the whole score where none is. @returns one sentence on what was done */
export function clear(host: Host, reader: Reader, shown: NoteAddress | null, onChange?: OnChange): string {
  const words = panelWords(reader);
  return plainly(host, reader, (score) => {
    if (!score.firstMeasure) return words.emptyScore;
    const horns = hornParts(score);
    if (horns.length === 0) return words.noHorn;
    const scope = selectedNotes(host, score, shown);
    const isWanted = scope === null ? () => true : isInSelection(score);
    const plans = keepingInputPlace(host, score, () => {
      const parts = horns.filter(isWanted);
      const walks = walkParts(host.root, score, parts, holdsOurs(host, score, parts));
      return walks.map((walk) => planClearing(host, walk, scope ?? (() => true)));
    });
    const count = plans.reduce((sum, { places }) => sum + places.length, 0);
    if (count === 0) return words.nothingToClear;
    write(host, score, plans, onChange);
    return words.cleared(count);
  });
}

/** What is known of a part since it was last read, as long as it can still be so; `null` for nothing. */
export type Known = (part: HostPart) => KnownPart | null;

/** Only parts that have something of the selection are read, and those not where the panel knows them. */
function examineSelected(
  host: Host,
  score: HostScore,
  choice: Choice,
  known: Known,
): readonly ExaminedPart[] {
  const isWanted = isInSelection(score);
  const examined = hornParts(score)
    .filter(isWanted)
    .map((hornPart): ExaminedPart | null => {
      const before = known(hornPart);
      return before && partAsKnown(host, score, before);
    });
  if (examined.every((part) => part !== null)) return examined;
  return examineScore(host, score, choice, known, {
    isWanted,
    // What the selection itself tells is not asked elsewhere.
    known: (part) => {
      const before = known(part);
      return before && withSelectedSigns(host, score, part, before.evidence);
    },
  });
}

function write(host: Host, score: HostScore, plans: readonly PlannedPart[], onChange?: OnChange): void {
  const places = ([] as PlannedPlace[]).concat(...plans.map((plan) => plan.places));
  if (places[0]) onChange?.(places[0].place);
  keepingInputPlace(host, score, () => {
    inOneStep(host, score, (step) => {
      carryOut(host, score, places, step);
      for (const { bars } of plans) setBars(bars, step);
    });
  });
}

/** Whatever goes wrong is said in one sentence: the host would swallow an exception without a word. */
function plainly(host: Host, reader: Reader, work: (score: HostScore) => string): string {
  const words = panelWords(reader);
  const score = host.root.curScore;
  if (!score) return words.noScore;
  try {
    return work(score);
  } catch (error) {
    return words.failed(faultText(error, reader));
  }
}

/** Stopped notes whose verdict would have coloured them, had their user not. */
function keptColours(host: Host, parts: readonly ExaminedPart[], scope: Scope): number {
  let kept = 0;
  for (const { part, examination } of parts) {
    examination.notes.forEach(({ note, reading, verdict }, i) => {
      const scoreNote = part.chordNotes[i]!.note;
      if (!note.userColour || verdict === 'sure' || !isHandState(reading.state) || !scope(scoreNote)) return;
      if (isColoured(host, scoreNote)) kept += 1;
    });
  }
  return kept;
}
