/** Rewrites, in the bundled script, what the editor's script engines get wrong. A test runs each fault in both engines. */
import { type Function as AnyFunction, type CallExpression, type Pattern, type Program, parse } from 'acorn';
import { simple } from 'acorn-walk';
import MagicString from 'magic-string';
import { requireFunction } from './requireFunction.ts';

/** The function of the bundle that sorts in place of the engine; plugin/editor/engineSort.ts. */
const SORT = 'stableSort';

/**
 * The script as the engines of Qt 5.15 and Qt 6 run it rightly.
 * @param script a bundle in ECMAScript 2016 that has a function `stableSort` in its scope
 * @throws Error when it has not
 */
export function forEditorEngine(script: string): string {
  const text = new MagicString(script);
  const program = parse(script, { ecmaVersion: 2016 });
  requireFunction(program, SORT);
  takeParametersApart(text, program, script);
  sortStably(text, program, script);
  declareFirst(text, program);
  return text.toString();
}

/**
 * Takes destructuring out of parameter lists: `(a, { b }) => …` becomes `(a, _1) => { let { b } = _1; … }`. The
 * engines lose a variable when several parameters are destructured and a closure captures the first:
 * `(({ a }, { b }, c) => (() => a)())({ a: 1 }, { b: 2 })` is undefined there.
 */
function takeParametersApart(text: MagicString, program: Program, script: string): void {
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
      // Brackets around an arrow's expression come along: the function ends with them.
      text.appendLeft(script.lastIndexOf('=>', body.start) + 2, `{ ${declared} return (`);
      text.appendRight(node.end, '); }');
    }
  };
  simple(program, {
    FunctionDeclaration: (node) => rewrite(node as AnyFunction),
    FunctionExpression: (node) => rewrite(node as AnyFunction),
    ArrowFunctionExpression: (node) => rewrite(node as AnyFunction),
  });
}

/** `list.sort(compare)` becomes `stableSort(list, compare)`: the engines' own sort changes the order of equals. */
function sortStably(text: MagicString, program: Program, script: string): void {
  simple(program, {
    CallExpression(node: CallExpression) {
      const { callee } = node;
      if (callee.type !== 'MemberExpression' || callee.computed || callee.property.type !== 'Identifier')
        return;
      if (callee.property.name !== 'sort') return;
      const open = script.indexOf('(', callee.property.end);
      text.appendLeft(callee.object.start, `${SORT}(`);
      text.overwrite(callee.object.end, open + 1, node.arguments.length > 0 ? ', ' : '');
    },
  });
}

/**
 * `(() => { function f() { return a; } var a = 1; })()` becomes `(() => { var a; function f() { return a; } a = 1; })()`.
 * The engine of Qt 6 warns of each variable that stands further down than a function that reads it.
 */
function declareFirst(text: MagicString, program: Program): void {
  simple(program, {
    CallExpression({ callee }: CallExpression) {
      if (callee.type !== 'ArrowFunctionExpression' || callee.body.type !== 'BlockStatement') return;
      const names: string[] = [];
      for (const statement of callee.body.body) {
        if (statement.type !== 'VariableDeclaration' || statement.kind !== 'var') continue;
        const declared = statement.declarations.map(({ id }) => (id.type === 'Identifier' ? id.name : null));
        if (!declared.every((name) => name !== null)) continue;
        names.push(...(declared as string[]));
        text.remove(statement.start, statement.declarations[0]!.start);
      }
      if (names.length > 0) text.appendLeft(callee.body.start + 1, `var ${names.join(', ')};`);
    },
  });
}

function isDestructured({ type }: Pattern): boolean {
  return type === 'ObjectPattern' || type === 'ArrayPattern';
}
