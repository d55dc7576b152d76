import { describe, expect, test } from 'vitest';
import { describePiece } from '../../src/cuts/describePiece.ts';
import { circleRing, intersect, type Ring, subtract } from '../../src/geometry/index.ts';
import { inch, SIXTEENTH } from './support/inches.ts';

/** A tile of 12 by 12 inches; points are written in inches. */
const box = { length: inch(12), width: inch(12) };
const ring = (points: readonly (readonly [number, number])[]): Ring =>
  points.map(([x, y]) => [inch(x), inch(y)]);
const read = (points: readonly (readonly [number, number])[]) =>
  describePiece({ box, shape: { outer: ring(points), holes: [] }, circles: [] }, SIXTEENTH);
const sizesOf = ({ sizes }: ReturnType<typeof read>) =>
  sizes.map(({ what, from, saw }) => `${what} ${saw / inch(1)} from ${from}`);

describe('how a piece is cut, read from its shape in its tile', () => {
  test.each([
    [
      'rip',
      [
        [0, 0],
        [7.65, 0],
        [7.65, 12],
        [0, 12],
      ],
      ['length 7.625 from left'],
    ],
    [
      'rip',
      [
        [4, 0],
        [12, 0],
        [12, 12],
        [4, 12],
      ],
      ['length 8 from right'],
    ],
    [
      'rip',
      [
        [2, 0],
        [7.3, 0],
        [7.3, 12],
        [2, 12],
      ],
      ['length 5.25 from none'],
    ],
    [
      'corner',
      [
        [0, 0],
        [7.65, 0],
        [7.65, 5],
        [0, 5],
      ],
      ['length 7.625 from left', 'width 5 from bottom'],
    ],
    [
      'taper',
      [
        [0, 0],
        [8, 0],
        [7.65, 12],
        [0, 12],
      ],
      ['bottomLength 8 from left', 'topLength 7.625 from left'],
    ],
    [
      'taper',
      [
        [0, 0],
        [12, 0],
        [12, 5],
        [0, 5.5],
      ],
      ['leftLength 5.5 from bottom', 'rightLength 5 from bottom'],
    ],
    [
      'notch',
      [
        [0, 0],
        [12, 0],
        [12, 9.03],
        [10, 9.03],
        [10, 12],
        [0, 12],
      ],
      ['notchDepth 3 from top', 'notchWidth 2 from right'],
    ],
    [
      'notch',
      [
        [0, 0],
        [8, 0],
        [8, 4],
        [5, 4],
        [5, 12],
        [0, 12],
      ],
      ['length 8 from left', 'notchDepth 8 from top', 'notchAcross 5 from left'],
    ],
    [
      'u',
      [
        [0, 0],
        [12, 0],
        [12, 12],
        [8, 12],
        [8, 9],
        [3.03, 9],
        [3.03, 12],
        [0, 12],
      ],
      ['notchAcross 3 from left', 'notchWidth 5 from none', 'notchDepth 3 from top'],
    ],
    [
      'point',
      [
        [0, 0],
        [12, 0],
        [0, 12],
      ],
      ['bottomLength 12 from left', 'leftLength 12 from bottom'],
    ],
    [
      'point',
      [
        [0, 0],
        [12, 0],
        [12, 8.1],
        [8.1, 12],
        [0, 12],
      ],
      ['rightLength 8.0625 from bottom', 'topLength 8.0625 from left'],
    ],
    // A corner on a side that is sawn off at its far end too: from the edge that stays, what is taken away rounded up.
    [
      'point',
      [
        [0, 0],
        [10, 0],
        [7, 12],
        [3.3, 12],
        [0, 9],
      ],
      [
        'bottomLength 10 from left',
        'leftLength 9 from bottom',
        'takenAcross 3.3125 from left',
        'topLength 7 from left',
      ],
    ],
    [
      'point',
      [
        [0, 0],
        [12, 0],
        [12, 3.3],
        [9, 7],
        [0, 10],
      ],
      [
        'cornerAcross 9 from left',
        'cornerUp 7 from bottom',
        'leftLength 10 from bottom',
        'rightLength 3.25 from bottom',
      ],
    ],
    // No edge stays beside its own: nothing is measured to the tile's own corner, where a line begins.
    [
      'point',
      [
        [4, 0],
        [12, 0],
        [8, 4],
      ],
      ['bottomLength 8 from right', 'cornerAcross 4 from right', 'cornerUp 4 from bottom'],
    ],
    [
      'odd',
      [
        [0, 0],
        [12, 0],
        [12, 4],
        [8, 4],
        [8, 8],
        [4, 8],
        [4, 12],
        [0, 12],
      ],
      [
        'cornerUp 4 from bottom',
        'cornerAcross 8 from left',
        'cornerUp 8 from bottom',
        'cornerAcross 4 from left',
      ],
    ],
  ] as const)('%s: %j', (kind, points, sizes) => {
    const found = read(points);
    expect(found.kind).toBe(kind);
    expect([...sizesOf(found)].sort()).toEqual([...sizes].sort());
  });

  test('a bend that no saw can follow is one edge: a wall that a doorway splits', () => {
    expect(
      read([
        [0, 0],
        [7.65, 0],
        [7.655, 6],
        [7.65, 12],
        [0, 12],
      ]).kind,
    ).toBe('rip');
  });

  // Rings in ticks, as random diagonal rooms gave them; 127 ticks are 1/64 in.
  test.each([
    ['the wall takes off a tip beside it', 96520, [[96520, 54939], [96489, 54970], [41519, 0], [96520, 0]], 'right, bottom', 2],
    ['the wall crosses a corner of the tile within 1/64 in', 96520, [[96508, 0], [96520, 12], [96520, 61788], [61879, 96520], [0, 96520], [0, 0]], 'left, right, bottom, top', 2],
    ['another wall takes off the far tip', 145288, [[96720, 0], [145288, 48702], [145288, 145172], [145171, 145288], [0, 145288], [0, 0]], 'left, right, bottom, top', 2],
    ['the wall runs off the side by 1/26 in', 96520, [[96520, 96212], [54249, 96520], [35194, 96520], [34622, 0], [96520, 0]], 'right, bottom, top', 4],
  ] as const)('a joint edge stays a factory edge where %s', (_where, side, outer, factory, sizes) => {
    const found = describePiece({ box: { length: side, width: side }, shape: { outer, holes: [] }, circles: [] }, SIXTEENTH);
    expect(found.factory.join(', ')).toBe(factory);
    expect(found.sizes).toHaveLength(sizes);
  }); // biome-ignore format: a ring on a line

  test('a side of the tile that meets the wall is still a factory edge', () => {
    expect(
      read([
        [0, 0],
        [7.65, 0],
        [7.65, 12],
        [0, 12],
      ]).factory,
    ).toEqual(['left', 'bottom', 'top']);
  });

  test('two ends that round to the same mark are no taper, the lesser one counts', () => {
    const found = read([
      [0, 0],
      [7.66, 0],
      [7.64, 12],
      [0, 12],
    ]);
    expect(found.kind).toBe('rip');
    expect(found.sizes[0]!.exact).toBe(inch(7.64));
    expect(found.taper).toBe(inch(7.66) - inch(7.64));
  });

  test('the piece between fence and blade is kept: each setting names the factory edge on the fence', () => {
    expect(
      read([
        [4, 0],
        [12, 0],
        [12, 7],
        [4, 7],
      ]).fences,
    ).toEqual([
      { on: 'right', exact: inch(8), saw: inch(8) },
      { on: 'bottom', exact: inch(7), saw: inch(7) },
    ]);
  });
});

