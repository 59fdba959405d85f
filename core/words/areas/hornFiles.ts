/** What is said of a horn file that cannot be read: what is wrong, then what to write. */
import type { WantedValue } from '../../horn/hornFileFault.ts';

/** What a field may hold, where no number goes with it. */
type PlainWish = Exclude<WantedValue['is'], 'like' | 'number' | 'whole'>;

/** One clause each, without a full stop. Names of fields and values stand as the file has them. */
export interface HornFileWords {
  /** @param plain what the JSON parser says, in its own words */
  notJson(plain: string): string;
  /** @param at a place in the file, or `theFile` @param got as the file has it, or `nothing` */
  mustBe(at: string, wanted: string, got: string): string;
  readonly theFile: string;
  readonly nothing: string;
  readonly wanted: { readonly [wish in PlainWish]: string };
  /** Ends included. */
  number(from: number, to: number): string;
  whole(from: number, to: number): string;
  /** @param known the fields there are, in a row */
  unknownField(at: string, field: string, known: string): string;
  readonly shortSideFrom: string;
  readonly noSideStoppable: string;
  readonly orderForSome: string;
  readonly orderTwice: string;
}
