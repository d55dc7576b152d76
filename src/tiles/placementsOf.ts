import { turnPoint } from '../cuts/TileBox.ts';
import { type Point, pointInRing, type Ring } from '../geometry/index.ts';
import type { CutClass, Placement } from './CutClass.ts';

/** Every way a class can lie in its tile: its own place, turned as the tile allows. */
export function placementsOf(of: CutClass): Placement[] {
  return of.turns.map((turn): Placement => {
    const ring = of.around.map((point) => turnPoint(point, turn, of.box));
    return { of, turn, ring, corners: cornersIn(ring, of.box.length, of.box.width) };
  });
}

function cornersIn(ring: Ring, length: number, width: number): number {
  const corners: readonly Point[] = [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ];
  return corners.reduce((mask, corner, i) => (pointInRing(corner, ring) ? mask | (1 << i) : mask), 0);
}
