import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { narrowFigures, textWidths } from '../../src/drawing/textWidths.ts';
import { readFont } from './readFont.ts';

describe('the table of text widths is that of the bundled font', () => {
  test.each([400, 700] as const)('weight %i', (weight) => {
    const font = readFont(weight);
    const table = textWidths[weight].flatMap(([width, characters]) =>
      [...characters].map((c) => [c, width] as const),
    );
    const wrong = table.filter(([c, width]) => !/\d/.test(c) && font.get(c) !== width);
    expect(wrong).toEqual([]);
    expect([...'0123456789'].map((c) => font.get(c))).toEqual(narrowFigures[weight]);
  });

  test('tabular figures are all as wide', () => {
    const widths = [...'0123456789'].map((digit) => textWidth(digit, 10));
    expect(new Set(widths).size).toBe(1);
  });

  test('a blank is known, as wide as one that does not break', () => {
    expect(textWidth(' ', 100)).toBe(textWidth('\u00a0', 100));
  });

  test('a letter with an accent that the table lacks is as wide as the bare one', () => {
    expect(textWidth('ẽ', 100)).toBe(textWidth('e', 100));
  });
});
