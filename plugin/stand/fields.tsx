/** Fields that several sheets share. */
import { capital, HORNS, hornText, panelWords } from '../../core/index.ts';
import { hornId, type NumberChoice, reader } from './choices.ts';

/** Which horn is played, on every sheet the same. */
export function HornChoice() {
  return (
    <label>
      {panelWords(reader.value).labels.horn}
      <select
        class="horn"
        value={hornId.value}
        onChange={(event) => {
          hornId.value = event.currentTarget.value;
        }}
      >
        {HORNS.map((horn) => (
          <option key={horn.id} value={horn.id}>
            {capital(hornText(horn, reader.value))}
          </option>
        ))}
      </select>
    </label>
  );
}

/** A number; while what is typed is none that is allowed, the one before holds. */
export function NumberField({ id, label, choice }: { id: string; label: string; choice: NumberChoice }) {
  return (
    <label>
      {label}
      <input
        type="number"
        id={id}
        min={choice.lowest}
        max={choice.highest}
        step={choice.step}
        value={choice.kept.value}
        onInput={({ currentTarget: { valueAsNumber, validity } }) => {
          if (!validity.rangeOverflow && !validity.rangeUnderflow && !Number.isNaN(valueAsNumber))
            choice.kept.value = valueAsNumber;
        }}
      />
    </label>
  );
}

/** Hands a file to the reader. */
export function download(name: string, bytes: Uint8Array): void {
  const url = URL.createObjectURL(new Blob([new Uint8Array(bytes)]));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
