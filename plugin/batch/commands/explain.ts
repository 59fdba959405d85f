/** `bellhand explain NOTE`: one note, every way to play it. */
import { Argument, Command, Option } from 'commander';
import {
  answerText,
  askNote,
  examine,
  formatPitch,
  type HandState,
  HORN_IN_F,
  noteResult,
  type Passage,
  type Pitch,
  passageOf,
  type Reach,
  type Reader,
  type Transposition,
} from '../../../core/index.ts';
import { Failure } from '../failure.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { oneOf, pitchNamed } from '../options/optionValues.ts';
import { keyNamed } from '../options/partOptions.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { printableJson } from '../output/printable.ts';
import { writeOwnText, writeResult } from '../output/result.ts';
import { sealSound } from '../output/soundSeal.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';
import { closingLines, closingPicture, closingSound } from '../print/closing.ts';
import { explanation } from '../print/explanation.ts';
import { wordsFor } from '../reader.ts';

interface ExplainOptions extends PlayerOptions, ForceOption {
  readonly key: Transposition;
  readonly hand: HandState;
  readonly format: 'table' | 'json';
  /** True for text, a path for a picture. */
  readonly curve?: true | string;
  readonly sound?: string;
}

export function explainCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('explain')
    .description(words.commands.explain)
    .addArgument(new Argument('<note>', words.arguments.note).argParser(pitchNamed(words)))
    .addOption(
      new Option('--key <key>', words.options.keyOfNote).argParser(keyNamed(words)).default(HORN_IN_F, 'F'),
    )
    .option('--hand <state>', words.options.hand(STATES.join(', ')), oneOf(words, STATES), 'stopped');
  return withForce(withPlayerOptions(command, words), words)
    .option('--format <format>', words.options.explainFormat, oneOf(words, ['table', 'json']), 'table')
    .option('--curve [file]', words.options.curve)
    .option('--sound <file>', words.options.sound)
    .action((note: Pitch, options: ExplainOptions) => explain(note, options, reader));
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

function explain(written: Pitch, options: ExplainOptions, reader: Reader): void {
  const settings = settingsOf(options);
  const examination = examine(partOf(written, options), settings);
  const examined = examination.notes[0]!;
  const { format, curve, sound } = options;
  const force = options.force ?? false;
  const warn = (remarks: ReturnType<typeof writeResult>) =>
    warnLines(remarks.map((say) => say(wordsFor(reader))));
  if (curve === true && format === 'json') {
    throw new Failure(({ faults }) => faults.curveAndJson);
  }
  const { measure: _, beat: __, ...result } = noteResult(examined);
  const answer = askNote(written, options.key, settings);
  const slides = { closesTo: slidesTo(answer.closesTo), opensTo: slidesTo(answer.opensTo) };
  const lines =
    format === 'json'
      ? [printableJson({ ...result, ...slides })]
      : [
          ...explanation(examined, examination.findings, reader),
          '',
          ...answerText(answer, reader).slides.map((line) => `  ${line}`),
        ];
  if (curve === true) lines.push('', ...closingLines(examined, reader).map((line) => `  ${line}`));
  else if (curve !== undefined) {
    const picture = `${closingPicture(examined, reader)}\n`;
    warn(writeOwnText(curve, picture, { content: 'picture', kind: 'curve', force, inputs: [] }));
  }
  if (sound !== undefined) {
    const wave = sealSound(closingSound(examined, reader));
    warn(writeResult(sound, [wave], { content: 'sound', kind: 'sound', force, inputs: [] }));
  }
  // A picture or a sound on standard output stays alone there.
  const files = [curve, sound].filter((file) => typeof file === 'string');
  if (!files.some(isStandardOutput)) printLines(lines);
}

/** Notes that the hand alone leads to. */
function slidesTo(reached: readonly Reach[]) {
  return reached.map(({ written, fingering }) => ({
    written: formatPitch(written),
    side: fingering.tube.side.name,
    valves: fingering.tube.combination.valves,
  }));
}

/** A part of one note, long enough for any hand. */
function partOf(written: Pitch, { hand, key }: ExplainOptions): Passage {
  const { sign, word } = HANDS[hand];
  return passageOf(`${word}${formatPitch(written)}${sign}/4`, { name: 'Horn', transposition: key });
}
