import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import type { MatesOf, TileMates } from './tileMates.ts';

/** A zone with its floor. */
export interface FloorZone {
  readonly surface: PacketSurface;
  readonly zone: Zone;
}

/** A piece that stands on the saw list. */
export interface SawnPiece {
  /** Its own name, and as plans of tiles name it. */
  readonly id: string;
  readonly name: string;
  readonly surface: PacketSurface;
  readonly cut: Cut;
  readonly mates: TileMates | undefined;
  /** The piece from whose offcut it is sawn. */
  readonly from: string | undefined;
  /** The zone that it is set in, where it is sawn for an earlier one. */
  readonly later: FloorZone | undefined;
}

/**
 * The pieces that have no card, zone by zone as they are sawn: in the zone that they are set in, but a tile that gives a piece to an earlier
 * one is sawn there.
 */
export function sawnPieces(
  { surfaces }: Packet,
  matesOf: MatesOf,
): readonly (FloorZone & { readonly pieces: readonly SawnPiece[] })[] {
  const nameOf = ({ name }: PacketSurface, id: string) => (surfaces.length > 1 ? `${name}:${id}` : id);
  const zones = surfaces.flatMap((surface) => surface.zones.map((zone) => ({ surface, zone })));
  const setIn = new Map(
    zones.flatMap(({ surface, zone }, at) => zone.pieces.map((id) => [nameOf(surface, id), at] as const)),
  );
  const all = surfaces.flatMap((surface) =>
    surface.cuts
      .filter((cut) => !isHard(cut))
      .flatMap((cut) =>
        cut.pieces.map((id) => {
          const [name, mates] = [nameOf(surface, id), matesOf(surface.name, id)];
          const at = setIn.get(name)!;
          // An offcut is sawn when it is needed; a tile when the first of its pieces is.
          const sawn =
            mates && !mates.isOffcut ? Math.min(...mates.pieces.map((one) => setIn.get(one)!)) : at;
          const from = mates?.isOffcut ? mates.pieces[0] : undefined;
          return { sawn, id, name, surface, cut, mates, from, later: sawn < at ? zones[at] : undefined };
        }),
      ),
  );
  return zones.map((own, at) => ({ ...own, pieces: all.filter(({ sawn }) => sawn === at) }));
}
