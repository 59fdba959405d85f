/** The list in the panel follows every edit that matters, in the real editors, and rests when nothing is edited. */
import { expect, it } from 'vitest';
import { EVERY_VERDICT } from './rig/everyVerdict.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, open, stopped } from './rig/music.ts';
import type { Step } from './rig/steps.ts';

/** C5 stopped, two G4 that a tie can join, a glissando from E4 down to C♯4 stopped, and A4. */
const PART = hornScore([
  [stopped('C5'), open('G4'), open('G4'), { ...open('E4'), glissando: '+' }],
  [{ ...stopped('C#4'), glissando: '-' }, open('A4'), open('A4', 2)],
]);

/**
 * A look comes every 0.3 s, all is compared every 0.7 s, and the list waits for one look without news; edits that follow
 * at once are somebody typing, and wait for a pause of 0.6 s.
 */
const MOST_LOOKS = 7;

inEveryHost('the live list', (host) => {
  const edits = [
    'raise a note',
    'undo',
    'redo',
    'write a word',
    'undo',
    'write a tempo',
    'tie two notes',
    'slur two notes',
    'delete a note',
    // Signs and glissandi cannot be taken away through the interface of version 3.
    ...(host.major === 4 ? ['take a sign away', 'take a glissando away'] : []),
    'change the time',
  ];

  it('is new soon after every edit, and only then', async () => {
    const names = edits.concat('nothing');
    const run = await host.run(PART, [{ do: 'edits', names }]);
    const looks = run.results[0] as number[];
    expect(looks).toHaveLength(names.length);
    expect(looks.at(-1)).toBe(-1);
    edits.forEach((name, i) => {
      expect(looks[i], `${name} (${i})`).toBeGreaterThan(0);
      expect(looks[i], `${name} (${i})`).toBeLessThanOrEqual(MOST_LOOKS);
    });
  });

  it('sees that a slur was undone, although nothing else moved or changed', async () => {
    const names = ['slur two notes', 'nothing', 'undo a slur'];
    const run = await host.run(PART, [{ do: 'edits', names }]);
    const [, nothing, undone] = run.results[0] as number[];
    expect(nothing).toBe(-1);
    expect(undone).toBeGreaterThan(0);
  });

  it('notices a raised note and a deleted one within a second, and looks in vain at nothing new', async () => {
    const select = (from: number): Step => ({ do: 'select', from, length: 1 });
    const run = await host.run(EVERY_VERDICT, [
      select(3),
      { do: 'follow', name: 'pitch-up-octave' },
      { do: 'follow', name: 'delete' },
    ]);
    // A look comes every 0.3 s and the list waits for one look without news.
    for (const followed of run.results.slice(1))
      expect((followed as { ticks: number }).ticks).toBeLessThanOrEqual(4);
    expect((run.results[1] as { findings: unknown[] }).findings).not.toEqual([]);
  });
});
