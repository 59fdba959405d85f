/// <reference lib="dom" />
/** The page: a stand with three sheets on it, of which one lies on top. */
import { effect } from '@preact/signals';
import { render } from 'preact';
import {
  LANGUAGES,
  type Language,
  NOTE_NAMINGS,
  type NoteNaming,
  panelWords,
  standWords,
} from '../../core/index.ts';
import { chosenLanguage, chosenNaming, reader, words } from './choices.ts';
import { startEngraver } from './engraver/engraver.ts';
import { playOn } from './fields.tsx';
import { LessonSheet } from './lesson/lessonSheet.tsx';
import { NoteSheet } from './note/noteSheet.tsx';
import { lay, PartSheet } from './part/partSheet.tsx';
import { remembered } from './remembered.ts';

const SHEETS = { note: NoteSheet, part: PartSheet, lesson: LessonSheet } as const;
type SheetName = keyof typeof SHEETS;
const NAMES = Object.keys(SHEETS) as SheetName[];

const onTop = remembered<SheetName>('sheet', 'note', (value) => NAMES.includes(value as SheetName));
takeFromAddress();
addEventListener('hashchange', takeFromAddress);

/** `#part` at the end of the address puts that sheet on top. */
function takeFromAddress(): void {
  const wanted = location.hash.slice(1) as SheetName;
  if (NAMES.includes(wanted)) onTop.value = wanted;
}

addEventListener('dragover', (event) => event.preventDefault());
addEventListener('drop', (event) => {
  event.preventDefault();
  const [file] = event.dataTransfer?.files ?? [];
  if (!file) return;
  if (/\.json$/i.test(file.name)) {
    void playOn(file);
    return;
  }
  location.hash = 'part';
  void lay(file);
});

effect(() => {
  document.documentElement.lang = reader.value.language;
  document.title = `Bellhand: ${words.value.sheets[onTop.value]}`;
});

function Stand() {
  const say = words.value;
  const Sheet = SHEETS[onTop.value];
  return (
    <>
      <a class="skip" href="#main">
        {say.toSheet}
      </a>
      <header>
        <h1>Bellhand</h1>
        <p class="law">{say.law}</p>
        <nav aria-label="Bellhand">
          <ul>
            {NAMES.map((name) => (
              <li key={name}>
                <a href={`#${name}`} aria-current={name === onTop.value ? 'page' : undefined}>
                  {say.sheets[name]}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      <main id="main" tabIndex={-1}>
        <Sheet />
      </main>
      <div class="ledge" aria-hidden="true" />
      <footer>
        <div class="fields">
          <label>
            {say.language}
            <select
              id="language"
              value={chosenLanguage.value}
              onChange={(event) => {
                chosenLanguage.value = event.currentTarget.value as Language | '';
              }}
            >
              <option value="">{say.usual}</option>
              {LANGUAGES.map((language) => (
                <option key={language} value={language}>
                  {standWords({ language }).itself}
                </option>
              ))}
            </select>
          </label>
          <label>
            {panelWords(reader.value).labels.noteNames}
            <select
              value={chosenNaming.value}
              onChange={(event) => {
                chosenNaming.value = event.currentTarget.value as NoteNaming | '';
              }}
            >
              <option value="">{say.usual}</option>
              {NOTE_NAMINGS.map((naming, i) => (
                <option key={naming} value={naming}>
                  {say.namings[i]}
                </option>
              ))}
            </select>
          </label>
        </div>
        <p>
          <strong>{say.stays}</strong> {say.engravedBy}
        </p>
      </footer>
    </>
  );
}

render(<Stand />, document.getElementById('stand')!);
// The engraver is ready before the first music comes.
setTimeout(() => void startEngraver(), 50);
