import type { Ticks } from '../measure/index.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';

/** How thick the thickest tile is that some pieces are sawn from. */
export function thickestOf(
  { spec }: Pick<Packet, 'spec'>,
  { pieces }: Pick<PacketSurface, 'pieces'>,
  some: readonly string[],
): Ticks {
  const thicknessOf = (id: string) => {
    const key = pieces.find((piece) => piece.id === id)?.tile;
    return spec.tiles.find((tile) => tile.key === key)?.thickness ?? 0;
  };
  return Math.max(0, ...some.map(thicknessOf));
}
