import type { PacketSurface } from '../packet/Packet.ts';
import type { Mark } from './Mark.ts';
import { type Scale, toPaper } from './Scale.ts';
import { path } from './text.ts';

/** Lines along which the zones meet. */
export function seamMarks(surface: PacketSurface, scale: Scale): readonly Mark[] {
  return surface.zones.flatMap(({ seam = [] }) =>
    seam.map(({ from, to }) => path([toPaper(scale, from), toPaper(scale, to)], 'seam')),
  );
}
