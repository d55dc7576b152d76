import type { Point } from './Point.ts';
import { unitAlong } from './unitAlong.ts';

/** A part of a circle, walked from one end to the other. Not rounded. */
export interface Arc {
  readonly centre: Point;
  readonly radius: number;
  /** 1 where its middle lies to the right of the straight line from end to end, -1 where it lies to the left. */
  readonly sign: 1 | -1;
}

/**
 * Radius of the circle through both ends of a chord and a middle that rises over it: c² / 8h + h / 2.
 *
 * Source: the mensuration of circular segments as in Machinery's Handbook (from memory).
 *
 * @example radiusOf(8, 2) //=> 5
 * @example radiusOf(10, 5) //=> 5
 */
export function radiusOf(chord: number, rise: number): number {
  return (chord * chord) / (8 * rise) + rise / 2;
}

/**
 * The arc over a chord whose middle stands `rise` to the right of it, or to the left where `rise` is less than 0.
 *
 * @example arcThrough([0, 0], [8, 0], 2) //=> { centre: [4, 3], radius: 5, sign: 1 }
 * @example arcThrough([0, 0], [8, 0], -2) //=> { centre: [4, -3], radius: 5, sign: -1 }
 */
export function arcThrough(from: Point, to: Point, rise: number): Arc {
  const sign = rise < 0 ? -1 : 1;
  const height = Math.abs(rise);
  const radius = radiusOf(Math.hypot(to[0] - from[0], to[1] - from[1]), height);
  const [ux, uy] = unitAlong(from, to);
  const back = sign * (radius - height);
  return {
    centre: [(from[0] + to[0]) / 2 - uy * back, (from[1] + to[1]) / 2 + ux * back],
    radius,
    sign,
  };
}

/**
 * How far an arc stands to the right of its chord at a place `along` it from its beginning; all in ticks.
 *
 * @example arcOffset(8, 2, 4) //=> 2
 * @example arcOffset(8, -2, 8) + 0 //=> 0
 */
export function arcOffset(chord: number, rise: number, along: number): number {
  if (rise === 0) return 0;
  const height = Math.abs(rise);
  const radius = radiusOf(chord, height);
  const off = along - chord / 2;
  // The same as the root less the centre's distance, without the difference of two large numbers.
  const drop = (off * off) / (radius + Math.sqrt(Math.max(0, radius * radius - off * off)));
  return Math.sign(rise) * (height - drop);
}

/**
 * Places along a chord, from its beginning, of the points between which straight lines follow the arc to within
 * `tolerance` ticks: an even number of equal parts, as few as that takes, so that the middle is one of them. Ends left out.
 *
 * @example arcPlaces(80, 20, 100) //=> [40]
 * @example arcPlaces(80, 20, 2).map(Math.round) //=> [18, 40, 62]
 */
export function arcPlaces(chord: number, rise: number, tolerance: number): number[] {
  const height = Math.abs(rise);
  const radius = radiusOf(chord, height);
  const whole = 4 * Math.atan((2 * height) / chord);
  const most = 4 * Math.asin(Math.sqrt(Math.min(1, tolerance / (2 * radius))));
  const parts = 2 * Math.max(1, Math.ceil(whole / most / 2 - 1e-9));
  return Array.from({ length: parts - 1 }, (_, i) => {
    return chord / 2 + radius * Math.sin((whole * (i + 1 - parts / 2)) / parts);
  });
}
