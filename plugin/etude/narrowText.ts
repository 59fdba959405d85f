/** A sheet for a narrow screen: lines end where the screen does, and what is too long for one stands outside the music. */

/**
 * The MusicXML text of a sheet with no line breaks but before each exercise, and tempo alone over its first bar.
 * @param text as `sheetText` gives it
 */
export function narrowText(text: string): string {
  return text.replace(/<measure [\s\S]*?<\/measure>/g, (measure) =>
    measure.includes('<metronome') ? measure.replace(HEADING, '$1') : measure.replace(BREAK, ''),
  );
}

/** A number and what an exercise trains, before words for the tempo. */
const HEADING =
  /(<direction placement="above">)(?:\s*<direction-type>\s*<words [^>]*>[^<]*<\/words>\s*<\/direction-type>){2}(?=\s*<direction-type>\s*<words [^>]*>[^<]*<\/words>\s*<\/direction-type>\s*<direction-type>\s*<metronome)/;

const BREAK = /<print new-system="yes"\/>/;
