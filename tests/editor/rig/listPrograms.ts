/** Programs that go through lists in every way that the build rewrites, and in those that it leaves as they are. */

/** What becomes of each is what is in `out` at its end. */
export const LIST_PROGRAMS: readonly (readonly [what: string, program: string])[] = [
  ['a loop', 'for (const a of [1, 2, 3]) { out.push(a); }'],
  ['a body without braces', 'for (const a of [1, 2, 3]) if (a !== 2) out.push(a); out.push("end");'],
  ['no body at all', 'for (const a of [1, 2]); out.push("end");'],
  ['an empty list', 'for (const a of []) out.push(a); for (const a of "") out.push(a);'],
  [
    'loops in loops without braces',
    'for (const a of [[1, 2], [3]]) for (const b of a) for (const c of [b, -b]) out.push(c); out.push("end");',
  ],
  [
    'a loop in the list of another',
    'for (const a of [3, 4].map((b) => { let sum = 0; for (const c of [b, b]) sum += c; return sum; })) out.push(a);',
  ],
  ['an arrow without a body', 'for (const a of [[1], [2]].map((b) => [...b, ...b])) out.push(...a);'],
  [
    'labels',
    'outer: for (const a of [1, 2, 3, 4]) { for (const b of [1, 2, 3]) { if (b === a) continue outer; if (a === 4) break outer; out.push([a, b]); } }',
  ],
  [
    'a label inside',
    'for (const a of [1, 2]) inner: for (const b of [1, 2, 3]) { if (b === 2) continue inner; out.push(a * b); }',
  ],
  ['let that is assigned to', 'for (let a of [1, 2]) { a += 10; out.push(a); }'],
  ['var that stays', 'for (var a of [1, 2]) out.push(a); out.push(a);'],
  ['a variable from outside', 'let a; for (a of [1, 2]) out.push(a); out.push(a);'],
  [
    'closures',
    'const later = []; for (const a of [1, 2]) { for (let b of [1, 2]) { later.push(() => [a, b]); b += 5; } } for (const one of later) out.push(one());',
  ],
  [
    'the name declared anew inside',
    'for (const a of [1, 2]) { const a = 3; out.push(a); } for (const [b] of [[1]]) { for (const b of [7]) out.push(b); out.push(b); }',
  ],
  [
    'a list that grows and one that shrinks',
    'const list = [1, 2]; for (const a of list) { out.push(a); if (list.length < 5) list.push(a + 2); } for (const a of list) { out.push(a); list.pop(); }',
  ],
  ['return from inside', 'out.push((() => { for (const a of [1, 2, 3]) if (a > 1) return a; })());'],
  ['a switch inside', 'for (const a of [1, 2, 3]) switch (a) { case 2: continue; default: out.push(a); }'],
  [
    'characters beyond 16 bits',
    'for (const a of "a\u{1F3BA}b\u266F") out.push(a); out.push([..."\u{1F3BA}x"], Math.max(..."12")); const [a, b] = "\u{1F3BA}y"; out.push(a, b);',
  ],
  [
    'Map and Set',
    'for (const [key, value] of new Map([["a", 1], ["b", 2]])) out.push(key, value); for (const a of new Set([1, 1, 2])) out.push(a); out.push([...new Map([[1, 2]])], [...new Map([[1, 2]]).keys()]); const [a, b] = new Set([5, 6]); out.push(a, b);',
  ],
  [
    'arguments',
    'function all() { for (const a of arguments) out.push(a); return [...arguments]; } out.push(all(1, 2));',
  ],
  [
    'holes',
    'for (const a of [1, , 3]) out.push(a); const list = [...[, 2, , 4], 5]; out.push(list, list.map(() => 1), [...new Array(2)].map((_, i) => i)); const [a, b] = [, 1]; out.push(a, b); out.push(...[1, , 2]); out.push([, ...[1]]);',
  ],
  ['a short list', 'const [a, , b] = [1]; const [c, d] = []; out.push(a, b, c, d); const [] = [1];'],
  [
    'declarations beside one another',
    'let [a, b] = [1, 2], c = a + b, [d, e] = [c, b]; b = 7; out.push(a, b, c, d, e); for (let [i, j] = [0, 3]; i < j; i++) out.push(i);',
  ],
  [
    'patterns with defaults, rests, and patterns inside',
    'const [a = 5, b = 6] = [1]; const [c, ...d] = [1, 2, 3]; const [{ e }, [f]] = [{ e: 1 }, [2]]; out.push(a, b, c, d, e, f); for (const [g = 9] of [[], [1]]) out.push(g); for (const { h, i = 4 } of [{ h: 1 }]) out.push(h, i);',
  ],
  ['lists that change places', 'let [a, b] = [1, 2]; [a, b] = [b, a]; out.push(a, b);'],
  [
    'several lists and plain values',
    'const list = [2, 3]; out.push([1, ...list, 4, ...[], ...list.map((a) => a * 10)], [...list, [5]], [...[...list, 1], ...[...list]]); list.push(...list, 1, ...list); out.push(list);',
  ],
  ['a copy of its own', 'const list = [1]; const copy = [...list]; copy.push(2); out.push(list, copy);'],
  ['a list as the one entry', 'out.push([...[[1, 2]], ...[[3]]], [[1], ...[[2]]], Math.max(...[4]));'],
  [
    'methods',
    'const it = { sum: 0, add(...all) { for (const a of all) this.sum += a; return this; }, both(all) { return this.add(...all, 1); }, deep: { list: [3], length2() { return this.list.concat(...arguments); } } }; out.push(it.both([1, 2]).sum, it.deep.length2(...[[1], 2]));',
  ],
  [
    'a call’s result, called once',
    'let calls = 0; const f = () => { calls++; return { g: (...all) => all.length }; }; const o = [f()]; out.push(f().g(...[1, 2]), o[0].g(...[1]), calls);',
  ],
  [
    'a call among what is handed over',
    'const f = (...all) => all; out.push(f(...f(...f(1, ...[2])), ...f(3)));',
  ],
  [
    'new',
    'class A { constructor(...all) { this.all = all; } } class B extends A { constructor(...all) { super(...all, 3); } also(...all) { return super.toString.call(...all); } } out.push(new A(...[1, 2]).all, new B(...[1]).all, new Date(...[2020, 1]).getMonth());',
  ],
  [
    'commas',
    'for (const a of (0, [1, 2])) out.push(a); out.push(...(0, [3]), (1, 2)); out.push([...(0, [4]), (5, 6)]); const [a, b] = (0, [7, 8]); out.push(a, b);',
  ],
  [
    'copies of objects',
    'const a = { x: 1, y: 2 }; out.push({ ...a }, { ...a, x: 3 }, { x: 0, ...a, ...{ z: 4 } }, { ...undefined, ...null, ...a, w: [...[1]] }, { ...(a.x > 1 && a) }, { ...[5, 6] }); const { x, ...rest } = { ...a, v: 1 }; out.push(x, rest); const copy = { ...a }; copy.x = 9; out.push(a);',
  ],
  [
    'pieces of work',
    'function* pieces(list) { let sum = 0; for (const a of list) { const b = yield a; sum += b; if (sum > 2) return sum; } } function* all() { const [a, b] = [yield* pieces([1, 2, 3]), yield "more"]; out.push(...[a, ...(yield [b])]); } const it = all(); for (const a of [0, 1, 2, 3, [4, 5]]) out.push(it.next(a).value);',
  ],
  ['nothing to go through', 'for (const a of undefined) out.push(a);'],
  ['nothing to take apart', 'const [a] = null; out.push(a);'],
  ['nothing to put in', 'out.push(...undefined);'],
];
