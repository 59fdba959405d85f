/** The command line: `bellhand COMMAND …`. */
import { EXIT, faultLine } from './failure.ts';
import { warnLines } from './output/streams.ts';
import { runProgram } from './program.ts';
import { readerOfRun, wordsFor } from './reader.ts';

const args = process.argv.slice(2);

// What goes wrong between two events must not end with the code that says "impossible".
process.on('uncaughtException', (fault) => {
  warnLines([faultLine(fault, wordsFor(readerOfRun(args, process.env)))]);
  process.exit(EXIT.failed);
});

await runProgram(args, process.env);
