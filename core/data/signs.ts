/** The hand's signs as text. @source commonPractice */
export const SIGN_TEXTS = { stopped: '+', open: 'o', 'half-stopped': '⊕' } as const;
