/** Text from files, names and arguments, made safe for a terminal: it can neither steer it nor break a line. */

/**
 * Characters that move the cursor, change colours, break a line, or turn the direction of what is read after them.
 * @source The Unicode Standard 15, section 23.2 (layout controls); Unicode Technical Report 36, section 2.5
 */
const STEERING =
  /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\p{Bidi_Control}\u206a-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/gu;

/** The text on one line, each steering character as its number: a tab becomes `\u{9}`. */
export function printable(text: string): string {
  return text.replace(STEERING, (character) => `\\u{${character.codePointAt(0)!.toString(16)}}`);
}

/** A value as one line of JSON that reads back the same and holds no steering character. */
export function printableJson(value: unknown): string {
  return JSON.stringify(value).replace(STEERING, (character) =>
    // JSON numbers UTF-16 units, four digits each.
    Array.from({ length: character.length }, (_, i) => escapedUnit(character.charCodeAt(i))).join(''),
  );
}

function escapedUnit(unit: number): string {
  return `\\u${unit.toString(16).padStart(4, '0')}`;
}
