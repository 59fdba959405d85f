/** The command line: `bellhand COMMAND …`. */
import { Command, CommanderError } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { COMMANDS } from './commands/commands.ts';
import { EXIT, faultLine } from './failure.ts';

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
      outputError: (text, write) => write(`bellhand: ${oneLine(text)} (${helpFor(command)})\n`),
    });
}

// Whoever reads along may stop reading, as `head` does; that is no fault.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === 'EPIPE') process.exit();
  throw fault;
});

try {
  await program.parseAsync();
} catch (fault) {
  if (fault instanceof CommanderError) {
    process.exitCode = fault.exitCode === 0 ? EXIT.fine : EXIT.failed;
  } else {
    process.stderr.write(`bellhand: ${faultLine(fault)}\n`);
    process.exitCode = EXIT.failed;
  }
}

function helpFor(command: Command): string {
  return `see: bellhand ${command === program ? '' : `${command.name()} `}--help`;
}

function oneLine(text: string): string {
  return text
    .replace(/^error: /, '')
    .trim()
    .replace(/\s*\n\s*/g, ' ');
}
