/** What the host hands out of texts and colours, as plain values that stay what they are. */
import type { HostElement } from './hostApi.ts';

/** A text without the host's formatting and with its signs as they print. */
export function plainText(text: string): string {
  if (text.indexOf('<') < 0 && text.indexOf('&') < 0) return text;
  return text
    .replace(/<[^>]*>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
}

/** A note's colour as `#RRGGBB`. What the host hands out is no value: it changes with the note. */
export function colourOf({ color }: HostElement): string {
  return String(color).toUpperCase();
}
