/** What tests have the editor do: `steps.qml` takes these steps inside it. */
import { appendFile, cp } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PanelView } from '../../../plugin/editor/panelView.ts';

/** One thing to do in the editor. */
export type Step =
  /** What the panel's buttons do. `choice` replaces the choice kept with the score. */
  | { readonly do: 'annotate' | 'clear'; readonly choice?: object; readonly failAfter?: number }
  /** Annotates and counts the elements that were made and those that were added to the score. */
  | { readonly do: 'count' }
  | { readonly do: 'undo' | 'redo' | 'select-all' | 'deselect' }
  /** Selects the n-th chord of the score's first track, counted from 0, and `length` chords in all. */
  | { readonly do: 'select'; readonly from: number; readonly length: number }
  /** Writes the score; the name is in the run's folder. */
  | { readonly do: 'save'; readonly as: string }
  /** What the command line would print of the same music. */
  | { readonly do: 'result' }
  /** What the panel's button for annotating says in an editor of another language. */
  | { readonly do: 'speak'; readonly locale: string }
  /** What the panel would list. */
  | { readonly do: 'findings' }
  /** Opens the panel; returns of how many parts each score was that the editor wrote for it, and what the panel counts. */
  | { readonly do: 'written' }
  /** Version 3: opens another score beside an open panel and closes it again; returns what the panel counts each time. */
  | { readonly do: 'switch'; readonly path: string; readonly horn: number }
  | { readonly do: 'show'; readonly row: number }
  /** Opens the panel and presses its controls, one after the other; returns a `PanelMoment` for each. */
  | { readonly do: 'panel'; readonly acts: readonly PanelAct[] }
  /** Composes an étude from what the panel's controls say; in version 3 it becomes the open score. */
  | { readonly do: 'etude'; readonly form: object }
  | { readonly do: 'colour'; readonly nth: number; readonly colour: string }
  | { readonly do: 'text'; readonly nth: number; readonly text: string }
  /** Makes a bar wider or narrower, as a user does; bars are counted from 0. */
  | { readonly do: 'stretch'; readonly bar: number; readonly to: number }
  | { readonly do: 'command'; readonly name: string }
  /** `tick` is a look at the notes, `rare tick` one that compares all the rest too, `read` makes the list anew. */
  | {
      readonly do: 'measure';
      readonly what: 'annotate' | 'export' | 'read' | 'tick' | 'rare tick';
      readonly times: number;
    }
  /** Takes a script in, ours or one of a line, each time from a file of its own; returns how long each time took, in milliseconds. */
  | { readonly do: 'load'; readonly what: 'script' | 'line'; readonly times: number }
  /**
   * The processor's time of one thing: `open` slice by slice, `work` and `rest` look by look, as is what comes after a `click`
   * on something that is no note; `text` adds one text, `write` is the
   * score in the editor's own format. All but `open` come after it.
   */
  | {
      readonly do: 'cost';
      readonly what: 'open' | 'work' | 'rest' | 'click' | 'annotate' | 'undo' | 'clear' | 'text' | 'write';
    }
  /** What as many plain texts cost as the annotating before left marks, at the same places, and taking them away again. */
  | { readonly do: 'plain' }
  /** Selects so many notes of a staff, from its first on. */
  | { readonly do: 'select-stretch'; readonly staff: number; readonly length: number }
  | { readonly do: 'follow'; readonly name: string }
  /** Makes edits while the panel is open; returns for each after how many looks the list was new, −1 for never. */
  | { readonly do: 'edits'; readonly names: readonly string[] };

/** A method of the panel with its argument, a selection, or a command of the editor's that the panel has time to notice. */
export type PanelAct =
  | {
      readonly press:
        | 'annotate'
        | 'clear'
        | 'choose'
        | 'step'
        | 'repair'
        | 'sign'
        | 'chooseStart'
        | 'lookAgain';
      readonly what?: unknown;
    }
  /** Presses the button of the chosen finding that says so. */
  | { readonly fix: string }
  | { readonly select: { readonly from: number; readonly length: number } }
  | { readonly cmd: string }
  /** The panel looks so many times, while nobody does anything. */
  | { readonly looks: number }
  /** An edit by its name in `WriterEdits.qml` that the panel has not seen yet when the next act comes. */
  | { readonly unseen: string };

/** What the panel shows after an act, in short. */
export interface PanelMoment {
  readonly sentence: string;
  /** Place and what, of each row. */
  readonly findings: readonly string[];
  readonly count: number;
  readonly chosen: PanelView['chosen'];
  readonly answer: PanelView['answer'];
  readonly selected: readonly { readonly pitch: number; readonly track: number }[];
}

export interface HostRun {
  /** The folder for the editor's and the plugin's temporary files. */
  readonly temporary: string;
  /** What each step returned, in order. */
  readonly results: readonly unknown[];
  /** A file that a step saved. */
  path(name: string): string;
  /** What a step saved as text, part scores included, without what the editor makes up anew with every run. */
  text(name: string): Promise<string>;
}

/** Plugins that have an entry in the editor's menu. */
export const PLUGINS = ['Bellhand.qml', 'BellhandAnnotate.qml', 'BellhandClear.qml'] as const;

/** The plugin as it is shipped. */
export const BUILT_PLUGIN = fileURLToPath(new URL('../../../dist/bellhand', import.meta.url));

/** Puts the plugin, as it is built before any test runs, into a folder. */
export async function copyBuiltPlugin(folder: string): Promise<void> {
  await cp(BUILT_PLUGIN, folder, { recursive: true });
}

/** What takes the steps inside the editor: the first is run, the others are parts of it. */
const STEPS = ['steps.qml', 'HostsAltered.qml', 'WriterEdits.qml', 'StepsMeasured.qml'];

/** The same with the tests' own steps beside it, which give its script their clock, so that they need not wait for it. */
export async function copyPluginWithSteps(folder: string): Promise<void> {
  await copyBuiltPlugin(folder);
  for (const name of STEPS) await cp(fileURLToPath(new URL(name, import.meta.url)), join(folder, name));
  await appendFile(join(folder, 'bellhand.js'), '\nvar clock = {}, Date = clock;\n');
}
