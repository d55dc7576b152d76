import { exchangePieces } from './exchangePieces.ts';
import { pileOf, waitOf } from './pileOf.ts';
import type { Tile } from './relaxedTiles.ts';
import type { ServedTile, Slot } from './ServedTile.ts';
import { servePieces } from './servePieces.ts';
import type { TileRules } from './tileRules.ts';
import type { WorkOrder } from './workOrder.ts';

/** How far apart in the order of work two pieces of a class may be to change places, and how many changes are tried. */
const REACH = 80;
const TRIES = 2_000_000;

/**
 * Serves the places in tiles so that pieces out of one tile are set soon after one another: pieces that are alike change places,
 * others change tiles where they fit, while offcuts then wait less. Neither the wait nor the largest pile is ever more than that
 * of the pieces served as they stand.
 */
export function nearMates(rules: TileRules, tiles: readonly Tile[], order: WorkOrder): readonly ServedTile[] {
  const plain = servePieces(tiles, order);
  const [near, swappedOnly] = [swapped(inStep(tiles, order)), swapped(plain)];
  const nearest = waitOf(whenOf(near)) <= waitOf(whenOf(swappedOnly)) ? near : swappedOnly;
  const offers = [exchangePieces(rules, nearest), near, swappedOnly];
  return offers.find((one) => noWorse(one, plain)) ?? plain;
}

const whenOf = (tiles: readonly ServedTile[]) => tiles.map((slots) => slots.map(({ when }) => when));

function noWorse(tiles: readonly ServedTile[], than: readonly ServedTile[]): boolean {
  const [one, other] = [whenOf(tiles), whenOf(than)];
  return pileOf(one) <= pileOf(other) && waitOf(one) <= waitOf(other);
}

/** Serves class after class: its first pieces go where those served before are first. */
function inStep(tiles: readonly Tile[], order: WorkOrder): ServedTile[] {
  const served = tiles.map((): (Slot | undefined)[] => []);
  const mean = (i: number) => {
    const known = served[i]!.flatMap((slot) => (slot ? [slot.when] : []));
    return known.length === 0 ? undefined : known.reduce((sum, when) => sum + when, 0) / known.length;
  };
  order.forEach((whens, id) => {
    const which = whens.map((_, i) => i).sort((a, b) => whens[a]! - whens[b]!);
    const places = tiles
      .flatMap((tile, i) => tile.flatMap(({ of }, k) => (of.id === id ? [{ i, k }] : [])))
      .map((place) => ({ ...place, mean: mean(place.i) }));
    // Tiles that hold nothing yet take what is left over, in step with the others.
    const later = places.map(({ mean }, n) => mean ?? whens[which[n]!]!);
    const sorted = places.map((_, n) => n).sort((a, b) => later[a]! - later[b]! || a - b);
    sorted.forEach((n, turn) => {
      const { i, k } = places[n]!;
      served[i]![k] = { at: tiles[i]![k]!, which: which[turn]!, when: whens[which[turn]!]! };
    });
  });
  return served.map((slots) => slots.map((slot) => slot!));
}

/** A slot by its tile and its place in that. */
interface Place {
  readonly i: number;
  readonly k: number;
}

function placesByClass(tiles: readonly ServedTile[]): ReadonlyMap<number, Place[]> {
  const places = new Map<number, Place[]>();
  for (const [i, slots] of tiles.entries()) {
    for (const [k, { at }] of slots.entries()) {
      const own = places.get(at.of.id) ?? [];
      own.push({ i, k });
      places.set(at.of.id, own);
    }
  }
  return places;
}

/** Lets two pieces of a class change places while that lessens the wait. */
function swapped(from: readonly ServedTile[]): ServedTile[] {
  const tiles = from.map((slots) => slots.map((slot) => ({ ...slot })));
  const byClass = placesByClass(tiles);
  const span = (i: number) => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const { when } of tiles[i]!) [least, most] = [Math.min(least, when), Math.max(most, when)];
    return most - least;
  };
  const change = (a: Place, b: Place) => {
    const [one, other] = [tiles[a.i]![a.k]!, tiles[b.i]![b.k]!];
    tiles[a.i]![a.k] = { ...one, which: other.which, when: other.when };
    tiles[b.i]![b.k] = { ...other, which: one.which, when: one.when };
  };
  let tries = TRIES;
  for (let better = true; better && tries > 0; ) {
    better = false;
    for (const places of byClass.values()) {
      if (places.length < 2) continue;
      places.sort((a, b) => tiles[a.i]![a.k]!.when - tiles[b.i]![b.k]!.when);
      for (let n = 0; n < places.length; n++) {
        for (let m = n + 1; m < Math.min(places.length, n + REACH) && tries > 0; m++, tries--) {
          const [a, b] = [places[n]!, places[m]!];
          const before = span(a.i) + span(b.i);
          if (a.i === b.i || before === 0) continue;
          change(a, b);
          if (span(a.i) + span(b.i) < before) better = true;
          else change(a, b);
        }
      }
    }
  }
  return tiles;
}
