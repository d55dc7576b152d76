import type { TileBox } from '../cuts/TileBox.ts';
import { type Point, pointInRing, type Ring } from '../geometry/index.ts';
import type { PieceClass, Placement, Slides } from './CutClass.ts';
import { ringOfBox } from './ringOfBox.ts';
import { turnInTile } from './TileTurn.ts';

/** Every way a class can lie in its tile: its own place, turned as the tile allows; where it may slide, it still may. */
export function placementsOf(of: PieceClass): Placement[] {
  const corners = roundCorners(of.box).slice(0, CORNERS);
  return of.turns.map((turn): Placement => {
    const ring = of.ring.map((point) => turnInTile(point, turn, of.box));
    const { along, across } = of.slides;
    const slides = turn % 180 === 0 ? of.slides : { along: across, across: along };
    const taken = along || across ? 0 : cornersIn(ring, corners, of.box);
    return { of, turn, slid: [0, 0], ring, slides, corners: taken };
  });
}

const STAYS: Slides = { along: false, across: false };

/** A placement slid to where it stays. */
export function slidTo(placement: Placement, [dx, dy]: Point): Placement {
  const ring = placement.ring.map(([x, y]): Point => [x + dx, y + dy]);
  return { ...placement, slid: [dx, dy], ring, slides: STAYS };
}

/** Corners of a tile that are told apart: no more than an octagon has. */
const CORNERS = 8;

/** In a tile that is no rectangle a turned corner lies between ticks: one that a piece has is one of the piece's own, nearly. */
function cornersIn(ring: Ring, corners: Ring, box: TileBox): number {
  const has = (corner: Point) =>
    box.ring ? ring.some((point) => near(point, corner)) : pointInRing(corner, ring);
  return corners.reduce((mask, corner, i) => (has(corner) ? mask | (1 << i) : mask), 0);
}

/** Corners in the same order for every piece: the outline of a tile that was laid turned begins at another of them. */
function roundCorners(box: TileBox): Ring {
  const angle = ([x, y]: Point) =>
    (Math.atan2(y - box.width / 2, x - box.length / 2) + FIRST + 2 * Math.PI) % (2 * Math.PI);
  return [...ringOfBox(box)].sort((a, b) => angle(a) - angle(b));
}

/** No corner of a tile that looks alike turned lies in this direction: rounding moves none from first to last. */
const FIRST = 0.1;

/** What rounding does to a corner that was turned, in ticks. */
const NEAR = 4;

const near = ([x, y]: Point, [u, v]: Point): boolean => Math.hypot(u - x, v - y) <= NEAR;
