/** What ends a command or one of its files: one clear line for the user. */
import { type CommandLineWords, commandLineWords, ENGLISH_READER } from '../../core/index.ts';

/** A line that is put into words where it is told. */
export type Say = (words: CommandLineWords) => string;

/** A fault that is the user's to mend: where, what is wrong and what to do, in one line. */
export class Failure extends Error {
  /** The line in the words of a language. */
  readonly say: Say;

  constructor(say: Say) {
    super(say(commandLineWords(ENGLISH_READER)));
    this.name = 'Failure';
    this.say = say;
  }
}

/** How a run ended; the worst of its files counts. */
export const EXIT = { fine: 0, impossible: 1, failed: 2 } as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** The line that tells of any fault; ours are told as they are, others are named as faults of the program. */
export function faultLine(fault: unknown, words: CommandLineWords): string {
  if (fault instanceof Failure) return fault.say(words);
  const text = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
  return words.faults.own(text.replace(/\s*\n\s*/g, ' | '));
}

/** Says why the system refused a file: the code of a Node error, with what to do about it. */
export function systemReason(fault: unknown, { systemFaults }: CommandLineWords): string {
  const code = (fault as NodeJS.ErrnoException).code ?? '';
  if (code !== 'other' && code in systemFaults) return systemFaults[code as KnownCode];
  return systemFaults.other(code || String(fault));
}

type KnownCode = Exclude<keyof CommandLineWords['systemFaults'], 'other'>;
