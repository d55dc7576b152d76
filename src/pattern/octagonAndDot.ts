import type { Point } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import type { Closing, Pattern } from './Pattern.ts';
import { tileOutline } from './tileOutline.ts';

type Octagon = Pick<TileSpec, 'key' | 'length' | 'width' | 'shape'>;

/**
 * Octagons flat beside flat, a square dot on its corner in each opening. All joints are alike where the dot is
 * √2 of the cut corner less 0.5858 of the joint; a larger one pushes the octagons apart.
 *
 * @example octagonAndDot({ key: 'field', length: 800, width: 800, shape: { kind: 'octagon', corner: 200 } }, { key: 'dot', length: 277, width: 277 }, 10).a //=> [810, 0]
 */
export function octagonAndDot(octagon: Octagon, dot: Sized, joint: Ticks): Pattern {
  const corner = octagon.shape?.kind === 'octagon' ? octagon.shape.corner : 0;
  const side = Math.max(dot.length, dot.width);
  const apart = Math.max(joint, Math.round((side + 2 * joint) / Math.SQRT2) - corner);
  const [flats, pitch] = [octagon.length, octagon.length + apart];
  const middle = flats + Math.round(apart / 2);
  const half = Math.round(side / Math.SQRT2);
  const one = (tile: string, ring: readonly Point[], row: number) => {
    const counted = { column: [1, 0, 0], row: [0, 2, row] } as const;
    return { tile, ring, quarter: 0, ...(row === 1 && { slantDeg: 45 }), ...counted } as const;
  };
  const closing = closingOf(dot, joint, apart, corner);
  return {
    name: 'octagonAndDot',
    a: [pitch, 0],
    b: [0, pitch],
    tiles: [one(octagon.key, tileOutline(octagon), 0), one(dot.key, dotRing(middle, half), 1)],
    joint,
    module: [pitch, pitch],
    step: [pitch, pitch / 2],
    straightX: false,
    straightY: false,
    inCourses: false,
    ...(closing && { closing }),
  };
}

/** Sizes this near to closing, in ticks, close: a sixty-fourth of an inch is what a tape tells. */
const TOLD = 127;

function closingOf(dot: Sized, joint: Ticks, apart: Ticks, corner: Ticks): Closing | undefined {
  const has = Math.max(dot.length, dot.width);
  const needs = Math.round(Math.SQRT2 * (corner + joint) - 2 * joint);
  if (Math.abs(has - needs) <= TOLD) return undefined;
  const besideDot = Math.round((Math.SQRT2 * (corner + apart) - has) / 2);
  const [least, most] = [Math.min(apart, besideDot), Math.max(apart, besideDot)];
  return { tile: dot.key, side: 'length', has, needs, least, most };
}

function dotRing(middle: Ticks, half: Ticks): readonly Point[] {
  return [
    [middle, middle - half],
    [middle + half, middle],
    [middle, middle + half],
    [middle - half, middle],
  ];
}
