/** The core's door as programs get it: its functions stand behind guards, which are made from their own declarations. */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import type { Parameter } from '../core/door/guarded.ts';
import { KINDS } from '../core/door/kinds.ts';
import * as door from '../core/index.ts';

/**
 * The text of a module that exports all that the door does.
 * @param types the folder with `core.d.ts`, the declarations of the door
 */
export function guardedDoor(types: string): string {
  const declared = parametersIn(types);
  const exported = Object.entries(door).map(([name, value]) => {
    const parameters = typeof value === 'function' ? declared.get(name) : undefined;
    const given = `door.${name}`;
    return `export const ${name} = ${parameters ? `guarded(${given}, ${JSON.stringify(parameters)})` : given};`;
  });
  return [
    "import * as door from './core/index.ts';",
    "import { guarded } from './core/door/guarded.ts';",
    ...exported,
  ].join('\n');
}

/** The parameters of every function that a declaration file exports, its own and those it passes on. */
export function parametersIn(types: string, file = 'core.d.ts'): Map<string, Parameter[]> {
  const text = readFileSync(join(types, file), 'utf8');
  const found = new Map<string, Parameter[]>();
  for (const [, name, parameters] of text.matchAll(
    /^export declare function (\w+)(?:<.*?>)?\(([\s\S]*?)\): /gm,
  ))
    if (name! in door)
      found.set(
        name!,
        splitAtCommas(parameters!).map((one) => parameter(name!, one)),
      );
  for (const [, from] of text.matchAll(/^export (?:type )?(?:\*|\{[^}]*\}) from '(.*)\.js';$/gm))
    for (const [name, parameters] of parametersIn(types, posix.join(posix.dirname(file), `${from}.d.ts`)))
      found.set(name, parameters);
  return found;
}

/** `written: Pitch`, `options?: CurveSvgOptions`, `{ words }: Reader`. */
function parameter(of: string, text: string): Parameter {
  const [, pattern, optional, stated] = /^(\{[^}]*\}|\w+)(\??): ([\s\S]+)$/.exec(text.trim())!;
  const mayBeNull = / \| null$/.test(stated!);
  const plain = stated!.replace(/ \| null$/, '').replace(/\s+/g, ' ');
  const isList = /^readonly .*\[\]$/.test(plain);
  const kind = kindOf(isList ? plain.replace(/^readonly (.*)\[\]$/, '$1') : plain);
  if (!KINDS.has(kind))
    throw new Error(
      `core/door/kinds.ts does not know "${kind}", which ${of} of the core's door takes: add it there`,
    );
  const name = pattern!.startsWith('{') ? nameFor(kind) : pattern!;
  return { name, kind, isList, mayBeNull, mayBeLeftOut: optional === '?' };
}

/** The entry of `KINDS` that a type has. */
function kindOf(type: string): string {
  if (type.includes('=>')) return '=>';
  const picked = /^Pick<(\w+), /.exec(type);
  if (picked) return picked[1]!;
  const fields = [...type.matchAll(/readonly (\w+): /g)].map(([, field]) => field);
  if (type.startsWith('{')) return `{ ${fields.join(', ')} }`;
  return /Options$/.test(type) ? 'options' : type;
}

/** A parameter that is taken apart has no name of its own. */
function nameFor(kind: string): string {
  return /^\w+$/.test(kind) ? kind.slice(0, 1).toLowerCase() + kind.slice(1) : 'key';
}

/** At those that stand in no bracket. */
function splitAtCommas(text: string): string[] {
  const pieces: string[] = [];
  let depth = 0;
  let piece = '';
  for (const character of text.replace(/=>/g, '⇒')) {
    if ('([{<'.includes(character)) depth += 1;
    if (')]}>'.includes(character)) depth -= 1;
    if (character === ',' && depth === 0) {
      pieces.push(piece);
      piece = '';
    } else piece += character;
  }
  return [...pieces, piece].map((one) => one.replace(/⇒/g, '=>')).filter((one) => one.trim() !== '');
}
