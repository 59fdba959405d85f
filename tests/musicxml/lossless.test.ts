/** Annotating adds marks and nothing else: over real scores, and over parts made from seeds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearMarks,
  type PartMarks,
  readScore,
  type Score,
  type WriteOptions,
  writeMarks,
} from '../../plugin/musicxml/index.ts';
import { corpusText, describeWithCorpus, withStoppedSigns } from './corpus.ts';
import { generatePart } from './generate.ts';
import { coreMarks, madeUpMarks, readAllParts } from './marks.ts';

/** Everything that must hold of a text, its marks and options. */
function expectLossless(
  text: string,
  marksOf: (score: Score) => PartMarks[],
  read: (text: string) => Score,
  options: WriteOptions = {},
): string {
  const plain = read(text);
  const once = writeMarks(plain, marksOf(plain), options);
  expect(clearMarks(once) === text, 'cleared text is the input').toBe(true);
  const marked = read(once);
  const marks = marksOf(marked);
  expect(writeMarks(marked, marks, options) === once, 'annotating twice changes nothing').toBe(true);
  const other = { ...options, fingerings: !options.fingerings };
  expect(
    writeMarks(marked, marks, other) === writeMarks(plain, marks, other),
    'other options start from the clean text',
  ).toBe(true);
  expect(passages(marked) === passages(plain), 'our own marks are not read as music').toBe(true);
  return once;
}

function passages({ horns }: Score): string {
  return JSON.stringify(horns.map(({ passage }) => passage));
}

/** Above this, in characters, a file is left to the test of its horns alone, to save time. */
const LARGE = 1_500_000;

describeWithCorpus('real scores', (files) => {
  it('finds the corpus complete', () => expect(files).toHaveLength(70));

  // The corpus has no stopped note in a horn part: signs are added to its horns by script.
  it.each(files.filter(({ name }) => name.startsWith('horn/')))('$name: the core marks its horns', (file) => {
    const text = withStoppedSigns(corpusText(file));
    const once = expectLossless(text, coreMarks, readScore);
    const stopped = readScore(text).horns.flatMap(({ passage }) => passage.notes.filter(({ sign }) => sign));
    if (stopped.length > 0) expect(once.length).toBeGreaterThan(text.length);
  });

  const texts = files.map((file) => ({ name: file.name, text: corpusText(file) }));

  it.each(texts.filter(({ text }) => text.length < LARGE))(
    '$name: marks of every kind in all its parts',
    ({ text }) => {
      expectLossless(text, madeUpMarks, readAllParts, { fingerings: true });
    },
  );
});

describe('parts made from seeds', () => {
  const shapes = fc.record({
    notes: fc.integer({ min: 1, max: 60 }),
    seed: fc.nat(),
    stoppedPercent: fc.integer({ min: 0, max: 100 }),
    lineEnd: fc.constantFrom('\n', '\r\n', '\r', ''),
    prefix: fc.constantFrom('', 'm:'),
    timewise: fc.boolean(),
    fingerings: fc.boolean(),
  } as const);

  // fast-check prints the seed of a failing run.
  it('keeps every character', () => {
    fc.assert(
      fc.property(shapes, ({ notes, fingerings, ...shape }) => {
        const text = furnished(generatePart(notes, shape as Parameters<typeof generatePart>[1]));
        expect(readScore(text).horns[0]!.passage.notes).toHaveLength(notes);
        expectLossless(text, coreMarks, readScore, { fingerings });
        expectLossless(text, madeUpMarks, readScore, { fingerings });
      }),
      { numRuns: 300 },
    );
  });
});

/** The same part with what a careless reader stumbles over: astral characters, references, CDATA, comments, instructions. */
function furnished(text: string): string {
  return text
    .replace(/>ah</g, '>é𝄞 &amp;&#233;<![CDATA[<note>]]><')
    .replace(/<((?:m:)?)voice>/g, '<!-- <note> 𝄞 --><$1voice>')
    .replace(/<((?:m:)?)stem>/g, '<?layout <note a=">"?><$1stem\t>');
}
