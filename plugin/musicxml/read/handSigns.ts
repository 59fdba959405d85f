/** Which elements of a note are signs for the hand. */
import type { HandSign } from '../../../core/index.ts';

/** @source smufl14, brass techniques */
const GLYPHS: ReadonlyMap<string, HandSign> = new Map([
  ['brassMuteClosed', 'stopped'],
  ['brassMuteHalfClosed', 'half-stopped'],
  ['brassMuteOpen', 'open'],
]);

/**
 * What each element says when no glyph is named; others say nothing then. `open-string` draws the same small circle, and hosts write it for the
 * horn's open sign.
 * @source musicxml40, technical
 */
const ELEMENTS: ReadonlyMap<string, HandSign> = new Map([
  ['stopped', 'stopped'],
  ['open', 'open'],
  ['half-muted', 'half-stopped'],
  ['open-string', 'open'],
]);

/** The sign an element prints, or `null` when it is none for the hand (a snap pizzicato, for one, is also a `stopped`). */
export function handSign(element: string, glyph: string | undefined): HandSign | null {
  return (glyph === undefined ? ELEMENTS.get(element) : GLYPHS.get(glyph)) ?? null;
}

/** What the playback value of `mute` says of a note that prints no sign. @source musicxml40, mute */
export function mutedSign(value: string): HandSign | null {
  return value === 'stop-hand' ? 'stopped' : null;
}

/** The words that stand for a playback `mute` in a direction without words of its own. @source musicxml40, mute */
export function mutedWords(value: string): string | null {
  switch (value) {
    case 'stop-hand':
      return 'stopped';
    case 'stop-mute':
      return 'stopping mute';
    case 'echo':
      return 'echo';
    case 'straight':
    case 'on':
      return 'muted';
    case 'off':
      return 'open';
    default:
      return null;
  }
}
