/** What leads from note to note: ties, slurs, glissandi and slides, bends. */
import { type Join, type JoinKind, pitchCents } from '../../../core/index.ts';
import type { JoinEnd } from './noteReader.ts';
import { headOf, type ReadNote } from './readNote.ts';

interface Pair {
  readonly from: ReadNote;
  readonly to: ReadNote;
}

/** Matches starts with stops while a part is read; `resolve` writes the joins once every note has its index. */
export class Joins {
  private readonly open = new Map<string, ReadNote>();
  /** Stops seen before their start, as happens when voices are written one after the other. */
  private readonly early = new Map<string, ReadNote>();
  private readonly slurs: Pair[] = [];
  private readonly direct: (Pair & { readonly kind: JoinKind })[] = [];
  private readonly bends: ReadNote[] = [];
  private openSlurs = 0;
  private isLinking = false;
  private wasLinking = false;

  /** Takes what one note says of its joins. */
  take(
    note: ReadNote,
    ends: readonly JoinEnd[],
    startsTie: boolean,
    endsTie: boolean,
    hasBend: boolean,
  ): void {
    if (endsTie) this.stop('tie', tieLabel(note), note);
    if (startsTie) this.open.set(tieLabel(note), note);
    for (const end of ends) if (!end.isStart) this.stop(end.kind, end.label, note);
    for (const end of ends) if (end.isStart) this.start(end.kind, end.label, note);
    if (hasBend) {
      this.bends.push(note);
      this.isLinking = true;
    }
  }

  /**
   * Forgets stops whose start never came.
   * @returns true when the notes of the measure, and the first of the next, must be linked to those before them
   */
  endMeasure(): boolean {
    if (this.early.size > 0) this.early.clear();
    const isNeeded = this.isLinking || this.wasLinking;
    this.wasLinking = this.isLinking;
    this.isLinking = this.openSlurs > 0;
    return isNeeded;
  }

  /** Writes the joins into the notes. */
  resolve(): void {
    for (const { from, to, kind } of this.direct) addJoin(from, kind, to);
    for (const { from, to } of this.slurs) joinAlong(headOf(from), headOf(to));
    for (const bent of this.bends) {
      const next = headOf(bent).next;
      if (next && followsAtOnce(bent, next))
        addJoin(bent, 'bend', memberAt(next, bent.note.chordRank) ?? next);
    }
  }

  private start(kind: JoinKind, label: string, note: ReadNote): void {
    if (kind === 'slur') this.isLinking = true;
    const to = this.early.get(label);
    if (to && to.note.onsetQuarters > note.note.onsetQuarters) {
      this.early.delete(label);
      this.join(kind, note, to);
    } else {
      if (kind === 'slur' && !this.open.has(label)) this.openSlurs += 1;
      this.open.set(label, note);
    }
  }

  private stop(kind: JoinKind, label: string, note: ReadNote): void {
    const from = this.open.get(label);
    if (from && from !== note && from.note.onsetQuarters <= note.note.onsetQuarters) {
      this.open.delete(label);
      if (kind === 'tie' && !followsAtOnce(from, note)) return;
      if (kind === 'slur') this.openSlurs -= 1;
      this.join(kind, from, note);
    } else {
      this.early.set(label, note);
    }
  }

  private join(kind: JoinKind, from: ReadNote, to: ReadNote): void {
    if (kind === 'slur') this.slurs.push({ from, to });
    else this.direct.push({ kind, from, to });
  }
}

/** A slur joins each note it covers to the next in its voice; the last step may lead into another voice. */
function joinAlong(from: ReadNote, to: ReadNote): void {
  let current = from;
  while (current !== to) {
    const next: ReadNote | null = current.next;
    const isPast =
      !next || (next !== to && next.note.onsetQuarters >= to.note.onsetQuarters && !next.note.grace);
    const target = isPast ? to : next;
    for (const member of current.members ?? [current]) {
      const partner = memberAt(target, member.note.chordRank);
      if (partner) addJoin(member, 'slur', partner);
    }
    if (isPast) return;
    current = next;
  }
}

/** True when the second note begins where the first one ends, give or take the rounding of tuplets. */
function followsAtOnce({ note: first }: ReadNote, { note: second }: ReadNote): boolean {
  return Math.abs(first.onsetQuarters + first.durationQuarters - second.onsetQuarters) < 0.01;
}

function memberAt(head: ReadNote, rank: number): ReadNote | null {
  for (const member of head.members ?? [head]) if (member.note.chordRank === rank) return member;
  return null;
}

function tieLabel({ note }: ReadNote): string {
  return `tie ${note.staff}/${note.voice}/${pitchCents(note.written)}`;
}

function addJoin(from: ReadNote, kind: JoinKind, to: ReadNote): void {
  const known = from.note.joins;
  for (const join of known) if (join.kind === kind && join.to === to.note.index) return;
  const join: Join = { kind, to: to.note.index };
  from.note.joins = known.length === 0 ? [join] : known.concat(join);
}
