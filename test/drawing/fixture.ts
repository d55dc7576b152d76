import {
  circleRing,
  intersect,
  lineThroughShape,
  type Point,
  type Ring,
  rotateRound,
  type Shape,
  shapeArea,
  subtract,
} from '../../src/geometry/index.ts';
import type { PacketEdge, PacketPiece, PacketSurface } from '../../src/packet/Packet.ts';

const inch = 8128;

/** A room drawn by hand for these tests: outline, obstacles, tile and turn; pieces are cut by the polygon library. */
export interface FixtureRoom {
  readonly outline: Ring;
  readonly doorLine: readonly [Point, Point];
  readonly obstacles: readonly {
    readonly name: string;
    readonly ring: Ring;
    readonly circle?: { readonly centre: Point; readonly radius: number };
  }[];
  readonly tile: readonly [length: number, width: number];
  readonly joint: number;
  readonly crossing: Point;
  readonly turn: number;
}

const at = (x: number, y: number): Point => [Math.round(x * inch), Math.round(y * inch)];

/** Boot room of 98 by 61 in: a door in D-A, a cabinet in the corner at C, a flange and a pipe. */
export const bootRoom: FixtureRoom = {
  outline: [
    at(0, 0),
    at(98.25, 0),
    at(97.9, 60.5),
    at(0.2, 61),
    at(0.15, 39.2),
    at(-2.4, 39.2),
    at(-2.4, 9),
    at(0.05, 9),
  ],
  doorLine: [at(-2.4, 39.2), at(-2.4, 9)],
  obstacles: [
    { name: 'cabinet', ring: [at(74, 39), at(97.9, 39), at(97.9, 60.5), at(74, 60.5)] },
    {
      name: 'flange',
      ring: circleRing(at(81.5, 15), Math.round(3.5 * inch)),
      circle: { centre: at(81.5, 15), radius: Math.round(3.5 * inch) },
    },
    { name: 'pipe', ring: circleRing(at(20, 57), 5080), circle: { centre: at(20, 57), radius: 5080 } },
  ],
  tile: [Math.round(11.8125 * inch), Math.round(11.8125 * inch)],
  joint: 1524,
  crossing: at(49, 31),
  turn: 0,
};

function edgesOf(room: FixtureRoom, turnIn: (p: Point) => Point): PacketEdge[] {
  const ids = ['A-B', 'B-C', 'C-D', 'D-A', 'hall:right', 'hall:line', 'hall:left', 'D-A.2'];
  return room.outline.map((from, i) => {
    const to = room.outline[(i + 1) % room.outline.length]!;
    const id = ids[i] ?? `E${i}`;
    return {
      id,
      from: turnIn(from),
      to: turnIn(to),
      meets: id.endsWith(':line') ? 'doorway' : 'wall',
      gap: 2032,
      gapMax: 4064,
      touch: id !== 'C-D',
      seen: 'plain',
      readings: [],
      used: 0,
    };
  });
}

function nameOf(column: number, row: number): string {
  const quadrant = column >= 0 ? (row >= 0 ? 'K' : 'N') : row >= 0 ? 'L' : 'M';
  const count = (index: number) => (index >= 0 ? index + 1 : -index);
  return `${quadrant}${count(column)}-${count(row)}`;
}

function piecesOf(room: FixtureRoom, field: readonly Shape[], crossing: Point): PacketPiece[] {
  const [length, width] = room.tile;
  const [stepX, stepY] = [length + room.joint, width + room.joint];
  const reach = Math.ceil((140 * inch) / Math.min(stepX, stepY));
  const indices = Array.from({ length: 2 * reach }, (_, i) => i - reach);
  let cut = 0;
  return indices.flatMap((row) =>
    indices.flatMap((column) => {
      const [x, y] = [
        crossing[0] + column * stepX + room.joint / 2,
        crossing[1] + row * stepY + room.joint / 2,
      ];
      const fullTile: Ring = [[x, y], [x + length, y], [x + length, y + width], [x, y + width]]; // biome-ignore format: a tile on a line
      return intersect([{ outer: fullTile, holes: [] }], field).map((shape, k): PacketPiece => {
        const share = shapeArea(shape) / (length * width);
        const whole = share > 0.9999;
        return {
          id: nameOf(column, row) + (k > 0 ? 'b' : ''),
          tile: 'field',
          whole,
          fullTile,
          quarter: 0,
          shape,
          column,
          row,
          edges: [],
          share,
          seen: 'plain',
          circles: [],
          zone: column < 0 ? 1 : 2,
          cut: whole ? null : ++cut,
        };
      });
    }),
  );
}

