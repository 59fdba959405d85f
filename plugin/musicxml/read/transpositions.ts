/** How a part's printed notes sound, and what its own part would print, wherever the score says it. */

import {
  CONCERT_PITCH,
  crookFromName,
  type NamedCrook,
  type Pitch,
  soundingPitch,
  type Transposition,
  writtenPitch,
} from '../../../core/index.ts';
import type { AttributesReader } from './attributesReader.ts';
import type { TranspositionOrigin, TranspositionRemark } from './score.ts';

/**
 * The transposition of one part, from note to note. A score in concert pitch states octaves only, and under `for-part`
 * the transposition of the part to be made from it.
 * @source musicxml40: transpose, for-part, concert-score
 */
export class Transpositions {
  private readonly partName: string;
  private readonly isConcertScore: boolean;
  private readonly attributes: AttributesReader;
  private readonly named: NamedCrook;
  private firstOrigin: TranspositionOrigin | null = null;

  constructor(partName: string, isConcertScore: boolean, attributes: AttributesReader) {
    this.partName = partName;
    this.isConcertScore = isConcertScore;
    this.attributes = attributes;
    this.named = crookFromName(partName);
  }

  /** What holds for a staff at an onset, or `null` when nothing tells. */
  at(staff: number, onsetQuarters: number): Transposition | null {
    const stated = this.isConcertScore ? this.attributes.forPart : this.attributes.stated;
    const found = stated.at(staff, onsetQuarters);
    const named = this.named.ok ? this.named.transposition : null;
    if (this.firstOrigin === null) {
      const otherwise = this.isConcertScore ? 'concert-score' : 'nowhere';
      this.firstOrigin = found ? 'stated' : named ? 'name' : otherwise;
    }
    return found ?? named ?? (this.isConcertScore ? CONCERT_PITCH : null);
  }

  /** A pitch of the file as the horn's own part prints it, under the transposition that holds. */
  written(pitch: Pitch, transposition: Transposition | null, staff: number, onsetQuarters: number): Pitch {
    if (!this.isConcertScore || transposition === null) return pitch;
    const octaves = this.attributes.stated.at(staff, onsetQuarters);
    return writtenPitch(octaves ? soundingPitch(pitch, octaves) : pitch, transposition);
  }

  /** How the first note's transposition was found. */
  origin(): TranspositionOrigin {
    if (this.firstOrigin === null) this.at(1, 0);
    return this.firstOrigin ?? 'nowhere';
  }

  /** What the user should know where the transposition is not simply stated, else `null`. */
  remark(): TranspositionRemark | null {
    const from = this.origin();
    if (from === 'stated') return null;
    return { from, partName: this.partName, named: this.named.ok ? null : this.named.reason };
  }
}
