import { bounds, type Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Placement } from './CutClass.ts';
import { slideStops } from './slideStops.ts';

/**
 * Whether each piece that slides along one side of the tile finds a place a distance from all that stay. Does not ask whether
 * those that slide are clear of each other, nor where one is that slides both ways: the answer errs to yes only.
 */
export function slidesClear(placements: readonly Placement[], least: Ticks): boolean {
  const staying = placements.filter(({ slides }) => !slides.along && !slides.across);
  return placements.every((one) => one.slides.along === one.slides.across || hasPlace(one, staying, least));
}

function hasPlace(one: Placement, others: readonly Placement[], least: Ticks): boolean {
  const { of, ring, slides } = one;
  const box = bounds(ring);
  const way: Point = slides.along ? [1, 0] : [0, 1];
  const [first, last] = slides.along
    ? [-box.minX, of.box.length - box.maxX]
    : [-box.minY, of.box.width - box.maxY];
  const taken = others
    .flatMap((other) => {
      const stops = slideStops(ring, way, other.ring, least);
      return stops ? [stops] : [];
    })
    .sort((a, b) => a[0] - b[0]);
  // The lowest move that nothing stands in the way of.
  const place = taken.reduce((move, [from, to]) => (move > from && move < to ? to : move), first - 1);
  return place <= last + 1;
}
