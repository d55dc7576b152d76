import type { PacketSurface } from '../packet/Packet.ts';
import type { Space } from './Drawing.ts';
import { extent, type Scale } from './Scale.ts';
import { surfacePoints } from './surfaceScale.ts';

/** A whole surface as large as the space allows, at no scale that a rule could read, with `border` mm round it. */
export function smallScale(
  surface: PacketSurface,
  space: Space,
  border: number,
): Space & { readonly scale: Scale } {
  const size = extent(surfacePoints(surface), surface.turn);
  const perTick = Math.min(
    (space.widthMm - 2 * border) / size.width,
    (space.heightMm - 2 * border) / size.height,
  );
  const spot = [border, border] as const;
  return {
    scale: { ratio: 1, paperMmPerTick: perTick, turn: surface.turn, origin: size.lowerLeft, spot },
    widthMm: size.width * perTick + 2 * border,
    heightMm: size.height * perTick + 2 * border,
  };
}
