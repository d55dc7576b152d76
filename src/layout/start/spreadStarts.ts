import type { Point } from '../../geometry/index.ts';
import { AXES } from './Choice.ts';
import { spacingAlong } from './mainRuns.ts';
import type { StartQuestion } from './StartQuestion.ts';

/**
 * Steps each way in which the repeat is gone through; one step on one axis is so many on the other, forwards and backwards, so that
 * of so few places no two stand level.
 */
const STEPS = 13;
const SKIP = 5;

/** Origins in even steps all over the repeat of a pattern, counted from one of them, on the axes that no wish holds. */
export function spreadStarts(
  { pattern, surface }: Pick<StartQuestion, 'pattern' | 'surface'>,
  from: Point,
): readonly Point[] {
  const [x, y] = AXES.map((axis) => surface.start[axis].kind === 'best');
  const { a, b } = pattern;
  const [first, second]: readonly [Point, Point] =
    x && y
      ? [a, b]
      : [
          [x ? spacingAlong(pattern, 0) : 0, 0],
          [0, y ? spacingAlong(pattern, Math.PI / 2) : 0],
        ];
  const steps = Array.from({ length: STEPS }, (_, n) => n);
  return steps.flatMap((i) =>
    [SKIP, STEPS - SKIP].map((skip): Point => {
      const j = (i * skip) % STEPS;
      const [u, v] = [0, 1].map((axis) => Math.round((i * first[axis]! + j * second[axis]!) / STEPS));
      return [from[0] + u!, from[1] + v!];
    }),
  );
}
