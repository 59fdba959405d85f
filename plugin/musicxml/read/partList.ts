/** The part list at the head of a score: names, sounds and programs of its parts. */
import { isHornPart, isHornSound } from '../../../core/index.ts';
import type { ListedPart } from './score.ts';
import type { Attributes, ElementReader, Source } from './source.ts';

/** A listed part with what reading its notes needs. */
export interface PartEntry extends ListedPart {
  /** Instruments of the part that are horns, or `null` when every note is the horn's. */
  readonly hornInstruments: ReadonlySet<string> | null;
}

/** Gathers the part list while it is parsed. */
export class PartList implements ElementReader {
  readonly parts: PartEntry[] = [];
  private readonly source: Source;
  private readonly byId = new Map<string, PartEntry>();
  private id = '';
  private names: string[] = [];
  private displayed = '';
  private instrumentNames: string[] = [];
  private sounds: { instrument: string; sound: string }[] = [];
  private programs: number[] = [];
  private instruments: string[] = [];
  private isNameDisplay = false;
  /** Names of the groups that are open, by their number. */
  private readonly groups = new Map<string, string>();
  private group = '';

  constructor(source: Source) {
    this.source = source;
  }

  /** A part by its id; one that is not listed is added to the list. */
  entryOf(id: string): PartEntry {
    return this.byId.get(id) ?? this.add({ id, name: oneLine(id), isHorn: false, hornInstruments: null });
  }

  open(name: string, attributes: Attributes): boolean {
    switch (name) {
      case 'score-part':
        this.id = attributes.id ?? '';
        if (this.byId.has(this.id)) throw this.source.fault(({ idTwice }) => idTwice(oneLine(this.id)));
        this.names = [];
        this.displayed = '';
        this.instrumentNames = [];
        this.sounds = [];
        this.programs = [];
        this.instruments = [];
        return false;
      case 'part-group':
        this.group = attributes.number ?? '1';
        if (attributes.type === 'stop') this.groups.delete(this.group);
        return false;
      case 'score-instrument':
        this.instruments.push(attributes.id ?? '');
        return false;
      case 'part-name-display':
      case 'part-abbreviation-display':
        this.isNameDisplay = name === 'part-name-display';
        return false;
      case 'display-text':
        return this.isNameDisplay;
      case 'part-name':
      case 'group-name':
      case 'instrument-name':
      case 'instrument-sound':
      case 'midi-program':
        return true;
      default:
        return false;
    }
  }

  take(name: string, text: string): void {
    const value = oneLine(text);
    switch (name) {
      case 'part-name':
        if (value !== '') this.names.push(value);
        return;
      case 'group-name':
        if (value !== '') this.groups.set(this.group, value);
        return;
      case 'display-text':
        this.displayed += text;
        return;
      case 'instrument-name':
        if (value !== '') this.instrumentNames.push(value);
        return;
      case 'instrument-sound':
        if (value !== '')
          this.sounds.push({ instrument: this.instruments[this.instruments.length - 1] ?? '', sound: value });
        return;
      case 'midi-program':
        this.programs.push(Number(value));
    }
  }

  endChild(name: string): void {
    if (name === 'score-part') this.add(this.entry());
  }

  private add(entry: PartEntry): PartEntry {
    this.parts.push(entry);
    this.byId.set(entry.id, entry);
    return entry;
  }

  private entry(): PartEntry {
    const names = this.names.concat(oneLine(this.displayed)).filter((name) => name !== '');
    // Of a group "Horns in F", parts may be called no more than "1." and "2.".
    const group = Array.from(this.groups.values()).pop();
    if (group !== undefined && names.every((name) => /^[\s\d.,IVX+&-]*$/.test(name))) {
      names.unshift(oneLine(`${group} ${names[0] ?? ''}`));
    }
    const sounds = this.sounds.map(({ sound }) => sound);
    const isHorn = isHornPart({
      names,
      instrumentNames: this.instrumentNames,
      sounds,
      programs: this.programs,
    });
    const horns = this.sounds.filter(({ sound }) => isHornSound(sound)).map(({ instrument }) => instrument);
    const isMixed = horns.length > 0 && horns.length < this.sounds.length;
    return {
      id: this.id,
      name: names[0] ?? this.instrumentNames[0] ?? oneLine(this.id),
      isHorn,
      hornInstruments: isHorn && isMixed ? new Set(horns) : null,
    };
  }
}

/** Longer names are told by their beginning, in characters. */
const LONGEST_NAME = 200;

function oneLine(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > LONGEST_NAME ? `${line.slice(0, LONGEST_NAME)}…` : line;
}
