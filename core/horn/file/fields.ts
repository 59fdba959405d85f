/** The fields of a horn file, one by one: each is what it should be, or is refused. */
import { parsePitch, pitchCents } from '../../pitch/pitch.ts';
import { HornFileError, wrongValue } from './hornFileError.ts';

/** An object of a JSON text. */
export type JsonRecord = { readonly [field: string]: unknown };

/** @param example what would be one */
export function record(json: unknown, at: string, example: string): JsonRecord {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    throw wrongValue(at, { is: 'like', example }, json);
  return json as JsonRecord;
}

/** A misspelt field would be passed over in silence and its default taken. */
export function onlyKnown(json: JsonRecord, at: string, known: readonly string[]): void {
  for (const field of Object.keys(json))
    if (known.indexOf(field) < 0) throw new HornFileError({ is: 'unknown-field', at, field, known });
}

/** A text that may stand on a page and in a table. */
export function name(json: JsonRecord, field: string, at: string): string {
  const value = json[field];
  if (typeof value !== 'string' || !/^[^\s<>&](?:[^\r\n<>&]{0,58}[^\s<>&])?$/.test(value))
    throw wrongValue(at, 'text', value);
  return value;
}

/** A sounding pitch in cents, C0 at 1200. */
export function soundingPitch(json: JsonRecord, field: string, at: string): number {
  const value = json[field];
  if (typeof value !== 'string') throw wrongValue(at, 'note', value);
  try {
    return pitchCents(parsePitch(value));
  } catch (_) {
    throw wrongValue(at, 'note', value);
  }
}

/** A number, ends included. */
export function number(json: JsonRecord, field: string, at: string, from: number, to: number): number {
  const value = json[field];
  if (typeof value !== 'number' || !(value >= from && value <= to))
    throw wrongValue(at, { is: 'number', from, to }, value);
  return value;
}

/** A whole number, ends included. */
export function whole(json: JsonRecord, field: string, at: string, from: number, to: number): number {
  const value = json[field];
  if (typeof value !== 'number' || Math.floor(value) !== value || value < from || value > to)
    throw wrongValue(at, { is: 'whole', from, to }, value);
  return value;
}

/** True or false, or left out. */
export function flag(json: JsonRecord, field: string, at: string, fallback: boolean): boolean {
  const value = field in json ? json[field] : fallback;
  if (typeof value !== 'boolean') throw wrongValue(at, 'flag', value);
  return value;
}
