/**
 * The horn parts of a score as the host writes them, which touches neither the undo history nor the selection. A part of
 * which the user made a part score is written alone, in a fraction of the time that the whole score takes.
 */
import { EditorFault } from './editorFault.ts';
import { hornParts } from './hornParts.ts';
import { type Host, type HostPart, type HostScore, listOf } from './hostApi.ts';
import { partText } from './ownFormat.ts';
import { throughTemporaryFile } from './temporaryFile.ts';
import type { PartText } from './writtenBars.ts';

/** A score that is written as soon as one of its parts is asked for, and the whole of it once at most. */
export class WrittenScore {
  private readonly host: Host;
  private readonly score: HostScore;
  private whole: string | null = null;

  constructor(host: Host, score: HostScore) {
    this.host = host;
    this.score = score;
  }

  /** The staves of a part, and its instrument. */
  textOf(part: HostPart): PartText {
    const alone = this.whole === null ? this.writtenAlone(part) : null;
    if (alone) return alone;
    this.whole ??= written(this.host, this.score);
    return partText(this.whole, part);
  }

  private writtenAlone(part: HostPart): PartText | null {
    for (const { score, own } of partScoresOf(this.score, part)) {
      const text = written(this.host, score);
      if (isLinked(text, own, part)) return partText(text, own);
    }
    return null;
  }
}

/** True where the user made a part score that may be the part's alone. */
export function hasPartScore(score: HostScore, part: HostPart): boolean {
  return partScoresOf(score, part).length > 0;
}

/** The part scores that hold nothing but a part of this name, instrument and size. */
function partScoresOf(score: HostScore, part: HostPart): { score: HostScore; own: HostPart }[] {
  const found: { score: HostScore; own: HostPart }[] = [];
  for (const { partScore } of listOf(score.excerpts)) {
    const own = partScore?.parts.length === 1 ? hornParts(partScore)[0] : undefined;
    if (partScore && own && isLike(own, part)) found.push({ score: partScore, own });
  }
  return found;
}

function isLike(one: HostPart, other: HostPart): boolean {
  return (
    one.partName === other.partName &&
    one.instrumentId === other.instrumentId &&
    one.endTrack - one.startTrack === other.endTrack - other.startTrack
  );
}

/** True where the staves of a written part score are those of the part, with all their voices. */
function isLinked(text: string, own: HostPart, part: HostPart): boolean {
  const by = part.startTrack - own.startTrack;
  for (let track = own.startTrack; track < own.endTrack; track += TRACKS_PER_STAFF) {
    const staff = new RegExp(
      `<Staff id="${track / TRACKS_PER_STAFF + 1}">\\s*<linkedTo>(\\d+)</linkedTo>`,
    ).exec(text);
    if (Number(staff?.[1]) !== (track + by) / TRACKS_PER_STAFF + 1) return false;
  }
  // Where voices were taken over one by one, the file says which.
  const voices = text.match(/<Tracklist [^>]*>/g) ?? [];
  return (
    voices.length === 0 ||
    (voices.length === own.endTrack - own.startTrack &&
      voices.every((voice) => {
        const [from, to] = (voice.match(/\d+/g) ?? []).map(Number);
        return from! - to! === by;
      }))
  );
}

const TRACKS_PER_STAFF = 4;

function written(host: Host, score: HostScore): string {
  return throughTemporaryFile(host.file, 'mscx', (path) => {
    if (!host.root.writeScore(score, path, 'mscx'))
      throw new EditorFault(({ notExported }) => notExported(path));
  });
}
