import type { Cut, CutSize } from '../cuts/Cut.ts';
import type { Box } from './boxes.ts';
import type { Spot } from './Mark.ts';
import { pairedSizes } from './pairedSizes.ts';
import { type Scale, toPaper } from './Scale.ts';

/** A side of the tile as it lies on its card. */
export type PaperSide = 'left' | 'right' | 'top' | 'bottom';

/** A size with the side of the tile on which it stands. */
export interface PlacedSize {
  readonly a: Spot;
  readonly b: Spot;
  readonly side: PaperSide;
  /** How far the dimension line stands off the tile, in mm. */
  readonly away: number;
  readonly size: CutSize;
  readonly type: readonly [number, number];
}

/** Up to this many sizes are large; where an odd shape has more, all are smaller, and what is over the most is left to its template. */
export const fewSizes = 4;
const most = 8;
/** A size's line stands this far off the tile, in mm; the next one on that side behind the figure of this. */
const first = 3.5;
const next = { few: 11, many: 8 } as const;
/** Type of the sizes on a card, in points: whole number and fraction. */
const cardFigure = [26, 21.5] as const;
/** Where there are many. */
const oddFigure = [18, 15] as const;
/** Both ends of a size that runs along a side of the tile lie this near to it, in mm. */
const on = 0.02;

const lengthOf = ({ at: [a, b] }: CutSize) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/**
 * Gives each size a side of the tile: its own where it runs along one, since on the side across it would be read as the length of that; of two
 * that tell both ends of a leaning saw line one a side, each at its own end; else the nearer one, or the one across when that is taken.
 *
 * @param tile the whole tile on paper.
 */
export function placeSizes(
  cut: Pick<Cut, 'sizes' | 'edges'>,
  scale: Scale,
  tile: Box,
): readonly PlacedSize[] {
  const used: Record<PaperSide, number> = { left: first, right: first, top: first, bottom: first };
  const [step, type] = cut.sizes.length <= fewSizes ? [next.few, cardFigure] : [next.many, oddFigure];
  // The longest dimension of a side lies outermost: extension lines of the shorter ones end before it.
  const sizes = cut.sizes.slice(0, most).sort((one, other) => lengthOf(one) - lengthOf(other));
  const pairs = pairedSizes(cut);
  const onPaper = ({ at }: CutSize) => at.map((point) => toPaper(scale, point)) as [Spot, Spot];
  return sizes.map((size) => {
    const [a, b] = onPaper(size);
    const mate = pairs.get(size);
    const [near, far] = sidesFor(a, b, tile);
    const free = used[near] > used[far] && !runsAlong(a, b, near, tile) ? far : near;
    const side = mate ? ownEnd([a, b], onPaper(mate)) : free;
    const away = used[side];
    used[side] += step;
    return { a, b, side, away, size, type };
  });
}

/** The side of the tile that a size is nearer to, and the one across. */
function sidesFor(a: Spot, b: Spot, tile: Box): readonly [PaperSide, PaperSide] {
  const level = Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]);
  const low = level
    ? (a[1] + b[1]) / 2 <= (tile.bottom + tile.top) / 2
    : (a[0] + b[0]) / 2 <= (tile.left + tile.right) / 2;
  const pair: readonly [PaperSide, PaperSide] = level ? ['bottom', 'top'] : ['left', 'right'];
  return low ? pair : [pair[1], pair[0]];
}

/** The side of the tile at the end of a saw line that a size tells, where another one tells the other end. */
function ownEnd([a, b]: readonly [Spot, Spot], [c, d]: readonly [Spot, Spot]): PaperSide {
  const level = Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]);
  const axis = level ? 1 : 0;
  const isLow = a[axis] + b[axis] < c[axis] + d[axis];
  if (level) return isLow ? 'bottom' : 'top';
  return isLow ? 'left' : 'right';
}

function runsAlong(a: Spot, b: Spot, side: PaperSide, tile: Box): boolean {
  const axis = side === 'left' || side === 'right' ? 0 : 1;
  return [a, b].every((spot) => Math.abs(spot[axis] - tile[side]) <= on);
}
