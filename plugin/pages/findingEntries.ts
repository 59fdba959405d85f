/** The findings of a part as a list to act on: what has one cause and one remedy is told once, the worst first. */
import {
  barText,
  capital,
  type Entry,
  type Examination,
  entriesOf,
  type Finding,
  findingText,
  type PassageNote,
  type Reader,
  reportWords,
  type Severity,
} from '../../core/index.ts';
import { barLink, barLinks, barsOfNotes } from './barLinks.ts';
import { soundsOf } from './findingSounds.ts';
import { type Html, html } from './html.ts';

const SEVERITIES: readonly Severity[] = ['impossible', 'risky', 'advice'];

export const SEVERITY_CLASSES: { readonly [severity in Severity]: 'no' | 'doubt' | 'advice' } = {
  impossible: 'no',
  risky: 'doubt',
  advice: 'advice',
};

const SEVERITY_SIGNS: { readonly [severity in Severity]: string } = {
  impossible: '× ',
  risky: '≈ ',
  advice: '',
};

/** How grave a finding is, with the sign that says it too. */
export function severityWords(severity: Severity, reader: Reader): string {
  return SEVERITY_SIGNS[severity] + reportWords(reader).severities[severity];
}

/** The entries of some findings: the worst first, otherwise by where they first stand. */
export function worstFirst(findings: readonly Finding[], reader: Reader): readonly Entry[] {
  return [...entriesOf(findings, reader)].sort(
    (a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity),
  );
}

/**
 * The list.
 * @param part the part's place on the page, from 0
 * @param hasSound true to let glissandos be heard
 */
export function entryList(examination: Examination, part: number, hasSound: boolean, reader: Reader): Html {
  const { findings, passage } = examination;
  if (findings.length === 0) return html`<p>${reportWords(reader).nothingFound}</p>`;
  const soundsFor = (entry: Entry) => (hasSound ? soundsOf(entry.findings, examination, reader) : []);
  return html`<ol class="entries">${worstFirst(findings, reader).map((entry) => entryItem(entry, passage.notes, part, soundsFor(entry), reader))}</ol>`;
}

function entryItem(
  entry: Entry,
  notes: readonly PassageNote[],
  part: number,
  sounds: readonly Html[],
  reader: Reader,
): Html {
  const words = reportWords(reader);
  const { severity, brief, remedy, findings } = entry;
  const bars = barsOfNotes(findings.map(({ noteIndex }) => notes[noteIndex]!));
  const className = SEVERITY_CLASSES[severity];
  const [first, ...rest] = findings;
  return html`<li class="entry ${className}"><h3>${capital(brief)}: ${words.bars(bars.length)} ${barLinks(part, bars)} <span class="${className}">${severityWords(severity, reader)}</span></h3>
<p>${findingText(first!, reader).message}</p><p class="remedy">${remedy}</p>${sounds}
${rest.length > 0 && html`<details><summary>${words.elsewhere(rest.length)}</summary>${rest.map((finding) => elsewhere(finding, notes[finding.noteIndex]!, part, reader))}</details>`}</li>
`;
}

function elsewhere(
  finding: Finding,
  { measureIndex, measure }: PassageNote,
  part: number,
  reader: Reader,
): Html {
  return html`<p>${barLink(part, measureIndex, barText(measure, reader))}: ${findingText(finding, reader).message}</p>`;
}
