/** The letters by which words of many languages are looked up. */

/**
 * Lower case, without accents, composed or combining; ß and œ as two letters. Accents of other scripts stay, where they
 * make another letter: й is no и.
 */
export function plainLetters(text: string): string {
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/([a-z])[\u0300-\u036f]+/g, '$1')
    .normalize('NFC')
    .replace(/ß/g, 'ss')
    .replace(/œ/g, 'oe');
}
