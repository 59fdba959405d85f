/** Fingerings in words, for people at a terminal. */
import type { Fingering } from '../../../core/index.ts';

/** `valve 2 on the F side (2)`, `no valve on the B♭ side (T0)`; `F crook` where there are no valves. */
export function fingeringText(fingering: Fingering): string {
  const { valves } = fingering.tube.combination;
  if (fingering.printed === '') return `${sideText(fingering)} crook`;
  const pressed =
    valves === '0' ? 'no valve' : `valve${valves.length > 1 ? 's' : ''} ${[...valves].join('+')}`;
  return `${pressed} on the ${sideText(fingering)} side (${fingering.printed})`;
}

/** `F`, `B♭`, `high F`. */
export function sideText(fingering: Fingering): string {
  return fingering.tube.side.name.replace(/^([A-G])b/, '$1♭').replace(/^([A-G])#/, '$1♯');
}

/** `in tune`, `13 cents sharp`, `5 cents flat`. */
export function centsOff(deviationCents: number): string {
  const cents = Math.round(deviationCents);
  if (cents === 0) return 'in tune';
  return `${Math.abs(cents)} cents ${cents > 0 ? 'sharp' : 'flat'}`;
}

/** A deviation for a column of a table: `+13`, `−5`, `0`. */
export function signedCents(deviationCents: number): string {
  const cents = Math.round(deviationCents);
  return cents === 0 ? '0' : `${cents > 0 ? '+' : '−'}${Math.abs(cents)}`;
}
