/** Small programs that go through lists: loops in one another and in functions, spread lists, lists taken apart. */
import fc from 'fast-check';

/** What a place in a program may name. */
interface Scope {
  /** Variables `v0`, `v1`, … up to, and without, this one. */
  readonly variables: number;
  /** Loops that can be left or gone on with from here. */
  readonly labels: readonly string[];
  /** How many levels there may be inside. */
  readonly levels: number;
}

function valueIn({ variables }: Scope): fc.Arbitrary<string> {
  const number = fc.integer({ min: 0, max: 9 }).map(String);
  return variables === 0
    ? number
    : fc.oneof(
        number,
        fc.nat(variables - 1).map((i) => `v${i}`),
      );
}

function listIn(scope: Scope): fc.Arbitrary<string> {
  const value = valueIn(scope);
  const plain = fc.oneof(
    fc.array(value, { maxLength: 3 }).map((values) => `[${values.join(', ')}]`),
    fc.constantFrom('"a\u{1F3BA}b"', '[1, , 3]', 'new Map([[1, 2]])', 'new Set([1, 2, 1])'),
  );
  if (scope.levels === 0) return plain;
  const inside = { ...scope, levels: scope.levels - 1 };
  const parts = partsIn(inside);
  const each = `v${scope.variables}`;
  return fc.oneof(
    plain,
    parts.map((all) => `[${all}]`),
    parts.map((all) => `[].concat(${all})`),
    fc
      .tuple(listIn(inside), statementsIn({ ...inside, variables: scope.variables + 1, labels: [] }))
      .map(([list, body]) => `[...${list}].map((${each}) => { ${body} return ${each}; })`),
  );
}

/** What is spread and what is not, beside one another. */
function partsIn(scope: Scope): fc.Arbitrary<string> {
  const list = listIn(scope).map((each) => `...${each}`);
  return fc
    .tuple(list, fc.array(fc.oneof(valueIn(scope), list), { maxLength: 2 }))
    .map(([one, others]) => [one, ...others].join(', '));
}

function statementsIn(scope: Scope): fc.Arbitrary<string> {
  return fc.array(statementIn(scope), { minLength: 1, maxLength: 3 }).map((all) => all.join(' '));
}

function statementIn(scope: Scope): fc.Arbitrary<string> {
  const { variables, labels, levels } = scope;
  const [one, other] = [`v${variables}`, `v${variables + 1}`];
  const plain = [
    valueIn(scope).map((value) => `out.push(${value});`),
    partsIn({ ...scope, levels: 0 }).map((parts) => `out.push(${parts});`),
    listIn({ ...scope, levels: 0 }).map(
      (list) => `{ const [${one}, , ${other}] = ${list}; out.push(${one}, ${other}); }`,
    ),
    ...labels.map((label) =>
      fc.constantFrom('break', 'continue').map((how) => `if (out.length % 3 === 0) ${how} ${label};`),
    ),
  ];
  if (levels === 0) return fc.oneof(...plain);
  const label = `l${variables}`;
  const inside = { variables: variables + 1, labels: [...labels, label], levels: levels - 1 };
  const loop = fc
    .tuple(
      fc.constantFrom(`const ${one}`, `let ${one}`, `const [${one}]`),
      listIn({ ...scope, levels: levels - 1 }),
      fc.oneof(
        statementIn(inside),
        statementsIn(inside).map((body) => `{ ${body} }`),
        statementsIn(inside).map((body) => `{ const later = () => ${one}; ${body} out.push(later()); }`),
        statementsIn(scope.levels > 1 ? { ...inside, levels: 0 } : inside).map(
          (body) => `{ let ${one} = 5; ${body} }`,
        ),
      ),
    )
    .map(([declared, list, body]) =>
      // What is taken apart must be a list itself.
      declared.endsWith(']')
        ? `${label}: for (${declared} of [${list}, "xy"]) ${body}`
        : `${label}: for (${declared} of ${list}) ${body}`,
    );
  return fc.oneof(...plain, loop, loop);
}

/** Statements that put what they come to into `out`. */
export const smallProgram: fc.Arbitrary<string> = statementsIn({ variables: 0, labels: [], levels: 2 });
