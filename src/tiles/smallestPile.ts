import type { Placement } from './CutClass.ts';
import type { ServedTile, Slot } from './ServedTile.ts';
import type { TileRules } from './tileRules.ts';
import type { WorkOrder } from './workOrder.ts';

interface OpenTile {
  readonly slots: Slot[];
  /** When the last of its pieces so far is set. */
  last: number;
  /** Of its area, where each piece takes half a kerf all round. */
  left: number;
}

type Piece = Omit<Slot, 'at'> & { readonly id: number };

/**
 * Tiles for the pieces in the order in which they are set, with as small a pile of waiting offcuts as do with so many tiles: each
 * piece comes out of an offcut of the pile, if it fits one, else out of a new tile. A pile's limit is looked for that just does.
 *
 * @param atMost how many tiles it may take; `under` a pile that it must stay under.
 * @returns nothing where no pile under that does.
 */
export function smallestPile(
  rules: TileRules,
  order: WorkOrder,
  atMost: number,
  under: number,
): readonly ServedTile[] | undefined {
  const pieces = order
    .flatMap((whens, id) => whens.map((when, which): Piece => ({ id, which, when })))
    .sort((a, b) => a.when - b.when);
  let best: readonly ServedTile[] | undefined;
  // A tile for each piece, where so many may be taken, lets none wait.
  let [least, most] = [0, pieces.length <= atMost ? Math.min(0, under - 1) : under - 1];
  while (least <= most) {
    const limit = Math.floor((least + most) / 2);
    const [near, full] = (['nearest', 'fullest'] as const).map((by) => inTurn(rules, pieces, limit, by));
    const made = near!.length <= full!.length ? near! : full!;
    if (made.length <= atMost) [best, most] = [made, limit - 1];
    else least = limit + 1;
  }
  return best && settled(rules, best);
}

function settled(rules: TileRules, tiles: readonly ServedTile[]): readonly ServedTile[] {
  return tiles.map((slots) => {
    const placed = rules.settle(slots.map(({ at }) => at));
    return placed ? slots.map((slot, i) => ({ ...slot, at: placed[i]! })) : slots;
  });
}

function inTurn(
  rules: TileRules,
  pieces: readonly Piece[],
  limit: number,
  by: 'nearest' | 'fullest',
): readonly ServedTile[] {
  const tiles: OpenTile[] = [];
  // No offcut that would have had to wait too long for one piece can wait for a later one, nor is one kept that fits none.
  const smallest = Math.min(...rules.needs);
  let open: OpenTile[] = [];
  /** Offcuts that wait after each piece is set. */
  const waiting = new Uint32Array(pieces.length);
  for (const { id, which, when } of pieces) {
    const needs = rules.needs[id]!;
    const from = reachBack(waiting, when, limit);
    open = open.filter(({ last, left }) => last >= from && left >= smallest);
    const found = offcutFor(rules, open, id, by);
    if (found) {
      for (let at = found.tile.last; at < when; at++) waiting[at]!++;
      found.tile.slots.push({ at: found.at, which, when });
      found.tile.last = when;
      found.tile.left -= needs;
    } else {
      const at = rules.ways[id]![0]!;
      const tile = { slots: [{ at, which, when }], last: when, left: rules.room - needs };
      tiles.push(tile);
      if (limit > 0) open.push(tile);
    }
  }
  return tiles.map(({ slots }) => slots);
}

/** The earliest time from which on one offcut more can wait until now. */
function reachBack(waiting: Uint32Array, now: number, limit: number): number {
  let from = now;
  while (from > 0 && waiting[from - 1]! < limit) from--;
  return from;
}

function offcutFor(
  rules: TileRules,
  tiles: readonly OpenTile[],
  id: number,
  by: 'nearest' | 'fullest',
): { readonly tile: OpenTile; readonly at: Placement } | undefined {
  const needs = rules.needs[id]!;
  const better = (a: OpenTile, b: OpenTile) => (by === 'nearest' ? a.last > b.last : a.left < b.left);
  let best: { tile: OpenTile; at: Placement } | undefined;
  for (const tile of tiles) {
    if (tile.left < needs || (best && !better(tile, best.tile))) continue;
    const at = rules.ways[id]!.find((way) => fits(rules, tile, way));
    if (at) best = { tile, at };
  }
  return best;
}

function fits(rules: TileRules, { slots }: OpenTile, next: Placement): boolean {
  if (!slots.every(({ at }) => rules.partsTwo(at, next))) return false;
  return slots.length === 1 || rules.partsAll([...slots.map(({ at }) => at), next]);
}
