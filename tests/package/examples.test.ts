/** Examples in comments and documents: each runs, and gives what stands behind its `// =>`. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
/** As programs import it. */
const core: object = await import(new URL('../../dist/core.js', import.meta.url).href);

interface Example {
  readonly place: string;
  readonly code: string;
}

/** What follows `@example` in a comment, up to its end or the next tag. */
function inComments(file: string): Example[] {
  const text = readFileSync(join(ROOT, file), 'utf8');
  return [...text.matchAll(/^ \* @example\n((?: \* (?!@).*\n)+)/gm)].map(([, lines]) => ({
    place: file,
    code: lines!.replace(/^ \* /gm, ''),
  }));
}

/** Blocks of JavaScript and TypeScript. */
function inDocument(file: string): Example[] {
  const text = readFileSync(join(ROOT, file), 'utf8');
  return [...text.matchAll(/^```[jt]s\n([\s\S]*?)^```$/gm)].map(([, code]) => ({ place: file, code: code! }));
}

const comments = (readdirSync(join(ROOT, 'core'), { recursive: true }) as string[])
  .filter((file) => file.endsWith('.ts'))
  .flatMap((file) => inComments(`core/${file}`));
const documents = ['README.md', 'DEVELOPERS.md'].flatMap(inDocument);

/** Runs an example with the public door in scope; its `// =>` are checked by `claim`. */
function run(code: string, claim: (got: unknown, stated: unknown) => void): void {
  const program = code
    .replace(/^import \{([^}]*)\} from 'bellhand';$/gm, (_, names: string) => {
      for (const name of names.split(',')) expect(Object.keys(core)).toContain(name.trim());
      return '';
    })
    .replace(/^(?:const (\w+) = )?(.*?);? *\/\/ => (.*)$/gm, (_, name, got, stated) =>
      name ? `const ${name} = ${got}; claim(${name}, ${stated});` : `claim(${got}, ${stated});`,
    );
  const names = Object.keys(core);
  new Function('claim', ...names, `'use strict';\n{\n${program}\n}`)(claim, ...Object.values(core));
}

describe('examples', () => {
  test('there are some, in comments and in README', () => {
    expect(comments.length).toBeGreaterThan(8);
    expect(documents.filter(({ place }) => place === 'README.md').length).toBeGreaterThan(0);
  });

  test.each([...comments, ...documents].map((one, i) => ({ ...one, i })))('$i: $place', ({ code }) => {
    let claims = 0;
    run(code, (got, stated) => {
      claims += 1;
      expect(got).toEqual(stated);
    });
    expect(claims).toBe(code.split('// =>').length - 1);
    expect(claims).toBeGreaterThan(0);
  });
});
