import { bounds, clipConvex, type Point, type Ring, translate } from '../geometry/index.ts';
import { type Pattern, tilesOver } from '../pattern/index.ts';
import type { Drawing, DrawOptions } from './Drawing.ts';
import type { Fill } from './hatches.ts';
import type { Mark } from './Mark.ts';
import { penSvg } from './penSvg.ts';
import { type Scale, toPaper } from './Scale.ts';
import { ringOn } from './trueCircle.ts';

/** The side of the square drawing in mm, and how many repeats, as wide as a square of their area, it shows at the least. */
const side = 64;
const REPEATS = 2.6;
/** Fills by which the tiles of a pattern are told apart, the first left white, as on the plan of a room. */
const FILLS: readonly Fill[] = ['paper', 'second', 'third', 'fourth'];

/** A pattern without a room: its tiles told apart by fill, and one repeat from the lower left corner of its first tile. */
export function drawPattern(pattern: Pattern, options: Pick<DrawOptions, 'id' | 'label'>): Drawing {
  const { a, b, tiles } = pattern;
  const longest = Math.max(...tiles.map(({ ring }) => longer(ring)));
  const shown = Math.max(REPEATS * Math.sqrt(a[0] * b[1] - a[1] * b[0]), 3 * longest);
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const [left, bottom] = [Math.round(middle[0] - shown / 2), Math.round(middle[1] - shown / 2)];
  const [right, top] = [Math.round(left + shown), Math.round(bottom + shown)];
  const view: Ring = [[left, bottom], [right, bottom], [right, top], [left, top]]; // biome-ignore format: a square on a line
  const scale: Scale = {
    ratio: 1,
    paperMmPerTick: side / shown,
    turn: 0,
    origin: [left, bottom],
    spot: [0, 0],
  };
  const keys = [...new Set(tiles.map(({ tile }) => tile))];
  const areas = tilesOver(pattern, view).flatMap(({ tile, ring }) =>
    clipConvex(ring, view).map((part): Mark => {
      return {
        mark: 'area',
        rings: [ringOn(scale, part)],
        line: 'piece',
        fill: FILLS[keys.indexOf(tile) % 4]!,
      };
    }),
  );
  const half = -pattern.joint / 2;
  const corners: Point[] = [[0, 0], a, [a[0] + b[0], a[1] + b[1]], b];
  const repeat = corners.map((point) => toPaper(scale, translate(point, [half, half])));
  const marks: Mark[] = [...areas, { mark: 'area', rings: [repeat], line: 'thick' }];
  return penSvg(marks, { ...options, widthMm: side, heightMm: side, ratio: null });
}

function longer(ring: Ring): number {
  const { minX, minY, maxX, maxY } = bounds(ring);
  return Math.max(maxX - minX, maxY - minY);
}
