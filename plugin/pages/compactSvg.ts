/** Makes engraved SVG small enough to put hundreds of systems into one page: shared glyphs, short numbers, no idle ids. */

/** A system without its glyphs, which the page holds once for all. */
export interface CompactSvg {
  /** The `viewBox` of the drawing. */
  readonly width: number;
  readonly height: number;
  /** What stands inside the `svg` element. */
  readonly content: string;
  /** The outlines it uses, by glyph. */
  readonly glyphs: ReadonlyMap<string, string>;
  /** The `@font-face` it needs for signs inside texts, or null. */
  readonly fontFace: string | null;
}

/** Classes that style or tests look for; all others say what an element is to nobody. */
const KEPT_CLASSES = ['measure', 'note', 'tempo', 'dir', 'dynam', 'mNum', 'reh', 'ending', 'fing'];

/**
 * Takes apart one page as the engraver draws it.
 * @param keepsId says which ids to keep
 */
export function compactSvg(svg: string, keepsId: (id: string) => boolean): CompactSvg {
  const glyphs = new Map<string, string>();
  // Glyph ids end in the page's own suffix; the outlines are the same on every page.
  for (const [, glyph, outline] of svg.matchAll(/<g id="([0-9A-F]{4,5})-[^"]*">\s*<path ([^>]*)\/>\s*<\/g>/g))
    glyphs.set(glyph!, outline!.trim());
  const fontFace = /@font-face\s*\{[^}]*\}/.exec(svg)?.[0] ?? null;
  const drawing = /<svg class="definition-scale"[^>]*viewBox="0 0 (\d+) (\d+)"[^>]*>([\s\S]*?)<\/svg>/.exec(
    svg,
  );
  if (!drawing) throw new Error('the engraver drew something unknown');
  const content = drawing[3]!
    .replace(/>\s*\n\s*</g, '><')
    .replace(/(<use [^>]*?)(?:xlink:)?href="#([0-9A-F]{4,5})-[^"]*"/g, '$1href="#g$2"')
    .replace(/ id="([^"]*)"/g, (whole, id: string) => (keepsId(id) ? whole : ''))
    .replace(/ class="([^"]*)"/g, (_, names: string) => {
      const kept = names.split(' ').filter((name) => KEPT_CLASSES.includes(name));
      return kept.length > 0 ? ` class="${kept.join(' ')}"` : '';
    })
    .replace(/translate\((-?[\d.]+), (-?[\d.]+)\)/g, 'translate($1 $2)')
    .replace(/scale\((-?[\d.]+), \1\)/g, 'scale($1)')
    .replace(/ \/>/g, '/>');
  return {
    width: Number(drawing[1]),
    height: Number(drawing[2]),
    content: withoutIdleGroups(content),
    glyphs,
    fontFace,
  };
}

/** Takes out groups that hold nothing, and the frame of groups that say nothing. */
function withoutIdleGroups(content: string): string {
  const open: boolean[] = [];
  return content
    .replace(/<g\/>|<g><\/g>/g, '')
    .replace(
      /<(\/?)g( [^>]*?)?(\/?)>/g,
      (whole, closes: string, attributes: string | undefined, isEmpty: string) => {
        if (isEmpty) return '';
        if (closes) return open.pop() ? whole : '';
        const says = attributes !== undefined && attributes.trim() !== '';
        open.push(says);
        return says ? whole : '';
      },
    );
}
