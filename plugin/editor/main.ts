/** What the plugin's script offers to the QML beside it. */
import { resultOf } from '../../core/index.ts';
import { annotate, clear, examineScore } from './annotateScore.ts';
import { chosenFor } from './choice.ts';
import { type Host, type HostFile, type HostRoot, isAtLeast, type ScriptEngine } from './hostApi.ts';
import { Panel } from './panel.ts';
import { readerFor } from './reader.ts';

export { Panel } from './panel.ts';

/** The editor, from the three things a plugin's root item has at hand: itself, a file object and the engine's `Qt`. */
export function hostOf(root: HostRoot, file: HostFile, engine: ScriptEngine): Host {
  return { root, file, engine };
}

/** Opens the panel. */
export function openPanel(host: Host): Panel {
  return new Panel(host);
}

/**
 * Annotates or clears without a window, with the choice kept with the score. Hosts of version 3 open a step of the
 * undo history for such a plugin themselves: it is closed first, so that ours is the only one.
 * @returns one sentence on what was done
 */
export function runOnce(host: Host, task: 'annotate' | 'clear'): string {
  const score = host.root.curScore;
  if (score && !isAtLeast(host, 4, 0)) score.endCmd();
  const choice = chosenFor(host, score);
  const reader = readerFor(host, choice);
  return task === 'annotate' ? annotate(host, choice, reader, null) : clear(host, reader, null);
}

/** What `check --format json` prints of the same music. @returns JSON, indented */
export function resultNow(host: Host): string {
  const score = host.root.curScore;
  const parts = score ? examineScore(host, score, chosenFor(host, score)) : [];
  return JSON.stringify(resultOf(parts.map(({ examination }) => examination)), null, 2);
}
