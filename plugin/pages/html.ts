/** HTML as text: everything put into a template is escaped unless it is HTML already. */

import { escapedAttribute } from '../../core/index.ts';

/** A piece of HTML that is safe to put into a page. */
export class Html {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

type Piece = Html | string | number | null | false | readonly Piece[];

/** A template of HTML or SVG. Lists are joined; null and false leave nothing. */
export function html(strings: TemplateStringsArray, ...pieces: readonly Piece[]): Html {
  let text = strings[0]!;
  pieces.forEach((piece, i) => {
    text += textOf(piece) + strings[i + 1]!;
  });
  return new Html(text);
}

function textOf(piece: Piece): string {
  if (piece === null || piece === false) return '';
  if (piece instanceof Html) return piece.text;
  if (typeof piece === 'object') return piece.map(textOf).join('');
  return escapedAttribute(String(piece));
}
