/** What keeps the editor's score from being read or marked, put into words where it is told. */
import { ENGLISH_READER, type PanelWords, panelWords, type Reader, scoreWords } from '../../core/index.ts';
import { ScoreError } from '../musicxml/bytes/scoreError.ts';

type Say = (faults: PanelWords['faults']) => string;

/** A fault in what the editor gives or takes. */
export class EditorFault extends Error {
  private readonly say: Say;

  constructor(say: Say) {
    super(say(panelWords(ENGLISH_READER).faults));
    this.say = say;
  }

  /** One clause without a full stop. */
  in(reader: Reader): string {
    return this.say(panelWords(reader).faults);
  }
}

/** Any fault as one clause without a full stop; the engine's own as they are. */
export function faultText(fault: unknown, reader: Reader): string {
  if (fault instanceof EditorFault) return fault.in(reader);
  if (fault instanceof ScoreError) return fault.in(scoreWords(reader));
  return (fault instanceof Error ? fault.message : String(fault)).replace(/\.$/, '');
}
