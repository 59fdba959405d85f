/** The functions of the door as programs get them: what makes no sense is turned away before it can do harm. */
import { checkList, checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { KINDS, type Kind } from './kinds.ts';

/** A parameter as the types state it. */
export interface Parameter {
  readonly name: string;
  /** Names of `KINDS`; for a list, of what is in it. */
  readonly kind: string;
  readonly isList: boolean;
  readonly mayBeNull: boolean;
  readonly mayBeLeftOut: boolean;
}

/**
 * The same function, that first looks at what it is given.
 * @throws {TypeError} from it, when an argument is missing or of another kind; {RangeError} when it is none of a list
 */
export function guarded<Given extends readonly unknown[], Result>(
  work: (...given: Given) => Result,
  parameters: readonly Parameter[],
): (...given: Given) => Result {
  return (...given) => {
    parameters.forEach((parameter, i) => {
      checkArgument(parameter, given[i]);
    });
    return work(...given);
  };
}

function checkArgument({ name, kind, isList, mayBeNull, mayBeLeftOut }: Parameter, value: unknown): void {
  if ((value === undefined && mayBeLeftOut) || (value === null && mayBeNull)) return;
  const known = KINDS.get(kind)!;
  if (!isList) {
    checkKind(name, known, value);
    return;
  }
  checkList(name, value, `a list, each ${known.wanted}`);
  (value as readonly unknown[]).forEach((item, i) => {
    checkKind(`${name}[${i}]`, known, item);
  });
}

function checkKind(name: string, kind: Kind, value: unknown): void {
  switch (kind.is) {
    case 'number':
      checkNumber(name, value);
      break;
    case 'text':
    case 'function':
      if (typeof value !== (kind.is === 'text' ? 'string' : 'function'))
        throw new TypeError(`"${name}" must be ${kind.wanted}, got ${typeof value}`);
      break;
    case 'one of':
      checkOneOf(name, value, kind.allowed);
      break;
    case 'object': {
      checkObject(name, value, kind.wanted);
      const missing = kind.fields.filter((field) => !(field in (value as object)));
      if (missing.length > 0)
        throw new TypeError(`"${name}" must be ${kind.wanted}; it has no "${missing.join('", "')}"`);
    }
  }
}
