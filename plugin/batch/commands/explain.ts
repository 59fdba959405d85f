/** `bellhand explain NOTE`: one note, every way to play it. */
import { Argument, Command, Option } from 'commander';
import {
  examine,
  formatPitch,
  type HandState,
  HORN_IN_F,
  noteResult,
  type Passage,
  type Pitch,
  passageOf,
  type Transposition,
} from '../../../core/index.ts';
import { Failure } from '../failure.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { noteName, oneOf } from '../options/optionValues.ts';
import { keyNamed } from '../options/partOptions.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { printableJson } from '../output/printable.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';
import { closingLines, closingPicture } from '../print/closing.ts';
import { explanation } from '../print/explanation.ts';

interface ExplainOptions extends PlayerOptions, ForceOption {
  readonly key: Transposition;
  readonly hand: HandState;
  readonly format: 'table' | 'json';
  /** True for text, a path for a picture. */
  readonly curve?: true | string;
}

export function explainCommand(): Command {
  const command = new Command('explain')
    .description('explain one written note: fingering, natural pitch, drop, and every other way to play it')
    .addArgument(
      new Argument('<note>', 'the note as the part prints it, with its octave: C5, F#4, Bb3').argParser(
        noteName,
      ),
    )
    .addOption(
      new Option('--key <key>', 'the key the part stands in: F, Eb, "Bb basso", …')
        .argParser(keyNamed)
        .default(HORN_IN_F, 'F'),
    )
    .option(
      '--hand <state>',
      `what the hand does: ${Object.keys(HANDS).join(', ')}`,
      oneOf(STATES),
      'stopped',
    );
  return withForce(withPlayerOptions(command))
    .option('--format <format>', 'table or json', oneOf(['table', 'json']), 'table')
    .option(
      '--curve [file]',
      'the pitch as the hand closes, from acoustics: as text, or as an SVG picture in a file',
    )
    .action((note: Pitch, options: ExplainOptions) => explain(note, options));
}

/** How a part says each state: by a sign at the note, or by a word before it. */
const HANDS: { readonly [state in HandState]: { readonly sign: string; readonly word: string } } = {
  stopped: { sign: '+', word: '' },
  'half-stopped': { sign: '½', word: '' },
  echo: { sign: '', word: '"echo" ' },
  'stopping-mute': { sign: '', word: '"stopping mute" ' },
  'straight-mute': { sign: '', word: '"con sord." ' },
  open: { sign: 'o', word: '' },
};

const STATES = Object.keys(HANDS) as HandState[];

function explain(written: Pitch, options: ExplainOptions): void {
  const settings = settingsOf(options);
  const examination = examine(partOf(written, options), settings);
  const examined = examination.notes[0]!;
  const { format, curve } = options;
  if (curve === true && format === 'json') {
    throw new Failure(
      '--curve is text here, and --format json data: give --curve a file, or leave one of them out',
    );
  }
  const { measure: _, beat: __, ...result } = noteResult(examined);
  const lines =
    format === 'json' ? [printableJson(result)] : explanation(examined, examination.findings, settings);
  if (curve === true) lines.push('', ...closingLines(examined).map((line) => `  ${line}`));
  else if (curve !== undefined) {
    const force = options.force ?? false;
    warnLines(writeOwnText(curve, `${closingPicture(examined)}\n`, { kind: 'curve', force, inputs: [] }));
  }
  // A picture on standard output stays alone there.
  if (typeof curve !== 'string' || !isStandardOutput(curve)) printLines(lines);
}

/** A part of one note, long enough for any hand. */
function partOf(written: Pitch, { hand, key }: ExplainOptions): Passage {
  const { sign, word } = HANDS[hand];
  return passageOf(`${word}${formatPitch(written)}${sign}/4`, { name: 'Horn', transposition: key });
}
