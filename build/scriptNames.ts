/** What names mean in the bundled script. */
import type { Identifier, Node, Program } from 'acorn';
import { full, simple } from 'acorn-walk';

/** Every name that is declared or assigned to inside, once for each place. */
export function namesIn(node: Node): string[] {
  const names: string[] = [];
  full(node, (inside, _state, type) => {
    if (type === 'VariablePattern') names.push((inside as Identifier).name);
  });
  return names;
}

/**
 * Sees that a name means one function of ours wherever in the script it is said. The bundler gives a number to whichever
 * comes second of two that are called alike, and leaves a variable of a function's own the name.
 * @throws Error when there is no such function, or anything else has the name, with a number or without
 */
export function requireFunction(program: Program, name: string): void {
  const alike = namesIn(program).filter((one) => one.replace(/\d+$/, '') === name);
  let isFunction = false;
  simple(program, {
    FunctionDeclaration: ({ id }) => {
      if (id?.name === name) isFunction = true;
    },
  });
  if (isFunction && alike.length === 1) return;
  throw new Error(
    `the bundled script must have one function "${name}" and nothing else of that name, but has ${alike.length === 0 ? 'none' : alike.join(', ')}: see build/bundle.ts for where it comes from, and call the other otherwise`,
  );
}
