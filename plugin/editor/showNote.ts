/** Takes the user to a note: selects it, which brings it into view. */
import { type Host, type HostElement, type HostNote, type HostScore, isAtLeast, listOf } from './hostApi.ts';
import { type NoteAddress, noteAt } from './noteAddress.ts';
import { tickOf } from './place.ts';

/** Selects the note at an address. @returns false when there is none any more */
export function showNote(host: Host, score: HostScore, address: NoteAddress): boolean {
  const note = noteAt(host.root, score, address);
  if (!note) return false;
  const { selection } = score;
  if (selection && typeof selection.select === 'function') {
    if (isAtLeast(host, 4, 0)) intoView(host, note, selection.select);
    return selection.select(note, false);
  }
  return walkTo(host, score, address, note);
}

/** Version 4 scrolls to what its own commands select, not to what a plugin selects: a step there and back. */
function intoView({ root }: Host, note: HostNote, select: (note: HostNote, add: boolean) => boolean): void {
  select(note, false);
  root.cmd('next-chord');
  root.cmd('prev-chord');
}

/**
 * Before 3.5 only the user's own commands move a selection: to the first chord, from voice to voice, bar by bar, chord
 * by chord, and inside the chord. Every stride is counted, so that the walk ends even where it leads nowhere.
 */
function walkTo({ root }: Host, score: HostScore, address: NoteAddress, note: HostNote): boolean {
  const go = (command: string) => () => root.cmd(command);
  const { tick, track, graceIndex } = address;
  for (const command of ['escape', 'first-element', 'next-chord']) root.cmd(command);
  stride(() => trackNow(score) === track, go('next-track'), score.ntracks);
  stride(() => tickNow(score) >= tick, go('next-measure'), score.nmeasures);
  stride(() => tickNow(score) <= tick, go('prev-chord'), MOST_CHORDS);
  stride(() => tickNow(score) >= tick, go('next-chord'), MOST_CHORDS);
  if (graceIndex !== null) stride(() => note.selected, go('prev-chord'), MOST_NOTES);
  stride(() => note.selected, go('up-chord'), MOST_NOTES);
  stride(() => note.selected, go('down-chord'), 2 * MOST_NOTES);
  return note.selected;
}

/** More chords than a bar holds, more notes than a chord holds. */
const MOST_CHORDS = 200;
const MOST_NOTES = 8;

function stride(arrived: () => boolean, step: () => void, most: number): void {
  for (let i = 0; i < most && !arrived(); i++) step();
}

function current(score: HostScore): HostElement | undefined {
  return listOf(score.selection?.elements)[0];
}

function trackNow(score: HostScore): number {
  return current(score)?.track ?? -1;
}

function tickNow(score: HostScore): number {
  return tickOf(current(score));
}
