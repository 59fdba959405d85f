/// <reference lib="dom" />
/** "A lesson": a page of exercises or one étude, composed while its wishes change, to print or to take home. */
import { computed, effect, signal } from '@preact/signals';
import {
  composeEtude,
  composeLesson,
  ETUDE_KINDS,
  type EtudeKind,
  etudeSheet,
  type Key,
  kindWords,
  LEVELS,
  type Level,
  panelWords,
  parseKey,
  type Sheet,
} from '../../../core/index.ts';
import { type Copy, sheetText } from '../../etude/sheetText.ts';
import { treeText } from '../../etude/treeText.ts';
import { sealText } from '../../musicxml/bytes/seal.ts';
import { reader, settings, words } from '../choices.ts';
import { order } from '../engraver/engraver.ts';
import type { SystemPicture } from '../engraver/orders.ts';
import { download, HornChoice } from '../fields.tsx';
import { remembered } from '../remembered.ts';

const KEYS = ['C', 'G', 'F', 'D', 'Bb', 'A', 'Eb', 'E', 'Ab', 'Am', 'Em', 'Dm', 'Bm', 'Gm', 'F#m', 'Cm'];
/** Seeds drawn for the user are short enough to be told on. */
const NEW_SEEDS = 10_000;
/** In tenths of a millimetre: a little more than an A4 sheet, since this engraver sets marks wider than the editor does. */
const SHEET_WIDTH = 2200;

const kind = remembered<EtudeKind | 'lesson'>(
  'kind',
  'lesson',
  (value) => value === 'lesson' || ETUDE_KINDS.some((each) => each.kind === value),
);
const level = remembered<Level>('level', 1, (value) => (LEVELS as readonly unknown[]).includes(value));
const keyName = remembered('lessonKey', '', (value) => KEYS.includes(value as string));
const seed = remembered(
  'seed',
  Math.floor(Math.random() * NEW_SEEDS),
  (value) => Number.isInteger(value) && (value as number) >= 0,
);
const copy = remembered<Copy>('copy', 'marked', (value) => value === 'plain' || value === 'marked');

const composed = computed<
  { readonly ok: true; readonly sheet: Sheet } | { readonly ok: false; readonly reason: string }
>(() => {
  const key: Key | null = keyName.value === '' ? null : parseKey(keyName.value);
  const wish = {
    level: level.value,
    low: null,
    high: null,
    seed: seed.value,
    player: settings.value,
    reader: reader.value,
  };
  if (kind.value === 'lesson') return composeLesson({ ...wish, key });
  const made = composeEtude({ ...wish, kind: kind.value, key: key ?? parseKey('C'), bars: 32, tempo: null });
  return made.ok ? { ok: true, sheet: etudeSheet(made.etude, reader.value) } : made;
});
const text = computed(() =>
  composed.value.ok ? sheetText(composed.value.sheet, settings.value, copy.value, treeText) : '',
);
const systems = signal<readonly SystemPicture[]>([]);

/** True once somebody looked at this sheet: nothing is composed before. */
const isWanted = signal(false);
effect(() => {
  if (!isWanted.value || text.value === '') {
    systems.value = [];
    return;
  }
  return order({ kind: 'sheet', text: text.value, width: SHEET_WIDTH }, (answer) => {
    systems.value = answer.kind === 'systems' ? answer.systems : [];
  });
});

function take(): void {
  const ending = copy.value === 'plain' ? '-plain' : '';
  const start = kind.value === 'lesson' ? `lesson-${level.value}` : `etude-${kind.value}`;
  download(`${start}-${seed.value}${ending}.musicxml`, sealText('etude', text.value));
}

export function LessonSheet() {
  isWanted.value = true;
  const say = words.value;
  const { labels } = panelWords(reader.value);
  const made = composed.value;
  return (
    <div class="lesson-sheet">
      <div class="fields">
        <label>
          {labels.etudeKind}
          <select
            id="kind"
            value={kind.value}
            onChange={(event) => {
              kind.value = event.currentTarget.value as EtudeKind;
            }}
          >
            <option value="lesson">{labels.etudeLesson}</option>
            {ETUDE_KINDS.map((each) => (
              <option key={each.kind} value={each.kind}>
                {kindWords(each.kind, reader.value).name}
              </option>
            ))}
          </select>
        </label>
        <label>
          {labels.etudeLevel}
          <select
            id="level"
            value={String(level.value)}
            onChange={(event) => {
              level.value = Number(event.currentTarget.value) as Level;
            }}
          >
            {LEVELS.map((each) => (
              <option key={each} value={String(each)}>
                {each}
              </option>
            ))}
          </select>
        </label>
        <label>
          {labels.etudeKey}
          <select
            value={keyName.value}
            onChange={(event) => {
              keyName.value = event.currentTarget.value;
            }}
          >
            <option value="">{say.usualKey}</option>
            {KEYS.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <HornChoice />
        <fieldset>
          {(['marked', 'plain'] as const).map((each) => (
            <label key={each}>
              <input
                type="radio"
                name="copy"
                checked={copy.value === each}
                onChange={() => {
                  copy.value = each;
                }}
              />{' '}
              {each === 'marked' ? say.teacher : say.student}
            </label>
          ))}
        </fieldset>
      </div>
      <p class="buttons">
        <button
          type="button"
          onClick={() => {
            seed.value = Math.floor(Math.random() * NEW_SEEDS);
          }}
        >
          {say.another}
        </button>
        <button type="button" id="take" disabled={!made.ok} onClick={take}>
          ↓ MusicXML
        </button>
        <button type="button" disabled={!made.ok} onClick={() => print()}>
          {say.print}
        </button>
      </p>
      {made.ok ? (
        <section class="paper page" aria-labelledby="sheet-title">
          <h2 id="sheet-title">{made.sheet.title}</h2>
          {made.sheet.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {systems.value.length === 0 && (
            <p class="quiet" role="status">
              {say.engraving}
            </p>
          )}
          {systems.value.map(({ width, height, content }, i) => (
            <svg
              key={content.slice(0, 40) + String(i)}
              class="music"
              role="img"
              aria-label={`${made.sheet.title}, ${i + 1}`}
              viewBox={`0 0 ${width} ${height}`}
              dangerouslySetInnerHTML={{ __html: content }}
            />
          ))}
        </section>
      ) : (
        <p class="box alarm">{made.reason}</p>
      )}
    </div>
  );
}
