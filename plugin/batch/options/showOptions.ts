/** The options that say what is written over the notes. */
import type { Command } from 'commander';
import { type CommandLineWords, SHOW_USUAL, type Show } from '../../../core/index.ts';
import { oneOf, someOf } from './optionValues.ts';

type ShowItem = Exclude<keyof Show, 'repeat' | 'quick'>;

/** As commander hands them over. */
export interface ShowOptions {
  readonly show: readonly ShowItem[];
  readonly valvesAs: 'text' | 'fingering';
  readonly repeat: Show['repeat'];
  readonly quick: Show['quick'];
}

const ITEMS: readonly ShowItem[] = ['fingered', 'valves', 'natural', 'verdict', 'colour'];

/** Adds the options to a command. */
export function withShowOptions(command: Command, words: CommandLineWords): Command {
  const { options } = words;
  return command
    .option('--show <items>', options.show(ITEMS.join(',')), someOf(words, ITEMS), ITEMS)
    .option('--valves-as <kind>', options.valvesAs, oneOf(words, ['text', 'fingering']), 'text')
    .option('--repeat <which>', options.repeat, oneOf(words, ['all', 'changes']), SHOW_USUAL.repeat)
    .option('--quick <form>', options.quick, oneOf(words, ['valves', 'full']), SHOW_USUAL.quick);
}

/** What the options ask for. */
export function showOf({ show, valvesAs, repeat, quick }: ShowOptions): { show: Show; fingerings: boolean } {
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
      quick,
    },
    fingerings: !isText && has('valves'),
  };
}
