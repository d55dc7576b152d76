import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import { shapeArea } from '../geometry/index.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import type { SheetContext } from './SheetContext.ts';
import { tilePages } from './tilePages.ts';

/** Tiles at the end of the list that stay on one page. */
const LAST_TILES = 15;

type TileLine = ReturnType<typeof tileLine>;

/**
 * What is sawn of each tile, tile by tile as they are first needed, whatever kind they are, under the zone of the first piece; the
 * largest piece first.
 */
export function sawnByTile(context: SheetContext) {
  const zoneOf = zonesOf(context);
  const place = new Map([...zoneOf.keys()].map((piece, i) => [piece, i]));
  const needed = ({ pieces }: CutTile) => Math.min(...pieces.map(({ piece }) => place.get(piece)!));
  const tiles = Object.values(context.packet.tiles)
    .flatMap(({ from }) => from)
    .sort((a, b) => needed(a) - needed(b))
    .map((one) => tileLine(context, one, zoneOf));
  const numbers = [...new Set(tiles.map(({ zone }) => zone))].sort((a, b) => a - b);
  const zones = numbers.map((number) => ({ number, tiles: tiles.filter(({ zone }) => zone === number) }));
  const { low, together } = tilePages(
    zones.map((zone) => zone.tiles),
    context.packet.spec.print,
  );
  return { low, byTile: zones.map((zone, at) => blocks(zone, together && at === zones.length - 1)) };
}

/** The tiles of a zone; where the end of the list stays together, its last tiles in a block of their own. */
function blocks(
  { number, tiles }: { readonly number: number; readonly tiles: readonly TileLine[] },
  end: boolean,
) {
  const first = end ? tiles.slice(0, Math.max(0, tiles.length - LAST_TILES)) : tiles;
  return { number, tiles: first, last: tiles.slice(first.length) };
}

/** Whether some tile gives more than one piece: only then does the order of tiles tell more than that of settings. */
export function sharesTiles({ packet }: SheetContext): boolean {
  return Object.values(packet.tiles).some(({ from }) => from.some(({ pieces }) => pieces.length > 1));
}

/** The zone of each piece by its name in the plans of tiles, the pieces as they are set. */
function zonesOf({ packet: { surfaces } }: SheetContext): ReadonlyMap<string, number> {
  const named = (surface: string, id: string) => (surfaces.length > 1 ? `${surface}:${id}` : id);
  return new Map(
    surfaces.flatMap(({ name, zones }) =>
      zones.flatMap(({ number, pieces }) => pieces.map((id) => [named(name, id), number] as const)),
    ),
  );
}

function tileLine(context: SheetContext, { tile, pieces }: CutTile, zoneOf: ReadonlyMap<string, number>) {
  const zone = Math.min(...pieces.map(({ piece }) => zoneOf.get(piece)!));
  const parts = pieces
    .map(({ piece, cut }) => ({ piece, cut: cutOf(context, piece, cut) }))
    .sort((a, b) => shapeArea(b.cut.shape) - shapeArea(a.cut.shape))
    .map(({ piece, cut }) => ({
      piece,
      number: cut.number,
      settings: isHard(cut) ? [] : cut.fences.map(({ saw }) => context.figure(saw)),
      // A piece for a later zone waits as an offcut.
      later: zoneOf.get(piece) === zone ? 0 : zoneOf.get(piece)!,
    }));
  return { tile, zone, parts };
}

/** The cut of a piece; where a job has several surfaces, the piece's name begins with that of its surface. */
function cutOf({ packet: { surfaces } }: SheetContext, piece: string, cut: number): Cut {
  const own = surfaces.find(({ name }) => surfaces.length > 1 && piece.startsWith(`${name}:`));
  return (own ?? surfaces[0]!).cuts.find(({ number }) => number === cut)!;
}
