/** What one version of the editor annotated, another knows and clears. */
import { afterAll, describe, expect, it } from 'vitest';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { removeFolders } from './rig/folders.ts';
import { HOST_3 } from './rig/host3.ts';
import { HOST_4 } from './rig/host4.ts';
import { hornScore, open, stopped } from './rig/music.ts';

afterAll(removeFolders);

const PART = hornScore([[stopped('C5'), stopped('Eb4'), open('G4'), stopped('C3')]]);

describe.skipIf(!HOST_3.isInstalled || !HOST_4.isInstalled)(
  'from version to version',
  { concurrent: true },
  () => {
    // Version 3 opens no score of version 4: there the way back is MusicXML.
    it.each([
      ['3.2.3', '4.6.5', 'mscz', HOST_3, HOST_4],
      ['3.2.3', '4.6.5', 'musicxml', HOST_3, HOST_4],
      ['4.6.5', '3.2.3', 'musicxml', HOST_4, HOST_3],
    ] as const)('annotated in %s, cleared in %s, by way of %s', async (_, __, format, writer, reader) => {
      const annotated = await writer.run(PART, [{ do: 'annotate' }, { do: 'save', as: `score.${format}` }]);
      const cleared = await reader.run(annotated.path(`score.${format}`), [
        { do: 'annotate' },
        { do: 'save', as: 'again.mscx' },
        { do: 'clear' },
        { do: 'save', as: 'cleared.mscx' },
      ]);
      // Each sets them in its own way: on rows, or over bars as wide as it needs.
      expect(cleared.results[0]).toBe('Annotated.');
      expect(cleared.results[2]).toBe('Cleared: 3 notes.');
      expect((await cleared.text('again.mscx')).split(MARK_PREFIX)).toHaveLength(4);
      const text = await cleared.text('cleared.mscx');
      expect(text).not.toContain(MARK_PREFIX);
      expect(text).not.toContain('<color ');
    });
  },
);
