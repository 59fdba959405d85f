/** One engraved system with the remarks of its bars beside it, each tied to its note by a numbered ring. */
import { type Reader, reportWords } from '../../core/index.ts';
import type { EngravedSystem } from './engrave.ts';
import { Html, html } from './html.ts';

/** A remark to stand beside a system. */
export interface Remark {
  /** From 1, through the whole page. */
  readonly number: number;
  /** The number, with an `n` for narrow screens: ends the ids of ring and remark. */
  readonly id: string;
  readonly noteId: string;
  readonly barId: string;
  /** For the ring's name: `Bar 12: closes upward`. */
  readonly label: string;
  readonly className: 'no' | 'doubt' | 'advice';
  /** What the remark says, inside its list item. */
  readonly content: Html;
}

const RING_RADIUS = 175;
/** Room below a system for rings. */
const RING_ROOM = 560;

/** A system and its remarks. */
export function systemView(
  system: EngravedSystem,
  remarks: readonly Remark[],
  label: string,
  isWide: boolean,
  reader: Reader,
): Html {
  const rings = ringsOf(system, remarks);
  const height = system.height + (rings.length > 0 ? RING_ROOM : 0);
  return html`<section class="system${isWide ? ' wide' : ''}" aria-label="${label}"><div class="paper">
<svg class="music" viewBox="0 0 ${system.width} ${height}" aria-label="${reportWords(reader).page.engraved(label)}" role="group">${shades(system, remarks)}${new Html(system.content)}${rings}</svg></div>
${!isWide && html`<ol class="remarks">${remarks.map(remarkItem)}</ol>`}
</section>
`;
}

function remarkItem({ id, className, content }: Remark): Html {
  return html`<li class="remark ${className}" id="remark-${id}">${content}</li>`;
}

/** A light ground under every bar that has remarks, in the colour of the worst. */
function shades({ bars }: EngravedSystem, remarks: readonly Remark[]): readonly Html[] {
  const worst = new Map<string, Remark>();
  for (const remark of remarks) {
    const known = worst.get(remark.barId);
    if (!known || ORDER.indexOf(remark.className) < ORDER.indexOf(known.className))
      worst.set(remark.barId, remark);
  }
  return [...worst].map(([id, { className }]) => {
    const box = bars.get(id);
    if (!box) return html``;
    const { left, right, top, bottom } = box;
    return html`<rect class="shade ${className}" x="${left}" y="${top - 200}" width="${right - left}" height="${bottom - top + 400}"/>`;
  });
}

const ORDER = ['no', 'doubt', 'advice'];

/** Rings under their notes, side by side where notes are close. */
function ringsOf(system: EngravedSystem, remarks: readonly Remark[]): readonly Html[] {
  const y = system.height + RING_ROOM / 2 - 60;
  let free = 0;
  const sorted = remarks.slice().sort((a, b) => placeOf(system, a) - placeOf(system, b));
  return sorted.map(({ number, id, label, className, noteId, barId }) => {
    const wanted = placeOf(system, { noteId, barId });
    const x = Math.min(Math.max(wanted, free), system.width - RING_RADIUS - 20);
    free = x + 2 * RING_RADIUS + 40;
    const head = system.heads.get(noteId);
    const line = head && html`<line x1="${x}" y1="${y - RING_RADIUS}" x2="${wanted}" y2="${head.y + 150}"/>`;
    return html`<a class="ring ${className}" id="ring-${id}" href="#remark-${id}" aria-label="${number}. ${label}">${line ?? null}<circle cx="${x}" cy="${y}" r="${RING_RADIUS}"/><text x="${x}" y="${y + 90}">${number}</text></a>`;
  });
}

/** Where a remark's note stands, from the left. */
function placeOf(
  { heads, bars }: EngravedSystem,
  { noteId, barId }: Pick<Remark, 'noteId' | 'barId'>,
): number {
  const head = heads.get(noteId);
  return head ? head.x + 120 : (bars.get(barId)?.left ?? 0) + RING_RADIUS;
}
