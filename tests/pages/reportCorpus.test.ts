/** The report of horn parts that others engraved. Skips, and says so, without the corpus. */
import { beforeAll, expect, it } from 'vitest';
import { isHandState } from '../../core/part/handStates.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { corpusText, describeWithCorpus, withStoppedSigns } from '../musicxml/corpus.ts';

/** A score with the first eighty bars of its parts. */
function beginningOf(score: string): string {
  return score.replace(/(<part id[^>]*>)([\s\S]*?)(?=<\/part>)/g, (_, start: string, bars: string) => {
    const ends = [...bars.matchAll(/<\/measure>/g)].map((end) => end.index + end[0].length);
    return start + bars.slice(0, ends[79]);
  });
}

describeWithCorpus('parts out of real scores', (files) => {
  let drawn = 0;
  beforeAll(() => {
    drawn = 0;
  });

  const small = files.filter(({ name, bytes }) => /^horn\//.test(name) && bytes.length < 300_000);

  it.each(small.map((file) => [file.name, file] as const))('%s', async (_, file) => {
    const score = readScore(withStoppedSigns(beginningOf(corpusText(file))));
    const horns = score.horns.filter(({ passage }) =>
      passage.notes.some(({ transposition }) => transposition),
    );
    if (horns.length === 0) return;
    // The first horn alone, and its beginning, keep the time of this test short.
    const one = { ...score, horns: horns.slice(0, 1) };
    const examinations = one.horns.map(({ passage }) => examine(passage));
    const page = await reportPage({ name: file.name, score: one, examinations, remarks: [] });
    const { notes, findings } = examinations[0]!;
    const used = notes.filter(({ reading }) => isHandState(reading.state));
    if (used.length === 0) return;
    for (const measureIndex of new Set(used.map(({ note }) => note.measureIndex)))
      expect(page).toContain(`id="bh-0-bar-${measureIndex}"`);
    for (const { noteIndex } of findings) expect(page).toContain(`id="bh-0-note-${noteIndex}"`);
    expect(page.match(/id="remark-\d+"/g) ?? []).toHaveLength(findings.length);
    drawn += 1;
  });

  it('were drawn at all', () => {
    expect(drawn).toBeGreaterThan(10);
  });
});
