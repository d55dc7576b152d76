import type { Cut } from '../cuts/Cut.ts';
import { type Point, poleOfInaccessibility, type Shape, shapeArea, subtract } from '../geometry/index.ts';
import { curveSpots } from './curveSpots.ts';
import { innerCorners, type TileSides, tileRing } from './cutFrame.ts';
import type { Mark, Spot } from './Mark.ts';
import { lengthOn, type Scale, toPaper } from './Scale.ts';
import { angleTo, arrowHead, cross, move } from './signs.ts';
import { path } from './text.ts';
import { arcStep, circleOf, ringOn, shapeOn } from './trueCircle.ts';

/** Waste smaller than this on paper, in square mm, carries no X. */
const leastWaste = 4;
/** Strokes of the wall's hatch: apart and long, in mm. */
const stroke = { apart: 1.6, long: 2 };
/** A triangle at the end of a sawn edge and the radius of a dot where to drill, in mm, and no more than these shares of the shortest edge beside them: a small notch stays in sight. */
const most = { triangle: 2, dot: 1.5 };
const shareOf = { triangle: 0.35, dot: 0.3, stroke: 0.5 };

/** The whole tile the piece comes from, dashed. */
export function ghost(tile: TileSides, scale: Scale): Mark {
  return { mark: 'area', rings: [ringOn(scale, tileRing(tile))], line: 'fullTile' };
}

/** Whether a part is the core of a hole: it has the cross of its centre instead. */
function isRound({ outer }: Shape, cut: Cut): boolean {
  return outer.every((a, i) => circleOf(a, outer[(i + 1) % outer.length]!, cut.circles));
}

/** An X on each part that falls off, as large as fits beside what is not drawn. */
export function wasteCrosses(
  cut: Cut,
  tile: TileSides,
  scale: Scale,
  undrawn: readonly Shape[] = [],
): readonly Mark[] {
  const waste = subtract([{ outer: tileRing(tile), holes: [] }], [cut.shape, ...undrawn]);
  return waste
    .filter((shape) => shapeArea(shape) * scale.paperMmPerTick ** 2 >= leastWaste)
    .filter((shape) => !isRound(shape, cut))
    .flatMap((shape) => {
      const ring = [shape.outer, ...shape.holes].flatMap((one) => one.map((point) => toPaper(scale, point)));
      const pole = toPaper(scale, poleOfInaccessibility(shape, 320));
      const room = Math.min(...ring.map(([x, y]) => Math.hypot(x - pole[0], y - pole[1])));
      return cross(pole, Math.min(6, Math.max(1.5, room * 0.7)));
    });
}

/** Short strokes outside an edge, as a wall is hatched, from so far along it on. */
export function wallStrokes(a: Spot, b: Spot, long = stroke.long, first = 0): readonly Mark[] {
  const angle = angleTo(a, b);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const count = Math.floor(length / stroke.apart);
  const steps = Array.from({ length: count + 1 }, (_, i) => (i * length) / Math.max(1, count));
  return steps
    .filter((along) => along >= first)
    .map((along) => {
      const from = move(a, angle, along);
      return path([from, move(from, angle - (3 * Math.PI) / 4, long)], 'slash');
    });
}

/** Factory edges heavy; sawn edges thin with a triangle at each end, hatched on the side of the wall, or of what they are sawn round. */
export function edgeMarks(cut: Cut, scale: Scale): readonly Mark[] {
  const inner = new Set(innerCorners(cut).map(String));
  return cut.edges.flatMap((edge): readonly Mark[] => {
    const { from, to, factory } = edge;
    const [a, b] = [toPaper(scale, from), toPaper(scale, to)];
    const way = curveSpots(cut, edge).map((point) => toPaper(scale, point));
    if (circleOf(from, to, cut.circles)) return [];
    if (factory) return [path([a, b], 'factory')];
    const inward = angleTo(a, b) + Math.PI / 2;
    const [own, beside] = [lengthOn(scale, lengthOf(edge)), lengthOn(scale, shortestBeside(cut, edge))];
    const triangle = Math.min(most.triangle, shareOf.triangle * own);
    const long = Math.min(stroke.long, shareOf.stroke * beside);
    // A stroke leans back: from an inner corner it would run into the piece.
    const first = inner.has(String(from)) ? long * Math.SQRT1_2 : 0;
    return [
      path(way, 'sawn'),
      arrowHead(a, inward, triangle),
      arrowHead(b, inward, triangle),
      ...way.slice(1).flatMap((spot, i) => wallStrokes(way[i]!, spot, long, i === 0 ? first : 0)),
    ];
  });
}

/** The parts of the piece's outline that follow a true circle. */
export function arcMarks(cut: Cut, scale: Scale): readonly Mark[] {
  return [cut.shape.outer, ...cut.shape.holes].flatMap((ring) =>
    ring.flatMap((from, i): readonly Mark[] => {
      const to = ring[(i + 1) % ring.length]!;
      const circle = circleOf(from, to, cut.circles);
      const start = toPaper(scale, from);
      return circle ? [{ mark: 'path', steps: [start, arcStep(scale, from, to, circle)], line: 'sawn' }] : [];
    }),
  );
}

type Edge = Cut['edges'][number];

const lengthOf = ({ from, to }: Pick<Edge, 'from' | 'to'>) => Math.hypot(to[0] - from[0], to[1] - from[1]);
const isEnd = (point: Point, { from, to }: Edge) => `${from}` === `${point}` || `${to}` === `${point}`;

/** The shortest of the sawn edges that begin or end where one does, or of all at a point, in ticks; endless where there is none. */
function shortestBeside(cut: Cut, edge: Pick<Edge, 'from' | 'to'>): number {
  const sawn = cut.edges.filter((one) => !one.factory && one !== edge);
  const near = sawn.filter((one) => isEnd(edge.from, one) || isEnd(edge.to, one));
  return Math.min(...near.map(lengthOf));
}

/** The shortest straight edge that is sawn, on paper in mm: so small is the smallest notch or step that a card has to show. */
export function shortestSawn(cut: Cut, mmPerTick: number): number {
  const straight = cut.edges.filter(({ from, to, factory }) => !factory && !circleOf(from, to, cut.circles));
  return Math.min(...straight.map(lengthOf)) * mmPerTick;
}

/** A dot of up to 3 mm at each inner corner: drill here first. A small cross in the middle of each true circle. */
export function drillMarks(cut: Cut, scale: Scale): readonly Mark[] {
  const dots = innerCorners(cut).map((point): Mark => {
    const beside = lengthOn(scale, shortestBeside(cut, { from: point, to: point }));
    const radius = Math.min(most.dot, shareOf.dot * beside);
    return { mark: 'circle', centre: toPaper(scale, point), radius, fill: 'ink' };
  });
  const centres = cut.circles.flatMap(({ centre, radius }) => {
    const [x, y] = toPaper(scale, centre);
    const arm = Math.min(2, lengthOn(scale, radius) * 0.6);
    return [
      path([[x - arm, y], [x + arm, y]], 'dimension'), // biome-ignore format: two ends
      path([[x, y - arm], [x, y + arm]], 'dimension'), // biome-ignore format: two ends
    ];
  });
  return [...dots, ...centres];
}

/** The piece that is kept, white on the ghost of its tile. */
export function keptShape(cut: Cut, scale: Scale): Mark {
  return { mark: 'area', rings: shapeOn(scale, cut.shape, cut.circles), fill: 'paper' };
}
