import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

/** A printed figure as a number in its own unit: `11 13/16`, `3/16`, `297.1`. */
function value(figure: string): number {
  const [, whole = '0', top = '0', bottom = '1'] =
    /^(\d+(?:[.,]\d+)?)?(?:(?:^| )(\d+)\/(\d+))?$/.exec(figure.trim()) ?? [];
  return Number(whole.replace(',', '.')) + Number(top) / Number(bottom);
}

/** The sum of a row as a reader with a pencil takes it: words aside, `9 × 11 13/16` is nine times as much. */
function sumOf(text: string): number {
  const terms = text.split(/[·+]/).map((term) => term.replace(/^[^\d]*/, ''));
  return terms.reduce((sum, term) => {
    const [, count = '1', figure = term] = /^(\d+) × (.*)$/.exec(term.trim()) ?? [];
    return sum + Number(count) * value(figure);
  }, 0);
}

/** A length as printed, feet and all, in inches or millimetres: `5 ft 4 1/64 in`. */
function lengthOf(text: string): number {
  const [, feet = '0', rest = ''] = /^(?:(\d+) ft ?)?(.*?)(?: ?(?:in|mm))?$/.exec(text.trim()) ?? [];
  return 12 * Number(feet) + value(rest);
}

interface Printed {
  readonly id: string;
  readonly sum: string;
  readonly space: string;
}

interface Sums {
  readonly surfaces: readonly {
    readonly axes: readonly { readonly rows: readonly Printed[] }[];
  }[];
}

/** Tiles that lie in no courses have no rows, and no sheet of them. */
const inCourses = demos.filter(({ packet }) => packet.surfaces.some(({ rows }) => rows.length > 0));

describe.each(inCourses)('the row sums of $slug', ({ packet, sheets }) => {
  const perUnit = packet.spec.print.system === 'mm' ? 320 : 8128;
  const step = packet.rounding.step / perUnit;
  const onStep = (figure: number) => Math.abs(figure / step - Math.round(figure / step)) < 1e-6;
  const { surfaces } = sheets.find(({ template }) => template === 'row-sums')!.data as Sums;

  test('hold every row both ways', () => {
    const ids = surfaces.flatMap(({ axes }) => axes.flatMap(({ rows }) => rows.map(({ id }) => id)));
    expect(ids.sort()).toEqual(packet.surfaces.flatMap((surface) => surface.rows.map(({ id }) => id)).sort());
  });

  test('add up, by pencil, to the length that is printed beside them', () => {
    for (const { id, sum, space } of surfaces.flatMap(({ axes }) => axes.flatMap(({ rows }) => rows)))
      expect(sumOf(sum), `${id}: ${sum}`).toBeCloseTo(lengthOf(space), 6);
  });

  test('are told in steps of the saw where tile and joint are: the room always, and no gap finer than these', () => {
    const rows = surfaces.flatMap(({ axes }) => axes.flatMap(({ rows }) => rows));
    for (const { id, sum, space } of rows) {
      expect(onStep(lengthOf(space)), `${id}: ${space}`).toBe(true);
      const [, pieces = '', gaps = ''] = /^(.*) · \D* ([^·]*)$/.exec(sum)!;
      const [first, ...rest] = gaps.split(' + ').map(value);
      if (rest.length > 0) expect(onStep(first!), `${id}: ${sum}`).toBe(true);
      if (onStep(sumOf(pieces)))
        expect(
          gaps.split(' + ').every((gap) => onStep(value(gap))),
          sum,
        ).toBe(true);
    }
  });

  test('close as printed: what is written adds up to the room, to a step of the saw', () => {
    for (const [i, { axes }] of surfaces.entries()) {
      for (const { id, sum } of axes.flatMap(({ rows }) => rows)) {
        const { from, to } = packet.surfaces[i]!.rows.find((row) => row.id === id)!;
        const room = Math.hypot(to[0] - from[0], to[1] - from[1]) / perUnit;
        expect(room - sumOf(sum), `${id}: ${sum}`).toBeGreaterThan(-1e-9);
        expect(room - sumOf(sum), `${id}: ${sum}`).toBeLessThan(step);
      }
    }
  });
});
