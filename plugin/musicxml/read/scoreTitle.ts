/** What a score calls itself. */
import { SaxesParser } from 'saxes';
import type { Score } from './score.ts';

/**
 * The title of a score: its work's, its movement's or both, else what is printed as the title on its first page.
 * @returns `null` for a score that has none
 */
export function scoreTitle({
  text,
  prefix,
  entities,
}: Pick<Score, 'text' | 'prefix' | 'entities'>): string | null {
  // All of it stands before the list of parts; reading on would only cost time.
  const end = text.indexOf(`<${prefix}part-list`);
  const read = new Map<string, string>();
  const parser = new SaxesParser();
  entities.lendTo(parser);
  let characters = '';
  let creditType = '';
  const take = (name: string) => {
    const line = characters.replace(/\s+/g, ' ').trim();
    if (line !== '' && !read.has(name)) read.set(name, line);
  };
  parser.on('opentag', ({ name }) => {
    characters = '';
    if (name === `${prefix}credit`) creditType = '';
  });
  parser.on('text', (piece) => {
    characters += piece;
  });
  parser.on('cdata', (piece) => {
    characters += piece;
  });
  parser.on('closetag', ({ name }) => {
    const own = name.slice(prefix.length);
    if (own === 'work-title' || own === 'movement-title') take(own);
    if (own === 'credit-type') creditType = characters.trim();
    if (own === 'credit-words' && creditType === 'title') take(own);
    characters = '';
  });
  parser.write(end < 0 ? text : text.slice(0, end));
  const [work, movement] = [read.get('work-title'), read.get('movement-title')];
  if (work && movement && work !== movement) return `${work}: ${movement}`;
  return work ?? movement ?? read.get('credit-words') ?? null;
}

/**
 * A score's title, and its horn's name where it has but one.
 * @param untitled stands for a title that is missing
 */
export function scoreHeading(score: Score, untitled: string | null = null): string {
  const part = score.horns.length === 1 ? score.horns[0]!.name : null;
  return [scoreTitle(score) ?? untitled, part].filter((piece) => piece !== null).join(', ');
}
