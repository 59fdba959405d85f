/** Rewrites what the editor's script engine gets wrong. */
import { type Function as AnyFunction, type Pattern, parse } from 'acorn';
import { simple } from 'acorn-walk';
import MagicString from 'magic-string';

/**
 * Takes destructuring out of parameter lists: `(a, { b }) => …` becomes `(a, _1) => { let { b } = _1; … }`.
 * The script engines of Qt 5.15 and Qt 6 lose a variable when several parameters are destructured and a closure
 * captures the first: `(({ a }, { b }, c) => (() => a)())({ a: 1 }, { b: 2 })` is undefined there. A test runs that
 * line in both engines.
 */
export function withPlainParameters(script: string): string {
  const text = new MagicString(script);
  const rewrite = (node: AnyFunction): void => {
    if (node.params.length < 2) return;
    const taken: string[] = [];
    node.params.forEach((param, i) => {
      const pattern = param.type === 'AssignmentPattern' ? param.left : param;
      if (!isDestructured(pattern)) return;
      const name = `_${i}`;
      taken.push(`${script.slice(pattern.start, pattern.end)} = ${name}`);
      text.overwrite(pattern.start, pattern.end, name);
    });
    if (taken.length === 0) return;
    const declared = `let ${taken.join(', ')};`;
    const { body } = node;
    if (body.type === 'BlockStatement') text.appendLeft(body.start + 1, declared);
    else {
      text.appendLeft(afterArrow(script, node), `{ ${declared} return (`);
      text.appendRight(node.end, '); }');
    }
  };
  simple(parse(script, { ecmaVersion: 2016 }), {
    FunctionDeclaration: (node) => rewrite(node as AnyFunction),
    FunctionExpression: (node) => rewrite(node as AnyFunction),
    ArrowFunctionExpression: (node) => rewrite(node as AnyFunction),
  });
  return text.toString();
}

function isDestructured({ type }: Pattern): boolean {
  return type === 'ObjectPattern' || type === 'ArrayPattern';
}

/** Directly after the arrow: brackets around the expression come along. An arrow function ends with its expression. */
function afterArrow(script: string, { body }: AnyFunction): number {
  return script.lastIndexOf('=>', body.start) + 2;
}
