/**
 * Every rule by cases: parts in which it must keep silent, and parts in which it must speak, at which notes, and what
 * its words must name. Horn in F on a double horn unless a case says otherwise; the parts are our own.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RULES } from '../../core/rules/rules.ts';
import { findingText } from '../../core/words/findings.ts';
import { ENGLISH_READER } from '../../core/words/language.ts';
import { CASES, findingsOf } from './ruleCases.ts';

describe.each(Object.entries(CASES))('%s', (id, cases) => {
  test.each(cases)('$part → $at', (example) => {
    const findings = findingsOf(id, example);
    expect(findings.map(({ noteIndex }) => noteIndex)).toEqual(example.at);
    const said =
      findings.map((finding) => {
        const { message, remedy } = findingText(finding, ENGLISH_READER);
        return `${message} ${remedy}`;
      })[0] ?? '';
    for (const name of example.names ?? []) expect(said).toContain(name);
  });
});

describe('the list of rules', () => {
  const folder = new URL('../../core/rules/', import.meta.url);
  const files = readdirSync(folder).filter(
    (file) => !['rule.ts', 'rules.ts', 'handJoin.ts', 'examine.ts', 'counts.ts', 'askNote.ts'].includes(file),
  );
  const ids = RULES.map(({ id }) => id);

  test('holds the sixteen rules of the trade that we know, each once, each in its own file', () => {
    expect(new Set(ids).size).toBe(16);
    expect(ids).toHaveLength(16);
    const named = ids.map((id) => `${id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase())}.ts`);
    expect(named.sort()).toEqual(files.sort());
  });

  test.each(files)('%s says what it finds, why, and from where', (file) => {
    const header = /^\/\*\*.*?\*\//s.exec(readFileSync(new URL(file, folder), 'utf8'))![0];
    expect(header).toContain(' * Finds ');
    expect(header).toContain(' * Why: ');
    expect(header).toMatch(/@source|From memory|commonPractice/);
  });

  test.each(ids)('%s has clean cases, failing cases and one with two findings or more', (id) => {
    const cases = CASES[id] ?? [];
    expect(cases.filter(({ at }) => at.length === 0).length).toBeGreaterThan(0);
    expect(cases.filter(({ at }) => at.length === 1).length).toBeGreaterThan(0);
    expect(cases.filter(({ at }) => at.length >= 2).length).toBeGreaterThan(0);
  });

  test('every finding is two or three words for the page and whole sentences for the list', () => {
    const findings = Object.entries(CASES).flatMap(([id, cases]) =>
      cases.flatMap((example) => findingsOf(id, example)),
    );
    expect(findings.length).toBeGreaterThan(30);
    for (const finding of findings) {
      const { brief, message, remedy } = findingText(finding, ENGLISH_READER);
      expect(brief.split(' ').length).toBeLessThanOrEqual(3);
      expect(message).toMatch(/^["A-Z].*\.$/);
      expect(remedy).toMatch(/^[A-Z].*\.$/);
      expect(`${message}${remedy}`).not.toMatch(/undefined|NaN|null|\.\./);
    }
  });
});
