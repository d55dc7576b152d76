import { turnPoint } from '../cuts/TileBox.ts';
import { type Point, pointInRing, type Ring } from '../geometry/index.ts';
import type { CutClass, Placement, Slides } from './CutClass.ts';

/** Every way a class can lie in its tile: its own place, turned as the tile allows; where it may slide, it still may. */
export function placementsOf(of: CutClass): Placement[] {
  return of.turns.map((turn): Placement => {
    const ring = of.ring.map((point) => turnPoint(point, turn, of.box));
    const { along, across } = of.slides;
    const slides = turn % 180 === 0 ? of.slides : { along: across, across: along };
    const corners = along || across ? 0 : cornersIn(ring, of.box.length, of.box.width);
    return { of, turn, slid: [0, 0], ring, slides, corners };
  });
}

const STAYS: Slides = { along: false, across: false };

/** A placement slid to where it stays. */
export function slidTo(placement: Placement, [dx, dy]: Point): Placement {
  const ring = placement.ring.map(([x, y]): Point => [x + dx, y + dy]);
  return { ...placement, slid: [dx, dy], ring, slides: STAYS };
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
