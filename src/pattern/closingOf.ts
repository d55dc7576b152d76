import { bounds } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cell } from './Cell.ts';
import type { Closing, Pattern } from './Pattern.ts';

/** Sizes this near to closing, in ticks, close: means of readings are rounded. */
const ROUNDING = 2;

type Repeat = Pick<Pattern, 'a' | 'b' | 'tiles' | 'joint'>;

/** The tile of a pattern of rectangles that lacks most for its place, and how wide that makes the joints; undefined where all close. */
export function closingOf(pattern: Repeat, cells: readonly Cell[]): Closing | undefined {
  const lacks = cells.flatMap(({ tile, size }, k) => {
    const { quarter, ring } = { ...pattern.tiles[k]! };
    const { minX, minY, maxX, maxY } = bounds(ring);
    const has = [maxX - minX, maxY - minY];
    return ([0, 1] as const).map((axis) => ({
      tile: tile.key,
      side: (axis === 0) === (quarter === 0) ? ('length' as const) : ('width' as const),
      has: has[axis]!,
      needs: size[axis] - pattern.joint,
    }));
  });
  const worst = lacks.reduce((most, one) => (one.needs - one.has > most.needs - most.has ? one : most));
  const lack = worst.needs - worst.has;
  return lack > ROUNDING ? { ...worst, ...jointsOf(pattern, lack) } : undefined;
}

/** The narrowest and the widest joint between tiles that face each other, none over the joint by more than twice a lack. */
function jointsOf({ a, b, tiles, joint }: Repeat, lack: Ticks): { least: Ticks; most: Ticks } {
  const own = tiles.map(({ ring }) => bounds(ring));
  const steps = [-2, -1, 0, 1, 2];
  const around = steps.flatMap((i) =>
    steps.flatMap((j) => own.map((box) => moved(box, i * a[0] + j * b[0], i * a[1] + j * b[1]))),
  );
  const gaps = own.flatMap((one) =>
    around.flatMap((other) => {
      const [dx, dy] = [other.minX - one.maxX, other.minY - one.maxY];
      const facesX = Math.min(one.maxY, other.maxY) > Math.max(one.minY, other.minY);
      const facesY = Math.min(one.maxX, other.maxX) > Math.max(one.minX, other.minX);
      return [...(facesX && dx > 0 ? [dx] : []), ...(facesY && dy > 0 ? [dy] : [])];
    }),
  );
  const near = gaps.filter((gap) => gap <= joint + 2 * lack);
  return { least: Math.min(...near), most: Math.max(...near) };
}

type Box = ReturnType<typeof bounds>;

function moved({ minX, minY, maxX, maxY }: Box, x: Ticks, y: Ticks): Box {
  return { minX: minX + x, minY: minY + y, maxX: maxX + x, maxY: maxY + y };
}
