/** The command line as a function: a run from its arguments to its exit code. */
import { Command, CommanderError } from 'commander';
import type { CommandLineWords } from '../../core/index.ts';
import about from '../../package.json' with { type: 'json' };
import { COMMANDS } from './commands/commands.ts';
import { helpCommand } from './commands/help.ts';
import { EXIT, faultLine } from './failure.ts';
import { helpIn, usageFault } from './options/helpWords.ts';
import { withReaderOptions } from './options/readerOptions.ts';
import {
  drawOnError,
  printLines,
  STANDARD_STREAMS,
  type Streams,
  useStreams,
  warnLines,
  wasMessageLost,
} from './output/streams.ts';
import { readerOfRun, wordsFor } from './reader.ts';

/**
 * Runs `bellhand` with these arguments; `process.exitCode` says how it ended.
 * @param args what stands behind the command's name
 * @param env where the reader's language is looked for
 * @param streams where it reads and prints: one run at a time has them
 */
export async function runProgram(
  args: readonly string[],
  env: NodeJS.ProcessEnv,
  streams: Streams = STANDARD_STREAMS,
): Promise<void> {
  useStreams(streams);
  const reader = readerOfRun(args, env);
  const words = wordsFor(reader);
  const program = new Command('bellhand')
    .description(words.help.program)
    .version(about.version, '--version', words.help.version)
    .helpCommand(false)
    .showHelpAfterError(false);
  withReaderOptions(program, words);
  for (const make of COMMANDS) program.addCommand(make(reader));
  program.addCommand(helpCommand(program, reader));
  for (const command of [program, ...program.commands]) {
    command
      .helpOption('--help', words.help.help)
      .exitOverride()
      .configureHelp(helpIn(words))
      .configureOutput({
        writeOut: (text) => printLines(linesOf(text)),
        writeErr: drawOnError,
        outputError: () => {},
      });
  }
  try {
    await program.parseAsync(args, { from: 'user' });
  } catch (fault) {
    if (fault instanceof CommanderError) {
      process.exitCode = fault.exitCode === 0 ? EXIT.fine : EXIT.failed;
      if (fault.exitCode !== 0 && fault.code !== 'commander.help') tellUsage(fault, args, program, words);
    } else {
      warnLines([faultLine(fault, words)]);
      process.exitCode = EXIT.failed;
    }
  }
  if (wasMessageLost()) process.exitCode = EXIT.failed;
}

function tellUsage(
  fault: CommanderError,
  args: readonly string[],
  program: Command,
  words: CommandLineWords,
): void {
  const command = program.commands.find((each) => args.includes(each.name()));
  const help = words.help.see(`bellhand ${command ? `${command.name()} ` : ''}--help`);
  warnLines([`${usageFault(fault, program, command, words)} (${help})`]);
}

function linesOf(text: string): string[] {
  return text.replace(/\n$/, '').split('\n');
}
