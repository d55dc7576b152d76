import type { Point } from '../geometry/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { boxOf } from './boxes.ts';
import type { Space } from './Drawing.ts';
import type { PlanParts } from './PlanParts.ts';
import type { Orientation } from './pickScale.ts';
import { type Named, planWindows } from './planWindows.ts';
import { poleOf } from './poleOf.ts';
import { mmPerTick, type Scale, scaleFor, toPaper } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';

/** The scale that puts ticks of the room's frame, from its lower left, on the paper unchanged. */
function frameOf(surface: PacketSurface): Scale {
  return { ...scaleFor(surfacePoints(surface), surface.turn, 1, [0, 0]), paperMmPerTick: 1 };
}

/**
 * Cuts a plan, or what of it lies round some of its points, into parts that fit the pages, lying the way that takes fewer of them; none
 * where no piece is named.
 *
 * @param named the pieces for which a part is worth its page.
 */
export function planGrid(
  surface: PacketSurface,
  spaces: Readonly<Record<Orientation, Space>>,
  ratio: number,
  border: number,
  points: readonly Point[] = surfacePoints(surface),
  named: PacketSurface['pieces'] = surface.pieces,
): PlanParts {
  const frame = frameOf(surface);
  const inFrame = (ring: readonly Point[]) => boxOf(ring.map((point) => toPaper(frame, point)));
  const pieces = named.map(
    ({ shape }): Named => ({ box: inFrame(shape.outer), pole: toPaper(frame, poleOf(shape)) }),
  );
  const partsOn = (way: Orientation) => {
    const width = (spaces[way].widthMm - 2 * border) / mmPerTick(ratio);
    const height = (spaces[way].heightMm - 2 * border) / mmPerTick(ratio);
    return {
      ratio,
      orientation: way,
      border,
      parts: planWindows(pieces, inFrame(points), { width, height }),
    };
  };
  const [upright, flat] = [partsOn('portrait'), partsOn('landscape')];
  return flat.parts.length < upright.parts.length ? flat : upright;
}
