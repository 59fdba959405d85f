/** The MusicXML door: text in, text out. Needs no more than the host's script engine has. */

export * from './bytes/scoreError.ts';
export * from './read/readScore.ts';
export * from './read/score.ts';
export * from './write/writeMarks.ts';
