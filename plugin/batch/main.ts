/** The command line: `bellhand COMMAND …`. */
import { Command, CommanderError } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { COMMANDS } from './commands/commands.ts';
import { helpCommand } from './commands/help.ts';
import { EXIT, faultLine } from './failure.ts';
import { helpIn, usageFault } from './options/helpWords.ts';
import { withReaderOptions } from './options/readerOptions.ts';
import { drawOnError, printLines, warnLines, wasMessageLost } from './output/streams.ts';
import { readerOfRun, wordsFor } from './reader.ts';

const reader = readerOfRun(process.argv.slice(2), process.env);
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

// What goes wrong between two events must not end with the code that says "impossible".
process.on('uncaughtException', (fault) => {
  warnLines([faultLine(fault, words)]);
  process.exit(EXIT.failed);
});

try {
  await program.parseAsync();
} catch (fault) {
  if (fault instanceof CommanderError) {
    process.exitCode = fault.exitCode === 0 ? EXIT.fine : EXIT.failed;
    if (fault.exitCode !== 0 && fault.code !== 'commander.help') tellUsage(fault);
  } else {
    warnLines([faultLine(fault, words)]);
    process.exitCode = EXIT.failed;
  }
}
if (wasMessageLost()) process.exitCode = EXIT.failed;

function tellUsage(fault: CommanderError): void {
  const command = program.commands.find((each) => process.argv.slice(2).includes(each.name()));
  const help = words.help.see(`bellhand ${command ? `${command.name()} ` : ''}--help`);
  warnLines([`${usageFault(fault, program, command, words)} (${help})`]);
}

function linesOf(text: string): string[] {
  return text.replace(/\n$/, '').split('\n');
}
