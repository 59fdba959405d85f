/** Fields that several sheets share. */
import { capital, commandLineWords, hornText, panelWords } from '../../core/index.ts';
import { hornId, horns, type NumberChoice, reader, settings, words } from './choices.ts';
import { OWN_HORN, refusedHorn, takeHorn } from './ownHorn.ts';

/** Which horn is played, on every sheet the same; the reader's own comes from a file. */
export function HornChoice() {
  const say = words.value;
  const refused = refusedHorn.value;
  return (
    <>
      <label>
        {panelWords(reader.value).labels.horn}
        <select
          class="horn"
          value={settings.value.horn.id}
          onChange={(event) => {
            hornId.value = event.currentTarget.value;
          }}
        >
          {horns.value.map((horn) => (
            <option key={horn.id} value={horn.id}>
              {capital(hornText(horn, reader.value))}
            </option>
          ))}
        </select>
      </label>
      <label class="button">
        {say.ownHorn}
        <input
          type="file"
          id="own-horn"
          accept=".json"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) void playOn(file);
            currentTarget.value = '';
          }}
        />
      </label>
      <span role="alert" class="no">
        {refused && say.notRead(refused.name, refused.fault.in(commandLineWords(reader.value).hornFile))}
      </span>
    </>
  );
}

/** Plays on the horn of a file from now on, if it holds one. */
export async function playOn(file: File): Promise<void> {
  if (await takeHorn(file)) hornId.value = OWN_HORN;
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
