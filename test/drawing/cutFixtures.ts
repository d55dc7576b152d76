import type { Cut, CutSize } from '../../src/cuts/Cut.ts';
import { circleRing, type Point, type Ring } from '../../src/geometry/index.ts';

const inch = 8128;
const at = (x: number, y: number): Point => [Math.round(x * inch), Math.round(y * inch)];

/** A tile of 11 13/16 by 11 13/16 in. */
export const tile = { length: 96012, width: 96012 };

function edgesOf(ring: Ring): Cut['edges'] {
  return ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const onSide = (axis: 0 | 1) => from[axis] === to[axis] && (from[axis] === 0 || from[axis] === 96012);
    return { from, to, factory: onSide(0) || onSide(1) };
  });
}

function size(what: string, from: CutSize['from'], a: Point, b: Point): CutSize {
  const exact = Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]));
  return { what, from, exact, saw: Math.floor(exact / 508) * 508, at: [a, b] };
}

function cut(
  number: number,
  kind: Cut['kind'],
  outer: Ring,
  sizes: readonly CutSize[],
  more: Partial<Cut> = {},
): Cut {
  return {
    number,
    tile: 'field',
    kind,
    hand: 'none',
    pieces: ['K1-1'],
    shape: { outer, holes: [] },
    circles: [],
    edges: edgesOf(outer),
    sizes,
    fences: [],
    hard: true,
    taper: 0,
    ...more,
  };
}

const full = 11.8125;
const hole = circleRing(at(7, 5), Math.round(1.25 * inch));

/** Cuts by hand: a notch out of a corner, a pocket from one side, a hole, a rip and one with two fence settings. */
export const cuts = {
  notch: cut(
    3,
    'notch',
    [at(0, 0), at(full, 0), at(full, 7.25), at(4.1875, 7.25), at(4.1875, full), at(0, full)],
    [
      size('notchWidth', 'left', at(0, full), at(4.1875, full)),
      size('notchDepth', 'bottom', at(full, 0), at(full, 7.25)),
    ],
  ),
  pocket: cut(
    12,
    'u',
    [
      at(0, 0),
      at(full, 0),
      at(full, 9.5),
      at(8, 9.5),
      at(8, 4.3125),
      at(4.5, 4.3125),
      at(4.5, 9.5),
      at(0, 9.5),
    ],
    [
      size('length', 'bottom', at(0, 0), at(0, 9.5)),
      size('notchAcross', 'left', at(0, 9.5), at(4.5, 9.5)),
      size('notchWidth', 'none', at(4.5, 4.3125), at(8, 4.3125)),
      size('notchUp', 'bottom', at(8, 0), at(8, 4.3125)),
    ],
  ),
  hole: cut(
    7,
    'hole',
    [at(0, 0), at(full, 0), at(full, full), at(0, full)],
    [
      size('holeAcross', 'left', at(0, 5), at(7, 5)),
      size('holeUp', 'bottom', at(7, 0), at(7, 5)),
      size('holeDiameter', 'none', at(5.75, 5), at(8.25, 5)),
    ],
    {
      shape: { outer: [at(0, 0), at(full, 0), at(full, full), at(0, full)], holes: [[...hole].reverse()] },
      circles: [{ centre: at(7, 5), radius: Math.round(1.25 * inch), name: 'pipe' }],
      edges: [
        ...edgesOf([at(0, 0), at(full, 0), at(full, full), at(0, full)]),
        ...edgesOf([...hole].reverse()),
      ],
    },
  ),
  rip: cut(
    1,
    'rip',
    [at(0, 0), at(full, 0), at(full, 7.625), at(0, 7.625)],
    [size('width', 'bottom', at(0, 0), at(0, 7.625))],
    {
      hard: false,
      fences: [{ on: 'bottom', exact: 61976, saw: 61976 }],
    },
  ),
  corner: cut(2, 'corner', [at(0, 0), at(8, 0), at(8, 5.125), at(0, 5.125)], [], {
    hard: false,
    fences: [
      { on: 'left', exact: 8 * inch, saw: 8 * inch },
      { on: 'bottom', exact: 41656, saw: 41656 },
    ],
  }),
} as const satisfies Record<string, Cut>;
