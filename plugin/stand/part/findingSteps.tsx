/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** From finding to finding: the system with each is brought into sight in turn, its ring and its remark marked. */
import { computed, effect, signal } from '@preact/signals';
import { panelWords } from '../../../core/index.ts';
import { reader } from '../choices.ts';
import { examinations } from './openedPart.ts';

/** The finding in sight, as the music numbers them from 1; 0 before the first. */
const at = signal(0);
/** What its ring is called, such as `3. Bar 24: slide upwards`. */
const told = signal('');
const count = computed(() => examinations.value.reduce((sum, { findings }) => sum + findings.length, 0));

effect(() => {
  if (examinations.value) at.value = 0;
  told.value = '';
});

/** The steps; nothing where nothing was found. @param ending of the ids of rings and remarks on this screen */
export function FindingSteps({ ending }: { ending: '' | 'n' }) {
  if (count.value === 0) return null;
  const { labels, nthOf } = panelWords(reader.value);
  return (
    <section class="steps" aria-label={labels.findings}>
      <Step label={labels.previous} sign="‹" to={at.value - 1} ending={ending} />
      <Step label={labels.next} sign="›" to={at.value + 1} ending={ending} />
      <span role="status">
        {nthOf(at.value, count.value)}
        {told.value && ` · ${told.value}`}
      </span>
    </section>
  );
}

/** At an end it does nothing, but keeps the keyboard's focus: a button that is disabled would throw it off the page. */
function Step({ label, sign, to, ending }: { label: string; sign: string; to: number; ending: string }) {
  const isEnd = to < 1 || to > count.value;
  return (
    <button
      type="button"
      aria-label={label}
      title={label}
      aria-disabled={isEnd}
      onClick={() => {
        if (!isEnd) show(to, ending);
      }}
    >
      {sign}
    </button>
  );
}

/** Brings a finding into sight; one whose music is not engraved yet is not there to be shown. */
function show(number: number, ending: string): void {
  const [ring, remark] = ['ring', 'remark'].map((kind) =>
    document.getElementById(`${kind}-${number}${ending}`),
  );
  if (!remark) return;
  for (const before of document.querySelectorAll('.now')) before.classList.remove('now');
  for (const each of [ring, remark]) each?.classList.add('now');
  remark.closest('.system')!.scrollIntoView({ block: 'start' });
  remark.scrollIntoView({ block: 'nearest' });
  at.value = number;
  told.value = (ring?.getAttribute('aria-label') ?? '').replace(/^\d+\. /, '');
}
