import type { TilePlan, TilePrices } from '../tiles/TilePlan.ts';
import type { SheetContext } from './SheetContext.ts';

/** How many tiles are needed and how many are proved necessary, with the price list that shows it and what it adds up to. */
export function tileProof(context: SheetContext, { needed, bound, whole, cut, prices }: TilePlan) {
  const { say, length, packet } = context;
  // A packet from before there was the setting keeps every offcut.
  const least = packet.spec.offcuts?.narrowest ?? 0;
  const narrowest = least > 0 ? length(least) : 'none';
  const line = say('sheet.tile-sheet.needed', { needed, bound });
  if (!prices) return { line, lines: [], sum: '' };
  const steps = [...new Set(prices.each.map(({ price }) => price))];
  const rest = cut - prices.each.reduce((sum, { pieces }) => sum + pieces.length, 0);
  const lines = [
    ...(whole > 0 ? [say('sheet.tile-sheet.wholePrice')] : []),
    ...steps.map((price) =>
      say('sheet.tile-sheet.cutPrice', { price: partOf(price, prices.over), cuts: cutsAt(prices, price) }),
    ),
    ...(rest > 0 ? [say('sheet.tile-sheet.restPrice')] : []),
    ...prices.groups.map(({ price, pieces }) =>
      say('sheet.tile-sheet.groupPrice', { price: partOf(price, prices.over), pieces: pieces.join(', ') }),
    ),
  ];
  return {
    line,
    proof: say('sheet.tile-sheet.proof', { narrowest }),
    lines,
    sum: sumOf(whole, prices, steps),
  };
}

/** Cuts by number with how many there are; the pieces of one that cost different prices by name. */
function cutsAt({ each }: TilePrices, price: number): string {
  return each
    .filter((one) => one.price === price)
    .map(({ cut, pieces, all }) => {
      if (!all) return `${cut} (${pieces.join(', ')})`;
      return pieces.length > 1 ? `${cut}\u00a0(${pieces.length}\u00a0×)` : `${cut}`;
    })
    .join(', ');
}

function sumOf(whole: number, { over, each, groups }: TilePrices, steps: readonly number[]): string {
  const counted = steps.map((price) => {
    const alike = each.filter((one) => one.price === price);
    return { count: alike.reduce((sum, { pieces }) => sum + pieces.length, 0), price };
  });
  const terms = [...counted, ...groups.map(({ tiles, price }) => ({ count: tiles, price }))];
  const parts = terms.reduce((sum, { count, price }) => sum + count * price, 0);
  const added = [
    ...(whole > 0 ? [`${whole} × 1`] : []),
    ...terms.map(({ count, price }) => `${count} × ${partOf(price, over)}`),
  ];
  const left = parts % over;
  const total = whole + Math.floor(parts / over);
  return `${added.join(' + ')} = ${total}${left > 0 ? ` ${partOf(left, over)} < ${total + 1}` : ''}`;
}

/** A share of a tile in lowest terms. */
function partOf(price: number, over: number): string {
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
  const by = common(price, over);
  return over === by ? `${price / by}` : `${price / by}/${over / by}`;
}
