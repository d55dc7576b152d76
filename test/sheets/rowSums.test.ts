import { describe, expect, test } from 'vitest';
import { printedRow } from '../../src/sheets/printedRow.ts';
import { demos } from './demos.ts';
import { spokenRows } from './spokenRows.ts';

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

/** The spaces that a row's sum leaves at both its ends, by pencil: gap, piece and the joint before the next. */
function endsOf(text: string): readonly [number, number] {
  const terms = text.split(' · ');
  const listed = (term: string) => term.replace(/^\D*/, '');
  const each = (term: string) => value(listed(term).replace(/^\d+ × /, ''));
  const pieces = terms.slice(0, -2);
  const gaps = terms.at(-1)!.split(' + ').map(each);
  const joint = each(terms.at(-2)!);
  return [gaps[0]! + each(pieces[0]!) + joint, gaps.at(-1)! + each(pieces.at(-1)!) + joint];
}

interface ZoneData {
  readonly found: readonly { readonly lines: readonly { rows: string; space: string }[] }[];
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

  test('leave at the walls what the zone sheets say should be there, and the row closes by these', () => {
    const rows = surfaces.flatMap(({ axes }) => axes.flatMap(({ rows }) => rows));
    const spaces = new Map<string, number[]>();
    for (const { data } of sheets.filter(({ template }) => template === 'zone'))
      for (const { rows: said, space } of (data as ZoneData).found.flatMap(({ lines }) => lines))
        for (const row of spokenRows(said)) spaces.set(row, [...(spaces.get(row) ?? []), lengthOf(space)]);
    expect(spaces.size).toBeGreaterThan(0);
    for (const [id, told] of spaces) {
      const { sum } = rows.find((row) => row.id === id)!;
      const ends = endsOf(sum);
      // Where the tile is not on the saw's steps the sum has parts of them, which no tape shows.
      const near = onStep(ends[0]) && onStep(ends[1]) ? 1e-6 : step / 2 + 1e-6;
      const all = ends[0] + ends[1];
      if (told.length === 2) expect(Math.abs(told[0]! + told[1]! - all), `${id}: ${sum}`).toBeLessThan(near);
      for (const one of told)
        expect(Math.min(...ends.map((end) => Math.abs(end - one))), `${id}: ${sum}`).toBeLessThan(near);
    }
  });

  test('put no space at a wall further off than a step of the saw from what is there', () => {
    for (const { rows } of packet.surfaces)
      for (const row of rows) {
        const { terms } = printedRow(row, packet.rounding.step);
        const off = (from: number, to: number) =>
          Math.abs(terms.slice(from, to).reduce((sum, { saw, exact }) => sum + saw - exact, 0));
        const half = terms.findIndex(({ what }, i) => i > 0 && what === 'gap');
        // Between two gaps there is nothing else that could take a rounding.
        if (half < terms.length - 1) continue;
        const [first, last] = [off(0, 2), off(-2, terms.length)];
        const whole = terms.slice(2, -2).reduce((sum, { saw, exact }) => sum + Math.abs(saw - exact), 0);
        expect(first, row.id).toBeLessThanOrEqual(packet.rounding.step + whole);
        expect(last, row.id).toBeLessThanOrEqual(packet.rounding.step + whole);
      }
  });

  test('say in which unit pieces, joints and gaps are', () => {
    const { unit } = sheets.find(({ template }) => template === 'row-sums')!.data as { unit: string };
    expect(unit).toBe(packet.spec.print.system);
  });
});
