/** The main job: reads a passage as its player would, chooses fingerings and finds what cannot be played. */

import type { ExaminedNote } from './examinedNote.ts';
import { fingerings, nearestFingering, type Verdict } from './fingering.ts';
import { isHandState, readHandStates } from './handStates.ts';
import type { Passage } from './passage.ts';
import { soundingCents } from './pitch.ts';
import { choose } from './plan.ts';
import type { Finding } from './rules/rule.ts';
import { RULES } from './rules/rules.ts';
import { DEFAULT_SETTINGS, type Settings } from './settings.ts';

/** A whole passage, examined. */
export interface Examination {
  readonly passage: Passage;
  readonly settings: Settings;
  /** By note index. */
  readonly notes: readonly ExaminedNote[];
  /** In the order of the music. */
  readonly findings: readonly Finding[];
}

/** Examines a passage: hand states, fingerings, findings, verdicts. Open notes are examined too, since their neighbours need them. */
export function examine(passage: Passage, settings: Settings = DEFAULT_SETTINGS): Examination {
  const readings = readHandStates(passage);
  const chosen = choose(passage, readings, settings);
  const notes = passage.notes.map((note, i): ExaminedNote => {
    const reading = readings[i]!;
    const sounding = note.transposition ? soundingCents(note.written, note.transposition) : null;
    const candidates = sounding === null ? [] : fingerings(sounding, reading.state, settings);
    const { fingering, because } = chosen[i]!;
    const missing = sounding !== null && candidates.length === 0;
    return {
      note,
      reading,
      soundingCents: sounding,
      fingering,
      candidates,
      nearest: missing ? nearestFingering(sounding, reading.state, settings) : null,
      chosenBecause: because,
      verdict: fingering ? fingering.verdict : missing && isHandState(reading.state) ? 'impossible' : 'sure',
    };
  });
  const findings = ([] as Finding[]).concat(...RULES.map((rule) => rule.check({ passage, notes, settings })));
  findings.sort((a, b) => a.noteIndex - b.noteIndex);
  const worst = new Map<number, Verdict>();
  for (const { noteIndex, severity } of findings) {
    if (severity === 'advice' || worst.get(noteIndex) === 'impossible') continue;
    worst.set(noteIndex, severity);
  }
  return {
    passage,
    settings,
    notes: notes.map((examined, i) => {
      const found = worst.get(i);
      return found && examined.verdict !== 'impossible' ? { ...examined, verdict: found } : examined;
    }),
    findings,
  };
}
