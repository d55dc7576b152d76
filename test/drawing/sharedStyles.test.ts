import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/Mark.ts';
import { penSvg } from '../../src/drawing/penSvg.ts';
import { sharedStyles } from '../../src/drawing/sharedStyles.ts';

const at = (x: number, y: number): Mark[] => [
  { mark: 'area', rings: [[[x, y], [x + 9, y], [x, y + 9]]], line: 'piece', fill: 'cut' }, // biome-ignore format: corners
  { mark: 'path', steps: [[x, y], [x + 20, y]], line: 'chalk' }, // biome-ignore format: ends
  { mark: 'figure', at: [x, y], sizes: [26, 21], whole: '11', numerator: '3', denominator: '16', turn: 0, anchor: 'middle' }, // biome-ignore format: one figure
  { mark: 'text', at: [x, y + 4], size: 9, text: 'K4-1', weight: 700, turn: 90, anchor: 'start', clear: 'none' }, // biome-ignore format: one word
];
const drawing = (n: number) =>
  penSvg(at(n, 2 * n), { id: `card-${n}`, label: `Cut ${n}`, widthMm: 60, heightMm: 50, ratio: null }).svg;

/** All attributes of all marks, by name; those of a class are looked up in the styles. */
function attributesOf(svg: string, styles: string): readonly Readonly<Record<string, string>>[] {
  const rules = new Map([...styles.matchAll(/\.(\w+)\{([^}]*)\}/g)].map(([, name, body]) => [name, body!]));
  return [...svg.matchAll(/<(?:path|text|tspan)((?: [\w:-]+="[^"]*")*)/g)].map(([, written]) => {
    const pairs = [...written!.matchAll(/ ([\w:-]+)="([^"]*)"/g)].flatMap(([, name, value]) =>
      name === 'class'
        ? rules.get(value!)!.split(';').map((style) => style.replace(/px$/, '').split(':')) // biome-ignore format: one idea
        : [[name!, value!]],
    );
    return Object.fromEntries(
      pairs.map(([name, value]) => (name === 'white-space' ? ['xml:space', 'preserve'] : [name, value])),
    );
  });
}

describe('drawings that stand on one page', () => {
  const before = [1, 2, 3].map(drawing);
  const { styles, drawings } = sharedStyles(before);

  test('keep every look, place and word of every mark', () => {
    expect(drawings.map((svg) => attributesOf(svg, styles))).toEqual(
      before.map((svg) => attributesOf(svg, '')),
    );
    const wordsOf = (svg: string) => svg.replace(/<[^>]*>/g, '|');
    expect(drawings.map(wordsOf)).toEqual(before.map(wordsOf));
  });

  test('tell a look once, however many marks have it', () => {
    const rules = styles.match(/\{[^}]*\}/g)!;
    expect(new Set(rules).size).toBe(rules.length);
    expect(drawings.join('')).not.toMatch(/stroke-width=|font-weight=/);
  });

  test('give type its unit, without which a browser takes no notice of it', () => {
    expect(styles).toMatch(/font-size:[\d.]+px/);
    expect(styles).not.toMatch(/font-size:[\d.]+[;}]/);
  });
});
