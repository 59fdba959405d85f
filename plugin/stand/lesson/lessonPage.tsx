/// <reference lib="dom" />
/** The composed page as it prints on one sheet; a screen too narrow for that shows it in lines of its own. */
import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { Fragment } from 'preact';
import { words } from '../choices.ts';
import { order } from '../engraver/engraver.ts';
import type { ComposedPage, SystemPicture } from '../engraver/orders.ts';
import { remsAcross } from '../screen.ts';
import { composed } from './composition.ts';
import { isWanted } from './wishes.ts';

/** In tenths of a millimetre: a little more than an A4 sheet, since this engraver sets marks wider than the editor does. */
const SHEET_WIDTH = 2200;
/** On a narrower screen the sheet's staves would be smaller than in print. */
const SHEET_REMS = 48;
/** Makes a staff 7 mm high: at 360 pixels lines are as long as in a narrow report. */
const TENTHS_IN_REM = 36;
/** A bar that fills a line of this length can still be read. */
const SHORTEST_WIDTH = 600;

const text = computed(() => (isWanted.value && composed.value?.ok ? composed.value.page.text : ''));
/** How wide the lines of a narrow screen are, in tenths of a millimetre; null where the sheet itself is shown. */
const screenWidth = computed(() =>
  remsAcross.value > SHEET_REMS
    ? null
    : Math.max(SHORTEST_WIDTH, Math.round(TENTHS_IN_REM * remsAcross.value)),
);

// What is looked at first is engraved first.
const onNarrow = engraved(screenWidth, true);
const onSheet = engraved(signal(SHEET_WIDTH), false);

/** The systems of the page, always in the width asked for; none where that is null, or while it is engraved. */
function engraved(
  width: ReadonlySignal<number | null>,
  isNarrow: boolean,
): ReadonlySignal<readonly SystemPicture[]> {
  const systems = signal<readonly SystemPicture[]>([]);
  let shown = '';
  effect(() => {
    // Music stays while only its width changes.
    if (shown !== text.value) systems.value = [];
    shown = text.value;
    if (text.value === '' || width.value === null) return;
    return order({ kind: 'sheet', text: text.value, width: width.value, isNarrow }, (answer) => {
      systems.value = answer.kind === 'systems' ? answer.systems : [];
    });
  });
  return systems;
}

export function LessonPage({ page: { title, lines, trains } }: { page: ComposedPage }) {
  const isNarrow = screenWidth.value !== null;
  const sheet = onSheet.value;
  return (
    <section
      class="paper page"
      aria-labelledby="sheet-title"
      style={{
        '--systems': sheet.length,
        '--height': sheet.reduce((sum, { width, height }) => sum + height / width, 0),
      }}
    >
      <h2 id="sheet-title">{title}</h2>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {(isNarrow ? onNarrow : onSheet).value.length === 0 && (
        <p class="quiet" role="status">
          {words.value.engraving}
        </p>
      )}
      {isNarrow && (
        <div class="on-screen">
          <Systems title={title} systems={onNarrow.value} trains={trains} />
        </div>
      )}
      <div class={isNarrow ? 'on-paper' : undefined}>
        <Systems title={title} systems={sheet} trains={[]} />
      </div>
    </section>
  );
}

interface Engraved {
  readonly title: string;
  readonly systems: readonly SystemPicture[];
  /** What to say over each exercise; nothing where the music itself says so. */
  readonly trains: readonly string[];
}

function Systems({ title, systems, trains }: Engraved) {
  let exercise = 0;
  return (
    <>
      {systems.map(({ width, height, content, isFirst }, i) => {
        if (isFirst) exercise += 1;
        const trained = isFirst && trains[exercise - 1];
        return (
          <Fragment key={content.slice(0, 40) + String(i)}>
            {trained && (
              <h3>
                {trains.length > 1 && <b>{exercise} </b>}
                {trained}
              </h3>
            )}
            <svg
              class="music"
              role="img"
              aria-label={`${title}, ${i + 1}`}
              viewBox={`0 0 ${width} ${height}`}
              dangerouslySetInnerHTML={{ __html: content }}
            />
          </Fragment>
        );
      })}
    </>
  );
}
