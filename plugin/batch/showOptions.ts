/** The options that say what is written over the notes. */
import type { Command } from 'commander';
import { SHOW_ALL, type Show } from '../../core/marks.ts';
import { oneOf, someOf } from './optionValues.ts';

type ShowItem = keyof Show;

/** As commander hands them over. */
export interface ShowOptions {
  readonly show: readonly ShowItem[];
  readonly valvesAs: 'text' | 'fingering';
}

const ITEMS = Object.keys(SHOW_ALL) as ShowItem[];

/** Adds the options to a command. */
export function withShowOptions(command: Command): Command {
  return command
    .option('--show <items>', `what to write, of ${ITEMS.join(',')}`, someOf(ITEMS), ITEMS)
    .option(
      '--valves-as <kind>',
      'valves in the text over the note, or as a fingering of the note: text or fingering',
      oneOf(['text', 'fingering']),
      'text',
    );
}

/** What the options ask for. */
export function showOf({ show, valvesAs }: ShowOptions): { show: Show; fingerings: boolean } {
  const has = (item: ShowItem) => show.includes(item);
  const isText = valvesAs === 'text';
  return {
    show: {
      fingered: has('fingered'),
      valves: isText && has('valves'),
      natural: has('natural'),
      verdict: has('verdict'),
      colour: has('colour'),
    },
    fingerings: !isText && has('valves'),
  };
}
