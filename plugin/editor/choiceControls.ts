/** The panel's controls for the player and for what is printed: what they show, and what using one changes. */
import {
  capital,
  HORNS,
  hornText,
  NOTE_NAMINGS,
  noteClassName,
  type PanelWords,
  panelWords,
  parsePitch,
  type Reader,
  type Settings,
} from '../../core/index.ts';
import {
  type Choice,
  chosenFor,
  HAND_OFFSET_RANGE,
  keepAsDefault,
  keepWithScore,
  type Switches,
  settingsOf,
  TOLERANCE_RANGE,
} from './choice.ts';
import type { Host, HostScore } from './hostApi.ts';
import type { ChoiceView } from './panelView.ts';
import { readerFor } from './reader.ts';

/** Switches of what is printed; `onlyChanges` leaves repeats out, `quickValves` prints the valves alone in quick notes, `widerBars` makes room. */
type Switch = keyof Switches | 'onlyChanges' | 'quickValves' | 'widerBars';
/** A control by its name. Lists give the place of what was chosen, from 0, boxes cents, switches true for on. */
export type Control = 'horn' | 'noteNaming' | 'tolerance' | 'handOffset' | Switch;

/** Notes by which ways to name them are told apart. */
const NAMED_NOTES = ['Bb4', 'B4'].map(parsePitch);

/** The choice that holds for the score that is open. */
export class ChoiceControls {
  private readonly host: Host;
  private current: Choice;

  constructor(host: Host) {
    this.host = host;
    this.current = chosenFor(host, host.root.curScore);
  }

  get choice(): Choice {
    return this.current;
  }

  get settings(): Settings {
    return settingsOf(this.current);
  }

  get reader(): Reader {
    return readerFor(this.host, this.current);
  }

  get words(): PanelWords {
    return panelWords(this.reader);
  }

  /** Takes over what was chosen for another score. */
  takeFrom(score: HostScore | null): void {
    this.current = chosenFor(this.host, score);
  }

  /** @returns true when the choice is another one now */
  use(control: Control, value: number | boolean): boolean {
    const choice = decided(this.current, control, value);
    if (JSON.stringify(choice) === JSON.stringify(this.current)) return false;
    this.current = choice;
    keepAsDefault(this.host, choice);
    const score = this.host.root.curScore;
    if (score) keepWithScore(score, choice);
    return true;
  }

  view(): ChoiceView {
    const { current, reader } = this;
    return {
      horns: HORNS.map((horn) => capital(hornText(horn, reader))),
      hornIndex: HORNS.findIndex(({ id }) => id === current.horn),
      noteNamings: NOTE_NAMINGS.map((noteNaming) =>
        NAMED_NOTES.map((note) => noteClassName(note, { ...reader, noteNaming })).join('  '),
      ),
      noteNamingIndex: NOTE_NAMINGS.indexOf(reader.noteNaming),
      choice: current,
      toleranceRange: TOLERANCE_RANGE,
      handOffsetRange: HAND_OFFSET_RANGE,
    };
  }
}

function decided(choice: Choice, control: Control, value: number | boolean): Choice {
  const { show } = choice;
  switch (control) {
    case 'horn':
      return { ...choice, horn: HORNS[Number(value)]?.id ?? choice.horn };
    case 'noteNaming':
      return { ...choice, noteNaming: NOTE_NAMINGS[Number(value)] ?? choice.noteNaming };
    case 'tolerance':
    case 'handOffset':
      return { ...choice, [control]: Number(value) };
    case 'onlyChanges':
      return { ...choice, show: { ...show, repeat: value ? 'changes' : 'all' } };
    case 'quickValves':
      return { ...choice, show: { ...show, quick: value ? 'valves' : 'full' } };
    case 'widerBars':
      return { ...choice, widerBars: Boolean(value) };
    default:
      return { ...choice, show: { ...show, [control]: Boolean(value) } };
  }
}
