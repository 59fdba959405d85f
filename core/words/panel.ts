/** The panel in words. */
import type { PanelWords } from './areas/panel.ts';
import type { Reader } from './language.ts';
import { WORDS } from './languages.ts';

/** What the editor's panel says to a reader. */
export function panelWords({ language }: Reader): PanelWords {
  return WORDS[language].panel;
}

export type { PanelLabels, PanelWords } from './areas/panel.ts';
