/** A course: composed in the worker, since it takes seconds, whenever what is asked for changes while one is asked for. */
import { effect, signal } from '@preact/signals';
import { plainReader } from '../../../core/index.ts';
import { reader } from '../choices.ts';
import { order } from '../engraver/engraver.ts';
import type { ComposedPage } from '../engraver/orders.ts';
import { copy, isRangeWrong, isWanted, kind, weekCount, wish } from './wishes.ts';

/** Rest after the last change before a course is composed, in milliseconds: one that was begun is finished first. */
const REST = 400;

type Course =
  | { readonly ok: true; readonly pages: readonly ComposedPage[] }
  | { readonly ok: false; readonly reason: string };

/** The course, or why there can be none; null while it is being composed, or nobody asks for one. */
export const course = signal<Course | null>(null);

effect(() => {
  course.value = null;
  if (kind.value !== 'course' || isRangeWrong.value || !isWanted.value) return;
  const request = { ...wish.value, weeks: weekCount.value };
  const wanted = { kind: 'course', request, copy: copy.value, reader: plainReader(reader.value) } as const;
  let callOff = () => {};
  const timer = setTimeout(() => {
    callOff = order(wanted, (answer) => {
      if (answer.kind === 'course') course.value = { ok: true, pages: answer.pages };
      if (answer.kind === 'refused') course.value = { ok: false, reason: answer.reason };
    });
  }, REST);
  return () => {
    clearTimeout(timer);
    callOff();
  };
});
