/** What the public doors turn away: one shape of message, that says what is allowed. Music with faults is no fault here. */

/**
 * Lets a number pass, ends included; any number without them.
 * @param name the field or parameter, as its caller knows it
 * @throws {TypeError} when `value` is no number, NaN too; {RangeError} when it lies outside
 */
export function checkNumber(
  name: string,
  value: unknown,
  lowest = Number.NEGATIVE_INFINITY,
  highest = Number.POSITIVE_INFINITY,
): void {
  if (typeof value !== 'number' || Number.isNaN(value))
    throw new TypeError(`"${name}" must be a number, got ${shown(value)}`);
  if (!(value >= lowest && value <= highest))
    throw new RangeError(`"${name}" must be ${between(lowest, highest)}, got ${value}`);
}

/**
 * Lets a whole number pass, ends included.
 * @throws {TypeError} when `value` is no number, NaN too; {RangeError} when it lies outside or is not whole
 */
export function checkInteger(name: string, value: unknown, lowest: number, highest: number): void {
  if (typeof value !== 'number' || Number.isNaN(value))
    throw new TypeError(`"${name}" must be a number, got ${shown(value)}`);
  if (!(value >= lowest && value <= highest) || value % 1 !== 0)
    throw new RangeError(`"${name}" must be an integer ${between(lowest, highest)}, got ${value}`);
}

/**
 * Lets one of a list pass.
 * @throws {RangeError} when `value` is none of them
 */
export function checkOneOf(name: string, value: unknown, allowed: readonly unknown[]): void {
  if (allowed.indexOf(value) >= 0) return;
  throw new RangeError(`"${name}" must be one of ${allowed.map(shown).join(', ')}, got ${shown(value)}`);
}

/**
 * Lets an object pass.
 * @param wanted what it is, in words: `a passage, as passageOf makes one`
 * @throws {TypeError} when `value` is no object
 */
export function checkObject(name: string, value: unknown, wanted: string): void {
  if (typeof value !== 'object' || value === null)
    throw new TypeError(`"${name}" must be ${wanted}, got ${shown(value)}`);
}

/**
 * Lets a list pass.
 * @param wanted what it is, in words
 * @throws {TypeError} when `value` is no list
 */
export function checkList(name: string, value: unknown, wanted: string): void {
  if (!Array.isArray(value)) throw new TypeError(`"${name}" must be ${wanted}, got ${shown(value)}`);
}

function between(lowest: number, highest: number): string {
  if (highest === Number.POSITIVE_INFINITY) return `${lowest} or more`;
  return `from ${lowest} to ${highest}`;
}

function shown(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(value);
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}
