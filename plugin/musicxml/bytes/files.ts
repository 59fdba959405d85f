/** The bytes part of the MusicXML door: encodings and compressed files. Needs TextDecoder and fflate, so not for the host. */

export { packedScore, unpackedScore } from './container.ts';
export * from './pieces.ts';
export * from './scoreFile.ts';
