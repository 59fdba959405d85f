/// <reference lib="dom" />
/** "A lesson": a page of exercises or one étude, composed while its wishes change, to print or to take home. */
import { computed, effect, type Signal, signal } from '@preact/signals';
import {
  ETUDE_KINDS,
  type EtudeKind,
  FASTEST_TEMPO,
  kindWords,
  LEVELS,
  type Level,
  nameNear,
  noteName,
  panelWords,
  parsePitch,
  SLOWEST_TEMPO,
} from '../../../core/index.ts';
import { reader, words } from '../choices.ts';
import { order } from '../engraver/engraver.ts';
import type { SystemPicture } from '../engraver/orders.ts';
import { download, HornChoice, NumberField } from '../fields.tsx';
import { composed, taken } from './composition.ts';
import {
  copy,
  drawSeed,
  high,
  isWanted,
  KEYS,
  keyName,
  kind,
  level,
  low,
  RANGE_NOTES,
  tempo,
  weekCount,
  weekShown,
  weeks,
} from './wishes.ts';

/** In tenths of a millimetre: a little more than an A4 sheet, since this engraver sets marks wider than the editor does. */
const SHEET_WIDTH = 2200;
const NAMED_FROM = parsePitch('C4');

const systems = signal<readonly SystemPicture[]>([]);

const text = computed(() => (isWanted.value && composed.value?.ok ? composed.value.page.text : ''));
effect(() => {
  systems.value = [];
  if (text.value === '') return;
  return order({ kind: 'sheet', text: text.value, width: SHEET_WIDTH }, (answer) => {
    systems.value = answer.kind === 'systems' ? answer.systems : [];
  });
});

export function LessonSheet() {
  isWanted.value = true;
  const say = words.value;
  const made = composed.value;
  return (
    <div class="lesson-sheet">
      <Wishes />
      <p class="buttons">
        <button type="button" onClick={drawSeed}>
          {say.another}
        </button>
        <button
          type="button"
          id="take"
          disabled={!made?.ok}
          onClick={() => {
            const file = taken();
            download(file.name, file.bytes);
          }}
        >
          ↓ {kind.value === 'course' ? `${weekCount.value} × ` : ''}MusicXML
        </button>
        <button type="button" disabled={!made?.ok} onClick={() => print()}>
          {say.print}
        </button>
      </p>
      {made?.ok ? (
        <section
          class="paper page"
          aria-labelledby="sheet-title"
          style={{
            '--systems': systems.value.length,
            '--height': systems.value.reduce((sum, { width, height }) => sum + height / width, 0),
          }}
        >
          <h2 id="sheet-title">{made.page.title}</h2>
          {made.page.lines.map((line) => (
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
              aria-label={`${made.page.title}, ${i + 1}`}
              viewBox={`0 0 ${width} ${height}`}
              dangerouslySetInnerHTML={{ __html: content }}
            />
          ))}
        </section>
      ) : (
        <p class={made ? 'box alarm' : 'quiet'} role={made ? 'alert' : 'status'}>
          {made?.reason ?? say.composing}
        </p>
      )}
    </div>
  );
}

/** What is asked for. */
function Wishes() {
  const say = words.value;
  const { labels } = panelWords(reader.value);
  return (
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
          <option value="course">{say.course}</option>
        </select>
      </label>
      {kind.value === 'course' ? <Weeks /> : <LevelAndKey />}
      <RangeEnd id="low" label={say.lowest} end={low} />
      <RangeEnd id="high" label={say.highest} end={high} />
      {kind.value !== 'lesson' && kind.value !== 'course' && <Tempo />}
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
  );
}

/** How long a course is, and which week of it is shown. */
function Weeks() {
  const say = words.value;
  return (
    <>
      <NumberField id="weeks" label={say.weeks} choice={weeks} />
      <label>
        {say.weekShown}
        <select
          id="week"
          value={String(Math.min(weekShown.value, weekCount.value))}
          onChange={(event) => {
            weekShown.value = Number(event.currentTarget.value);
          }}
        >
          {Array.from({ length: weekCount.value }, (_, i) => (
            <option key={String(i)} value={String(i + 1)}>
              {i + 1}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}

function LevelAndKey() {
  const { labels } = panelWords(reader.value);
  return (
    <>
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
          <option value="">{words.value.usualKey}</option>
          {KEYS.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}

/** One end of the range. */
function RangeEnd({ id, label, end }: { id: string; label: string; end: Signal<number | null> }) {
  return (
    <label>
      {label}
      <select
        id={id}
        value={String(end.value ?? '')}
        onChange={({ currentTarget: { value } }) => {
          end.value = value === '' ? null : Number(value);
        }}
      >
        <option value="">{words.value.asSuits}</option>
        {RANGE_NOTES.map((cents) => (
          <option key={cents} value={String(cents)}>
            {noteName(nameNear(NAMED_FROM, cents), reader.value)}
          </option>
        ))}
      </select>
    </label>
  );
}

/** How quick an étude is; nothing for what suits. */
function Tempo() {
  return (
    <label>
      {words.value.etudeTempo}
      <input
        type="number"
        id="etude-tempo"
        min={SLOWEST_TEMPO}
        max={FASTEST_TEMPO}
        placeholder={words.value.asSuits}
        value={tempo.value ?? ''}
        onInput={({ currentTarget: { value, valueAsNumber, validity } }) => {
          if (value === '' && !validity.badInput) tempo.value = null;
          else if (validity.valid) tempo.value = valueAsNumber;
        }}
      />
    </label>
  );
}
