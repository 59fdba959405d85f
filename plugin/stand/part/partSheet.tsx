/// <reference lib="dom" />
/** "A part": laid on the stand, examined, engraved with its remarks, and taken home marked. */
import { effect, signal } from '@preact/signals';
import { plainReader, reportWords } from '../../../core/index.ts';
import low from '../../batch/demo/low-water.musicxml';
import { entryList } from '../../pages/findingEntries.ts';
import { fingeringTable } from '../../pages/fingeringTable.ts';
import type { Screen } from '../../pages/partMusic.ts';
import { verdictBox } from '../../pages/verdictBox.ts';
import { reader, settings, words } from '../choices.ts';
import { order } from '../engraver/engraver.ts';
import { download } from '../fields.tsx';
import { isNarrow } from '../screen.ts';
import { FindingSteps } from './findingSteps.tsx';
import {
  chosenFile,
  chosenPart,
  examinations,
  heading,
  key,
  obstacle,
  opened,
  show,
  written,
} from './openedPart.ts';
import { PartChoices } from './partChoices.tsx';
import { shelve, shelved } from './shelf.ts';

/** Rest after the last change before music is engraved anew, in milliseconds. */
const REST = 120;

/** The screens in the order in which a part is engraved for them: a narrow one does not show what it prints. */
const SCREENS = { narrow: ['narrow', 'wide'], wide: ['wide'] } as const satisfies Record<
  string,
  readonly Screen[]
>;

/** The engraved music, by the part's place in the score and the screen it is for. */
const music = signal<ReadonlyMap<string, string>>(new Map());
const progress = signal<'idle' | 'engraving' | 'failed'>('idle');

void shelved().then((file) => {
  chosenFile.value ??= file;
});

effect(() => {
  const { value } = opened;
  if (!value?.ok || obstacle.value !== null) {
    music.value = new Map();
    progress.value = 'idle';
    return;
  }
  const wanted = {
    kind: 'part',
    text: value.file.text,
    partIds: value.score.horns.map(({ id }) => id),
    key: key.value,
    settings: settings.value,
    show: show.value,
    reader: plainReader(reader.value),
    screens: SCREENS[isNarrow.value ? 'narrow' : 'wide'],
  } as const;
  progress.value = 'engraving';
  let callOff = () => {};
  const fresh = new Map<string, string>();
  const timer = setTimeout(
    () => {
      callOff = order(wanted, (answer) => {
        if (answer.kind === 'fault') progress.value = 'failed';
        if (answer.kind === 'done') progress.value = 'idle';
        if (answer.kind !== 'part') return;
        fresh.set(answer.part + answer.screen, answer.html);
        music.value = new Map(fresh);
      });
    },
    music.peek().size > 0 ? REST : 0,
  );
  return () => {
    clearTimeout(timer);
    callOff();
  };
});

/** Lays a file on the stand. */
export async function lay(file: File): Promise<void> {
  put(file.name, new Uint8Array(await file.arrayBuffer()));
}

function put(name: string, bytes: Uint8Array): void {
  chosenPart.value = '';
  music.value = new Map();
  chosenFile.value = { name, bytes };
  void shelve(opened.value?.ok ? { name, bytes } : null);
}

export function PartSheet() {
  const say = words.value;
  return (
    <div class="part-sheet">
      <p class="choose">
        <label class="button">
          {say.choosePart}
          <input
            type="file"
            id="file"
            accept=".musicxml,.mxl,.xml"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              if (file) void lay(file);
            }}
          />
        </label>{' '}
        {say.orDrop}{' '}
        {chosenFile.value ? (
          <button
            type="button"
            onClick={() => {
              chosenFile.value = null;
              void shelve(null);
            }}
          >
            {say.putAway}
          </button>
        ) : (
          <button
            type="button"
            id="example"
            onClick={() => put('low-water.musicxml', new TextEncoder().encode(low))}
          >
            {say.example}
          </button>
        )}
      </p>
      {heading.value !== null && <h2>{heading.value}</h2>}
      <div role="alert">{obstacle.value !== null && <p class="box alarm">{obstacle.value}</p>}</div>
      {opened.value?.ok && <PartChoices />}
      {examinations.value.length > 0 && <Proof />}
    </div>
  );
}

/** The part as a marked proof: the verdict, what to do, the music, its fingerings. */
function Proof() {
  const say = words.value;
  const report = reportWords(reader.value);
  const kinds = ['marked', 'completed', 'cleared'] as const;
  return (
    <>
      <p class="buttons">
        {kinds.map((kind) => (
          <button
            type="button"
            key={kind}
            id={kind}
            onClick={() => {
              const file = written(kind);
              if (file) download(file.name, file.bytes);
            }}
          >
            ↓ {say[kind]}
          </button>
        ))}
        <button type="button" onClick={() => print()}>
          {say.print}
        </button>
      </p>
      <div id="verdict" {...inside(verdictBox(examinations.value, reader.value).text)} />
      <p class="quiet" role="status">
        {progress.value === 'engraving' ? say.engraving : progress.value === 'failed' ? say.notEngraved : ''}
      </p>
      {music.value.size > 0 && <FindingSteps ending={isNarrow.value ? 'n' : ''} />}
      {examinations.value.map((examination, part) => (
        <section key={String(part)} aria-labelledby={`part-${part}`}>
          <h2 id={`part-${part}`}>
            {examination.passage.name}: {report.findings}
          </h2>
          <div {...inside(entryList(examination, part, false, reader.value).text)} />
          <Music part={part} />
          <h2>{report.page.fingeringsOf(examination.passage.name)}</h2>
          <div {...inside(fingeringTable(examination, part, reader.value).text)} />
        </section>
      ))}
    </>
  );
}

/** A part's music for every screen that it was engraved for: the look of the pages shows one. */
function Music({ part }: { part: number }) {
  const engraved = SCREENS.narrow.filter((screen) => music.value.has(part + screen));
  if (engraved.length === 0) return null;
  return (
    <>
      <h3 class="over-music">{reportWords(reader.value).page.music}</h3>
      {engraved.map((screen) => (
        <div key={screen} class="music" {...inside(music.value.get(part + screen)!)} />
      ))}
    </>
  );
}

/** What the pages' own templates made, which escape all that they are given. */
function inside(text: string) {
  return { dangerouslySetInnerHTML: { __html: text } };
}
