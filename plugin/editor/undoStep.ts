/** Changing the score so that one undo takes everything back, and a failure leaves nothing behind. */
import { type Host, type HostScore, isAtLeast } from './hostApi.ts';

/** Counts what has been changed, each change once it is made, so that a failed step that changed nothing takes nothing back. */
export interface UndoStep {
  changes: number;
}

/**
 * Runs `work` as one step of the host's undo history.
 * @throws whatever `work` throws, after everything it changed was taken back
 */
export function inOneStep<T>(host: Host, score: HostScore, work: (step: UndoStep) => T): T {
  const step: UndoStep = { changes: 0 };
  score.startCmd('Bellhand');
  try {
    const result = work(step);
    score.endCmd();
    return result;
  } catch (error) {
    takeBack(host, score, step);
    throw error;
  }
}

function takeBack(host: Host, score: HostScore, step: UndoStep): void {
  if (isAtLeast(host, 4, 0)) {
    score.endCmd(true);
    return;
  }
  score.endCmd();
  // An empty step leaves no trace in the history: undoing then would take back the user's own last edit.
  if (step.changes > 0) host.root.cmd('undo');
}
