import {
  circleRing,
  insetByEdge,
  intersect,
  outsetByEdge,
  type Point,
  type Ring,
  type Shape,
  shapeArea,
  subtract,
} from '../../../src/geometry/index.ts';
import type { FramedRoom, Layout, Piece } from '../../../src/layout/Layout.ts';
import type { RoomEdge } from '../../../src/room/Room.ts';

type FramedObstacle = FramedRoom['obstacles'][number];

/** A floor laid the plain way, every tile that meets the field clipped to it: what these tests give the stages to work on. */
export interface Floor {
  readonly outline: Ring;
  readonly gap: number;
  readonly gaps?: readonly number[];
  readonly tile: { readonly length: number; readonly width: number };
  readonly joint: number;
  /** Lower left corner of a whole tile; the chalk lines cross half a joint below and left of it. */
  readonly origin: Point;
  readonly quarter?: 0 | 1 | 2 | 3;
  /** Shift of each course to the right, stepping. */
  readonly shift?: number;
  readonly circles?: readonly { readonly name: string; readonly centre: Point; readonly radius: number }[];
  readonly boxes?: readonly { readonly name: string; readonly ring: Ring }[];
  /** Doorways by the index of the edge that is their closed-door line. */
  readonly doors?: Readonly<Record<number, string>>;
}

export function rectangle(width: number, height: number, [x, y]: Point = [0, 0]): Ring {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

export function layFloor(floor: Floor): Layout {
  const { outline, gap, joint, origin, shift = 0 } = floor;
  const odd = (floor.quarter ?? 0) % 2 === 1;
  const [w, h] = odd ? [floor.tile.width, floor.tile.length] : [floor.tile.length, floor.tile.width];
  const module: Point = [w + joint, h + joint];
  const obstacles = [
    ...(floor.circles ?? []).map((one) => roundObstacle(one, gap)),
    ...(floor.boxes ?? []).map((one) => boxObstacle(one, gap)),
  ];
  const inset = insetByEdge(outline, floor.gaps ?? outline.map(() => gap));
  const field = subtract(
    inset,
    obstacles.map(({ cleared }) => ({ outer: cleared, holes: [] })),
  );
  const crossing: Point = [origin[0] - Math.ceil(joint / 2), origin[1] - Math.ceil(joint / 2)];
  const pieces = tilesOver(outline, floor, module, [w, h], shift).flatMap(({ ring, column, row }) =>
    piecesOf(ring, column, row, field, floor, obstacles),
  );
  return {
    surface: 'floor',
    turn: 0,
    frame: { outline, edges: edgesOf(floor), obstacles, field },
    pattern: {
      name: shift ? 'running' : 'straight',
      a: [module[0], 0],
      b: [shift, module[1]],
      tiles: [],
      joint,
      module,
      straightX: shift === 0,
      straightY: true,
      inCourses: true,
    },
    origin,
    start: {} as Layout['start'],
    pieces,
    left: [],
    field,
    chalk: { crossing, lines: [], check: { legs: [0, 0], diagonal: 0 }, firstPiece: 'K1-1' },
    faults: [],
    tapers: { obeyed: 'A-B', turnedDeg: 0, walls: [], ways: [], advice: [] },
  };
}

function tilesOver(outline: Ring, { origin, tile }: Floor, [mx, my]: Point, [w, h]: Point, shift: number) {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const tiles: { ring: Ring; column: number; row: number }[] = [];
  for (
    let row = Math.floor((Math.min(...ys) - origin[1]) / my) - 1;
    origin[1] + row * my < Math.max(...ys);
    row++
  ) {
    const x0 = origin[0] + row * shift;
    for (
      let column = Math.floor((Math.min(...xs) - x0) / mx) - 1;
      x0 + column * mx < Math.max(...xs);
      column++
    )
      tiles.push({ ring: rectangle(w, h, [x0 + column * mx, origin[1] + row * my]), column, row });
  }
  return tile ? tiles : [];
}

function piecesOf(
  ring: Ring,
  column: number,
  row: number,
  field: readonly Shape[],
  floor: Floor,
  obstacles: readonly FramedObstacle[],
): Piece[] {
  const letter = row >= 0 ? (column >= 0 ? 'K' : 'L') : column >= 0 ? 'N' : 'M';
  const name = `${letter}${column >= 0 ? column + 1 : -column}-${row >= 0 ? row + 1 : -row}`;
  const full = shapeArea({ outer: ring, holes: [] });
  return intersect([{ outer: ring, holes: [] }], field).map((shape, i) => ({
    id: i === 0 ? name : `${name}${'bcdef'[i - 1]}`,
    tile: 'field',
    whole: shapeArea(shape) === full,
    fullTile: ring,
    quarter: floor.quarter ?? 0,
    shape,
    column,
    row,
    edges: [],
    share: shapeArea(shape) / full,
    seen: 'plain' as const,
    circles: obstacles.flatMap(({ name, circle }) =>
      circle ? [{ name, centre: circle.centre, radius: circle.clearRadius }] : [],
    ),
  }));
}

const facts = { gapMax: 4064, touch: true, seen: 'plain' } as const;

function edgesOf({ outline, gap, gaps, doors }: Floor): RoomEdge[] {
  const letter = (i: number) => 'ABCDEFGHIJKLMNOP'[i % outline.length];
  return outline.map((from, i) => {
    const door = doors?.[i];
    const wall = `${letter(i)}-${letter(i + 1)}`;
    return {
      id: door ? `${door}:line` : wall,
      name: door ?? wall,
      from,
      to: outline[(i + 1) % outline.length]!,
      meets: door ? 'doorway' : 'wall',
      gap: gaps?.[i] ?? gap,
      ...facts,
    };
  });
}

function roundObstacle(
  { name, centre, radius }: NonNullable<Floor['circles']>[number],
  gap: number,
): FramedObstacle {
  return {
    name,
    facts: { ...facts, meets: 'pipe', gap },
    ring: circleRing(centre, radius),
    cleared: circleRing(centre, radius + gap),
    circle: { centre, radius, clearRadius: radius + gap },
    edges: [],
  };
}

function boxObstacle({ name, ring }: NonNullable<Floor['boxes']>[number], gap: number): FramedObstacle {
  const edges = ring.map(
    (from, i): RoomEdge => ({
      id: `${name}:${i + 1}`,
      name,
      from,
      to: ring[(i + 1) % ring.length]!,
      meets: 'cabinet',
      gap,
      ...facts,
    }),
  );
  return {
    name,
    facts: { ...facts, meets: 'cabinet', gap },
    ring,
    cleared: outsetByEdge(
      ring,
      ring.map(() => gap),
    ),
    edges,
  };
}
