/** What the parser of options says, in the reader's words. */
import type { Command, CommanderError, HelpConfiguration, Option } from 'commander';
import type { CommandLineWords } from '../../../core/index.ts';

/** Help with headings and defaults in the reader's words. */
export function helpIn({ help }: CommandLineWords): HelpConfiguration {
  const titles = new Map([
    ['Usage:', help.usage],
    ['Arguments:', help.arguments],
    ['Options:', help.options],
    ['Global Options:', help.generalOptions],
    ['Commands:', help.commands],
  ]);
  return {
    showGlobalOptions: true,
    styleTitle: (title) => titles.get(title) ?? title,
    optionDescription: (option) => {
      const value = defaultOf(option);
      return value === null ? option.description : `${option.description} (${help.byDefault(value)})`;
    },
  };
}

function defaultOf({ defaultValue, defaultValueDescription }: Option): string | null {
  if (defaultValue === undefined) return null;
  return defaultValueDescription ?? String(defaultValue);
}

/**
 * What is wrong with a call, in one line. The parser's own message tells what it is about, between quotation marks.
 * @param command the one that the call names, if it does
 */
export function usageFault(
  { code, message }: CommanderError,
  program: Command,
  command: Command | undefined,
  { usage }: CommandLineWords,
): string {
  const [first = '', second = ''] = [...message.matchAll(/'([^']*)'/g)].map((match) => match[1]!);
  const suggested = /\(Did you mean (?:one of )?([^?]*)\?\)/.exec(message)?.[1];
  const withSuggestion = (text: string) => (suggested ? `${text} (${usage.suggestion(suggested)})` : text);
  switch (code) {
    case 'commander.unknownOption':
      if (
        command &&
        command.name() !== program.args[0] &&
        command.options.some(({ short, long }) => short === first || long === first)
      )
        return usage.afterCommand(first, command.name());
      return withSuggestion(usage.unknownOption(first));
    case 'commander.unknownCommand':
      return withSuggestion(usage.unknownCommand(first));
    case 'commander.missingArgument':
      return usage.missingArgument(first);
    case 'commander.missingMandatoryOptionValue':
      return usage.missingOption(first);
    case 'commander.optionMissingArgument':
      return usage.missingValue(first);
    case 'commander.excessArguments':
      return usage.tooManyArguments(first);
    case 'commander.invalidArgument':
      return badValue(message, usage) ?? usage.badValue(first, second, '');
    default:
      return message.replace(/^error: /, '').replace(/\s*\n\s*/g, ' ');
  }
}

/** A bad value may hold quotation marks itself; the reason behind it is ours. */
function badValue(message: string, usage: CommandLineWords['usage']): string | null {
  const parts =
    /^error: (?:option|command-argument) '(.*?)' (?:argument|value) '([\s\S]*)' is invalid\. ([\s\S]*)$/.exec(
      message,
    ) ??
    /^error: command-argument value '([\s\S]*)' is invalid for argument '(.*?)'\. ([\s\S]*)$/.exec(message);
  if (!parts) return null;
  const [, one, two, why] = parts;
  return message.startsWith('error: option')
    ? usage.badValue(one!, two!, why!.trim())
    : usage.badValue(two!, one!, why!.trim());
}
