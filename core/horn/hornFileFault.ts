/** What a horn file gets wrong, as data. */
export type HornFileFault =
  | {
      readonly is: 'not-json';
      /** What the JSON parser says, in its own words. */
      readonly plain: string;
    }
  | {
      readonly is: 'wrong-value';
      /** Where in the file, such as `sides[0].name`; empty for the file itself. */
      readonly at: string;
      readonly wanted: WantedValue;
      /** As it stands in the file, cut where it is long; empty for nothing. */
      readonly got: string;
    }
  | {
      readonly is: 'unknown-field';
      readonly at: string;
      readonly field: string;
      /** The fields there are. */
      readonly known: readonly string[];
    }
  | { readonly is: 'short-side-from' | 'no-side-stoppable' | 'order-for-some' | 'order-twice' };

/** What a field may hold. */
export type WantedValue =
  | { readonly is: 'like'; readonly example: string }
  | {
      readonly is: 'number' | 'whole';
      /** The least, in the unit that the field has. */
      readonly from: number;
      /** The most. */
      readonly to: number;
    }
  | {
      readonly is:
        | 'sides'
        | 'one-side'
        | 'fundamental'
        | 'note'
        | 'text'
        | 'flag'
        | 'valves'
        | 'valve-numbers';
    };
