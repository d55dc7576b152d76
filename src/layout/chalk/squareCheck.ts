import { lineThroughShape, type Point, type Shape } from '../../geometry/index.ts';
import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import { threeFourFive } from '../../trade/index.ts';
import type { Chalk } from '../Layout.ts';
import type { Stretch } from './chalkLine.ts';

/**
 * The largest 3-4-5 that fits into one of the four corners between two chalk lines, its long side over open
 * floor. Legs in the order of the lines; steps of 1 in or 100 mm, in a small room of 10 mm. Zeros where
 * nothing fits.
 */
export function squareCheck(
  crossing: Point,
  [upright, level]: readonly [Stretch, Stretch],
  floor: readonly Shape[],
  system: System,
): Chalk['check'] {
  const units = system === 'inches' ? [TICKS_PER_INCH] : [100 * TICKS_PER_MM, 10 * TICKS_PER_MM];
  for (const unit of units) {
    const checks = corners(crossing, upright, level).flatMap((corner) =>
      largestIn(corner, crossing, floor, unit),
    );
    const best = checks.reduce((a, b) => (b.diagonal > a.diagonal ? b : a), NOTHING);
    if (best.diagonal > 0) return best;
  }
  return NOTHING;
}

const NOTHING: Chalk['check'] = { legs: [0, 0], diagonal: 0 };

/** Room along both lines from the crossing; negative to the left and down. */
type Corner = readonly [up: number, right: number];

function corners([x, y]: Point, upright: Stretch, level: Stretch): Corner[] {
  const ups = [upright.to[1] - y, upright.from[1] - y];
  const rights = [level.to[0] - x, level.from[0] - x];
  return ups.flatMap((up) => rights.map((right): Corner => [up, right]));
}

function largestIn(
  [up, right]: Corner,
  [x, y]: Point,
  floor: readonly Shape[],
  unit: Ticks,
): Chalk['check'][] {
  let [long, wide] = [Math.abs(up), Math.abs(right)];
  for (;;) {
    const check = threeFourFive(long, wide, unit);
    if (!check) return [];
    const [rise, reach] = [Math.sign(up) * check.legs[0], Math.sign(right) * check.legs[1]];
    if (isOpen([x, y + rise], [x + reach, y], floor)) return [check];
    // One unit less, either way round, is the next smaller triangle.
    [long, wide] = [Math.min(long, check.legs[0] - 1), Math.min(wide, check.legs[1] - 1)];
  }
}

function isOpen(from: Point, to: Point, floor: readonly Shape[]): boolean {
  const direction: Point = [to[0] - from[0], to[1] - from[1]];
  return floor.some((shape) =>
    lineThroughShape(shape, from, direction).some((span) => span.from <= 1e-9 && span.to >= 1 - 1e-9),
  );
}
