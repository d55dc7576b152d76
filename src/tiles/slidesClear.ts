import { bounds, type Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Placement } from './CutClass.ts';
import { type Stops, slideStops } from './slideStops.ts';

type Axis = 'along' | 'across';

/** Between which moves one piece stands in the way of another, asked once for each two that lie as they do. */
type StopsOf = (one: Placement, axis: Axis, other: Placement) => Stops | undefined;

/**
 * Asks whether pieces that slide along one side of the tile find places a distance from all that stay and from one another. Does not
 * ask where one is that slides both ways, nor whether those that slide across each other's way are clear: it errs to yes only.
 */
export function slidesClear(least: Ticks): (placements: readonly Placement[]) => boolean {
  const stopsOf = keptStops(least);
  return (placements) => {
    const staying = placements.filter(({ slides }) => !slides.along && !slides.across);
    const clear = (axis: Axis) => {
      const sliding = placements.filter(({ slides }) => slides[axis] && slides.along !== slides.across);
      return ordersOf(sliding).some((order) => fitsInOrder(order, staying, axis, stopsOf));
    };
    return clear('along') && clear('across');
  };
}

function keptStops(least: Ticks): StopsOf {
  const kept = {
    along: new WeakMap<Ring, Map<Ring, Stops | undefined>>(),
    across: new WeakMap<Ring, Map<Ring, Stops | undefined>>(),
  };
  return ({ ring }, axis, other) => {
    const known = kept[axis].get(ring) ?? new Map<Ring, Stops | undefined>();
    kept[axis].set(ring, known);
    if (!known.has(other.ring))
      known.set(other.ring, slideStops(ring, axis === 'along' ? [1, 0] : [0, 1], other.ring, least));
    return known.get(other.ring);
  };
}

/** Puts each as low as it goes beyond those before it: if pieces fit in this order at all, they do so. */
function fitsInOrder(
  order: readonly Placement[],
  staying: readonly Placement[],
  axis: Axis,
  stopsOf: StopsOf,
): boolean {
  const placed: { readonly one: Placement; readonly move: number }[] = [];
  for (const one of order) {
    const beyond = placed.flatMap((before) => {
      const stops = stopsOf(one, axis, before.one);
      return stops ? [before.move + stops[1]] : [];
    });
    const [first, last] = rangeOf(one, axis);
    const others = staying.flatMap((other) => {
      const stops = stopsOf(one, axis, other);
      return stops ? [stops] : [];
    });
    const move = lowestMove(others, Math.max(first - 1, ...beyond));
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
function lowestMove(others: readonly Stops[], from: number): number {
  return [...others]
    .sort((a, b) => a[0] - b[0])
    .reduce((move, [start, end]) => (move > start && move < end ? end : move), from);
}

function ordersOf(placements: readonly Placement[]): readonly (readonly Placement[])[] {
  if (placements.length < 2) return [placements];
  return placements.flatMap((first, i) =>
    ordersOf(placements.filter((_, k) => k !== i)).map((rest) => [first, ...rest]),
  );
}
