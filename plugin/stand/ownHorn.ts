/// <reference lib="dom" />
/** A horn of the reader's own, as a JSON file describes it for the command line. */
import { computed, signal } from '@preact/signals';
import { type Horn, HornFileError, readHornFile } from '../../core/index.ts';
import { remembered } from './remembered.ts';

/** A file that was read and held a horn. */
interface HornFile {
  readonly name: string;
  readonly text: string;
}

/** The file's horn goes by this name among the others. */
export const OWN_HORN = 'own';

const kept = remembered<HornFile | null>('ownHorn', null, (value) => {
  const { name, text } = value as Partial<HornFile>;
  return typeof name === 'string' && typeof text === 'string' && hornIn({ name, text }).ok;
});

/** The horn, or null while there is none. */
export const ownHorn = computed<Horn | null>(() => {
  if (!kept.value) return null;
  const read = hornIn(kept.value);
  return read.ok ? read.horn : null;
});

/** A file that held none, and why. */
export const refusedHorn = signal<{ readonly name: string; readonly fault: HornFileError } | null>(null);

/** Takes a horn from a file. @returns false when it holds none; the horn before then stays */
export async function takeHorn(file: File): Promise<boolean> {
  const taken = { name: file.name, text: await file.text() };
  const read = hornIn(taken);
  refusedHorn.value = read.ok ? null : { name: file.name, fault: read.fault };
  if (read.ok) kept.value = taken;
  return read.ok;
}

function hornIn({ name, text }: HornFile): { ok: true; horn: Horn } | { ok: false; fault: HornFileError } {
  try {
    return { ok: true, horn: { ...readHornFile(text, name.replace(/\.json$/i, '')), id: OWN_HORN } };
  } catch (fault) {
    if (fault instanceof HornFileError) return { ok: false, fault };
    throw fault;
  }
}
