/** What closing curves say, as text and as pictures. */

/** Numbers come as the language prints them. */
export interface CurveWords {
  /** Where the bell holds none of the harmonics asked for. */
  readonly none: string;
  /** Over the plot of one harmonic. @param hz of the open tone */
  plotted(harmonic: number, hz: string): string;
  /** Over its columns, no longer than 7 letters each. */
  readonly closing: string;
  readonly cents: string;
  /** Over the table of several. */
  readonly tabled: string;
  /** Over the column of their open tones, no longer than 8 letters. */
  readonly openHz: string;
  /** Over a picture that has no other title. @param hz of the tube's fundamental */
  pictured(hz: string): string;
  /** Below the picture. */
  readonly howFar: string;
  /** At the end of its scale. */
  readonly sealed: string;
  /** Beside the numbers of the harmonics. */
  readonly harmonic: string;
  /** The picture in words. @param ways as `falls`, `rises` and `stays` say them, with commas between */
  described(ways: string): string;
  falls(harmonic: number, cents: number): string;
  rises(harmonic: number, cents: number): string;
  stays(harmonic: number): string;
}
