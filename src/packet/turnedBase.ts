import { type Point, rotateRound } from '../geometry/index.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';

/** What lies on the base, turned from the room's frame into the pattern's; `turn` in radians. */
export function turnedBase(base: PlacedBase, turn: number): PlacedBase {
  if (turn === 0) return base;
  const back = (point: Point): Point => rotateRound(point, -turn);
  return {
    cracks: base.cracks.map((crack) => ({ ...crack, line: crack.line.map(back) })),
    hollow: base.hollow.map((spot) => ({ ...spot, at: back(spot.at) })),
    joints: base.joints.map((joint) => ({ ...joint, from: back(joint.from), to: back(joint.to) })),
    readings: base.readings.map((reading) => ({ ...reading, at: back(reading.at) })),
  };
}
