/** Composing has a script of its own (build/bundle.ts), which the editor takes in with the first étude that is asked for. */
import type { etudeOnWish } from '../etude/etudeOnWish.ts';
import type { Host } from './hostApi.ts';

export interface Composer {
  readonly etudeOnWish: typeof etudeOnWish;
}

let takenIn: Composer | null = null;

/** What composes études. @throws whatever the editor says when the script is not beside the plugin's own */
export function composerBeside({ file, engine }: Host): Composer {
  const text = `import QtQuick 2.9
import "bellhand-etude.js" as Script
QtObject { readonly property var composer: Script.Bellhand }`;
  if (!takenIn) {
    const item = engine.createQmlObject(text, file, engine.resolvedUrl('BellhandComposer.qml'));
    takenIn = (item as { readonly composer: Composer }).composer;
  }
  return takenIn;
}
