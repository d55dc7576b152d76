import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import { type CutTileView, drawCutTile, passesOf, tileScale } from '../drawing/index.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import { pileLine } from './pileLine.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { startsInTile } from './startsInTile.ts';
import { tileProof } from './tileProof.ts';

const BUNDLES = ['office', 'packet'] as const;

/** Which pieces come out of which tile? Equal tiles are drawn once, with a count; a tile that gives one plain piece is a line. */
export const tileSheet: Sheet = {
  name: 'tile-sheet',
  for: 'setter',
  bundles: BUNDLES,
  speaks: 'crew',
  make: (context) => {
    const { packet } = context;
    const groups = Object.values(packet.tiles).flatMap(({ tile, from }) => tileGroups(context, tile, from));
    if (groups.length === 0) return [];
    const drawn = groups.filter((group) => !isPlain(group));
    const side = drawn.length > MANY ? SMALL_MM : LARGE_MM;
    const space = { widthMm: side, heightMm: side };
    const ratio = tileScale(packet.spec.tiles, space, packet.spec.print.system);
    const lines = groups.filter(isPlain).map((group) => lineOf(context, group));
    const parts = inParts(
      drawn.map((group, i) => ({ ...drawnOf(context, group), ...drawingOf(context, group, ratio, i) })),
    );
    const data = {
      triangles: [...parts.drawn, ...parts.last].some(({ passes }) => passes.length > 0),
      unbroken:
        lines.reduce((sum, { tiles }) => sum + Math.ceil(tiles.length / 2), 0) <= FEW &&
        parts.last.every(({ more }) => more.length === 0),
      proofs: Object.values(packet.tiles).map((plan) => ({
        ...tileProof(context, plan),
        pile: pileLine(context, plan),
      })),
      ...parts,
      lines,
    };
    // Who saws each piece out of a tile of its own runs out of tile where the count goes by offcuts.
    const shared = groups.some(({ cuts }) => cuts.length > 1);
    const bundles = shared ? (['crew', ...BUNDLES] as const) : BUNDLES;
    return [{ ...(drawn.length > 0 ? { scale: `1:${ratio}` } : {}), bundles, data }];
  },
};

/** Side of the space for a tile, in mm, and how many drawings make it the small one. */
const LARGE_MM = 40;
const SMALL_MM = 26;
const MANY = 36;
/** Up to so many lines of plain tiles, two tiles on one, stand on one page: a page for the last of them is a page too many. */
const FEW = 36;

/** Of more drawings than this the last few stay in one piece with what follows, so that no page is turned for a line or two. */
const SEVERAL = 8;
const LAST = 4;
/** Tiles that are listed beside their drawing, and on each block of those that are listed under it. */
const BESIDE = 18;
const UNDER = 36;

function inParts<T>(drawn: readonly T[]): { readonly drawn: readonly T[]; readonly last: readonly T[] } {
  const first = drawn.length > SEVERAL ? drawn.length - LAST : drawn.length;
  return { drawn: drawn.slice(0, first), last: drawn.slice(first) };
}

/** Tiles that give the same cuts. */
interface TileGroup {
  readonly tile: string;
  readonly cuts: readonly Cut[];
  readonly tiles: readonly CutTile[];
}

/** The cut of a piece; where a job has several surfaces, the piece's name begins with that of its surface. */
function cutOf({ packet }: SheetContext, { piece, cut }: CutTile['pieces'][number]): Cut {
  const own = packet.surfaces.find(({ name }) => packet.surfaces.length > 1 && piece.startsWith(`${name}:`));
  return (own ?? packet.surfaces[0]!).cuts.find(({ number }) => number === cut)!;
}

function tileGroups(context: SheetContext, tile: string, from: readonly CutTile[]): readonly TileGroup[] {
  const groups = new Map<string, TileGroup>();
  for (const one of from) {
    const pieces = [...one.pieces].sort((a, b) => a.cut - b.cut);
    const key = pieces.map(({ piece, cut }) => `${piece.split(':').slice(0, -1)} ${cut}`).join(' + ');
    const group = groups.get(key) ?? { tile, cuts: pieces.map((piece) => cutOf(context, piece)), tiles: [] };
    groups.set(key, { ...group, tiles: [...group.tiles, { ...one, pieces }] });
  }
  return [...groups.values()];
}

/** A tile for one piece that the saw list tells in full. */
function isPlain({ cuts }: TileGroup): boolean {
  return cuts.length === 1 && !isHard(cuts[0]!);
}

function lineOf({ say }: SheetContext, { cuts, tiles }: TileGroup) {
  return {
    count: tiles.length,
    cuts: cuts.map(({ number }) => number),
    kind: cuts.length === 1 ? say(`cut.${cuts[0]!.kind}`) : '',
    tiles: tiles.map(({ tile, pieces }) => ({ tile, pieces: pieces.map(({ piece }) => piece).join(' + ') })),
  };
}

/** As a line; of many equal tiles the first beside the drawing, `more` in blocks that a column holds. */
function drawnOf(context: SheetContext, group: TileGroup) {
  const line = lineOf(context, group);
  const rest = line.tiles.slice(BESIDE);
  const more = Array.from({ length: Math.ceil(rest.length / UNDER) }, (_, i) =>
    rest.slice(i * UNDER, (i + 1) * UNDER),
  );
  const starts = startsInTile(context, group.tile, group.cuts, group.tiles[0]!);
  return { ...line, starts, tiles: line.tiles.slice(0, BESIDE), more };
}

function drawingOf({ packet, say, units }: SheetContext, group: TileGroup, ratio: number, i: number) {
  const first = group.tiles[0]!;
  const alone = group.tiles.length === 1;
  const view: CutTileView = {
    tile: packet.spec.tiles.find(({ key }) => key === group.tile)!,
    pieces: first.pieces.map(({ piece, at, turn }, k) => ({
      cut: group.cuts[k]!,
      at,
      turn,
      name: alone ? piece : '',
    })),
    kerf: packet.kerf,
    step: packet.rounding.step,
  };
  const numbers = group.cuts.map(({ number }) => number).join(', ');
  return {
    drawing: drawCutTile(view, {
      id: `tile-${i + 1}`,
      label: say('sheet.tile-sheet.drawing', { tile: first.tile, numbers }),
      ...units,
      say,
      ratio,
    }).svg,
    passes: passesOf(view).map(({ pieces: [one, other] }) => ({
      one: group.cuts[one]!.number,
      other: group.cuts[other]!.number,
    })),
  };
}
