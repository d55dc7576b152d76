import { describe, expect, test } from 'vitest';
import type { Point, Ring } from '../../src/geometry/index.ts';
import { onePass } from '../../src/tiles/onePass.ts';

const [length, width] = [100, 60];
const [kerf, step] = [4, 3];

/** A piece whose sides along those of the tile are factory edges. */
function piece(ring: Ring) {
  const onSide = (a: Point, b: Point) =>
    [0, length].some((x) => a[0] === x && b[0] === x) || [0, width].some((y) => a[1] === y && b[1] === y);
  const edges = ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    return { from, to, factory: onSide(from, to) };
  });
  return { edges };
}

const strip = (left: number, right: number) => piece([[left, 0], [right, 0], [right, width], [left, width]]); // biome-ignore format: a strip on a line

describe('one pass of the saw frees two pieces', () => {
  test.each([
    ['with the blade between them', 44, true],
    ['with less than a saw step more between them', 46, true],
    ['not with a saw step more', 47, false],
    ['not with less than the blade', 41, false],
  ])('%s', (_when, left, frees) => {
    expect(onePass([strip(0, 40), strip(left, 100)], kerf, step).map(({ pieces }) => pieces)).toEqual(
      frees ? [[0, 1]] : [],
    );
  });

  test('the line of the pass is the sawn edge of the first', () => {
    expect(onePass([strip(0, 40), strip(44, 100)], kerf, step)).toEqual([
      { pieces: [0, 1], from: [40, 0], to: [40, 60] },
    ]);
  });

  test('that are triangles, along their long sides', () => {
    // A kerf of 4 across a slanted line of 3 in 5.
    const one = piece([[0, 0], [80, 0], [0, 60]]); // biome-ignore format: a triangle on a line
    const other = piece([[100, 60], [20, 60], [100, 0]]); // biome-ignore format: a triangle on a line
    expect(onePass([one, other], 12, 3)).toHaveLength(1);
    expect(onePass([one, other], 8, 3)).toEqual([]);
  });

  test('but not where it would run into a third', () => {
    const low = piece([[0, 0], [40, 0], [40, 30], [0, 30]]); // biome-ignore format: a rectangle on a line
    const beside = piece([[44, 0], [100, 0], [100, 30], [44, 30]]); // biome-ignore format: a rectangle on a line
    const above = piece([[20, 34], [80, 34], [80, 60], [20, 60]]); // biome-ignore format: a rectangle on a line
    expect(onePass([low, beside], kerf, step)).toHaveLength(1);
    expect(onePass([low, beside, above], kerf, step).filter(({ pieces }) => pieces.join() === '0,1')).toEqual(
      [],
    );
  });
});
