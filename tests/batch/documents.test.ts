/** Every command that a document names exists and takes the options shown; every horn is named. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CROOKS, HORNS } from '../../core/index.ts';
import { bellhandHere, folderWith } from './bellhand.ts';

const ROOT = new URL('../../', import.meta.url);
const { scripts } = JSON.parse(readFileSync(new URL('package.json', ROOT), 'utf8'));
const DOCUMENTS = ['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(new URL(name, ROOT)));

test('there is a README to check', () => {
  expect(DOCUMENTS).toContain('README.md');
});

test.each(DOCUMENTS)('%s names only scripts that exist', (name) => {
  const named = [...readFileSync(new URL(name, ROOT), 'utf8').matchAll(/npm (?:run )?([a-z][\w:-]*)/g)].map(
    ([, word]) => word!,
  );
  expect(named.length).toBeGreaterThan(0);
  const builtIn = ['ci', 'test', 'i', 'install', 'link', 'pack'];
  expect(named.filter((word) => !(word in scripts) && !builtIn.includes(word))).toEqual([]);
});

test.each(DOCUMENTS)('%s names only commands and options that exist', async (name) => {
  const folder = folderWith();
  const helps = new Map<string, string>();
  const wrong: string[] = [];
  for (const code of codeOf(readFileSync(new URL(name, ROOT), 'utf8'))) {
    const command = /\bbellhand(?:\.js)? ([a-z]+)/.exec(code)?.[1];
    if (!command) continue;
    if (!helps.has(command)) helps.set(command, (await bellhandHere(folder, [command, '--help'])).stdout);
    const help = helps.get(command)!;
    if (help === '') wrong.push(command);
    for (const [option] of code.matchAll(/(?<=\s)--?[a-z][a-z-]*/g)) {
      if (!new RegExp(`(?:^|\\s)${option}[\\s,]`, 'm').test(help)) wrong.push(`${command} ${option}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('the README names every horn but the single crooks', () => {
  const readme = readFileSync(new URL('README.md', ROOT), 'utf8');
  const crooks = CROOKS.map(({ id }) => id);
  const named = HORNS.map(({ id }) => id).filter((id) => !crooks.includes(id));
  expect(named.length).toBeGreaterThanOrEqual(9);
  expect(named.filter((id) => !readme.includes(`\`${id}\``))).toEqual([]);
});

/** Lines of code blocks and texts between backticks. */
function codeOf(markdown: string): string[] {
  const blocks = markdown.match(/^(?: {4}|\t)\S.*$|(?<=^```[a-z]*\n)[\s\S]*?(?=^```)/gm) ?? [];
  const spans = markdown.match(/`[^`\n]+`/g) ?? [];
  return [...blocks.flatMap((block) => block.split('\n')), ...spans].map((code) => code.replace(/#.*$/, ''));
}
