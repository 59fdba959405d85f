/** The kinds of étude, in the order in which a pupil meets them. */
import { composeBend } from './bend.ts';
import { composeChange } from './change.ts';
import type { EtudeKind } from './etude.ts';
import { composeMatch } from './match.ts';
import { composePhrase } from './phrase.ts';
import { composeScale } from './scale.ts';
import type { Draft, Workshop } from './workshop.ts';

/** A kind of étude: its name, what it trains and how it goes. */
export interface KindOfEtude {
  readonly kind: EtudeKind;
  readonly title: string;
  /** One line that says what it trains. */
  readonly trains: string;
  /** The same for a natural horn, where it is something else. */
  readonly trainsOnNaturalHorn?: string;
  /** Beats a minute where none is asked for. */
  readonly tempo: number;
  compose(workshop: Workshop): Draft;
}

/** Every kind, in the order in which a pupil meets them. */
export const ETUDE_KINDS: readonly KindOfEtude[] = [
  {
    kind: 'match',
    title: 'The Same Note Twice',
    trains: 'Play each note open, then find the same pitch and the same strength with the hand closed.',
    tempo: 66,
    compose: composeMatch,
  },
  {
    kind: 'bend',
    title: 'Leaning on the Door',
    trains: 'Keep valves and lip still: the closing hand lets the tone sink, the opening hand lets it rise.',
    tempo: 60,
    compose: composeBend,
  },
  {
    kind: 'scale',
    title: 'Stairs in the Dark',
    trains: 'Scales and broken chords with the hand closed: know the fingerings, centre every note.',
    trainsOnNaturalHorn:
      'Scales and broken chords by hand: bring what the hand makes close to what the horn gives.',
    tempo: 72,
    compose: composeScale,
  },
  {
    kind: 'phrase',
    title: 'Over the Valley',
    trains: 'Answer every phrase with the hand closed, softer, but with the same shape and the same pitch.',
    tempo: 76,
    compose: composePhrase,
  },
  {
    kind: 'change',
    title: 'Swinging Gate',
    trains:
      'Close and open in ever shorter notes: the hand moves with the beat and the pitch stays where it is.',
    tempo: 60,
    compose: composeChange,
  },
];
