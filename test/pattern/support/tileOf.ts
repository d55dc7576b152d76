import type { TileShape, TileSpec } from '../../../src/job/Job.ts';

/** A tile of a given size, in ticks; all that no pattern asks for is as the job reader's defaults give it. */
export function tileOf(key: string, length: number, width: number, shape?: TileShape): TileSpec {
  return {
    key,
    name: key,
    readings: [[length, width]],
    length,
    width,
    spread: 0,
    thickness: 3048,
    edge: 'rectified',
    bow: 0,
    turns: 'any',
    material: 'porcelain',
    glazed: true,
    onHand: 0,
    ...(shape && { shape }),
  };
}
