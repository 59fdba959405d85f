/** The words of the command line. */
export type { CommandLineWords } from './areas/commandLine.ts';
export { COMMAND_LINE_WORDS } from './languages.ts';
