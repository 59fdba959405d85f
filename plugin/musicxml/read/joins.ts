/** What leads from note to note: ties, slurs, glissandi and slides, bends. */
import { type Join, type JoinKind, type PassageNote, pitchCents } from '../../../core/index.ts';
import type { JoinEnd } from './noteContent.ts';

/** A note whose place among the others is not settled yet. */
export type OpenNote = { -readonly [field in keyof PassageNote]: PassageNote[field] };

interface Pair {
  readonly kind: JoinKind;
  readonly from: OpenNote;
  readonly to: OpenNote;
}

/** Matches starts with stops while a part is read; `resolve` writes the joins once every note has its index. */
export class Joins {
  private readonly open = new Map<string, OpenNote>();
  /** Stops seen before their start, as happens when voices are written one after the other. */
  private readonly early = new Map<string, OpenNote>();
  private readonly pairs: Pair[] = [];
  private readonly bends: OpenNote[] = [];

  /** Takes what one note says of its joins. */
  take(
    note: OpenNote,
    ends: readonly JoinEnd[],
    startsTie: boolean,
    endsTie: boolean,
    hasBend: boolean,
  ): void {
    if (endsTie) this.stop('tie', tieLabel(note), note);
    if (startsTie) this.open.set(tieLabel(note), note);
    for (const end of ends) if (!end.isStart) this.stop(end.kind, end.label, note);
    for (const end of ends) if (end.isStart) this.start(end.kind, end.label, note);
    if (hasBend) this.bends.push(note);
  }

  /** Forgets stops whose start never came. */
  endMeasure(): void {
    if (this.early.size > 0) this.early.clear();
  }

  /** Writes the joins into the notes. @param notes all notes of the part, in playing order */
  resolve(notes: readonly OpenNote[]): void {
    for (const { from, to, kind } of this.pairs) if (kind !== 'slur') addJoin(from, kind, to);
    for (const { from, to, kind } of this.pairs)
      if (kind === 'slur') joinAlong(notes, notes[from.chordHead]!, notes[to.chordHead]!);
    for (const bent of this.bends) joinBend(notes, bent);
  }

  private start(kind: JoinKind, label: string, note: OpenNote): void {
    const to = this.early.get(label);
    if (to && to.onsetQuarters > note.onsetQuarters) {
      this.early.delete(label);
      this.pairs.push({ kind, from: note, to });
    } else this.open.set(label, note);
  }

  private stop(kind: JoinKind, label: string, note: OpenNote): void {
    const from = this.open.get(label);
    if (from && from !== note && from.onsetQuarters <= note.onsetQuarters) {
      this.open.delete(label);
      if (kind !== 'tie' || followsAtOnce(from, note)) this.pairs.push({ kind, from, to: note });
    } else {
      this.early.set(label, note);
    }
  }
}

/** A slur joins each chord it covers to the next in its voice; the last step may lead into another voice. */
function joinAlong(notes: readonly OpenNote[], from: OpenNote, to: OpenNote): void {
  let current = from;
  for (let i = from.index + 1; i < to.index; i++) {
    const next = notes[i]!;
    if (!isHeadAfter(next, current)) continue;
    if (next.onsetQuarters >= to.onsetQuarters && !next.grace) break;
    joinChords(notes, current, next);
    current = next;
  }
  if (current !== to) joinChords(notes, current, to);
}

/** Joins the notes of two chords by rank. */
function joinChords(notes: readonly OpenNote[], from: OpenNote, to: OpenNote): void {
  const partners: OpenNote[] = [];
  for (const partner of chordOf(notes, to)) partners[partner.chordRank] = partner;
  for (const member of chordOf(notes, from)) {
    const partner = partners[member.chordRank];
    if (partner) addJoin(member, 'slur', partner);
  }
}

/** A bend leads to the note of its rank that follows at once in its voice. */
function joinBend(notes: readonly OpenNote[], bent: OpenNote): void {
  const end = bent.onsetQuarters + bent.durationQuarters;
  for (let i = bent.index + 1; i < notes.length; i++) {
    const next = notes[i]!;
    if (next.onsetQuarters > end + ROUNDING_QUARTERS) return;
    if (next.chordHead === bent.chordHead || !isHeadAfter(next, bent)) continue;
    if (!followsAtOnce(bent, next)) return;
    const partner = chordOf(notes, next).filter(({ chordRank }) => chordRank === bent.chordRank)[0];
    addJoin(bent, 'bend', partner ?? next);
    return;
  }
}

function isHeadAfter(next: OpenNote, { staff, voice }: OpenNote): boolean {
  return next.chordHead === next.index && next.staff === staff && next.voice === voice;
}

/** The notes of a chord, which stand side by side, by its first one. */
function chordOf(notes: readonly OpenNote[], head: OpenNote): readonly OpenNote[] {
  let end = head.index + 1;
  while (end < notes.length && notes[end]!.chordHead === head.index) end += 1;
  return notes.slice(head.index, end);
}

/** Tuplets add up to a beat but for this, in files that count in few divisions. */
const ROUNDING_QUARTERS = 0.01;

/** True when the second note begins where the first one ends. */
function followsAtOnce(first: OpenNote, second: OpenNote): boolean {
  const gap = first.onsetQuarters + first.durationQuarters - second.onsetQuarters;
  return Math.abs(gap) < ROUNDING_QUARTERS;
}

function tieLabel({ staff, voice, written }: OpenNote): string {
  return `tie ${staff}/${voice}/${pitchCents(written)}`;
}

function addJoin(from: OpenNote, kind: JoinKind, to: OpenNote): void {
  const known = from.joins;
  for (const join of known) if (join.kind === kind && join.to === to.index) return;
  const join: Join = { kind, to: to.index };
  from.joins = known.length === 0 ? [join] : known.concat(join);
}
