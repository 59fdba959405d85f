/** What other programs read: the shape of `--format json`, key by key. */
import { expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith, score } from './bellhand.ts';

const NOTE_KEYS = [
  'measure',
  'beat',
  'written',
  'state',
  'verdict',
  'fingered',
  'side',
  'valves',
  'harmonic',
  'natural',
  'dropCents',
  'deviationCents',
  'chosen',
  'reasons',
  'alternatives',
];
const FINDING_KEYS = ['id', 'severity', 'part', 'measure', 'beat', 'written', 'message', 'remedy', 'repairs'];
const FINGERING_KEYS = NOTE_KEYS.filter(
  (key) => !['measure', 'beat', 'written', 'state', 'chosen', 'alternatives'].includes(key),
);

test('check prints parts with their notes, and findings', () => {
  const folder = folderWith({ 'part.musicxml': score(['C5+', 'E5', 'F2+', 'Bb4+']) });
  const { exit, stdout, stderr } = bellhand(folder, ['check', 'part.musicxml', '--format', 'json']);
  expect({ exit, stderr }).toEqual({ exit: 1, stderr: '' });
  expect(stdout).toMatch(/^\{[^\n]+\}\n$/);
  const result = JSON.parse(stdout);
  expect(Object.keys(result)).toEqual(['parts', 'findings']);
  expect(result.parts).toHaveLength(1);
  const [part] = result.parts;
  expect(Object.keys(part)).toEqual(['name', 'transpose', 'notes']);
  expect(part).toMatchObject({ name: 'Horn in F', transpose: -7 });
  // The open E5 is no matter for the hand.
  expect(part.notes.map(({ written }: { written: string }) => written)).toEqual(['C5', 'F2', 'Bb4']);
  for (const note of part.notes) expect(Object.keys(note)).toEqual(NOTE_KEYS);
  // smalley: C5 is 2, B♭4 is 12 on the F side.
  expect(part.notes[0]).toMatchObject({
    measure: '1',
    beat: 1,
    state: 'stopped',
    verdict: 'sure',
    fingered: 'B4',
    side: 'F',
    valves: '2',
    natural: 'C#5',
    harmonic: 9,
  });
  expect(part.notes[2]).toMatchObject({ measure: '2', beat: 3, valves: '12', side: 'F', fingered: 'A4' });
  for (const alternative of part.notes[0].alternatives)
    expect(Object.keys(alternative).sort()).toEqual([...FINGERING_KEYS].sort());
  // smalley: C5 is T23 on the B♭ side; the side says T, the valves do not.
  expect(part.notes[0].alternatives).toContainEqual(
    expect.objectContaining({ side: 'Bb', valves: '23', harmonic: 8 }),
  );
  expect(result.findings).toHaveLength(1);
  expect(Object.keys(result.findings[0])).toEqual(FINDING_KEYS);
  expect(result.findings[0].repairs[0]).toEqual({
    kind: 'octave-up',
    label: 'Octave up (F3)',
    changes: [{ change: 'note', measure: '2', beat: 1, written: 'F2', becomes: 'F3', takenOut: null }],
  });
  expect(result.findings[0]).toMatchObject({
    id: 'below-the-hand',
    severity: 'impossible',
    part: 'Horn in F',
    measure: '2',
    beat: 1,
    written: 'F2',
  });
});

test('explain prints one such note, without a place', async () => {
  const { exit, stdout } = await bellhandHere(folderWith(), ['explain', 'C5', '--format', 'json']);
  expect(exit).toBe(0);
  expect(Object.keys(JSON.parse(stdout))).toEqual([
    ...NOTE_KEYS.filter((key) => key !== 'measure' && key !== 'beat'),
    'closesTo',
    'opensTo',
  ]);
});
