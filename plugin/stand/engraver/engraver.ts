/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The engraver as the page sees it: orders go to a worker that the page carries packed inside itself. */
import type { Answer, Order, SharedOutlines } from './orders.ts';

let started: Promise<Worker> | null = null;
let tickets = 0;
/** Orders that nobody called off, the first first, and who takes their answers. */
const waiting = new Map<number, { readonly wanted: Wanted; readonly take: (answer: Answer) => void }>();
let isBusy = false;

/** An order before it has its ticket. */
type Wanted = Order extends infer O ? (O extends Order ? Omit<O, 'ticket'> : never) : never;

/**
 * Asks for an engraving.
 * @param take gets every answer until the last
 * @returns calls off what is still to come
 */
export function order(wanted: Wanted, take: (answer: Answer) => void): () => void {
  tickets += 1;
  const ticket = tickets;
  waiting.set(ticket, { wanted, take });
  void startEngraver().then(handOut);
  return () => waiting.delete(ticket);
}

/** Orders go out one by one, so that one that is called off while others are at work costs nothing. */
function handOut(worker: Worker): void {
  const [first] = waiting;
  if (isBusy || !first) return;
  const [ticket, { wanted }] = first;
  isBusy = true;
  worker.postMessage({ ...wanted, ticket });
}

/** Starts the engraver, once; early, so that it is ready when music comes. */
export function startEngraver(): Promise<Worker> {
  started ??= unpackedWorker().then((worker) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      if ('glyphs' in data) keepOutlines(data);
      waiting.get(data.ticket)?.take(data);
      if (data.kind === 'part') return;
      // Any other answer is an order's last.
      waiting.delete(data.ticket);
      isBusy = false;
      handOut(worker);
    });
    return worker;
  });
  return started;
}

/** The page holds the worker's script as base64 of gzip, in an element of its own. */
async function unpackedWorker(): Promise<Worker> {
  const packed = atob(document.getElementById('engraver')!.textContent!.trim());
  const bytes = Uint8Array.from(packed, (character) => character.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const script = await new Response(stream).text();
  return new Worker(URL.createObjectURL(new Blob([script], { type: 'text/javascript' })));
}

const known = new Set<string>();

/** Outlines are kept once for all drawings on the page. */
function keepOutlines({ glyphs, fontFace }: SharedOutlines): void {
  const holder = document.getElementById('outlines')!;
  for (const [name, outline] of glyphs) {
    if (known.has(name)) continue;
    known.add(name);
    holder.insertAdjacentHTML('beforeend', `<path id="g${name}" ${outline}/>`);
  }
  if (fontFace === null || known.has('font')) return;
  known.add('font');
  const style = document.createElement('style');
  style.textContent = fontFace;
  document.head.append(style);
}
