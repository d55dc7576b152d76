import { bounds, type Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Placement } from './CutClass.ts';
import { slideStops } from './slideStops.ts';

type Axis = 'along' | 'across';

/**
 * Whether pieces that slide along one side of the tile find places a distance from all that stay and from one another. Does not
 * ask where one is that slides both ways, nor whether those that slide across each other's way are clear: it errs to yes only.
 */
export function slidesClear(placements: readonly Placement[], least: Ticks): boolean {
  const staying = placements.filter(({ slides }) => !slides.along && !slides.across);
  const clear = (axis: Axis) => {
    const sliding = placements.filter(({ slides }) => slides[axis] && slides.along !== slides.across);
    return ordersOf(sliding).some((order) => fitsInOrder(order, staying, axis, least));
  };
  return clear('along') && clear('across');
}

/** Puts each as low as it goes beyond those before it: if pieces fit in this order at all, they do so. */
function fitsInOrder(
  order: readonly Placement[],
  staying: readonly Placement[],
  axis: Axis,
  least: Ticks,
): boolean {
  const way: Point = axis === 'along' ? [1, 0] : [0, 1];
  const placed: { readonly one: Placement; readonly move: number }[] = [];
  for (const one of order) {
    const beyond = placed.flatMap((before) => {
      const stops = slideStops(one.ring, way, before.one.ring, least);
      return stops ? [before.move + stops[1]] : [];
    });
    const [first, last] = rangeOf(one, axis);
    const move = lowestMove(one, staying, way, least, Math.max(first - 1, ...beyond));
    if (move > last + 1) return false;
    placed.push({ one, move });
  }
  return true;
}

function rangeOf({ of, ring }: Placement, axis: Axis): readonly [number, number] {
  const box = bounds(ring);
  return axis === 'along' ? [-box.minX, of.box.length - box.maxX] : [-box.minY, of.box.width - box.maxY];
}

/** The lowest move from one on that nothing stands in the way of. */
function lowestMove(
  { ring }: Placement,
  others: readonly Placement[],
  way: Point,
  least: Ticks,
  from: number,
): number {
  return others
    .flatMap((other) => {
      const stops = slideStops(ring, way, other.ring, least);
      return stops ? [stops] : [];
    })
    .sort((a, b) => a[0] - b[0])
    .reduce((move, [start, end]) => (move > start && move < end ? end : move), from);
}

function ordersOf(placements: readonly Placement[]): readonly (readonly Placement[])[] {
  if (placements.length < 2) return [placements];
  return placements.flatMap((first, i) =>
    ordersOf(placements.filter((_, k) => k !== i)).map((rest) => [first, ...rest]),
  );
}
