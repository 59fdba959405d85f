/** The panel in words. */
import type { PanelWords } from './areas/panel.ts';
import type { Reader } from './language.ts';

/** What the editor's panel says to a reader. */
export function panelWords({ words }: Reader): PanelWords {
  return words.panel;
}

export type { PanelLabels, PanelWords } from './areas/panel.ts';
