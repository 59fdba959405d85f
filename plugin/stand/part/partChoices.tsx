/// <reference lib="dom" />
/** How the part on the stand is read: for which horn and hand, which part, and what is shown over its notes. */
import { BASS_CLEFS, type BassClef, CROOKS, keyText, panelWords, type Show } from '../../../core/index.ts';
import {
  assumedTempo,
  bassClef,
  handOffsetCents,
  handSeconds,
  reader,
  toleranceCents,
  words,
} from '../choices.ts';
import { HornChoice, NumberField } from '../fields.tsx';
import { chosenKey, chosenPart, opened, show } from './openedPart.ts';

export function PartChoices() {
  const say = words.value;
  const { labels } = panelWords(reader.value);
  const score = opened.value?.ok ? opened.value.score : null;
  const items = ['fingered', 'valves', 'natural', 'verdict', 'colour'] as const satisfies (keyof Show)[];
  return (
    <div class="fields">
      <HornChoice />
      <label>
        {say.hornPart}
        <select
          value={chosenPart.value}
          onChange={(event) => {
            chosenPart.value = event.currentTarget.value;
          }}
        >
          <option value="">{say.findThem}</option>
          {score?.parts.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label>
        {say.partKey}
        <select
          value={chosenKey.value}
          onChange={(event) => {
            chosenKey.value = event.currentTarget.value;
          }}
        >
          <option value="">{say.usual}</option>
          {CROOKS.map(({ name }) => (
            <option key={name} value={name}>
              {keyText(name, reader.value)}
            </option>
          ))}
        </select>
      </label>
      <NumberField id="tolerance" label={labels.tolerance} choice={toleranceCents} />
      <NumberField id="hand-offset" label={labels.handOffset} choice={handOffsetCents} />
      <NumberField id="hand-time" label={say.handTime} choice={handSeconds} />
      <NumberField id="tempo" label={say.tempo} choice={assumedTempo} />
      <label>
        {say.bassClef}
        <select
          id="bass-clef"
          value={bassClef.value}
          onChange={(event) => {
            bassClef.value = event.currentTarget.value as BassClef;
          }}
        >
          {BASS_CLEFS.map((notation) => (
            <option key={notation} value={notation}>
              {say.bassClefs[notation]}
            </option>
          ))}
        </select>
      </label>
      <fieldset>
        <legend>{labels.print}</legend>
        {items.map((item) => (
          <label key={item}>
            <input
              type="checkbox"
              checked={show.value[item]}
              onChange={(event) => {
                show.value = { ...show.value, [item]: event.currentTarget.checked };
              }}
            />{' '}
            {labels[item]}
          </label>
        ))}
        <label>
          <input
            type="checkbox"
            checked={show.value.repeat === 'changes'}
            onChange={(event) => {
              show.value = { ...show.value, repeat: event.currentTarget.checked ? 'changes' : 'all' };
            }}
          />{' '}
          {labels.onlyChanges}
        </label>
        <label>
          <input
            type="checkbox"
            checked={show.value.quick === 'valves'}
            onChange={(event) => {
              show.value = { ...show.value, quick: event.currentTarget.checked ? 'valves' : 'full' };
            }}
          />{' '}
          {labels.quickValves}
        </label>
      </fieldset>
    </div>
  );
}
