/** Where the numbers come from. Doc comments name these keys behind `@source`. */
export const SOURCES = {
  iso16: 'ISO 16:1975, Acoustics: standard tuning frequency (A4 = 440 Hz)',
  musicxml40: 'W3C Music Notation Community Group, MusicXML 4.0, Final Report',
  smufl14: 'W3C Music Notation Community Group, SMuFL 1.4: brass techniques',
  smalley: 'C. Smalley, "Starting Stopping" (method sheet, CC0): bends, stopped fingerings, hand positions',
  boldin: 'J. Boldin, "Horn: Stopped and Muted", The Instrumentalist 63/2 (2008), 48–51',
  ericson:
    'J. Ericson, "The Stopping Valve" (2009) and tube lengths after Grove 1954 (2023), hornmatters.com',
  ellis:
    'A. J. Ellis in Helmholtz, On the Sensations of Tone: cents of the harmonics (agrees with the3rdhalf.com)',
  thirdHalf: 'the3rdhalf.com: valve combinations with the third slide set long, given for the trumpet',
  youngHorn: "Young Horn Player's Guide: semitone steps of the valves",
  widor: 'C.-M. Widor, Initiation musicale (1923), p. 34: degrees of closing on the natural horn',
  berlioz: "H. Berlioz, Grand traité d'instrumentation (1844), Le cor: quality of the stopped notes",
  pizka: 'H. Pizka, on Dukas, Villanelle (pizka.de): degrees of closing',
  grove1879:
    'G. Grove (ed.), A Dictionary of Music and Musicians, vol. 1 (1879), Horn, pp. 748–750 and appendix p. 679',
  grove1954:
    "Grove's Dictionary of Music and Musicians, 5th ed. (1954), Horn: tube lengths of the crooks, after ericson",
  midi10:
    'MIDI Manufacturers Association, Standard MIDI Files 1.0: 120 quarter notes a minute where no tempo is stated (from memory)',
  webster: 'A. G. Webster, "Acoustical impedance, and the theory of horns", PNAS 5 (1919), 275–282',
  keefe:
    'D. H. Keefe, "Acoustical wave propagation in cylindrical ducts", J. Acoust. Soc. Am. 75 (1984), 58–62 (numbers from memory, checked against the exact theory)',
  chaigneKergomard:
    'A. Chaigne and J. Kergomard, Acoustics of Musical Instruments (2016), ch. 7: transfer matrices of cylinders and cones',
  dalmont:
    'J.-P. Dalmont, C. J. Nederveen and N. Joly, "Radiation impedance of tubes with different flanges", J. Sound Vib. 244 (2001), 505–534 (numbers from memory, checked against Levine and Schwinger 1948)',
  benade:
    'A. H. Benade, Fundamentals of Musical Acoustics (1976), ch. 20: the Bessel horn as the shape of brass bells',
  hamiltonBlackstock:
    'M. F. Hamilton and D. T. Blackstock (eds.), Nonlinear Acoustics (1998), ch. 4: Burgers equation; β = 1.2 for air; Fubini solution (from memory)',
  menguyGilbert:
    'L. Menguy and J. Gilbert, "Weakly nonlinear gas oscillations in air-filled tubes", Acustica 86 (2000), 798–810: steepening of waves in brass instruments (from memory)',
  press: 'W. H. Press et al., Numerical Recipes (1986), § 10.1: golden section search',
  okabeIto: 'M. Okabe and K. Ito, Color Universal Design (2008): a palette for every kind of colour vision',
  commonPractice: 'common practice, no source',
} as const;

export type SourceKey = keyof typeof SOURCES;
