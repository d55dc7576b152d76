import type { CutClass } from './CutClass.ts';
import type { ServedTile, Slot } from './ServedTile.ts';
import type { CutTile } from './TilePlan.ts';
import { turnedBy } from './TileTurn.ts';

/**
 * Numbers the tiles that are sawn in the order in which they are first needed, all kinds together, and names their pieces.
 *
 * @param kinds the tiles of each kind, in any order, with the classes of their pieces.
 * @param names all pieces as they are set; those not among them come after.
 * @returns the tiles of each kind by their number.
 */
export function nameTiles(kinds: readonly ServedKind[], names: readonly string[]): CutTile[][] {
  const place = new Map(names.map((name, i) => [name, i]));
  const needed = (slots: ServedTile) =>
    Math.min(...slots.map((slot) => place.get(pieceOf(slot)) ?? names.length));
  const sorted = kinds
    .flatMap(({ tiles }, kind) => tiles.map((slots) => ({ kind, slots, at: needed(slots) })))
    .sort((a, b) => a.at - b.at)
    .map((one, i) => ({ ...one, name: `T${i + 1}` }));
  return kinds.map(({ classes }, kind) =>
    sorted.filter((one) => one.kind === kind).map(({ name, slots }) => cutTile(name, slots, classes)),
  );
}

/** The tiles of one kind, and the classes of its pieces in the order of their numbers. */
export interface ServedKind {
  readonly tiles: readonly ServedTile[];
  readonly classes: readonly CutClass[];
}

const pieceOf = ({ at: { of }, which }: Slot) => of.pieces[which]!;

function cutTile(tile: string, slots: ServedTile, classes: readonly CutClass[]): CutTile {
  const pieces = slots.map((slot) => {
    const { of, turn, slid } = slot.at;
    const [x, y] = turnedBy(turn, of.box);
    const cut = classes[of.id]!.cut.number;
    return { piece: pieceOf(slot), cut, at: [x + slid[0], y + slid[1]] as const, turn };
  });
  return { tile, pieces };
}
