/**
 * Rewrites, in the bundled script, what the editor's script engines are slow at. What goes through an iterator makes an object
 * and two texts at every step there: a step of `for … of` takes fifty times as long as one by index, in Qt 5.15 and in
 * Qt 6.4, and leaves as much more to collect. `npm run bench -- engines` measures each pair.
 */
import {
  type ArrayExpression,
  type ArrayPattern,
  type CallExpression,
  type Expression,
  type ForOfStatement,
  type Pattern,
  type Program,
  parse,
  type SpreadElement,
  type VariableDeclarator,
} from 'acorn';
import { simple } from 'acorn-walk';
import MagicString from 'magic-string';
import { requireFunction } from './requireFunction.ts';

/** The functions of the bundle that make a list of whatever can be gone through, and one of several; plugin/editor/engineLists.ts. */
const LISTED = 'asList';
const GAPLESS = 'gapless';
/** What the bundler copies objects with, property by property; the engines have that built in. */
const COPIERS = ['__spreadValues', '__spreadProps'];

/**
 * The same script without iterators where lists are gone through. What is gone through must be at hand: a generator would run
 * to its end first, and what is added to a `Map` or `Set` meanwhile is not met.
 * @param script a bundle in ECMAScript 2016 that has functions `asList` and `gapless` in its scope, as the bundler prints it:
 *   nothing has the name of another thing around it
 * @throws Error when it lacks one, or when an object's copy is to have accessors
 */
export function quickly(script: string): string {
  const text = new MagicString(script);
  const program = parse(script, { ecmaVersion: 2016 });
  for (const name of [LISTED, GAPLESS]) requireFunction(program, name);
  new Rewriter(text, script).rewrite(program);
  return text.toString();
}

class Rewriter {
  private readonly text: MagicString;
  private readonly script: string;
  private names = 0;

  constructor(text: MagicString, script: string) {
    this.text = text;
    this.script = script;
  }

  /** What stands inside is rewritten first, so that what is put at the same place comes in order. */
  rewrite(program: Program): void {
    simple(program, {
      ForOfStatement: (node) => this.byIndex(node),
      VariableDeclarator: (node) => this.declarator(node),
      AssignmentExpression: ({ left, right }) => this.copier(left, right),
      CallExpression: (node) => this.call(node as CallExpression),
      ArrayExpression: (node) => this.list(node),
    });
  }

  /** `for (const a of b) c` becomes `for (let at = 0, list = asList(b); at < list.length; at++) { const a = list[at]; c }`. */
  private byIndex({ start, end, left, right, body }: ForOfStatement): void {
    if (left.type !== 'VariableDeclaration' || right.type === 'SequenceExpression') return;
    const { text } = this;
    const at = this.name('at');
    const list = this.name('list');
    const declared = `${left.kind} ${this.taken(left.declarations[0]!.id, `${list}[${at}]`)};`;
    text.overwrite(start, right.start, `for (let ${at} = 0, ${list} = ${LISTED}(`);
    text.overwrite(right.end, body.start, `); ${at} < ${list}.length; ${at}++) `);
    if (body.type === 'BlockStatement') text.appendLeft(body.start + 1, declared);
    else {
      text.appendRight(body.start, `{ ${declared} `);
      text.appendLeft(end, ' }');
    }
  }

  /** `[a, b] = c` becomes `list = asList(c), a = list[0], b = list[1]`. */
  private declarator({ id, init }: VariableDeclarator): void {
    if (!init || init.type === 'SequenceExpression') return;
    this.copier(id, init);
    if (!isPlain(id)) return;
    const { text } = this;
    const list = this.name('list');
    text.overwrite(id.start, init.start, `${list} = ${LISTED}(`);
    text.appendLeft(init.end, `)${placesOf(id, list)}`);
  }

  private copier(name: Pattern, value: Expression): void {
    if (name.type === 'Identifier' && COPIERS.indexOf(name.name) >= 0)
      this.text.overwrite(value.start, value.end, 'Object.assign');
  }

