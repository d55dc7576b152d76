import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import { shapeArea } from '../geometry/index.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import { floorName } from './floorName.ts';
import type { SheetContext } from './SheetContext.ts';
import { tilePages } from './tilePages.ts';

/** Tiles at the end of the list that stay on one page. */
const LAST_TILES = 15;

type TileLine = ReturnType<typeof tileLine>;

/** A zone in the order of work over all floors, with the number and the floor by which it is called. */
interface OneZone {
  readonly order: number;
  readonly number: number;
  readonly floor: string;
}

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
  const zones = [...new Map(tiles.map(({ zone }) => [zone.order, zone])).values()]
    .sort((a, b) => a.order - b.order)
    .map((own) => ({ ...own, tiles: tiles.filter(({ zone }) => zone.order === own.order) }));
  const { low, together } = tilePages(
    zones.map((zone) => zone.tiles),
    context.packet.spec.print,
  );
  return { low, byTile: zones.map((zone, at) => blocks(zone, together && at === zones.length - 1)) };
}

/** The tiles of a zone; where the end of the list stays together, its last tiles in a block of their own. */
function blocks({ number, floor, tiles }: OneZone & { readonly tiles: readonly TileLine[] }, end: boolean) {
  const first = end ? tiles.slice(0, Math.max(0, tiles.length - LAST_TILES)) : tiles;
  return { number, floor, tiles: first, last: tiles.slice(first.length) };
}

/** Whether some tile gives more than one piece: only then does the order of tiles tell more than that of settings. */
export function sharesTiles({ packet }: SheetContext): boolean {
  return Object.values(packet.tiles).some(({ from }) => from.some(({ pieces }) => pieces.length > 1));
}

/** The zone of each piece by its name in the plans of tiles, the pieces as they are set. */
function zonesOf({ packet: { surfaces } }: SheetContext): ReadonlyMap<string, OneZone> {
  const named = (surface: string, id: string) => (surfaces.length > 1 ? `${surface}:${id}` : id);
  const zones = surfaces.flatMap(({ name, zones: own }) =>
    own.map(({ number, pieces }) => ({ name, pieces, number, floor: floorName({ surfaces }, name) })),
  );
  return new Map(
    zones.flatMap(({ name, pieces, number, floor }, order) =>
      pieces.map((id) => [named(name, id), { order, number, floor }] as const),
    ),
  );
}

function tileLine(context: SheetContext, { tile, pieces }: CutTile, zoneOf: ReadonlyMap<string, OneZone>) {
  const [zone] = pieces.map(({ piece }) => zoneOf.get(piece)!).sort((a, b) => a.order - b.order) as [OneZone];
  const parts = pieces
    .map(({ piece, cut }) => ({ piece, cut: cutOf(context, piece, cut) }))
    .sort((a, b) => shapeArea(b.cut.shape) - shapeArea(a.cut.shape))
    .map(({ piece, cut }) => ({
      piece,
      number: cut.number,
      settings: isHard(cut) ? [] : cut.fences.map(({ saw }) => context.figure(saw)),
      ...laterZone(zoneOf.get(piece)!, zone),
    }));
  return { tile, zone, parts };
}

/** The zone that a piece waits for as an offcut; 0 where it is set in that of its tile. */
function laterZone(own: OneZone, zone: OneZone): { readonly later: number; readonly laterFloor: string } {
  return own.order === zone.order
    ? { later: 0, laterFloor: '' }
    : { later: own.number, laterFloor: own.floor };
}

/** The cut of a piece; where a job has several surfaces, the piece's name begins with that of its surface. */
function cutOf({ packet: { surfaces } }: SheetContext, piece: string, cut: number): Cut {
  const own = surfaces.find(({ name }) => surfaces.length > 1 && piece.startsWith(`${name}:`));
  return (own ?? surfaces[0]!).cuts.find(({ number }) => number === cut)!;
}
