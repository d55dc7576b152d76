import { expect, test } from 'vitest';
import { clipMarks } from '../../src/drawing/clipMarks.ts';
import type { Mark } from '../../src/drawing/Mark.ts';
import { text } from '../../src/drawing/text.ts';

const box = { left: 0, bottom: 0, right: 10, top: 10 };
const square = (left: number, right: number): Mark => ({
  mark: 'area',
  rings: [[[left, 2], [right, 2], [right, 8], [left, 8]]], // biome-ignore format: a square on a line
  line: 'piece',
  fill: 'cut',
});

test('what lies inside stays as it is, what lies outside goes', () => {
  expect(clipMarks([square(2, 8)], box)).toEqual([square(2, 8)]);
  expect(clipMarks([square(12, 18)], box)).toEqual([]);
});

test('a piece that is cut off shows no edge where it is cut off', () => {
  const marks = clipMarks([square(4, 16)], box);
  const lines = marks.flatMap((mark) => (mark.mark === 'path' ? [mark.steps] : []));
  expect(lines).toEqual([
    [[4, 2], [10, 2]], // biome-ignore format: a line on a line
    [[10, 8], [4, 8]], // biome-ignore format: a line on a line
    [[4, 8], [4, 2]], // biome-ignore format: a line on a line
  ]);
  expect(marks.filter(({ mark }) => mark === 'area')).toEqual([
    { mark: 'area', rings: [[[4, 2], [10, 2], [10, 8], [4, 8]]], fill: 'cut' }, // biome-ignore format: a square on a line
  ]);
});

// A quarter of a circle of radius 8: its length is 4π.
test('of a circle the part inside is drawn', () => {
  const circle: Mark = { mark: 'circle', centre: [0, 0], radius: 8, line: 'fixture' };
  const length = clipMarks([circle], box)
    .flatMap((mark) => (mark.mark === 'path' ? [mark.steps as [number, number][]] : []))
    .reduce((sum, [a, b]) => sum + Math.hypot(b![0] - a![0], b![1] - a![1]), 0);
  expect(length).toBeCloseTo(4 * Math.PI, 1);
});

test('words are kept whole or not at all', () => {
  const words = [text([5, 5], 'K1-1'), text([9.5, 5], 'K2-1')];
  expect(clipMarks(words, box)).toEqual([words[0]]);
});