  /** `a.b(...c)` becomes `a.b.apply(a, gapless([].concat(asList(c))))`: the engines hand over even what is no entry. */
  private call({ callee, arguments: given, end }: CallExpression): void {
    if (callee.type === 'Identifier' && COPIERS.indexOf(callee.name) >= 0) refuseAccessors(given);
    if (!given.some(isSpread) || !given.every(isOne)) return;
    const owner =
      callee.type === 'Identifier'
        ? 'void 0'
        : callee.type === 'MemberExpression' && !callee.computed && isSafeTwice(callee.object as Expression)
          ? this.script.slice(callee.object.start, callee.object.end)
          : null;
    if (owner === null) return;
    this.join(callee.end, given, end, `.apply(${owner}, `, ')');
  }

  /** `[a, ...b]` becomes `gapless([].concat([a], asList(b)))`. */
  private list({ elements, start, end }: ArrayExpression): void {
    if (!elements.some((element) => element !== null && isSpread(element))) return;
    if (!elements.every((element) => element !== null && isOne(element))) return;
    this.join(start, elements as (Expression | SpreadElement)[], end, '', '');
  }

  /** Puts the parts of a list together, in place of what stands from `start` to `end`. */
  private join(
    start: number,
    parts: readonly (Expression | SpreadElement)[],
    end: number,
    before: string,
    after: string,
  ): void {
    const { text } = this;
    let from = start;
    let passed = `${before}${GAPLESS}([].concat(`;
    for (const part of parts) {
      const to = isSpread(part) ? part.argument.start : part.start;
      text.overwrite(from, to, `${passed}${isSpread(part) ? `${LISTED}(` : '['}`);
      passed = isSpread(part) ? '), ' : '], ';
      from = part.end;
    }
    text.overwrite(from, end, `${passed.slice(0, 1)}))${after}`);
  }

  /** What a declaration has instead of a pattern and what it takes apart. */
  private taken(pattern: Pattern, value: string): string {
    if (!isPlain(pattern)) return `${this.script.slice(pattern.start, pattern.end)} = ${value}`;
    const list = this.name('list');
    return `${list} = ${LISTED}(${value})${placesOf(pattern, list)}`;
  }

  /** A name that nothing else has. */
  private name(of: string): string {
    this.names += 1;
    return `$${of}${this.names}`;
  }
}

function isSpread(node: Expression | SpreadElement): node is SpreadElement {
  return node.type === 'SpreadElement';
}

/** False for what would be several arguments without its brackets. */
function isOne(node: Expression | SpreadElement): boolean {
  return (isSpread(node) ? node.argument : node).type !== 'SequenceExpression';
}

/** `Object.assign` would read an accessor once and keep what it says. */
function refuseAccessors(given: readonly (Expression | SpreadElement)[]): void {
  for (const object of given) {
    if (object.type !== 'ObjectExpression') continue;
    if (object.properties.some((property) => property.type === 'Property' && property.kind !== 'init'))
      throw new Error(
        'an object in the bundled script is copied with `...` and has accessors beside: define them otherwise',
      );
  }
}

/** True for a pattern that takes some first entries of a list, each as it is. */
function isPlain(pattern: Pattern): pattern is ArrayPattern {
  return (
    pattern.type === 'ArrayPattern' &&
    pattern.elements.every((element) => element === null || element.type === 'Identifier')
  );
}

function placesOf({ elements }: ArrayPattern, list: string): string {
  return elements
    .map((element, i) => (element?.type === 'Identifier' ? `, ${element.name} = ${list}[${i}]` : ''))
    .join('');
}

/** True for what may be said twice: it does nothing and is the same both times. */
function isSafeTwice(expression: Expression): boolean {
  switch (expression.type) {
    case 'Identifier':
    case 'ThisExpression':
      return true;
    case 'ArrayExpression':
      return expression.elements.length === 0;
    case 'MemberExpression':
      return !expression.computed && isSafeTwice(expression.object as Expression);
    default:
      return false;
  }
}
