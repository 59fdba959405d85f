/** The option that lets a result take the place of somebody's file. */
import type { Command } from 'commander';
import type { CommandLineWords } from '../../../core/index.ts';

/** As commander hands it over. */
export interface ForceOption {
  readonly force?: boolean;
}

/** Adds the option to a command that writes a file. */
export function withForce(command: Command, { options }: CommandLineWords): Command {
  return command.option('--force', options.force);
}
