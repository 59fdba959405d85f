/** The hand's signs as text. @source commonPractice */
export const SIGN_TEXTS = { stopped: '+', open: 'o', 'half-stopped': '⊕' } as const;

/** The sign that a typed text is; null for any other text. */
export function signTyped(text: string): keyof typeof SIGN_TEXTS | null {
  if (text === '○') return 'open';
  const signs = Object.keys(SIGN_TEXTS) as (keyof typeof SIGN_TEXTS)[];
  return signs.filter((sign) => SIGN_TEXTS[sign] === text)[0] ?? null;
}
