/** What a melody lacks is found. */
import { describe, expect, test } from 'vitest';
import { type Fault, type Melody, melodyFaults } from '../../core/etude/melody.ts';
import { parsePitch } from '../../core/pitch/pitch.ts';

describe('a melody', () => {
  const melody = (names: string, barLengths: readonly number[], degrees: string): Melody => ({
    notes: names.split(' ').map((name, i) => ({ written: parsePitch(name), degree: Number(degrees[i]) })),
    barLengths,
    ends: [0],
    isGapped: false,
  });

  test('that sings has no fault', () => {
    expect(melodyFaults(melody('E4 G4 A4 C5 B4 G4 F4 D4 C4', [3, 3, 3], '245064310'))).toEqual([]);
  });

  test.each<readonly [Fault, Melody]>([
    ['no-high-point', melody('E4 C5 A4 C5 B4 G4 F4 D4 C4', [3, 3, 3], '205064310')],
    ['no-high-point', melody('E4 G4 A4 C5 B4 A4 D5 B4 C5', [3, 3, 3], '245654160')],
    ['no-cadence', melody('E4 G4 A4 C5 B4 G4 F4 E4 D4', [3, 3, 3], '245064321')],
    ['stands-still', melody('E4 E4 E4 F4 E4 E4 D4 D4 C4', [3, 3, 3], '222322110')],
    ['stands-still', melody('E4 G4 A4 C5 B4 C5 B4 D4 C4', [3, 3, 3], '245060610')],
    ['jumps-about', melody('C4 G4 E4 B4 C5 G4 A4 D4 C4', [3, 3, 3], '042604510')],
    ['leaps-on', melody('C4 B4 D5 C5 B4 G4 F4 D4 C4', [3, 3, 3], '061064310')],
    ['says-a-bar-again', melody('E4 G4 A4 E4 G4 A4 C5 D4 C4', [3, 3, 3], '245245010')],
  ])('%s is caught', (fault, it) => {
    expect(melodyFaults(it)).toContain(fault);
  });
});
