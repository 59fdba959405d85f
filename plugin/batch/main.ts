/** The command line: `bellhand COMMAND …`. */
import { Command, CommanderError } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { COMMANDS } from './commands/commands.ts';
import { EXIT, faultLine } from './failure.ts';
import { helpIn, usageFault } from './options/helpWords.ts';
import { withReaderOptions } from './options/readerOptions.ts';
import { printLines, warnLines, wasMessageLost } from './output/streams.ts';
import { readerOfRun, wordsFor } from './reader.ts';

const reader = readerOfRun(process.argv.slice(2), process.env);
const words = wordsFor(reader);

const program = new Command('bellhand')
  .description(words.help.program)
  .version(about.version, '--version', words.help.version)
  .helpCommand('help [command]', words.help.helpOf)
  .showHelpAfterError(false);

for (const make of COMMANDS) program.addCommand(withReaderOptions(make(reader), words));
for (const command of [program, ...program.commands]) {
  command
    .helpOption('--help', words.help.help)
    .exitOverride()
    .configureHelp(helpIn(words))
    .configureOutput({
      writeOut: (text) => printLines(linesOf(text)),
      writeErr: (text) => warnLines(linesOf(text)),
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
  const command = program.commands.find((each) => each.name() === program.args[0]);
  const help = words.help.see(`bellhand ${command ? `${command.name()} ` : ''}--help`);
  warnLines([`${usageFault(fault, words)} (${help})`]);
}

function linesOf(text: string): string[] {
  return text.replace(/\n$/, '').split('\n');
}
