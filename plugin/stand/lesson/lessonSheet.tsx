/// <reference lib="dom" />
/** "A lesson": a page of exercises or one étude, composed while its wishes change, to print or to take home. */
import type { Signal } from '@preact/signals';
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
import { download, HornChoice, NumberField } from '../fields.tsx';
import { composed, taken } from './composition.ts';
import { LessonPage } from './lessonPage.tsx';
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

const NAMED_FROM = parsePitch('C4');

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
        <LessonPage page={made.page} />
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