/** A packet's surface for a fixture room, in the pattern's frame as the packet has it. */
export function surfaceOf(room: FixtureRoom): PacketSurface {
  const turnIn = (p: Point) => rotateRound(p, (-room.turn * Math.PI) / 180);
  const outline = room.outline.map(turnIn);
  const obstacles = room.obstacles.map((one) => {
    const ring = one.ring.map(turnIn);
    const circle = one.circle && {
      centre: turnIn(one.circle.centre),
      radius: one.circle.radius,
      clearRadius: one.circle.radius + 2032,
    };
    const facts = { meets: 'cabinet', gap: 2032, gapMax: 2540, touch: true, seen: 'plain' } as const;
    return { name: one.name, facts, ring, cleared: ring, edges: [], ...(circle ? { circle } : {}) };
  });
  const field = subtract(
    [{ outer: outline, holes: [] }],
    obstacles.map(({ ring }) => ({ outer: ring, holes: [] })),
  );
  const crossing = turnIn(room.crossing);
  const pieces = piecesOf(room, field, crossing);
  const edges = edgesOf(room, turnIn);
  const across = ([dx, dy]: Point): readonly [Point, Point] => {
    const spans = lineThroughShape({ outer: outline, holes: [] }, crossing, [dx, dy]);
    const ends = spans.flatMap(({ from, to }) => [from, to]);
    const at = (t: number): Point => [crossing[0] + dx * t, crossing[1] + dy * t];
    return [at(Math.min(...ends)), at(Math.max(...ends))];
  };
  const mark = (edge: string, distance: number, along: number): Point => {
    const { from, to } = edges.find(({ id }) => id === edge)!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const t = (along === 1 ? distance : length - distance) / length;
    return [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
  };
  const candidate = {
    origin: crossing,
    reason: [],
    pieces: pieces.length,
    whole: 0,
    cut: 0,
    cutLength: 0,
    smallestShare: 0.6,
    smallest: 7 * inch,
    underHalf: 0,
    nearFull: 0,
    webFaults: 0,
    hardCuts: 0,
    shift: 0,
    ends: {
      along: [Math.round(7.625 * inch), Math.round(8.3125 * inch)],
      across: [Math.round(6.5 * inch), Math.round(6.25 * inch)],
    },
  } as const;
  const axis = { wish: 'best', what: 'joint', position: 0 } as const;
  const numbers = pieces.filter((piece) => piece.cut !== null);
  return {
    name: 'floor',
    kind: 'floor',
    turn: room.turn,
    outline,
    holes: [],
    field,
    joint: room.joint,
    edges,
    pattern: {
      name: 'straight',
      a: [0, 0],
      b: [0, 0],
      tiles: [
        {
          tile: 'field',
          ring: [
            [0, 0],
            [room.tile[0], 0],
            [room.tile[0], room.tile[1]],
            [0, room.tile[1]],
          ],
        },
      ],
    },
    start: {
      along: axis,
      across: axis,
      chosen: candidate,
      alternatives: [],
      axes: [],
      origin: crossing,
      score: null,
      bound: { strips: 0, halves: 0, narrowest: 1 },
      reasons: [],
    },
    pieces,
    left: [],
    cuts: numbers.map((piece) => ({
      number: piece.cut!,
      tile: 'field',
      kind: 'rip',
      hand: 'none',
      pieces: [piece.id],
      shape: piece.shape,
      circles: [],
      edges: [],
      sizes: [],
      fences: [],
      hard: piece.shape.outer.length > 5 || piece.shape.holes.length > 0,
      taper: 0,
    })),
    rows: [],
    chalk: {
      crossing,
      lines: [
        {
          name: '1',
          from: across([1, 0])[0],
          to: across([1, 0])[1],
          snappable: true,
          marks: [
            { edge: 'B-C', end: 'B', distance: 31 * inch, at: mark('B-C', 31 * inch, 1) },
            { edge: 'D-A', end: 'D', distance: 21.5 * inch, at: mark('D-A', 21.5 * inch, 1) },
          ],
        },
        {
          name: '2',
          from: across([0, 1])[0],
          to: across([0, 1])[1],
          snappable: true,
          marks: [
            { edge: 'A-B', end: 'A', distance: 49 * inch, at: mark('A-B', 49 * inch, 1) },
            { edge: 'C-D', end: 'D', distance: 48.9375 * inch, at: mark('C-D', 48.9375 * inch, -1) },
          ],
        },
      ],
      check: { legs: [36 * inch, 27 * inch], diagonal: 45 * inch },
      firstPiece: 'K1-1',
    },
    lines: [],
    zones: [1, 2].map((number) => {
      const own = pieces.filter((piece) => piece.zone === number).map(({ id }) => id);
      return {
        number,
        pieces: own,
        areaM2: 2,
        hours: 3,
        first: number === 1 ? 'L1-1' : 'K1-1',
        last: own.at(-1)!,
        wayOut: 'hall',
        rows: [],
        mortarKg: 8,
        batches: 1,
        found: [],
        ...(number === 1
          ? {
              seam: [{ from: across([0, 1])[0], to: across([0, 1])[1] }],
            }
          : {}),
      };
    }),
    faults: [],
    adjustment: {
      method: 'compass',
      redundancy: 0,
      misclosure: 0,
      misclosureAt: 'D',
      perimeter: 0,
      readings: [],
      degreesOfFreedom: 0,
      precision: { kind: 'stated', sd: 1016 },
      unitSd: null,
      globalTest: null,
      suspects: [],
      corners: [],
    },
    openings: [
      {
        name: 'hall',
        wall: 'D-A',
        line: [turnIn(room.doorLine[1]), turnIn(room.doorLine[0])],
        face: [turnIn(room.doorLine[1]), turnIn(room.doorLine[0])],
        beyond: 'wood',
        onlyExit: true,
      },
    ],
    obstacles,
    areaM2: 3.8,
  };
}

/** Words as the tests see them: the code and its figures. */
export const say = (code: string, figures: Readonly<Record<string, unknown>> = {}): string =>
  [code.replace('drawing.', ''), ...Object.values(figures).map(String)].join(' ');
