/**
 * Room for the script engine to work in. Those of Qt 5.15 and Qt 6.4 collect garbage as soon as the memory they hold is twice
 * what was in use after the last time, and with every 128 KiB of new texts: while a score is read, which leaves little in use and
 * much behind, that is dozens of times, and half of what reading takes. What is kept here counts as in use and is nothing to go
 * through, so that there is as much room above it.
 */

/** Lists that are empty, with places for so many entries of 8 bytes: 8 MiB. The engine sets places aside for up to 4,095. */
const LISTS = 2000;
const PLACES = 500;
/** A text that long, in characters of 2 bytes, lets as much text again be made between two collections. */
const CHARACTERS = 1_000_000;

const kept: unknown[] = [];

/** Takes the room, once for as long as the plugin's script lives: a few milliseconds, and 10 MB. */
export function takeRoom(): void {
  if (kept.length > 0) return;
  kept.push('-'.repeat(CHARACTERS));
  for (let i = 0; i < LISTS; i++) kept.push(new Array(PLACES));
}
