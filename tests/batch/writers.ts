/** The commands that write files, for tests of what they may write over and by which names. */

/** Each told to write `target`, and how the name of what it writes ends. */
export const WRITERS: readonly {
  readonly what: string;
  readonly ending: string;
  readonly args: (target: string) => readonly string[];
}[] = [
  { what: 'annotate', ending: '.xml', args: (target) => ['annotate', 'part.musicxml', '-o', target] },
  { what: 'clear', ending: '.xml', args: (target) => ['clear', 'part.musicxml', '-o', target] },
  { what: 'report', ending: '.html', args: (target) => ['report', 'part.musicxml', '-o', target] },
  {
    what: 'etude',
    ending: '.musicxml',
    args: (target) => ['etude', '--kind', 'bend', '--seed', '3', '-o', target],
  },
  {
    what: 'lesson',
    ending: '.xml',
    args: (target) => ['lesson', '--level', '1', '--seed', '3', '-o', target],
  },
  {
    what: 'chart as a score',
    ending: '.xml',
    args: (target) => ['chart', '--format', 'musicxml', '-o', target],
  },
  { what: 'explain', ending: '.svg', args: (target) => ['explain', 'C5', '--curve', target] },
];
