/** The findings of a part as a list to act on: what has one cause and one remedy is told once, the worst first. */
import {
  ENGLISH_READER,
  type Entry,
  type Examination,
  entriesOf,
  type Finding,
  findingText,
  type PassageNote,
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

export const SEVERITY_WORDS: { readonly [severity in Severity]: string } = {
  impossible: '× cannot be played',
  risky: '≈ risky',
  advice: 'for the page',
};

/** The entries of some findings: the worst first, otherwise by where they first stand. */
export function worstFirst(findings: readonly Finding[]): readonly Entry[] {
  return [...entriesOf(findings, ENGLISH_READER)].sort(
    (a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity),
  );
}

/**
 * The list.
 * @param part the part's place on the page, from 0
 * @param hasSound true to let glissandos be heard
 */
export function entryList(examination: Examination, part: number, hasSound: boolean): Html {
  const { findings, passage } = examination;
  if (findings.length === 0) return html`<p>${reportWords(ENGLISH_READER).nothingFound}</p>`;
  return html`<ol class="entries">${worstFirst(findings).map((entry) => entryItem(entry, passage.notes, part, hasSound ? soundsOf(entry.findings, examination) : []))}</ol>`;
}

function entryItem(entry: Entry, notes: readonly PassageNote[], part: number, sounds: readonly Html[]): Html {
  const words = reportWords(ENGLISH_READER);
  const { severity, brief, remedy, findings } = entry;
  const bars = barsOfNotes(findings.map(({ noteIndex }) => notes[noteIndex]!));
  const className = SEVERITY_CLASSES[severity];
  const [first, ...rest] = findings;
  return html`<li class="entry ${className}"><h3>${capital(brief)}: ${words.bars(bars.length)} ${barLinks(part, bars)} <span class="${className}">${SEVERITY_WORDS[severity]}</span></h3>
<p>${findingText(first!, ENGLISH_READER).message}</p><p class="remedy">${remedy}</p>${sounds}
${rest.length > 0 && html`<details><summary>${words.elsewhere(rest.length)}</summary>${rest.map((finding) => elsewhere(finding, notes[finding.noteIndex]!, part))}</details>`}</li>
`;
}

function elsewhere(finding: Finding, { measureIndex, measure }: PassageNote, part: number): Html {
  const words = reportWords(ENGLISH_READER);
  return html`<p>${barLink(part, measureIndex, `${words.bars(1)} ${measure}`)}: ${findingText(finding, ENGLISH_READER).message}</p>`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
