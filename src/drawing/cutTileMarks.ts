import type { Cut } from '../cuts/Cut.ts';
import {
  type Point,
  rotateRound,
  type Shape,
  shapeArea,
  subtract,
  transformShape,
  translate,
} from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { OnePass } from '../tiles/onePass.ts';
import type { TileTurn } from '../tiles/TileTurn.ts';
import { type TileSides, tileRing } from './cutFrame.ts';
import { deepestIn } from './deepestIn.ts';
import type { Mark, Spot } from './Mark.ts';
import { lengthOn, type Scale, toPaper } from './Scale.ts';
import { angleTo, arrowHead, cross, move } from './signs.ts';
import { path } from './text.ts';
import { circleOf, ringOn, shapeOn, type TrueCircle } from './trueCircle.ts';

/** A cut where it lies in a tile. */
export interface LaidPiece {
  readonly shape: Shape;
  readonly edges: Cut['edges'];
  readonly circles: readonly TrueCircle[];
}

/** The blade's line is at least this wide on paper, in mm; waste with less room than this carries no X. */
const leastKerf = 0.35;
const leastRoom = 1.2;
const longestArm = 5;

/** A cut turned counter-clockwise about the origin, then moved, as a plan of tiles has it. */
export function layPiece(cut: Cut, at: Point, turn: TileTurn): LaidPiece {
  const place = (point: Point) => translate(rotateRound(point, (turn * Math.PI) / 180), at);
  return {
    shape: transformShape(cut.shape, place),
    edges: cut.edges.map(({ from, to, factory }) => ({ from: place(from), to: place(to), factory })),
    circles: cut.circles.map(({ centre, radius }) => ({ centre: place(centre), radius })),
  };
}

/** What the blade takes along a sawn edge, outside the piece, true to scale as far as it can be seen. */
function kerfMark(a: Spot, b: Spot, width: number): Mark {
  const out = angleTo(a, b) - Math.PI / 2;
  return { mark: 'area', rings: [[a, b, move(b, out, width), move(a, out, width)]], fill: 'ink' };
}

/** Edges of a piece in its tile: factory heavy, sawn as the blade's line; arcs light. */
export function laidEdges({ shape, edges, circles }: LaidPiece, scale: Scale, kerf: Ticks): readonly Mark[] {
  const width = Math.max(leastKerf, lengthOn(scale, kerf));
  const straight = edges.map(({ from, to, factory }): Mark => {
    const [a, b] = [toPaper(scale, from), toPaper(scale, to)];
    return factory ? path([a, b], 'factory') : kerfMark(a, b, width);
  });
  const round = [shape.outer, ...shape.holes].flatMap((ring) =>
    ring.flatMap((from, i) => {
      const to = ring[(i + 1) % ring.length]!;
      return circleOf(from, to, circles) ? [path([toPaper(scale, from), toPaper(scale, to)], 'sawn')] : [];
    }),
  );
  return [...straight, ...round];
}

/** The whole tile, and its pieces white on it. */
export function laidShapes(pieces: readonly LaidPiece[], tile: TileSides, scale: Scale): readonly Mark[] {
  return [
    { mark: 'area', rings: [ringOn(scale, tileRing(tile))], line: 'joint' },
    ...pieces.map(
      ({ shape, circles }): Mark => ({ mark: 'area', rings: shapeOn(scale, shape, circles), fill: 'paper' }),
    ),
  ];
}

/** An X on what falls off, as large as fits. */
export function laidWaste(pieces: readonly LaidPiece[], tile: TileSides, scale: Scale): readonly Mark[] {
  const whole = [{ outer: tileRing(tile), holes: [] }];
  const waste = subtract(
    whole,
    pieces.map(({ shape }) => shape),
  );
  return waste
    .filter((shape) => lengthOn(scale, Math.sqrt(shapeArea(shape))) >= leastRoom)
    .map((shape) => deepestIn(shape))
    .filter(({ room }) => lengthOn(scale, room) >= leastRoom)
    .flatMap(({ at, room }) => cross(toPaper(scale, at), Math.min(longestArm, lengthOn(scale, room) * 0.7)));
}

/** Two triangles at the ends of a pass that frees two pieces: set the fence once. */
export function passMarks({ from, to }: OnePass, scale: Scale): readonly Mark[] {
  const [a, b] = [toPaper(scale, from), toPaper(scale, to)];
  const angle = angleTo(a, b);
  return [arrowHead(move(a, angle, -0.8), angle), arrowHead(move(b, angle, 0.8), angle + Math.PI)];
}
