import { bounds, type Point, type Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import { circleOf } from './arcsOf.ts';
import type { CutSize } from './Cut.ts';
import { measureFrom, takeSaw } from './measureFrom.ts';
import type { TileSide } from './Outline.ts';
import type { OwnPiece, TileBox } from './TileBox.ts';

/**
 * Sizes of holes and of circles that cut the edge: the centre from two sides of the tile to the nearest mark, and the diameter.
 * A hole that is no circle is given by its corner, width and depth.
 *
 * @param arcs indices of the circles that cut the outline.
 */
export function roundSizes(
  piece: OwnPiece,
  arcs: readonly number[],
  factory: ReadonlySet<TileSide>,
  step: Ticks,
): CutSize[] {
  const holes = piece.shape.holes.map((hole) => ({ hole, circle: circleOf(hole, piece.circles) }));
  const round = new Set([...holes.flatMap(({ circle }) => circle ?? []), ...arcs]);
  const square = holes.flatMap(({ hole, circle }) => (circle === undefined ? [hole] : []));
  return [
    ...[...round].flatMap((index) => circleSizes(piece.circles[index]!, factory, piece.box, step)),
    ...square.flatMap((hole) => boxSizes(hole, piece.box, step)),
  ];
}

function circleSizes(
  { centre, radius }: { readonly centre: Point; readonly radius: Ticks },
  factory: ReadonlySet<TileSide>,
  box: TileBox,
  step: Ticks,
): CutSize[] {
  const [x, y] = centre;
  const across = sideFor('left', 'right', x, box.length - x, factory);
  const up = sideFor('bottom', 'top', y, box.width - y, factory);
  return [
    measureFrom({ what: 'holeAcross', from: across, at: centre, away: 0 }, box, step),
    measureFrom({ what: 'holeUp', from: up, at: centre, away: 0 }, box, step),
    {
      what: 'holeDiameter',
      from: 'none',
      exact: 2 * radius,
      saw: takeSaw(2 * radius, step),
      at: [
        [x - radius, y],
        [x + radius, y],
      ],
    },
  ];
}

/** The factory edge to measure a centre from: one whose tape does not run off the tile on the wrong side, the first if both do. */
function sideFor(
  first: TileSide,
  second: TileSide,
  fromFirst: Ticks,
  fromSecond: Ticks,
  factory: ReadonlySet<TileSide>,
): TileSide {
  if (fromFirst < 0) return second;
  if (fromSecond < 0) return first;
  return factory.has(first) || !factory.has(second) ? first : second;
}

function boxSizes(hole: Ring, box: TileBox, step: Ticks): CutSize[] {
  const { minX, minY, maxX, maxY } = bounds(hole);
  const across = measureFrom({ what: 'notchAcross', from: 'left', at: [minX, minY], away: 1 }, box, step);
  const up = measureFrom({ what: 'notchUp', from: 'bottom', at: [minX, minY], away: 1 }, box, step);
  const size = (what: string, start: CutSize, exact: Ticks, end: Point): CutSize => {
    return {
      what,
      from: 'none',
      exact,
      saw: takeSaw(exact + start.exact - start.saw, step),
      at: [[minX, minY], end],
    };
  };
  return [
    across,
    up,
    size('notchWidth', across, maxX - minX, [maxX, minY]),
    size('notchDepth', up, maxY - minY, [minX, maxY]),
  ];
}
