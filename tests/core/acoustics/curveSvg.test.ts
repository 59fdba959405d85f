import { DOMParser, type Element } from '@xmldom/xmldom';
import { describe, expect, test } from 'vitest';
import { closingCurve, curveSvg } from '../../../core/acoustics/index.ts';
import { F_SIDE } from '../../../core/horn/sides.ts';

const ALL = closingCurve(F_SIDE);
const EIGHTH = closingCurve(F_SIDE, { harmonics: [8] });

/** Reads the picture with an independent XML reader that takes no fault lightly. */
function read(svg: string): Element {
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  return parser.parseFromString(svg, 'image/svg+xml').documentElement!;
}

/** Relative luminance and contrast by W3C, Web Content Accessibility Guidelines 2.1, § 1.4.11: graphics need 3 : 1. */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const full = colour.length === 4 ? colour.replace(/[^#]/g, '$&$&') : colour;
    const [r, g, b] = [1, 3, 5].map((at) => {
      const value = Number.parseInt(full.slice(at, at + 2), 16) / 255;
      return value <= 0.03928 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
  };
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high! + 0.05) / (low! + 0.05);
}

describe('the closing picture', () => {
  test('is well-formed, alone on its feet, without script', () => {
    const svg = curveSvg(ALL, { title: 'C5 <half> & "more"' });
    const root = read(svg);
    expect(root.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(root.getElementsByTagName('script')).toHaveLength(0);
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\(|href|@import| on\w+=/);
    expect(root.getElementsByTagName('title')[0]!.textContent).toBe('C5 <half> & "more"');
  });

  test('is named and told in words', () => {
    const root = read(curveSvg(EIGHTH));
    expect(root.getAttribute('role')).toBe('img');
    const [title, desc] = ['title', 'desc'].map((name) => root.getElementsByTagName(name)[0]!);
    expect(root.getAttribute('aria-labelledby')).toBe(
      `${title!.getAttribute('id')} ${desc!.getAttribute('id')}`,
    );
    expect(title!.textContent).toContain('43.7 Hz');
    expect(desc!.textContent).toMatch(/harmonic 8 falls 11\d cents/);
  });

  test('draws every step of every harmonic, no two lines alike', () => {
    const lines = [...read(curveSvg(ALL)).getElementsByTagName('path')].filter(
      (path) => path.getAttribute('class') === 'cc-line',
    );
    expect(lines).toHaveLength(16);
    for (const line of lines) expect(line.getAttribute('d')!.split('L')).toHaveLength(21);
    const looks = lines.map(
      (line) => `${line.getAttribute('stroke')} ${line.getAttribute('stroke-dasharray')}`,
    );
    expect(new Set(looks).size).toBe(16);
  });

  test('labels keep their distance and stay in the picture', () => {
    const labels = [...read(curveSvg(ALL)).getElementsByTagName('text')].filter((text) =>
      /^\d+: /.test(text.textContent ?? ''),
    );
    expect(labels).toHaveLength(16);
    const heights = labels.map((label) => Number(label.getAttribute('y'))).sort((a, b) => a - b);
    heights.slice(1).forEach((height, i) => {
      expect(height - heights[i]!).toBeGreaterThanOrEqual(14.8);
    });
    expect(heights[15]).toBeLessThan(480);
    expect(heights[0]).toBeGreaterThan(40);
  });

  test('every line stands out by 3 : 1 on the light and on the dark panel', () => {
    const svg = curveSvg(ALL);
    const panels = [...svg.matchAll(/\.cc-panel\{fill:(#\w+)\}/g)].map((match) => match[1]!);
    const strokes = new Set([...svg.matchAll(/stroke="(#\w+)"/g)].map((match) => match[1]!));
    expect(panels).toHaveLength(2);
    expect(strokes.size).toBe(4);
    for (const panel of panels)
      for (const stroke of strokes)
        expect(contrast(panel, stroke), `${stroke} on ${panel}`).toBeGreaterThan(3);
  });

  test('points out a wanted pitch, and leaves it out where the hand does not reach it', () => {
    const circles = (dropCents: number) =>
      read(curveSvg(EIGHTH, { wanted: { harmonicNumber: 8, dropCents } })).getElementsByTagName('circle')
        .length;
    expect(circles(50)).toBe(1);
    expect(circles(400)).toBe(0);
  });
});
