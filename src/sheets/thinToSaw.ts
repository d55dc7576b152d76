import type { Fault } from '../layout/Layout.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';

/**
 * Strips of a floor that are narrower than their tile is thick: a blade breaks such a strip rather than parts it. From memory: it is a rule of
 * the hand that no standard gives.
 */
export function thinToSaw(
  { spec }: Pick<Packet, 'spec'>,
  { faults, pieces }: PacketSurface,
): readonly Fault[] {
  const thicknessOf = (id: string) => {
    const key = pieces.find((piece) => piece.id === id)?.tile;
    return spec.tiles.find((tile) => tile.key === key)?.thickness ?? 0;
  };
  return faults.filter(
    ({ code, figures, pieces: own }) =>
      code === 'thinStrip' && Number(figures.size) < Math.max(0, ...own.map(thicknessOf)),
  );
}
