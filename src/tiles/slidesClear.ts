import { bounds, type Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Placement } from './CutClass.ts';
import { type Stops, slideStops } from './slideStops.ts';

type Axis = 'along' | 'across';

/** Between which moves one piece stands in the way of another, asked once for each two that lie as they do. */
type StopsOf = (one: Placement, axis: Axis, other: Placement) => Stops;

/** The moves between which nothing stands in the way: there are none. */
const NONE: Stops = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

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
  const kept = { along: new Map<Ring, Map<Ring, Stops>>(), across: new Map<Ring, Map<Ring, Stops>>() };
  return ({ ring }, axis, other) => {
    let known = kept[axis].get(ring);
    if (!known) {
      known = new Map();
      kept[axis].set(ring, known);
    }
    let stops = known.get(other.ring);
    if (!stops) {
      stops = slideStops(ring, axis === 'along' ? [1, 0] : [0, 1], other.ring, least) ?? NONE;
      known.set(other.ring, stops);
    }
    return stops;
  };
}

/** Puts each as low as it goes beyond those before it: if pieces fit in this order at all, they do so. */
function fitsInOrder(
  order: readonly Placement[],
  staying: readonly Placement[],
  axis: Axis,
  stopsOf: StopsOf,
): boolean {
  const moves: number[] = [];
  for (const one of order) {
    const [first, last] = rangeOf(one, axis);
    let move = first - 1;
    for (let k = 0; k < moves.length; k++)
      move = Math.max(move, moves[k]! + stopsOf(one, axis, order[k]!)[1]);
    // What lies in the way from lower down moves it on, perhaps into the way of one that was asked before.
    for (let before = Number.NEGATIVE_INFINITY; before < move; ) {
      before = move;
      for (const other of staying) {
        const [from, to] = stopsOf(one, axis, other);
        if (move > from && move < to) move = to;
      }
    }
    if (move > last + 1) return false;
    moves.push(move);
  }
  return true;
}

function rangeOf({ of, ring }: Placement, axis: Axis): readonly [number, number] {
  const box = bounds(ring);
  return axis === 'along' ? [-box.minX, of.box.length - box.maxX] : [-box.minY, of.box.width - box.maxY];
}

function ordersOf(placements: readonly Placement[]): readonly (readonly Placement[])[] {
  if (placements.length < 2) return [placements];
  return placements.flatMap((first, i) =>
    ordersOf(placements.filter((_, k) => k !== i)).map((rest) => [first, ...rest]),
  );
}
