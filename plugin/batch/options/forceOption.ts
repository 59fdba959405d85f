/** The option that lets a result take the place of somebody's file. */
import type { Command } from 'commander';

/** As commander hands it over. */
export interface ForceOption {
  readonly force?: boolean;
}

/** Adds the option to a command that writes a file. */
export function withForce(command: Command): Command {
  return command.option(
    '--force',
    'replace a file that Bellhand did not make, that was changed since, or that may only be read',
  );
}
