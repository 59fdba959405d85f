/** What the hand makes of a glissando that it cannot make, to be heard in the page. */
import {
  type Examination,
  type Finding,
  fingeringText,
  noteName,
  type Reader,
  reportWords,
} from '../../core/index.ts';
import { glissandoPath } from './glissandoPicture.ts';
import { type Html, html } from './html.ts';
import { hasSound, slideSound } from './slideSound.ts';

/** A player for each way the hand goes, each once; none for findings about something else. */
export function soundsOf(
  findings: readonly Finding[],
  examination: Examination,
  reader: Reader,
): readonly Html[] {
  const sounds = new Map<string, Html>();
  const words = reportWords(reader);
  for (const finding of findings) {
    const path = glissandoPath(finding, examination);
    if (!path?.reached || !hasSound(path.reached.fingering)) continue;
    const { from, closes, reached } = path;
    const say = closes ? words.heardClosing : words.heardOpening;
    const label = say(noteName(from, reader), fingeringText(reached.fingering, reader));
    if (sounds.has(label)) continue;
    const wave = Buffer.from(slideSound(reached.fingering, closes ? 'closing' : 'opening'));
    sounds.set(
      label,
      html`<p class="sound">${label} <audio controls preload="none" aria-label="${label}" src="data:audio/wav;base64,${wave.toString('base64')}"></audio></p>`,
    );
  }
  return [...sounds.values()];
}
