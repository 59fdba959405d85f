/**
 * Signs and lines where they stand, to be taken out. Only what owns them, or a selection, lists them: the selection is
 * the user's, who sees the note afterwards.
 */
import type { JoinKind } from '../../core/index.ts';
import { signOf } from './handSigns.ts';
import {
  type Host,
  type HostArticulation,
  type HostChord,
  type HostElement,
  type HostNote,
  type HostScore,
  listOf,
} from './hostApi.ts';
import { type NoteAddress, noteAt } from './noteAddress.ts';
import { tickOf, VOICES } from './place.ts';
import { glissandoKey, spannerOf } from './selectionEvidence.ts';
import { showNote } from './showNote.ts';

/** More strides than a line has chords. */
const MOST_CHORDS = 400;

/**
 * The hand's signs at a chord; other signs are left alone.
 * @param selected what the user's own selection lists, which then need not be moved
 */
export function signsAt(
  host: Host,
  score: HostScore,
  address: NoteAddress,
  selected: readonly HostElement[],
): readonly HostElement[] {
  const note = noteAt(host.root, score, address);
  if (!note) return [];
  const owned = (note.parent as HostChord).articulations;
  const isHere = at(address, host);
  const mine = owned ? listOf(owned) : selected.filter(isHere);
  const listed =
    owned || mine.length > 0 ? mine : selectedBetween(host, score, address, address).filter(isHere);
  return listed.filter((element) => isSign(host, element as HostArticulation));
}

/** The two notes that are joined, and how far the line may reach before and after them. */
export interface JoinSpan {
  readonly from: NoteAddress;
  readonly to: NoteAddress;
  readonly first: NoteAddress;
  readonly last: NoteAddress;
}

/** The tie, slur or line that leads from one note to another; empty when it is not there any more. */
export function joinsAt(
  host: Host,
  score: HostScore,
  kind: JoinKind,
  { from, to, first, last }: JoinSpan,
): readonly HostElement[] {
  const note = noteAt(host.root, score, from);
  if (!note) return [];
  const { GLISSANDO, GLISSANDO_SEGMENT, TIE, TIE_SEGMENT, SLUR, SLUR_SEGMENT } = host.root.Element;
  if (kind === 'tie' && note.tieForward) return [note.tieForward];
  if (kind === 'glissando' && note.spannerForward)
    return listOf(note.spannerForward)
      .filter(({ type }) => type === GLISSANDO || type === GLISSANDO_SEGMENT)
      .map(spannerOf);
  const listed = selectedBetween(host, score, first, last);
  const key = glissandoKey(note as HostNote & { pitch: number });
  const leaves = (element: HostElement) =>
    element.parent !== null && glissandoKey(element.parent as HostNote & { pitch: number }) === key;
  switch (kind) {
    case 'tie':
      return listed.filter(
        (element) => (element.type === TIE || element.type === TIE_SEGMENT) && leaves(element),
      );
    case 'glissando':
    case 'bend':
      return listed
        .filter(({ type }) => type === GLISSANDO || type === GLISSANDO_SEGMENT)
        .map(spannerOf)
        .filter(leaves);
    case 'slur':
      return listed
        .filter(({ type }) => type === SLUR || type === SLUR_SEGMENT)
        .map(spannerOf)
        .filter(({ spannerTick, spannerTicks, track }) => {
          const start = spannerTick.ticks;
          return start <= from.tick && start + spannerTicks.ticks >= to.tick && track === from.track;
        });
  }
}

function isSign(host: Host, articulation: HostArticulation): boolean {
  return articulation.type === host.root.Element.ARTICULATION && signOf(host.root, articulation) !== null;
}

function at({ tick, track }: NoteAddress, { root }: Host): (element: HostElement) => boolean {
  return (element) =>
    element.type === root.Element.ARTICULATION && element.track === track && tickOf(element) === tick;
}

/** Everything that a selection from one note to another holds. */
function selectedBetween(
  host: Host,
  score: HostScore,
  from: NoteAddress,
  to: NoteAddress,
): readonly HostElement[] {
  const { selection } = score;
  if (!selection) return [];
  if (typeof selection.selectRange === 'function') {
    const staff = Math.floor(from.track / VOICES);
    const last = noteAt(host.root, score, to);
    const end = last ? to.tick + (last.parent as HostChord).duration.ticks : to.tick + 1;
    score.startCmd();
    selection.selectRange(from.tick, end, staff, staff + 1);
    score.endCmd();
    return listOf(selection.elements);
  }
  // Before 3.5 only the user's own commands select.
  showNote(host, score, from);
  const last = noteAt(host.root, score, to);
  host.root.cmd('select-next-chord');
  if (from.tick === to.tick) host.root.cmd('select-prev-chord');
  for (let i = 0; i < MOST_CHORDS && last && !last.selected; i++) host.root.cmd('select-next-chord');
  return listOf(selection.elements);
}
