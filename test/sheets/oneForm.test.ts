import { expect, test } from 'vitest';
import { TICKS_PER_FOOT, TICKS_PER_INCH } from '../../src/measure/index.ts';
import { heldAgainst } from '../../src/sheets/heldAgainst.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { sayFigure } from '../../src/sheets/sayFigures.ts';
import { setOutFigures } from '../../src/sheets/setOutFigures.ts';

const inches = { system: 'inches', decimal: '.' } as const;
const print = { print: { system: 'inches', paper: 'letter', step: 508 } };
const packet = { spec: { ...print, surfaces: [] }, rounding: { step: 508 } };
const context = sheetContext(packet as never, {
  lang: 'en',
  say: (code, figures) => `${code} ${JSON.stringify(figures)}`,
});

test('what was found is held against its limit in one form, feet or inches', () => {
  const bay = (found: number, limit: number) =>
    heldAgainst({ units: inches }, { found, limit, bound: 'most', pass: true });
  expect(bay(60.625 * TICKS_PER_INCH, 12 * TICKS_PER_FOOT)).toEqual({
    found: '5 ft 0 5/8 in',
    limit: '12 ft',
  });
  expect(bay(15 * TICKS_PER_INCH, 24 * TICKS_PER_INCH)).toEqual({ found: '15 in', limit: '24 in' });
});

test('a run of the floor is told as its walls are, a tile in inches', () => {
  expect(sayFigure(context, 'run', 66.375 * TICKS_PER_INCH)).toBe('5 ft 6 3/8 in');
  expect(sayFigure(context, 'size', 24 * TICKS_PER_INCH)).toBe('24 in');
});

test('the marks of a story pole are told as those on the walls beside them', () => {
  const joints = [1, 3, 8].map((count) => count * 7.9375 * TICKS_PER_INCH);
  const pole = { axis: 'along', module: 7.9375 * TICKS_PER_INCH, joints };
  const chalk = { lines: [], poles: [pole] };
  const surface = { chalk, adjustment: { readings: [], redundancy: 1 } };
  const { poles } = setOutFigures(context, surface as never, []);
  expect(poles[0]!.joints.map(({ distance }) => distance)).toEqual([
    '7 15/16 in',
    '1 ft 11 13/16 in',
    '5 ft 3 1/2 in',
  ]);
});
