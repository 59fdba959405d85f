/** Looks after the functions of ours that the build puts calls of into the bundled script. */
import type { Identifier, Program } from 'acorn';
import { full } from 'acorn-walk';

/**
 * Sees that a name means one function wherever in the script it is said. The bundler gives a number to one of two things that
 * are called alike, and it may be ours.
 * @throws Error when there is no such function, or anything else has the name, with a number or without
 */
export function requireFunction(program: Program, name: string): void {
  const alike: string[] = [];
  let isFunction = false;
  full(program, (node, _state, type) => {
    if (node.type === 'FunctionDeclaration' && node.id?.name === name) isFunction = true;
    if (type !== 'VariablePattern') return;
    const named = (node as Identifier).name;
    if (named.replace(/\d+$/, '') === name) alike.push(named);
  });
  if (isFunction && alike.length === 1) return;
  throw new Error(
    `the bundled script must have one function "${name}" and nothing else of that name, but has ${alike.join(', ') || 'none'}: see build/bundle.ts for where ours comes from, and call the other otherwise`,
  );
}
