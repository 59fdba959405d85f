/** What the editor (from 4.4) reads first in an extension package: its name, its version and its menu entries. */

/** One entry of the menu: a QML file of the plugin. */
interface Action {
  readonly code: string;
  readonly title: string;
  readonly path: string;
}

/** In the order of the menu. The host calls `form` what it opens from QML; those two close themselves at once. */
const ACTIONS: readonly Action[] = [
  { code: 'panel', title: 'Bellhand', path: 'Bellhand.qml' },
  { code: 'annotate', title: 'Annotate', path: 'BellhandAnnotate.qml' },
  { code: 'clear', title: 'Clear', path: 'BellhandClear.qml' },
];

/** The text of `manifest.json`. */
export function manifestText(version: string): string {
  const manifest = {
    uri: 'musescore://extensions/bellhand',
    type: 'composite',
    title: 'Bellhand',
    description:
      'Writes the fingering and the natural pitch over stopped horn notes, and says what the hand cannot do',
    category: 'composing-arranging-tools',
    thumbnail: 'bellhand.png',
    version,
    // The interface that the plugin folder's QML speaks too.
    apiversion: 1,
    actions: ACTIONS.map((action) => ({ ...action, type: 'form' })),
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}
