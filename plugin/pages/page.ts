/** The frame of a page: one file that needs no other. */

import { type Reader, reportWords } from '../../core/index.ts';
import type { Engraving } from './engrave.ts';
import { Html, html } from './html.ts';
import { PAGE_STYLE } from './style.ts';
import { textFaces } from './textFaces.ts';

export interface PageParts {
  readonly title: string;
  readonly header: Html;
  readonly main: Html;
  readonly footer: Html;
  /** Everything engraved on it. */
  readonly engravings: readonly Engraving[];
  /** Rules of this page alone. */
  readonly style?: string;
  /** Whoever reads it. */
  readonly reader: Reader;
}

/** The text of a page. */
export function pageText({ title, header, main, footer, engravings, style = '', reader }: PageParts): string {
  const glyphs = new Map<string, string>();
  for (const engraving of engravings)
    for (const [name, outline] of engraving.glyphs) glyphs.set(name, outline);
  const fontFace = engravings.find((engraving) => engraving.fontFace)?.fontFace ?? '';
  const outlines = [...glyphs].map(([name, outline]) => `<path id="g${name}" ${outline}/>`).join('');
  return html`<!DOCTYPE html>
<html lang="${reader.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Bellhand">
<link rel="icon" href="data:,">
<title>${title}</title>
<style>${new Html(textFaces() + fontFace + PAGE_STYLE + style)}</style>
</head>
<body>
<a class="skip" href="#main">${reportWords(reader).page.skip}</a>
<svg class="outlines" aria-hidden="true" focusable="false"><defs>${new Html(outlines)}</defs></svg>
<header>${header}</header>
<main id="main" tabindex="-1">${main}</main>
<footer>${footer}</footer>
</body>
</html>
`.text;
}
