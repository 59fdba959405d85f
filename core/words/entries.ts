/** The findings of a part as a list to act on: what has one cause and one remedy is told once. */
import type { PassageNote } from '../part/passage.ts';
import type { Severity } from '../rules/rule.ts';
import type { Finding } from '../rules/rules.ts';
import { findingText } from './findings.ts';
import type { Reader } from './language.ts';
import { barsText } from './summary.ts';

/** Findings of one rule with the same remedy. */
export interface Entry {
  readonly severity: Severity;
  readonly brief: string;
  readonly remedy: string;
  /** At least one, in the order of the music. */
  readonly findings: readonly Finding[];
}

/** The entries of some findings, by where they first stand. */
export function entriesOf(findings: readonly Finding[], reader: Reader): readonly Entry[] {
  const entries = new Map<string, Entry & { readonly findings: Finding[] }>();
  for (const finding of findings) {
    const { brief, remedy } = findingText(finding, reader);
    const key = [finding.id, finding.severity, brief, remedy].join('\n');
    const known = entries.get(key);
    if (known) known.findings.push(finding);
    else entries.set(key, { severity: finding.severity, brief, remedy, findings: [finding] });
  }
  return Array.from(entries.values());
}

/** The bars of some notes, neighbours drawn together: `bar 4`, `bars 3–5 and 9`. @param notes in the order of the music */
export function barSpansText(notes: readonly PassageNote[], reader: Reader): string {
  const spans: { first: PassageNote; last: PassageNote }[] = [];
  for (const note of notes) {
    const span = spans[spans.length - 1];
    if (span && note.measureIndex - span.last.measureIndex <= 1) span.last = note;
    else spans.push({ first: note, last: note });
  }
  const texts = spans.map(({ first, last }) =>
    first.measureIndex === last.measureIndex ? first.measure : `${first.measure}–${last.measure}`,
  );
  return barsText(texts, reader, new Set(notes.map(({ measureIndex }) => measureIndex)).size);
}