describe('round cuts keep the true circle', () => {
  const circle = (x: number, y: number, radius: number) => ({
    name: 'pipe',
    centre: [inch(x), inch(y)] as const,
    radius: inch(radius),
  });
  const cut = (outer: Ring, round: ReturnType<typeof circle>) => {
    const [shape] = subtract(
      [{ outer, holes: [] }],
      [{ outer: circleRing(round.centre, round.radius), holes: [] }],
    );
    return describePiece({ box, shape: shape!, circles: [round] }, SIXTEENTH);
  };
  const full = ring([
    [0, 0],
    [12, 0],
    [12, 12],
    [0, 12],
  ]);

  test('a hole: centre from two factory edges to the nearest, diameter rounded up', () => {
    const found = cut(full, circle(5.02, 6.99, 3.76));
    expect(found.kind).toBe('hole');
    expect(sizesOf(found)).toEqual([
      'holeAcross 5 from left',
      'holeUp 7 from bottom',
      'holeDiameter 7.5625 from none',
    ]);
  });

  test('a circle over an edge is a curve with its centre, also where that lies outside the tile', () => {
    const found = cut(full, circle(6, 13, 3));
    expect(found.kind).toBe('curve');
    expect(sizesOf(found)).toEqual([
      'holeAcross 6 from left',
      'holeUp 13 from bottom',
      'holeDiameter 6 from none',
    ]);
  });

  test('a circle over a corner takes nothing but its arc from the rest of the piece', () => {
    const found = cut(full, circle(11, 11, 3));
    expect(found.kind).toBe('curve');
    expect(found.sizes).toHaveLength(3);
  });

  test('a rip with half a circle in its sawn edge needs four sizes', () => {
    const ripped = intersect(
      [{ outer: full, holes: [] }],
      [
        {
          outer: ring([
            [-1, -1],
            [8, -1],
            [8, 13],
            [-1, 13],
          ]),
          holes: [],
        },
      ],
    );
    const found = cut(ripped[0]!.outer, circle(8.2, 6, 3));
    expect(found.kind).toBe('curve');
    expect(sizesOf(found)).toEqual([
      'length 8 from left',
      'holeAcross 8.1875 from left',
      'holeUp 6 from bottom',
      'holeDiameter 6 from none',
    ]);
  });
});
