import { inSight } from '../geometry/index.ts';
import type { Spot } from './Mark.ts';

export type MeasureShape = 'rectangle' | 'L' | 'T';

/** Rooms without a size, in mm of paper, walked from the corner left of the door, the room on the left. */
const rooms: Readonly<Record<MeasureShape, readonly Spot[]>> = {
  rectangle: [[0, 0], [112, 0], [112, 66], [0, 66]], // biome-ignore format: corners on a line
  L: [[0, 0], [116, 0], [116, 40], [60, 40], [60, 84], [0, 84]], // biome-ignore format: corners on a line
  T: [[0, 72], [0, 34], [42, 34], [42, 0], [84, 0], [84, 34], [126, 34], [126, 72]], // biome-ignore format: corners on a line
};

/** A tape keeps this far off a corner that sticks out, in mm of paper. */
const clear = 6;

/** A blank room: its corners by letter, its walls in the order walked, and the diagonals that lie inside it. */
export interface MeasureRoom {
  readonly corners: readonly { readonly name: string; readonly at: Spot }[];
  readonly walls: readonly string[];
  readonly diagonals: readonly string[];
}

/**
 * The letter of a corner, counted from 0.
 *
 * @example cornerLetter(3) //=> 'D'
 */
export function cornerLetter(i: number): string {
  return String.fromCharCode(65 + i);
}

/** The blank room of a shape. */
export function measureRoom(shape: MeasureShape): MeasureRoom {
  const ring = rooms[shape];
  const name = (i: number) => cornerLetter(i % ring.length);
  const pairs = ring.flatMap((_, i) => ring.slice(i + 2).map((_, k) => [i, i + 2 + k] as const));
  return {
    corners: ring.map((at, i) => ({ name: name(i), at })),
    walls: ring.map((_, i) => `${name(i)}-${name(i + 1)}`),
    diagonals: pairs
      .filter(([i, j]) => !(i === 0 && j === ring.length - 1) && inSight(ring, i, j, clear))
      .map(([i, j]) => `${name(i)}-${name(j)}`),
  };
}
