/** Fingerings that the user wrote at notes: the player's own choice. Marks of ours that came in with a file are none. */
import { isOurMark } from '../../core/index.ts';
import { type HostNote, type HostRoot, type HostText, listOf } from './hostApi.ts';
import { plainText } from './plainValues.ts';

/** The user's fingerings at a note. */
export function fingeringsAt(root: HostRoot, { elements }: HostNote): HostText[] {
  if (!elements || elements.length === 0) return [];
  const { FINGERING } = root.Element;
  return listOf(elements).filter(
    ({ type, text, visible }) =>
      type === FINGERING && visible && !isOurMark(plainText(text)) && plainText(text).trim() !== '',
  );
}

/** The first of them as it prints, or `null`. */
export function fingeringOf(root: HostRoot, note: HostNote): string | null {
  const [first] = fingeringsAt(root, note);
  return first ? plainText(first.text).trim() : null;
}
