import type { Placement } from './CutClass.ts';
import type { ServedTile, Slot } from './ServedTile.ts';
import type { TileRules } from './tileRules.ts';

/** Pairs of pieces that are looked at. */
const TRIES = 1_000_000;

/**
 * Lets two pieces of any classes change tiles while both tiles then still hold their pieces and offcuts wait less in all.
 *
 * @returns the same pieces in as many tiles, settled.
 */
export function exchangePieces(rules: TileRules, from: readonly ServedTile[]): readonly ServedTile[] {
  const loose = (at: Placement) => rules.ways[at.of.id]!.find(({ turn }) => turn === at.turn)!;
  const tiles = from.map((slots) => slots.map((slot) => ({ ...slot, at: loose(slot.at) })));
  const shared = tiles.map((_, i) => i).filter((i) => tiles[i]!.length > 1);
  let tries = TRIES;
  for (let better = true; better && tries > 0; ) {
    better = false;
    for (const [n, i] of shared.entries()) {
      for (const j of shared.slice(n + 1)) {
        tries -= tiles[i]!.length * tiles[j]!.length;
        if (tries <= 0) break;
        const changed = exchanged(rules, tiles[i]!, tiles[j]!);
        if (!changed) continue;
        [tiles[i], tiles[j]] = changed;
        better = true;
      }
    }
  }
  return tiles.map((slots) => settled(rules, slots));
}

function settled(rules: TileRules, slots: ServedTile): ServedTile {
  const placed = rules.settle(slots.map(({ at }) => at));
  return placed ? slots.map((slot, i) => ({ ...slot, at: placed[i]! })) : slots;
}

/** Two tiles after the exchange of a piece each that lessens their wait, if there is one. */
function exchanged(rules: TileRules, one: Slot[], other: Slot[]): [Slot[], Slot[]] | undefined {
  const wait = span(one) + span(other);
  for (const mine of one) {
    for (const theirs of other) {
      if (span(one, mine, theirs) + span(other, theirs, mine) >= wait) continue;
      const [rest, others] = [one.filter((slot) => slot !== mine), other.filter((slot) => slot !== theirs)];
      const here = placed(rules, rest, theirs);
      const there = here && placed(rules, others, mine);
      if (there)
        return [
          [...rest, here],
          [...others, there],
        ];
    }
  }
  return undefined;
}

/** From the first piece of a tile to its last in the order of work, one of them taken for another. */
function span(slots: readonly Slot[], out?: Slot, instead?: Slot): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const slot of slots) {
    const when = instead && slot === out ? instead.when : slot.when;
    if (when < least) least = when;
    if (when > most) most = when;
  }
  return most - least;
}

/** The piece where it lies beside others, if it finds a place. */
function placed(rules: TileRules, beside: readonly Slot[], piece: Slot): Slot | undefined {
  const others = beside.map(({ at }) => at);
  const at = rules.ways[piece.at.of.id]!.find(
    (way) =>
      others.every((other) => rules.partsTwo(other, way)) &&
      (others.length === 1 || rules.partsAll([...others, way])),
  );
  return at && { ...piece, at };
}
