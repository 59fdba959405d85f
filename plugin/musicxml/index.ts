/** The MusicXML door: text in, text out. Needs no more than the host's script engine has. */
export * from './readScore.ts';
export * from './score.ts';
export * from './scoreError.ts';
export * from './writeMarks.ts';
