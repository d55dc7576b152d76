import type { Packet } from '../../../src/packet/Packet.ts';
import type { TilePlan } from '../../../src/tiles/TilePlan.ts';

/** Pieces of one kind of tile in the order of work, with their cuts and plan, as if all floors of a job were one. */
export function demoFloors({ surfaces }: Packet, plan: TilePlan) {
  const several = surfaces.length > 1;
  const named = (name: string, id: string) => (several ? `${name}:${id}` : id);
  // Cuts are numbered floor by floor.
  const numbered = (i: number, number: number) => 10_000 * i + number;
  const pieces = surfaces.flatMap(({ name, pieces, zones }) => {
    const own = new Map(pieces.map((piece) => [piece.id, piece]));
    return zones
      .flatMap((zone) => zone.pieces)
      .map((id) => ({ ...own.get(id)!, id: named(name, id) }))
      .filter(({ tile }) => tile === plan.tile);
  });
  const cuts = surfaces.flatMap(({ name, cuts }, i) =>
    cuts
      .filter(({ tile }) => tile === plan.tile)
      .map((cut) => ({
        ...cut,
        number: numbered(i, cut.number),
        pieces: cut.pieces.map((id) => named(name, id)),
      })),
  );
  const floorOf = (piece: string) =>
    several ? surfaces.findIndex(({ name }) => piece.startsWith(`${name}:`)) : 0;
  const from = plan.from.map((tile) => ({
    ...tile,
    pieces: tile.pieces.map((one) => ({ ...one, cut: numbered(floorOf(one.piece), one.cut) })),
  }));
  return { layout: { pieces }, cuts: { cuts }, plan: { ...plan, from } };
}
