/** The command line: `bellhand COMMAND …`. */
import { Command, CommanderError } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { COMMANDS } from './commands/commands.ts';
import { EXIT, faultLine } from './failure.ts';
import { printLines, warnLines, wasMessageLost } from './output/streams.ts';

const program = new Command('bellhand')
  .description('Fingerings and natural pitches for the stopped notes of horn parts, and what no hand can do')
  .version(about.version, '--version', 'print the version')
  .helpOption('--help', 'print this help')
  .helpCommand('help [command]', 'print the help of a command')
  .showHelpAfterError(false);

for (const make of COMMANDS) program.addCommand(make());
for (const command of [program, ...program.commands]) {
  command
    .helpOption('--help', 'print this help')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => printLines(linesOf(text)),
      writeErr: (text) => warnLines(linesOf(text)),
      outputError: (text) => warnLines([`${oneLine(text)} (${helpFor(command)})`]),
    });
}

// What goes wrong between two events must not end with the code that says "impossible".
process.on('uncaughtException', (fault) => {
  warnLines([faultLine(fault)]);
  process.exit(EXIT.failed);
});

try {
  await program.parseAsync();
} catch (fault) {
  if (fault instanceof CommanderError) {
    process.exitCode = fault.exitCode === 0 ? EXIT.fine : EXIT.failed;
  } else {
    warnLines([faultLine(fault)]);
    process.exitCode = EXIT.failed;
  }
}
if (wasMessageLost()) process.exitCode = EXIT.failed;

function helpFor(command: Command): string {
  return `see: bellhand ${command === program ? '' : `${command.name()} `}--help`;
}

function linesOf(text: string): string[] {
  return text.replace(/\n$/, '').split('\n');
}

function oneLine(text: string): string {
  return text
    .replace(/^error: /, '')
    .trim()
    .replace(/\s*\n\s*/g, ' ');
}
