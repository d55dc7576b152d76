import type { Point } from '../geometry/index.ts';
import type { System } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Space } from './Drawing.ts';
import { type Orientation, pickScale } from './pickScale.ts';
import { extent, lengthOn, type Scale, scaleFor } from './Scale.ts';

/** One space, or one for each way of the page to choose from. */
export type Spaces = Space | Readonly<Record<Orientation, Space>>;

/** A scale for a whole surface in the room's frame, and the paper it takes with its border. */
export interface SurfaceScale extends Space {
  readonly scale: Scale;
  readonly orientation: Orientation;
}

export function surfacePoints(surface: PacketSurface): readonly Point[] {
  return [...surface.outline, ...surface.openings.flatMap(({ line }) => line)];
}

const less = ({ widthMm, heightMm }: Space, border: number): Space => ({
  widthMm: widthMm - 2 * border,
  heightMm: heightMm - 2 * border,
});

/** Picks the scale of a surface, or of those of its points, from the stated list so that `border` mm stay free on each side. */
export function surfaceScale(
  surface: PacketSurface,
  spaces: Spaces,
  border: number,
  system: System,
  points: readonly Point[] = surfacePoints(surface),
): SurfaceScale {
  const size = extent(points, surface.turn);
  const [portrait, landscape] = 'portrait' in spaces ? [spaces.portrait, spaces.landscape] : [spaces, spaces];
  const { ratio, orientation } = pickScale(
    size,
    { portrait: less(portrait, border), landscape: less(landscape, border) },
    system,
  );
  const scale = scaleFor(points, surface.turn, ratio, [border, border]);
  return {
    scale,
    orientation,
    widthMm: lengthOn(scale, size.width) + 2 * border,
    heightMm: lengthOn(scale, size.height) + 2 * border,
  };
}
