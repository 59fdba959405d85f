/** The part on the stand: read once, examined anew whenever a choice changes, and written as the command line writes it. */
import { computed, signal } from '@preact/signals';
import {
  CROOKS,
  crookFromName,
  type Examination,
  examine,
  SHOW_USUAL,
  type Show,
  scoreWords,
  type Transposition,
} from '../../../core/index.ts';
import { annotatedFile } from '../../musicxml/annotate/annotatedFile.ts';
import { joinedBytes } from '../../musicxml/bytes/pieces.ts';
import { ScoreError } from '../../musicxml/bytes/scoreError.ts';
import { openScoreFile, type ScoreFile } from '../../musicxml/bytes/scoreFile.ts';
import { inKey, isWithoutKey } from '../../musicxml/read/keyed.ts';
import { readScore } from '../../musicxml/read/readScore.ts';
import type { Score } from '../../musicxml/read/score.ts';
import { scoreHeading } from '../../musicxml/read/scoreTitle.ts';
import { clearMarks } from '../../musicxml/write/writeMarks.ts';
import { reader, settings, words } from '../choices.ts';
import { remembered } from '../remembered.ts';
import type { ShelvedFile } from './shelf.ts';

/** In MiB: larger ones the page would hold too often at once. */
export const LARGEST_MEGABYTES = 64;

export const chosenFile = signal<ShelvedFile | null>(null);
/** A part to take for a horn, by its id; nothing for all that are horns. */
export const chosenPart = signal('');
/** The key of parts that state none; nothing for none. */
export const chosenKey = remembered('partKey', '', (value) => CROOKS.some(({ name }) => name === value));
export const show = remembered<Show>(
  'show',
  SHOW_USUAL,
  (value) =>
    typeof value === 'object' &&
    Object.keys(SHOW_USUAL).every((item) => item in (value as object)) &&
    ['all', 'changes'].includes((value as Show).repeat) &&
    ['full', 'valves'].includes((value as Show).quick),
);

export const key = computed<Transposition | null>(() => {
  const crook = chosenKey.value === '' ? null : crookFromName(`Horn in ${chosenKey.value}`);
  return crook?.ok ? crook.transposition : null;
});

/** A score that was read, or why it could not be. */
type Opened =
  | { readonly ok: true; readonly name: string; readonly file: ScoreFile; readonly score: Score }
  | { readonly ok: false; readonly fault: string };

export const opened = computed<Opened | null>(() => {
  if (!chosenFile.value) return null;
  const { name, bytes } = chosenFile.value;
  if (bytes.length > LARGEST_MEGABYTES * 1048576)
    return { ok: false, fault: words.value.tooLarge(name, LARGEST_MEGABYTES) };
  try {
    const file = openScoreFile(bytes);
    const score = readScore(file.text, chosenPart.value === '' ? {} : { parts: [chosenPart.value] });
    return { ok: true, name, file, score };
  } catch (fault) {
    const reason = fault instanceof ScoreError ? fault.in(scoreWords(reader.value)) : String(fault);
    return { ok: false, fault: words.value.notRead(name, reason.replace(/\.$/, '')) };
  }
});

/** What the part on the stand is called; a file without a title goes by its own name. */
export const heading = computed<string | null>(() =>
  opened.value?.ok ? scoreHeading(opened.value.score, opened.value.name) : null,
);

/** What stands in the way of examining a score that was read, in one sentence; null when nothing does. */
export const obstacle = computed<string | null>(() => {
  const { value } = opened;
  if (!value) return null;
  if (!value.ok) return value.fault;
  const { name, score } = value;
  if (score.horns.length === 0)
    return words.value.noHorn(
      name,
      score.parts.map((part) => part.name),
    );
  return key.value === null && score.horns.every(isWithoutKey) ? words.value.noKey(name) : null;
});

export const examinations = computed<readonly Examination[]>(() => {
  const { value } = opened;
  if (!value?.ok || obstacle.value !== null) return [];
  return value.score.horns.map(({ passage }) => examine(inKey(passage, key.value), settings.value));
});

/** A file to take home: its name and bytes are those of the command line's own. */
export function written(kind: 'marked' | 'completed' | 'cleared'): ShelvedFile | null {
  const { value } = opened;
  if (!value?.ok) return null;
  const { name, file, score } = value;
  const bytes =
    kind === 'cleared'
      ? file.withText(clearMarks(file.text))
      : joinedBytes(
          annotatedFile(file, score, examinations.value, {
            show: show.value,
            fingerings: false,
            complete: kind === 'completed',
            reader: reader.value,
            isSealed: true,
          }).pieces,
        );
  return { name: name.replace(/(\.[^.]*)?$/, `.${kind}$1`), bytes };
}
