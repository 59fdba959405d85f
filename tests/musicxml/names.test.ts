/** Which parts are horns, and what their names tell of their key. Names in print: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { crookFromName } from '../../core/part/crookNames.ts';
import { isHornPart, type PartEvidence } from '../../core/part/hornNames.ts';
import { transpositionCents } from '../../core/pitch/pitch.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { corpusText, describeWithCorpus } from './corpus.ts';

function looksLikeHorn(evidence: Partial<PartEvidence>): boolean {
  return isHornPart({ names: [], instrumentNames: [], sounds: [], programs: [], ...evidence });
}

describe('names of horns', () => {
  it.each([
    ...[
      'Horn',
      'Horn in F',
      'F Horn 1',
      'Horns 1 & 2',
      'French Horn',
      'Hn.',
      'Natural Horn',
      'Hunting Horn',
      'Vienna Horn',
    ],
    ...[
      'Bb (alto) Horn 1',
      'B♭ Alto Horn',
      'Horn in B alto',
      'Horn in B♭ basso',
      'Solo Horn',
      'Single F Horn',
      'Double Horn',
      '4 Horns in F',
      'Horn/Solo',
    ],
    ...[
      'Waldhorn',
      'Ventilhorn in F',
      'Hörner in Es',
      '1. Horn (F)',
      'Hr.',
      'Naturhorn in D',
      'Jagdhorn',
      'Wiener Horn',
    ],
    ...[
      'Cor',
      'Cor en fa',
      'Cors 1 et 2',
      'Cor en mi bémol',
      'Cor de chasse',
      'Cor naturel',
      'Cor simple',
      'COR À PISTONS',
    ],
    ...['Corno', 'Corni in Fa', 'Corno in Mi♭', 'Corno da caccia', 'I Corno in F', 'CORNO III'],
    ...[
      'Trompa',
      'Trompa en Fa',
      'Trompas 1-2',
      'Hoorn in F',
      'Valthorn',
      'Lesní roh',
      'Waltornia',
      'Käyrätorvi',
      'Kürt',
    ],
    ...['Валторна', 'ホルン', '圆号'],
  ])('%s', (name) => {
    expect(looksLikeHorn({ names: [name] })).toBe(true);
  });

  it.each([
    ...[
      'English Horn',
      'Englischhorn',
      'Cor anglais',
      'Corno inglese',
      'Corno inglés',
      'Engl. Hr.',
      'English Horn in F',
    ],
    ...[
      'Alto Horn',
      'Althorn',
      'E♭ Alto Horn',
      'Tenor Horn',
      'Tenorhorn',
      'Baritone Horn',
      'Baryton',
      'Bariton-Horn',
    ],
    ...[
      'Basset Horn',
      'Bassetthorn',
      'Cor de basset',
      'Corno di bassetto',
      'Flugelhorn',
      'Flügelhorn',
      'Posthorn',
      'Post Horn',
    ],
    ...[
      'Cornet in B♭',
      'Cornetto',
      'Kornett',
      'Alphorn',
      'Alpenhorn',
      'Cor des Alpes',
      'Saxhorn',
      'Krummhorn',
      'Nebelhorn',
    ],
    ...[
      'Wagner Tuba',
      'Horn Tuba',
      'Mellophone',
      'Trumpet',
      'Trompete',
      'Tromba',
      'Chor',
      'Coro',
      'Thorn',
      'Cornamuse',
    ],
    ...['Flute', 'Piano', 'Violoncello', 'Hornpipe for strings', 'Corn', ''],
  ])('not %s', (name) => {
    expect(looksLikeHorn({ names: [name] })).toBe(false);
  });
});

describe('other evidence', () => {
  it.each<[string, Partial<PartEvidence>, boolean]>([
    ['the sound of a horn', { names: ['MusicXML Part'], sounds: ['brass.french-horn'] }, true],
    ['the sound of a natural horn', { sounds: ['brass.natural-horn'] }, true],
    [
      'the sound of an English horn',
      { names: ['Staff 3'], sounds: ['wind.reed.english-horn'], programs: [61] },
      false,
    ],
    ['an alto horn with the sound of a horn', { names: ['Alto Horn'], sounds: ['brass.french-horn'] }, false],
    [
      'a horn by name with a synthesiser behind it',
      { names: ['Horn in F'], instrumentNames: ['ARIA Player'], programs: [1] },
      true,
    ],
    ['the name of the instrument', { names: ['Staff 3'], instrumentNames: ['Horn in D'] }, true],
    ['the MIDI program alone', { names: ['Staff 3'], programs: [61] }, true],
    ['the MIDI program of another instrument by name', { names: ['Trombone'], programs: [61] }, false],
    ['another MIDI program', { names: ['Staff 3'], programs: [60] }, false],
  ])('%s', (_case, evidence, expected) => {
    expect(looksLikeHorn(evidence)).toBe(expected);
  });
});

describe('keys in names', () => {
  // Semitones from written to sounding: crooks in sources; C alto 0 … B♭ basso −14 [Grove 1879; tube lengths after Grove 1954].
  it.each([
    ...([
      ['Horn in C alto', 0],
      ['Horn in B♭ alto', -2],
      ['Horn in A', -3],
      ['Horn in G', -5],
      ['Horn in F', -7],
    ] as const),
    ...([
      ['Horn in E', -8],
      ['Horn in E♭', -9],
      ['Horn in D', -10],
      ['Horn in C', -12],
      ['Horn in B♭ basso', -14],
    ] as const),
    ...([
      ['F Horn 1', -7],
      ['Eb Horn 3', -9],
      ['Bb (alto) Horn 1', -2],
      ['E-flat Horn', -9],
      ['A Horn 2', -3],
      ['F-Horn', -7],
    ] as const),
    ...([
      ['Horn in Es', -9],
      ['Horn in B (tief)', -14],
      ['Horn in hoch B', -2],
      ['Horn (F)', -7],
      ['Hörner in As', -4],
    ] as const),
    ...([
      ['Waldhorn in Des', -11],
      ['Horn in H', -1],
      ['Horn in B alto', -2],
      ['Horn in B basso', -14],
      ['Horn in Fis', -6],
    ] as const),
    ...([
      ['Cor en fa', -7],
      ['Cor en mi bémol', -9],
      ['Cor en ré', -10],
      ['Cor en ut', -12],
      ['Cors en la♭', -4],
    ] as const),
    ...([
      ['Corno in Mi♭', -9],
      ['Corni in Fa', -7],
      ['Corno in Sol', -5],
      ['Corno in Si♭ basso', -14],
      ['Corno in La', -3],
    ] as const),
    ...([
      ['Trompa en Fa', -7],
      ['Trompa em Mi bemol', -9],
      ['Corno in Re', -10],
      ['Horn in F (doubling)', -7],
    ] as const),
  ])('%s sounds %i semitones from written', (name, semitones) => {
    const crook = crookFromName(name);
    expect(crook.ok && transpositionCents(crook.transposition)).toBe(100 * semitones);
  });

  it('moves the staff along with the semitones', () => {
    expect(crookFromName('Horn in E♭')).toEqual({
      ok: true,
      transposition: { diatonic: -5, chromatic: -9, octaveChange: 0 },
    });
    expect(crookFromName('Horn in F')).toEqual({
      ok: true,
      transposition: { diatonic: -4, chromatic: -7, octaveChange: 0 },
    });
    expect(crookFromName('Horn in B basso')).toEqual({
      ok: true,
      transposition: { diatonic: -1, chromatic: -2, octaveChange: -1 },
    });
  });

  it.each([
    'Horn',
    'Horn 1',
    'Horn II',
    'Corno III',
    'Horn A',
    'Solo Horn',
    'French Horn',
    'Horn in the distance',
    'Cor de chasse',
  ])('%s tells no key', (name) => {
    expect(crookFromName(name)).toEqual({ ok: false, reason: 'no-key' });
  });

  it.each(['Horn in B♭', 'Bb Horn 1', 'Horn in B', 'Corno in Si♭'])('%s leaves the octave open', (name) => {
    expect(crookFromName(name)).toEqual({ ok: false, reason: 'alto-or-basso' });
  });
});

describeWithCorpus('horns of real scores', (files) => {
  /** Horn parts of each file, counted by hand in its part list. */
  const HORNS: { readonly [file: string]: number } = {
    'horn/denigma__large_orchestra-ref.musicxml': 4,
    'horn/denigma__smartshape_lines-ref.musicxml': 1,
    'horn/denigma__tempo_varied_staves-ref.musicxml': 4,
    'horn/denigma__transposition-ref.musicxml': 1,
    'horn/mx__k013a_OrchestralScoreFinale.xml': 2,
    'horn/mx__k013b_OrchestralScoreSibelius.xml': 4,
    'horn/mx__ly72a_TransposingInstruments.xml': 1,
    'horn/mx__ly72b_TransposingInstruments_Full.xml': 2,
    'horn/osorch__Bach_BWV.232_09a.mxl': 1,
    'horn/osorch__Beach_Op.32_2.mxl': 4,
    'horn/osorch__Beethoven_Op.125_3.mxl': 4,
    'horn/osorch__Beethoven_Op.55_2.mxl': 3,
    'horn/osorch__Beethoven_Op.68_1.mxl': 2,
    'horn/osorch__Beethoven_Op.92_1.mxl': 2,
    'horn/osorch__Brahms_Op.68_2.mxl': 2,
    'horn/osorch__Brahms_Op.73_3.mxl': 4,
    'horn/osorch__Brahms_Op.98_2.mxl': 4,
    'horn/osorch__Bruckner_WAB.105_4.mxl': 4,
    'horn/osorch__D_un_matin_de_printemps.mxl': 4,
    'horn/osorch__Haydn_104_1.mxl': 2,
    'horn/osorch__Schubert_D.485_1.mxl': 2,
    'horn/vexml__structure_part_group_symbols.musicxml': 2,
  };

  it.each(files)('$name', (file) => {
    expect(readScore(corpusText(file)).horns).toHaveLength(HORNS[file.name] ?? 0);
  });
});
