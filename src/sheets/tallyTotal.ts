import { asMarked } from './asMarked.ts';
import type { SheetContext } from './SheetContext.ts';

/** What a tally calls one of its lines, a tile or a material, with what it is called beside that. */
export interface TallyName {
  readonly what: string;
  readonly name: string;
}

/**
 * What the priced lines of a tally come to, and which lines have no price: money is of the tiles whose boxes the job prices, and the
 * job names no currency.
 *
 * @param materials lines of the tally beside its tiles, none of which a job can price.
 */
export function tallyTotal({ packet, say, units }: SheetContext, materials: readonly TallyName[]) {
  const plans = Object.values(packet.tiles);
  const nameOf = (key: string) => packet.spec.tiles.find((tile) => tile.key === key)?.name ?? key;
  // Prices are added as they are printed.
  const cents = plans.reduce((sum, { price = 0 }) => sum + Math.round(price * 100), 0);
  const tiles = plans.filter(({ price }) => price === undefined).map(({ tile }) => nameOf(tile));
  const rest = materials.map(({ what, name }) => (name === '' ? what : `${what} (${name})`));
  const unpriced = [...tiles, ...rest];
  return {
    sum: asMarked((cents / 100).toFixed(2), units.decimal),
    label: say('tally.total', { count: unpriced.length }),
    unpriced: unpriced.length === 0 ? '' : say('tally.unpriced', { lines: unpriced.join(', ') }),
  };
}
