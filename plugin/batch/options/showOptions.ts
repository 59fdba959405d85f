/** The options that say what is written over the notes. */
import type { Command } from 'commander';
import { SHOW_ALL, type Show } from '../../../core/index.ts';
import { oneOf, someOf } from './optionValues.ts';

type ShowItem = Exclude<keyof Show, 'repeat'>;

/** As commander hands them over. */
export interface ShowOptions {
  readonly show: readonly ShowItem[];
  readonly valvesAs: 'text' | 'fingering';
  readonly repeat: Show['repeat'];
}

const ITEMS: readonly ShowItem[] = ['fingered', 'valves', 'natural', 'verdict', 'colour'];

/** Adds the options to a command. */
export function withShowOptions(command: Command): Command {
  return command
    .option('--show <items>', `what to write, of ${ITEMS.join(',')}`, someOf(ITEMS), ITEMS)
    .option(
      '--valves-as <kind>',
      'valves in the text over the note, or as a fingering of the note: text or fingering',
      oneOf(['text', 'fingering']),
      'text',
    )
    .option(
      '--repeat <which>',
      'all, or changes: leave a text out where the note before carries the same',
      oneOf(['all', 'changes']),
      SHOW_ALL.repeat,
    );
}

/** What the options ask for. */
export function showOf({ show, valvesAs, repeat }: ShowOptions): { show: Show; fingerings: boolean } {
  const has = (item: ShowItem) => show.includes(item);
  const isText = valvesAs === 'text';
  return {
    show: {
      fingered: has('fingered'),
      valves: isText && has('valves'),
      natural: has('natural'),
      verdict: has('verdict'),
      colour: has('colour'),
      repeat,
    },
    fingerings: !isText && has('valves'),
  };
}
