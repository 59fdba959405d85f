/** What is composed on the lesson's sheet: a page of exercises, one étude, or a page of a course. */
import { computed } from '@preact/signals';
import { zipSync } from 'fflate';
import {
  composeEtude,
  composeLesson,
  type EtudeKind,
  etudeSheet,
  parseKey,
  type Sheet,
} from '../../../core/index.ts';
import { sheetText } from '../../etude/sheetText.ts';
import { treeText } from '../../etude/treeText.ts';
import { sealText } from '../../musicxml/bytes/seal.ts';
import { reader, settings, words } from '../choices.ts';
import type { ComposedPage } from '../engraver/orders.ts';
import { course } from './course.ts';
import { copy, isRangeWrong, keyName, kind, level, seed, tempo, weekShown, wish } from './wishes.ts';

/** Bars of an étude. */
const BARS = 32;

type Composed =
  | { readonly ok: true; readonly page: ComposedPage }
  | { readonly ok: false; readonly reason: string };

/** The page on the sheet, or why there is none; null while a course is being composed. */
export const composed = computed<Composed | null>(() => {
  if (isRangeWrong.value) return { ok: false, reason: words.value.lowerFirst };
  if (kind.value === 'course') return weekOfCourse();
  const made = sheetMade(kind.value);
  if (!made.ok) return made;
  const { title, lines, trains } = made.sheet;
  const text = sheetText(made.sheet, settings.value, copy.value, treeText);
  return { ok: true, page: { title, lines, trains, text } };
});

type Made = { readonly ok: true; readonly sheet: Sheet } | { readonly ok: false; readonly reason: string };

function sheetMade(kindMade: EtudeKind | 'lesson'): Made {
  const asked = { ...wish.value, reader: reader.value };
  const key = keyName.value === '' ? null : parseKey(keyName.value);
  if (kindMade === 'lesson') return composeLesson({ ...asked, level: level.value, key });
  const made = composeEtude({
    ...asked,
    level: level.value,
    kind: kindMade,
    key: key ?? parseKey('C'),
    bars: BARS,
    tempo: tempo.value,
  });
  return made.ok ? { ok: true, sheet: etudeSheet(made.etude, reader.value) } : made;
}

function weekOfCourse(): Composed | null {
  const { value } = course;
  if (!value?.ok) return value;
  return { ok: true, page: value.pages[Math.min(weekShown.value, value.pages.length) - 1]! };
}

/** The page to take home, as the command line writes it; of a course every page, in a zip. */
export function taken(): { readonly name: string; readonly bytes: Uint8Array } {
  const ending = copy.value === 'plain' ? '-plain' : '';
  if (kind.value === 'course' && course.value?.ok) {
    const files = course.value.pages.map(({ text }, i) => [
      `week-${i < 9 ? '0' : ''}${i + 1}${ending}.musicxml`,
      sealText('etude', text),
    ]);
    return { name: `course-${seed.value}${ending}.zip`, bytes: zipSync(Object.fromEntries(files)) };
  }
  const text = composed.value?.ok ? composed.value.page.text : '';
  const start = kind.value === 'lesson' ? `lesson-${level.value}` : `etude-${kind.value}`;
  return { name: `${start}-${seed.value}${ending}.musicxml`, bytes: sealText('etude', text) };
}
