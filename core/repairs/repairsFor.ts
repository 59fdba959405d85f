/** The repairs of a finding: what its remedy asks for, as far as it helps. */
import { checkObject } from '../guards/allowed.ts';
import { type Examination, examine } from '../rules/examine.ts';
import type { Severity } from '../rules/rule.ts';
import type { Finding } from '../rules/rules.ts';
import { proposalsFor } from './proposals.ts';
import type { Repair, RepairKind, RepairStep } from './repair.ts';
import { repaired } from './repaired.ts';
import { type Stretch, surroundingsIn } from './surroundings.ts';

/**
 * What can be done about a finding by changing the part. Each was tried: the finding goes, no other as grave comes, and
 * only what is meant to change the hand at other notes does.
 * @param finding one of the examination's own
 * @returns the repairs in the order in which the remedy names them; empty where nothing in the part would help
 * @throws {TypeError} when there is no examination or no finding
 * @example
 * const examination = examine(passageOf('G4~ C5+'));
 * repairsFor(examination, examination.findings[0]).map(({ kind }) => kind) // => ['other-start', 'line-removed']
 */
export function repairsFor(examination: Examination, finding: Finding): readonly Repair[] {
  checkObject('examination', examination, 'an examination, as examine makes one');
  checkObject('finding', finding, 'one of its findings');
  const proposals = proposalsFor(examination, finding);
  if (proposals.length === 0) return proposals;
  const helpful = proposals.filter(trialOf(examination, finding));
  return helpful.filter((repair) => !helpful.some((other) => isPartOf(other, repair)));
}

/** True where one does less than another, and no less than it takes. */
function isPartOf(one: Repair, other: Repair): boolean {
  return one.steps.length < other.steps.length && one.steps.every((step) => other.steps.indexOf(step) >= 0);
}

const GRAVITY: { readonly [severity in Severity]: number } = { advice: 0, risky: 1, impossible: 2 };

/** These change the hand at notes after the finding's, and are meant to. */
const REACH_ON: readonly RepairKind[] = ['opening-word', 'closing-word', 'mute-out'];

/** Tries repairs on the surroundings of the finding, as far on either side as each may matter. */
function trialOf(examination: Examination, finding: Finding): (repair: Repair) => boolean {
  const { near, far } = surroundingsIn(examination);
  return (repair) => {
    const { steps } = repair;
    const touched = steps
      .map(({ noteIndex }) => noteIndex)
      .concat(finding.noteIndex, finding.otherIndex ?? []);
    const helps = (stretch: Stretch) => tried(repair, touched, finding, stretch);
    const around = near(touched) ?? far(touched);
    // Another note may make the bass clef be read in another way throughout the part.
    const isClefOpen = around.examination.settings !== examination.settings && steps[0]!.change === 'note';
    const first = helps(isClefOpen ? { examination, firstIndex: 0, isNear: false } : around);
    return first ?? helps(far(touched)) === true;
  };
}

/** Whether a repair helps in a stretch; `null` in a near one that ends while a word that it adds still holds. */
function tried(
  { kind, steps }: Repair,
  touched: readonly number[],
  finding: Finding,
  { examination: before, firstIndex: shift, isNear }: Stretch,
): boolean | null {
  const after = examine(repaired(before.passage, moved(steps, shift)), before.settings);
  const last = steps[steps.length - 1]!;
  if (
    isNear &&
    last.change === 'word' &&
    after.notes.slice(last.noteIndex - shift).some(({ reading }) => reading.word)
  )
    return null;
  const found = shifted(finding, shift);
  const known = byNote(before);
  return (
    !after.findings.some((other) => isSame(other, found)) &&
    after.findings.every((other) =>
      isNoWorse(
        other,
        known.get(other.noteIndex) ?? [],
        found,
        touched.indexOf(other.noteIndex + shift) >= 0,
      ),
    ) &&
    (REACH_ON.indexOf(kind) >= 0 || keepsHands(before, after, touched, shift))
  );
}

type Place = Pick<Finding, 'id' | 'noteIndex' | 'otherIndex' | 'severity'>;

function isSame(one: Place, other: Place): boolean {
  return one.id === other.id && one.noteIndex === other.noteIndex && one.otherIndex === other.otherIndex;
}

/** A whole part is asked again for each of its findings. */
const BY_NOTE = new WeakMap<Examination, ReadonlyMap<number, readonly Finding[]>>();

/** The findings at each note, by its index. */
function byNote(examination: Examination): ReadonlyMap<number, readonly Finding[]> {
  const known = BY_NOTE.get(examination);
  if (known) return known;
  const found = new Map<number, Finding[]>();
  for (const finding of examination.findings) {
    const here = found.get(finding.noteIndex);
    if (here) here.push(finding);
    else found.set(finding.noteIndex, [finding]);
  }
  BY_NOTE.set(examination, found);
  return found;
}

/**
 * What was there before as grave; else less grave than what went, and at the notes that changed less than what was there.
 * @param here what was found at this note before
 */
function isNoWorse(after: Place, here: readonly Place[], found: Place, isTouched: boolean): boolean {
  const known = here.filter((other) => isSame(other, after))[0];
  if (known && GRAVITY[known.severity] >= GRAVITY[after.severity]) return true;
  const worstHere = Math.max(0, ...here.map(({ severity }) => GRAVITY[severity]));
  const most = isTouched && worstHere > 0 ? worstHere - 1 : 0;
  return GRAVITY[after.severity] <= Math.min(most, GRAVITY[found.severity] - 1);
}

function keepsHands(
  before: Examination,
  after: Examination,
  touched: readonly number[],
  shift: number,
): boolean {
  return after.notes.every(
    ({ reading }, i) => reading.state === before.notes[i]!.reading.state || touched.indexOf(i + shift) >= 0,
  );
}

function moved(steps: readonly RepairStep[], shift: number): readonly RepairStep[] {
  return shift === 0
    ? steps
    : steps.map((step) => ({
        ...step,
        noteIndex: step.noteIndex - shift,
        ...(step.change === 'join' ? { toIndex: step.toIndex - shift } : {}),
      }));
}

function shifted({ id, severity, noteIndex, otherIndex }: Finding, shift: number): Place {
  return {
    id,
    severity,
    noteIndex: noteIndex - shift,
    otherIndex: otherIndex === null ? null : otherIndex - shift,
  };
}
