import type { Point } from '../geometry/index.ts';
import type { System } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Space } from './Drawing.ts';
import type { Spot } from './Mark.ts';
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

const less = ({ widthMm, heightMm }: Space, [aside, above]: Spot): Space => ({
  widthMm: widthMm - 2 * aside,
  heightMm: heightMm - 2 * above,
});

/**
 * Picks the scale of a surface, or of those of its points, from the stated list so that `border` mm stay free on each side, or so many
 * to the left and right and so many above and below.
 */
export function surfaceScale(
  surface: PacketSurface,
  spaces: Spaces,
  border: number | Spot,
  system: System,
  points: readonly Point[] = surfacePoints(surface),
): SurfaceScale {
  const size = extent(points, surface.turn);
  const free: Spot = typeof border === 'number' ? [border, border] : border;
  const [portrait, landscape] = 'portrait' in spaces ? [spaces.portrait, spaces.landscape] : [spaces, spaces];
  const { ratio, orientation } = pickScale(
    size,
    { portrait: less(portrait, free), landscape: less(landscape, free) },
    system,
  );
  const scale = scaleFor(points, surface.turn, ratio, free);
  return {
    scale,
    orientation,
    widthMm: lengthOn(scale, size.width) + 2 * free[0],
    heightMm: lengthOn(scale, size.height) + 2 * free[1],
  };
}
