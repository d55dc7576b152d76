import type { CutClass } from './CutClass.ts';
import { pairsOf } from './Prices.ts';
import type { Proof } from './priceList.ts';
import type { TilePrices } from './TilePlan.ts';

/** A proof with the pieces by name, dearest first; the pieces of a cut that cost the same stand together. */
export function tilePrices(classes: readonly CutClass[], { prices, over }: Proof): TilePrices {
  const counts = classes.map(({ pieces }) => pieces.length);
  const priced = new Map<string, CutClass[]>();
  for (const one of classes) {
    const key = `${prices.each[one.id]} ${surfaceOf(one)} ${one.cut.number}`;
    priced.set(key, [...(priced.get(key) ?? []), one]);
  }
  const each = [...priced.values()]
    .map((alike) => ({
      price: prices.each[alike[0]!.id]!,
      cut: alike[0]!.cut.number,
      pieces: alike.flatMap(({ pieces }) => pieces),
      all: alike.reduce((sum, { pieces }) => sum + pieces.length, 0) === alike[0]!.cut.pieces.length,
    }))
    .filter(({ price }) => price > 0)
    .sort((a, b) => b.price - a.price);
  const groups = prices.groups.map(({ of, price }) => ({
    price,
    pieces: of.flatMap((id) => classes[id]!.pieces),
    tiles: pairsOf(of, counts),
  }));
  return { over, each, groups };
}

/** Cuts are numbered by surface; the names of pieces begin with it where there are several. */
function surfaceOf({ pieces }: CutClass): string {
  return pieces[0]!.split(':').slice(0, -1).join(':');
}
