/** Maps by place, against one that is asked by text. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoteSet, type Place, PlaceMap } from '../../plugin/editor/placeMap.ts';

const place: fc.Arbitrary<Place> = fc.record({
  tick: fc.oneof(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 4_000_000 })),
  track: fc.integer({ min: 0, max: 400 }),
  graceIndex: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 5 })),
});
const textOf = ({ tick, track, graceIndex }: Place) => `${tick}/${track}/${graceIndex}`;

describe('what stands at places', () => {
  it('is found there and nowhere else, and the last that was set counts', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(place, fc.nat())), fc.array(place), (entries, others) => {
        const map = new PlaceMap<number>();
        const expected = new Map<string, number>();
        for (const [at, value] of entries) {
          map.set(at, value);
          expected.set(textOf(at), value);
        }
        for (const at of [...entries.map(([at]) => at), ...others]) {
          expect(map.get(at)).toBe(expected.get(textOf(at)));
          expect(map.has(at)).toBe(expected.has(textOf(at)));
        }
        const visited: [string, number][] = [];
        map.forEach((value, at) => {
          visited.push([textOf(at), value]);
        });
        expect(new Map(visited)).toEqual(expected);
        expect(visited).toHaveLength(expected.size);
      }),
    );
  });

  it('comes in the order of the music, whatever order it was set in', () => {
    fc.assert(
      fc.property(fc.array(place), (places) => {
        const visited: Place[] = [];
        const map = new PlaceMap<true>();
        for (const at of places) map.set(at, true);
        map.forEach((_, at) => {
          visited.push(at);
        });
        const sorted = visited.slice().sort((a, b) => a.tick - b.tick || a.track - b.track);
        expect(visited.map(({ tick, track }) => [tick, track])).toEqual(
          sorted.map(({ tick, track }) => [tick, track]),
        );
      }),
    );
  });
});

describe('a set of notes', () => {
  it('tells the ranks of a chord apart, and leaves out notes that have none', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(place, fc.integer({ min: -1, max: 12 }))), (notes) => {
        const set = new NoteSet();
        for (const [at, rank] of notes) set.add(at, rank);
        const expected = new Set(
          notes.filter(([, rank]) => rank >= 0).map(([at, rank]) => `${textOf(at)}:${rank}`),
        );
        const visited: string[] = [];
        set.forEach((at, rank) => {
          visited.push(`${textOf(at)}:${rank}`);
        });
        expect(new Set(visited)).toEqual(expected);
        expect(visited).toHaveLength(expected.size);
        for (const [at] of notes)
          for (let rank = 0; rank <= 12; rank++)
            expect(set.has(at, rank)).toBe(expected.has(`${textOf(at)}:${rank}`));
      }),
    );
  });
});
